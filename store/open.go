package store

import (
	"context"
	"database/sql"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"sync"
	"sync/atomic"
)

// Options of Open.
type Options struct {
	// Ephemeral trades the safety of the disk for speed: for a herd that lives
	// and dies with a run.
	Ephemeral bool
	// PutBack is called when the file was deleted under the store and was put
	// back whole. It must not call the store.
	PutBack func()
	// Role is what the process does with the file, for who is kept out by it.
	Role string
}

// readersAtOnce is how many reads run side by side.
const readersAtOnce = 3

var errClosed = errors.New("the store is closed")

// Store is an open database file.
type Store struct {
	path    string
	frozen  bool // nothing can write it where it lies
	lock    *fileLock
	writeDB *sql.DB
	readDB  *sql.DB
	// The channels hold the connections that are free. A reading connection is
	// made when it is first used.
	writer  chan *connection
	readers chan *lazy

	folding  folding
	speakers speakers

	onQueued func([]Waiting) // see OnQueued; nil: nobody listens

	place       atomic.Pointer[place] // nil: nobody looks
	putBackTold func()
	lost        error // why the store can only be closed; the writer's

	closing sync.Once
	closed  error
}

type lazy struct{ *connection }

// Open opens the file for writing, makes it if it is not there, and brings its
// schema up to date. The error says what to do in one sentence ([Problem]).
//
// A file that belongs to another program, is damaged or comes from a newer
// version is left untouched. One process at a time may have a file open for
// writing.
func Open(ctx context.Context, path string, o Options) (_ *Store, err error) {
	path, err = filepath.Abs(path)
	if err != nil {
		return nil, fmt.Errorf("path of the database: %w", err)
	}
	if _, err := isThere(path); err != nil {
		return nil, err
	}
	lock, err := lockFor(path, o.Role)
	if err != nil {
		return nil, err
	}
	s := &Store{path: path, lock: lock, putBackTold: o.PutBack}
	defer func() {
		if err != nil {
			err = errors.Join(explain(path, err), s.Close())
		}
	}()
	if err := create(path); err != nil {
		return nil, err
	}
	syncOnce()
	if err := examine(ctx, path, !o.Ephemeral); err != nil {
		return nil, err
	}
	settings := writing
	if o.Ephemeral {
		settings = ephemeral
	}
	if s.writeDB, err = pool(path, settings, 1); err != nil {
		return nil, err
	}
	c, err := connect(ctx, s.writeDB)
	if err != nil {
		return nil, err
	}
	s.writer = make(chan *connection, 1)
	s.writer <- c
	if err := migrate(ctx, c, path, migrations); err != nil {
		return nil, err
	}
	// What was in the way of it before may be so still, and is no reason not to
	// open: see Scrub.
	if err := c.scrubIfDue(ctx); err != nil && isDamage(err) {
		return nil, err
	}
	if err := s.openReaders(path, reading); err != nil {
		return nil, err
	}
	if o.Ephemeral {
		return s, nil
	}
	if err := s.folding.open(ctx, path); err != nil {
		return nil, err
	}
	s.startFolding()
	return s, s.note()
}

// OpenReader opens the file for reading, beside a process that writes it.
func OpenReader(ctx context.Context, path string) (_ *Store, err error) {
	path, err = filepath.Abs(path)
	if err != nil {
		return nil, fmt.Errorf("path of the database: %w", err)
	}
	there, err := isThere(path)
	if err != nil {
		return nil, err
	}
	if !there {
		return nil, problem(Missing, fs.ErrNotExist, "There is no herd at %s; check the path.", path)
	}
	s := &Store{path: path}
	settings := reading
	version, err := schemaOf(ctx, path, settings)
	if cannotOpen(err) && !inUse(path) {
		settings, s.frozen = frozen, true
		version, err = schemaOf(ctx, path, settings)
	}
	if err != nil {
		return nil, explain(path, err)
	}
	switch {
	case version > len(migrations):
		return nil, newer(path, version)
	case version == 0:
		return nil, problem(Missing, nil, "%s is empty; no herd is kept in it yet.", path)
	case version < len(migrations):
		return nil, problem(Older, nil, "%s comes from an older version; open it once with `troughbell chat` to bring it up to date.", path)
	}
	if err := s.openReaders(path, settings); err != nil {
		return nil, errors.Join(explain(path, err), s.Close())
	}
	return s, nil
}

func (s *Store) openReaders(path string, settings []string) (err error) {
	if s.readDB, err = pool(path, settings, readersAtOnce); err != nil {
		return err
	}
	s.readers = make(chan *lazy, readersAtOnce)
	for range readersAtOnce {
		s.readers <- &lazy{}
	}
	return nil
}

// pool prepares connections to the file; it opens none yet.
func pool(path string, settings []string, size int) (*sql.DB, error) {
	db, err := sql.Open("sqlite", dsn(path, settings))
	if err != nil {
		return nil, err
	}
	db.SetMaxOpenConns(size)
	db.SetMaxIdleConns(size)
	return db, nil
}

// create makes an empty file that only its owner can read, if there is none.
// It must not open one that is there: closing it would drop the locks that
// SQLite holds on it for other connections of this process.
func create(path string) error {
	f, err := os.OpenFile(path, os.O_CREATE|os.O_EXCL|os.O_RDWR, 0o600)
	if errors.Is(err, fs.ErrExist) {
		return nil
	}
	if err != nil {
		return err
	}
	return f.Close()
}

// Close waits for what is under way and closes the file. Closing again does
// nothing.
func (s *Store) Close() error {
	s.closing.Do(func() { s.closed = explain(s.path, s.close()) })
	return s.closed
}

func (s *Store) close() error {
	s.stopFolding()
	closeFile, err := s.folding.close()
	if s.readers != nil {
		for range readersAtOnce {
			if c := <-s.readers; c.connection != nil {
				err = errors.Join(err, c.close())
			}
		}
		close(s.readers)
	}
	if s.readDB != nil {
		err = errors.Join(err, s.readDB.Close())
	}
	if s.writer != nil {
		if c := <-s.writer; c != nil {
			// The log is folded into the file as far as readers elsewhere let it;
			// without any, closing takes the log away.
			err = errors.Join(err, c.do(context.Background(), "PRAGMA wal_checkpoint(PASSIVE)"), c.close())
		}
		close(s.writer)
	}
	if s.writeDB != nil {
		err = errors.Join(err, s.writeDB.Close())
	}
	err = errors.Join(err, closeFile())
	if s.lock != nil {
		err = errors.Join(err, s.lock.release())
	}
	return err
}
