package store

import (
	"context"
	"errors"
	"io/fs"
	"os"
)

// place is the files that are open for writing, as their folder knows them. What
// is deleted or moved away can be written on as if nothing had happened, and is
// gone when the process ends: so each transaction looks whether they lie where
// they did.
type place struct{ file, log os.FileInfo }

// lookAround finds the files at the store's path; the log may not be there yet.
func (s *Store) lookAround() (p place, err error) {
	if p.file, err = os.Stat(s.path); err != nil {
		return p, err
	}
	p.log, err = os.Stat(s.path + "-wal")
	if errors.Is(err, fs.ErrNotExist) {
		err = nil
	}
	return p, err
}

// note notes where the files that were just opened lie.
func (s *Store) note() error {
	p, err := s.lookAround()
	if err == nil {
		s.place.Store(&p)
	}
	return err
}

// inPlace reports whether the open files are those at the store's path.
func (s *Store) inPlace() bool {
	noted := s.place.Load()
	if noted == nil {
		return true
	}
	now, err := s.lookAround()
	if err != nil || !os.SameFile(noted.file, now.file) {
		return false
	}
	if noted.log == nil { // it is made by the first write
		if now.log != nil {
			s.place.CompareAndSwap(noted, &now)
		}
		return true
	}
	return now.log != nil && os.SameFile(noted.log, now.log)
}

// replaced reports whether another file lies where the open one did.
func (s *Store) replaced() bool {
	now, err := os.Stat(s.path)
	return err == nil && !os.SameFile(s.place.Load().file, now)
}

// removeOwnLog removes the log where it is the open one: it would be played into
// the file that was put in the place of the one it belongs to.
func (s *Store) removeOwnLog() error {
	noted := s.place.Load()
	now, err := s.lookAround()
	if err != nil || noted.log == nil || now.log == nil || !os.SameFile(noted.log, now.log) {
		return err
	}
	return removeSides(s.path)
}

// watch puts the files back where they are not in place, unless a write is under
// way, which does the same when its turn has come.
func (s *Store) watch(ctx context.Context) error {
	if s.inPlace() {
		return nil
	}
	select {
	case c, ok := <-s.writer:
		if !ok {
			return errClosed
		}
		defer func() { s.writer <- c }()
		return s.ready(ctx, &c)
	default:
		return nil
	}
}

// ready makes the writing connection good to use: it puts the files back where
// they are not in place.
func (s *Store) ready(ctx context.Context, c **connection) (err error) {
	if *c == nil || !s.inPlace() {
		*c, err = s.putBack(ctx, *c)
	}
	return explain(s.path, err)
}

// putBack brings what the process still has open back to the store's path, and
// goes on there. Where another file was put in its place the copy is left beside
// that one, and the store can only be closed. c is the writing connection, or nil
// where there is none since an earlier try; the one that holds from now on is
// given.
func (s *Store) putBack(ctx context.Context, c *connection) (*connection, error) {
	switch {
	case s.lost != nil:
		return c, s.lost
	case c == nil:
		return s.reopen(ctx)
	}
	part, err := makeCopy(ctx, s.path, ".kept-", func(part string) error {
		_, err := c.conn.ExecContext(ctx, "VACUUM INTO ?", part)
		return err
	})
	if err != nil {
		return c, err
	}
	if s.replaced() {
		if err := s.removeOwnLog(); err != nil {
			return c, errors.Join(err, os.Remove(part))
		}
		s.lost = problem(Replaced, nil, "%s was replaced while in use; what it held is kept in %s. Start again to go on with the new one.", s.path, part)
		return c, s.lost
	}
	if err := replace(ctx, part, s.path, false); err != nil {
		return c, errors.Join(err, os.Remove(part))
	}
	for range readersAtOnce {
		r := <-s.readers
		defer func() { s.readers <- r }()
		if r.connection != nil {
			_ = r.close() // of a file that is no more
			r.connection = nil
		}
	}
	closeFile, err := s.folding.close()
	_ = errors.Join(err, s.readDB.Close(), c.close(), s.writeDB.Close(), closeFile())
	if c, err = s.reopen(ctx); err == nil && s.putBackTold != nil {
		s.putBackTold()
	}
	return c, err
}

// reopen opens the file at the store's path again; nil where it cannot.
func (s *Store) reopen(ctx context.Context) (c *connection, err error) {
	if err := s.relock(); err != nil {
		return nil, err
	}
	if s.readDB, err = pool(s.path, reading, readersAtOnce); err != nil {
		return nil, err
	}
	if s.writeDB, err = pool(s.path, writing, 1); err != nil {
		return nil, err
	}
	if c, err = connect(ctx, s.writeDB); err != nil {
		return nil, err
	}
	if err := s.folding.open(ctx, s.path); err != nil {
		return nil, errors.Join(err, c.close())
	}
	return c, s.note()
}

// relock takes the lock again where its file was deleted along with the others.
func (s *Store) relock() error {
	held, err := s.lock.file.Stat()
	if err != nil {
		return err
	}
	if now, err := os.Stat(s.path + "-lock"); err == nil && os.SameFile(held, now) {
		return nil
	}
	l, err := lockFor(s.path, s.lock.role)
	if err != nil {
		return err
	}
	err = s.lock.release()
	s.lock = l
	return err
}
