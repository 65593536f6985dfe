package store

import (
	"context"
	"database/sql"
	"fmt"
	"time"

	"troughbell/model"
)

// Keeping is how many days texts are kept that nothing needs any more.
type Keeping struct {
	Sent   int // messages sent or dropped, and the names of their files
	Failed int // messages that came in and could not be handled
}

// tidyBatch is how many rows are tidied in one transaction: a message that comes
// in waits no longer.
const tidyBatch = 500

// Tidy takes out texts that are older than they are to be kept, and codes that
// nobody can use any more. It is to be called once a day; how old a message sent
// is, is known to the day from then on. What answered which message, and which
// nudge it delivered, stays: replies and edits find it.
func (s *Store) Tidy(ctx context.Context, now time.Time, keep Keeping) error {
	today := model.DayOf(now.UTC())
	var border int64
	err := s.Write(ctx, func(tx *Tx) (err error) {
		border, err = tx.tide(today, keep.Sent)
		if err == nil {
			_, err = tx.exec("DELETE FROM code WHERE expires_at <= ?", millis(now))
		}
		return err
	})
	if err != nil {
		return fmt.Errorf("tidy: %w", err)
	}
	failedBefore := millis(now.AddDate(0, 0, -keep.Failed))
	for _, batch := range []func(*Tx) (int64, error){
		func(tx *Tx) (int64, error) {
			return tx.count("DELETE FROM incoming WHERE id IN"+
				" (SELECT id FROM incoming WHERE handled = 1 AND at <= ? ORDER BY id LIMIT ?)", failedBefore, tidyBatch)
		},
		func(tx *Tx) (int64, error) {
			return tx.count("DELETE FROM attachment WHERE outgoing IN (SELECT o.id FROM outgoing AS o JOIN attachment AS f ON f.outgoing = o.id"+
				" WHERE o.id <= ? AND o.state IN ('sent', 'dropped') LIMIT ?)", border, tidyBatch)
		},
		func(tx *Tx) (int64, error) {
			return tx.count("UPDATE outgoing SET text = '', buttons = '' WHERE id IN (SELECT id FROM outgoing WHERE id <= ?"+
				" AND state IN ('sent', 'dropped') AND (text <> '' OR buttons <> '') LIMIT ?)", border, tidyBatch)
		},
	} {
		for more := true; more; {
			err := s.Write(ctx, func(tx *Tx) error {
				n, err := batch(tx)
				more = n == tidyBatch
				return err
			})
			if err != nil {
				return fmt.Errorf("tidy: %w", err)
			}
		}
	}
	return s.rest(ctx)
}

// tide notes the outbox's last row of today, and gives that of the latest day
// that is so many days ago, 0 if none is known.
func (tx *Tx) tide(today model.Day, days int) (int64, error) {
	_, err := tx.exec("INSERT INTO tide (day, outgoing) VALUES (?, "+nextID("outgoing")+" - 1)"+
		" ON CONFLICT (day) DO UPDATE SET outgoing = excluded.outgoing", today.String())
	if err != nil {
		return 0, err
	}
	var day sql.NullString
	const latest = "SELECT max(day) FROM tide WHERE day <= ?"
	if _, err := tx.one(latest, []any{(today - model.Day(days)).String()}, &day); err != nil || !day.Valid {
		return 0, err
	}
	var border int64
	if _, err := tx.one("SELECT outgoing FROM tide WHERE day = ?", []any{day.String}, &border); err != nil {
		return 0, err
	}
	_, err = tx.exec("DELETE FROM tide WHERE day < ?", day.String)
	return border, err
}

// rest folds the log into the file and empties it, so that it shows nothing that
// was taken out. Where a reader is in the way, the next day does it.
func (s *Store) rest(ctx context.Context) error {
	select {
	case c, ok := <-s.writer:
		if !ok {
			return errClosed
		}
		defer func() { s.writer <- c }()
		if err := s.ready(ctx, &c); err != nil {
			return err
		}
		return explainSQL(s.path, s.emptied(func() error {
			var busy, log, done int
			return c.conn.QueryRowContext(ctx, "PRAGMA wal_checkpoint(TRUNCATE)").Scan(&busy, &log, &done)
		}))
	case <-ctx.Done():
		return ctx.Err()
	}
}

// count runs a statement and gives how many rows it changed.
func (tx *Tx) count(query string, args ...any) (int64, error) {
	r, err := tx.exec(query, args...)
	if err != nil {
		return 0, err
	}
	return r.RowsAffected()
}
