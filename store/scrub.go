package store

import (
	"context"
	"fmt"
)

// valueScrub is the name of the value that says that the free places of the file
// may hold what was erased, and are to be written anew.
const valueScrub = "scrub"

// Scrub writes the file anew without its free places, and empties the log, where
// an erasure has asked for it and something was in the way: a reader elsewhere,
// a full disk, a power cut. It does nothing else.
func (s *Store) Scrub(ctx context.Context) error {
	if s.writer == nil {
		return problem(ReadOnly, nil, "%s is open for reading only.", s.path)
	}
	select {
	case c, ok := <-s.writer:
		if !ok {
			return errClosed
		}
		defer func() { s.writer <- c }()
		if err := s.ready(ctx, &c); err != nil {
			return err
		}
		return explainSQL(s.path, s.emptied(func() error { return c.scrubIfDue(ctx) }))
	case <-ctx.Done():
		return ctx.Err()
	}
}

func (c *connection) scrubIfDue(ctx context.Context) error {
	due := false
	err := c.inTransaction(ctx, "BEGIN", func(tx *Tx) error {
		v, err := tx.Value(valueScrub)
		due = v != ""
		return err
	})
	if err != nil || !due {
		return err
	}
	return c.scrub(ctx)
}

// scrub does it. Deleting overwrites what it deletes (secure_delete), but a page
// from which rows moved to another when it grew full may still show them.
func (c *connection) scrub(ctx context.Context) (err error) {
	defer func() {
		if err != nil {
			err = fmt.Errorf("write the file anew: %w", err)
		}
	}()
	if _, err := c.conn.ExecContext(ctx, "VACUUM"); err != nil {
		return err
	}
	if err := c.emptyLog(ctx); err != nil {
		return err
	}
	return c.inTransaction(ctx, "BEGIN IMMEDIATE", func(tx *Tx) error {
		_, err := tx.exec("DELETE FROM value WHERE name = ?", valueScrub)
		return err
	})
}

// emptyLog folds the log into the file and cuts it off.
func (c *connection) emptyLog(ctx context.Context) error {
	var busy, log, done int
	if err := c.conn.QueryRowContext(ctx, "PRAGMA wal_checkpoint(TRUNCATE)").Scan(&busy, &log, &done); err != nil {
		return err
	}
	if busy != 0 {
		return fmt.Errorf("a reader is in the way of emptying the log")
	}
	return nil
}
