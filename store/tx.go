package store

import (
	"context"
	"database/sql"
	"errors"
	"fmt"
)

// Tx is a transaction. It is good inside the function it was handed to, in one
// goroutine.
type Tx struct {
	c    *connection
	path string
	// speakers are those remembered, peopleAsOf how often people and chats had changed
	// before the transaction began; nil: none are.
	speakers   *speakers
	peopleAsOf int64
	erased     bool      // something was erased for good
	waiting    []Waiting // what was put into the outbox
}

var errTxOver = errors.New("the transaction is over")

// Write runs f in one transaction that is committed if f returns nil. Writes
// run one after another; f must not call Write again, nor wait for another
// that does. The context ends the wait to begin, not a finished f's commit.
func (s *Store) Write(ctx context.Context, f func(*Tx) error) error {
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
		if err := s.foldFirst(); err != nil {
			return explain(s.path, err)
		}
		erased := false
		var waiting []Waiting
		err := c.inTransaction(ctx, "BEGIN IMMEDIATE", func(tx *Tx) error {
			tx.path, tx.speakers, tx.peopleAsOf = s.path, &s.speakers, s.speakers.count()
			err := f(tx)
			erased, waiting = tx.erased, tx.waiting
			return err
		})
		if c.changedPeople {
			c.changedPeople = false
			s.speakers.changed()
		}
		s.committed(c)
		if err == nil && len(waiting) > 0 && s.onQueued != nil {
			s.onQueued(waiting)
		}
		if err == nil && erased {
			// It is committed, and noted as due until it has worked: see Scrub.
			_ = s.emptied(func() error { return c.scrub(context.WithoutCancel(ctx)) })
		}
		return explainSQL(s.path, err)
	case <-ctx.Done():
		return ctx.Err()
	}
}

// Read runs f on one consistent state, beside a write and other reads. f must
// not call Read again.
func (s *Store) Read(ctx context.Context, f func(*Tx) error) error {
	if err := s.watch(ctx); err != nil {
		return err
	}
	c, err := s.reader(ctx)
	if err != nil {
		return err
	}
	defer func() { s.readers <- c }()
	asOf := s.speakers.count()
	return explainSQL(s.path, c.inTransaction(ctx, "BEGIN", func(tx *Tx) error {
		if s.writer != nil { // else another process changes them
			tx.speakers, tx.peopleAsOf = &s.speakers, asOf
		}
		return f(tx)
	}))
}

// reader takes a reading connection. Where a further one cannot be opened, as on
// a disk that fails, those that are open do.
func (s *Store) reader(ctx context.Context) (c *lazy, err error) {
	for range readersAtOnce {
		var ok bool
		select {
		case c, ok = <-s.readers:
		case <-ctx.Done():
			return nil, ctx.Err()
		}
		switch {
		case !ok:
			return nil, errClosed
		case c.connection != nil:
			return c, nil
		}
		if c.connection, err = connect(ctx, s.readDB); err == nil {
			return c, nil
		}
		s.readers <- c
	}
	return nil, explain(s.path, err)
}

// Try runs f as a part of the transaction that is undone if f fails; then the
// transaction goes on without it, and fault says why, as the error of a Write
// would. err is that of a transaction that cannot go on.
func (tx *Tx) Try(f func() error) (fault, err error) {
	if _, err := tx.exec("SAVEPOINT part"); err != nil {
		return nil, err
	}
	before := *tx
	if fault = explainSQL(tx.path, f()); fault != nil {
		if _, err := tx.exec("ROLLBACK TO part"); err != nil { // SQLite has undone all
			return fault, errors.Join(fault, err)
		}
		tx.erased, tx.waiting = before.erased, before.waiting
	}
	_, err = tx.exec("RELEASE part")
	return fault, err
}

func (tx *Tx) exec(query string, args ...any) (sql.Result, error) {
	if tx.c == nil {
		return nil, errTxOver
	}
	s, err := tx.c.prepared(query)
	if err != nil {
		return nil, err
	}
	return s.exec(context.Background(), args)
}

// change runs a statement that must change one row.
func (tx *Tx) change(what string, query string, args ...any) error {
	r, err := tx.exec(query, args...)
	if err != nil {
		return fmt.Errorf("%s: %w", what, err)
	}
	n, err := r.RowsAffected()
	if err != nil {
		return fmt.Errorf("%s: %w", what, err)
	}
	if n != 1 {
		return fmt.Errorf("%s: %w", what, ErrNotFound)
	}
	return nil
}

// one reads one row into dest; false if there is none.
func (tx *Tx) one(query string, args []any, dest ...any) (bool, error) {
	if tx.c == nil {
		return false, errTxOver
	}
	s, err := tx.c.prepared(query)
	if err != nil {
		return false, err
	}
	found := false
	err = s.each(args, func(row scanner) error {
		if found {
			return nil
		}
		found = true
		return row.Scan(dest...)
	})
	return found && err == nil, err
}

// scanner is what a row is read from.
type scanner interface{ Scan(dest ...any) error }

// list reads all rows of a query, each by scan. The rows are closed before it
// returns: on one connection an open row blocks the next statement.
func list[T any](tx *Tx, query string, args []any, scan func(scanner) (T, error)) (out []T, err error) {
	if tx.c == nil {
		return nil, errTxOver
	}
	s, err := tx.c.prepared(query)
	if err != nil {
		return nil, err
	}
	err = s.each(args, func(row scanner) error {
		t, err := scan(row)
		if err == nil {
			out = append(out, t)
		}
		return err
	})
	if err != nil {
		return nil, err
	}
	return out, nil
}

// orNull is the id, or NULL for 0.
func orNull[ID ~int64](id ID) sql.NullInt64 {
	return sql.NullInt64{Int64: int64(id), Valid: id != 0}
}

// limited is a limit for SQL; 0 or less is no limit.
func limited(limit int) int {
	if limit <= 0 {
		return -1
	}
	return limit
}
