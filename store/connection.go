package store

import (
	"context"
	"database/sql"
	"errors"
)

// connection is one connection with the statements prepared on it: a text's
// transaction then compiles no SQL.
type connection struct {
	conn       *sql.Conn
	statements map[string]statement
	// changedPeople says that a statement that changes people or chats was run.
	changedPeople bool
}

func connect(ctx context.Context, db *sql.DB) (*connection, error) {
	c, err := db.Conn(ctx)
	if err != nil {
		return nil, err
	}
	return &connection{conn: c, statements: map[string]statement{}}, nil
}

func (c *connection) close() error {
	var err error
	for _, s := range c.statements {
		err = errors.Join(err, s.Close())
	}
	return errors.Join(err, c.conn.Close())
}

func (c *connection) prepared(query string) (statement, error) {
	s, ok := c.statements[query]
	if !ok {
		var err error
		if s, err = prepare(c.conn, query); err != nil {
			return s, err
		}
		c.statements[query] = s
	}
	c.changedPeople = c.changedPeople || s.changesPeople
	return s, nil
}

// do runs a statement that takes no arguments and gives no rows.
func (c *connection) do(ctx context.Context, query string) error {
	s, err := c.prepared(query)
	if err != nil {
		return err
	}
	_, err = s.exec(ctx, nil)
	return err
}

// inTransaction runs f between begin and a commit, or a rollback if f fails or
// panics. Only the wait for the beginning ends with ctx: what f has finished
// is committed.
func (c *connection) inTransaction(ctx context.Context, begin string, f func(*Tx) error) error {
	tx := &Tx{c: c}
	committed := false
	defer func() {
		tx.c = nil
		if !committed {
			c.rollBack()
		}
	}()
	if err := c.do(ctx, begin); err != nil {
		return err // a context that ended just then may have let it begin
	}
	if err := f(tx); err != nil {
		return err
	}
	if err := c.do(context.Background(), "COMMIT"); err != nil {
		return err
	}
	committed = true
	return nil
}

// rollBack ends a transaction if one is open. It fails where none is: SQLite
// itself rolls back after some failures. The failure before it tells.
func (c *connection) rollBack() {
	_ = c.do(context.Background(), "ROLLBACK")
}
