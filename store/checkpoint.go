package store

import (
	"context"
	"database/sql"
	"errors"
	"io/fs"
	"os"
	"sync"
	"sync/atomic"
	"syscall"

	"modernc.org/sqlite"
)

// Sizes of the log, in pages of 4 KB.
const (
	foldAt    = 1000  // came to it since it was last folded into the file: it is folded again
	restartAt = 4096  // it is begun anew from its start; logKept is as much
	mostInLog = 16384 // the writer folds it itself before it writes more
	fewInLog  = 256   // are folded in no time that matters to who waits for the writer
)

// restartTries is for how many commits a moment is looked for in which nobody
// reads, so that the log can be begun anew.
const restartTries = 50

// folding folds the log into the file on a connection and in a goroutine of its
// own: SQLite would do it within a commit, and the disk takes its time over pages
// that lie scattered.
type folding struct {
	// mu is held during each checkpoint: SQLite has none wait for another. Who holds
	// the writing connection may take it, not the other way around.
	mu   sync.Mutex
	db   *sql.DB
	c    *connection // nil: nothing is folded, as of an ephemeral file
	file *os.File    // the database, to bring it to the disk

	came   atomic.Int64 // pages, since it was last folded
	holds  atomic.Int64 // pages, when it was last folded
	failed atomic.Bool  // the last time; the next write tries it and tells
	looks  atomic.Bool  // for a moment in which nobody reads

	commits chan struct{}
	stop    context.CancelFunc
	done    sync.WaitGroup
}

// open opens the file at path, which the writer has open. The file is closed after
// all connections to it: closing it drops the locks that they hold.
func (f *folding) open(ctx context.Context, path string) (err error) {
	f.mu.Lock()
	defer f.mu.Unlock()
	f.file, err = os.OpenFile(path, os.O_RDWR, 0)
	if err != nil && !errors.Is(err, fs.ErrPermission) && !errors.Is(err, syscall.EROFS) { // then SQLite will not write it, and says so
		return err
	}
	if f.db, err = pool(path, writing, 1); err != nil {
		return err
	}
	f.c, err = connect(ctx, f.db)
	f.came.Store(0)
	f.holds.Store(0)
	return err
}

// close closes the connection. The file is to be closed by what is given, when
// the other connections are closed too.
func (f *folding) close() (closeFile func() error, err error) {
	f.mu.Lock()
	defer f.mu.Unlock()
	closeFile = func() error { return nil }
	if f.file != nil {
		closeFile = f.file.Close
	}
	if f.c != nil {
		err = f.c.close()
	}
	if f.db != nil {
		err = errors.Join(err, f.db.Close())
	}
	f.c, f.db, f.file = nil, nil, nil
	return closeFile, err
}

// fold folds into the file what no reader needs to find in the log, and waits for
// nobody but another checkpoint. all says that nothing is left in it.
func (f *folding) fold() (all bool, err error) {
	f.mu.Lock()
	defer f.mu.Unlock()
	if f.c == nil {
		return false, nil
	}
	came := f.came.Load()
	var busy, log, done int64
	if err := f.c.conn.QueryRowContext(context.Background(), "PRAGMA wal_checkpoint(PASSIVE)").Scan(&busy, &log, &done); err != nil {
		return false, err
	}
	f.came.Add(-came)
	f.holds.Store(log)
	return busy == 0 && log == done, nil
}

// sync brings to the disk what was folded. SQLite does it only where it reached the
// end of the log, which under load it does while the writer waits.
func (f *folding) sync() error {
	f.mu.Lock()
	defer f.mu.Unlock()
	if f.file == nil {
		return nil
	}
	return f.file.Sync()
}

// start begins to fold after commits, until close.
func (s *Store) startFolding() {
	ctx, stop := context.WithCancel(context.Background())
	f := &s.folding
	f.stop, f.commits = stop, make(chan struct{}, 1)
	f.done.Go(func() {
		for {
			select {
			case <-ctx.Done():
				return
			case <-f.commits:
			}
			if f.came.Load() < foldAt { // it was counted while others were folded
				continue
			}
			if err := s.checkpoint(ctx); err != nil && ctx.Err() == nil {
				f.failed.Store(true)
			}
		}
	})
}

// stopFolding ends what startFolding began.
func (s *Store) stopFolding() {
	if s.folding.stop != nil {
		s.folding.stop()
		s.folding.done.Wait()
	}
}

// committed counts what a transaction has written to the log, and has it folded
// where that is much.
func (s *Store) committed(c *connection) {
	f := &s.folding
	if f.commits == nil {
		return
	}
	var pages int
	err := c.conn.Raw(func(driver any) (err error) {
		pages, _, err = driver.(sqlite.DBStatus).Status(sqlite.DBStatusCacheWrite, true)
		return err
	})
	if err != nil { // then it may be many
		pages = foldAt
	}
	f.came.Add(int64(pages))
	if f.came.Load() >= foldAt || f.looks.Load() {
		select {
		case f.commits <- struct{}{}:
		default:
		}
	}
}

// foldFirst has the writer fold the log by itself where that failed, so that the
// error is told as any of a write is, or where the log grows faster than it is folded.
func (s *Store) foldFirst() error {
	f := &s.folding
	came := f.came.Load()
	if !f.failed.Load() && (came < foldAt || came+f.holds.Load() < mostInLog) {
		return nil
	}
	_, err := f.fold()
	f.failed.Store(err != nil)
	return err
}

// checkpoint folds the log and, where it is long, has it begun anew: that takes a
// moment in which nothing is left in it, and so the writer's turn. The most of it is
// folded and brought to the disk before.
func (s *Store) checkpoint(ctx context.Context) error {
	f := &s.folding
	if _, err := f.fold(); err != nil || f.holds.Load() < restartAt {
		return err
	}
	f.looks.Store(true)
	defer f.looks.Store(false)
	if err := f.sync(); err != nil {
		return err
	}
	for range restartTries {
		if f.came.Load() > fewInLog {
			if _, err := f.fold(); err != nil {
				return err
			}
			if err := f.sync(); err != nil {
				return err
			}
		}
		if all, err := s.foldAll(ctx); all || err != nil {
			return err
		}
		select {
		case <-f.commits:
		case <-ctx.Done():
			return ctx.Err()
		}
	}
	return nil
}

// foldAll folds all of the log at the writer's turn, if nobody reads in this process:
// the next write then begins it anew.
func (s *Store) foldAll(ctx context.Context) (all bool, err error) {
	select {
	case c, ok := <-s.writer:
		if !ok {
			return false, errClosed
		}
		defer func() { s.writer <- c }()
	case <-ctx.Done():
		return false, ctx.Err()
	}
	for range readersAtOnce {
		select {
		case r := <-s.readers:
			defer func() { s.readers <- r }()
		default:
			return false, nil
		}
	}
	return s.folding.fold()
}

// emptied runs what folds all of the log and cuts it off, beside no other checkpoint.
func (s *Store) emptied(f func() error) error {
	s.folding.mu.Lock()
	defer s.folding.mu.Unlock()
	return f()
}
