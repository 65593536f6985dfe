package store

import (
	"context"
	"database/sql"
	"fmt"
	"strconv"
	"time"

	"troughbell/model"
)

// Keeping is how many days texts are kept that nothing needs any more.
type Keeping struct {
	Sent   int // messages sent or dropped, and the names of their files
	Failed int // messages that came in and could not be handled
}

// tidySpan is how many rows are looked at in one transaction: a message that comes
// in waits no longer.
const tidySpan = 500

// valueTidied is the name of the value that says up to which row of the outbox texts
// were taken out, but for none that waited to be sent then.
const valueTidied = "tidied.outgoing"

// Tidy takes out texts that are older than they are to be kept, and codes that
// nobody can use any more. It is to be called once a day; how old a message sent
// is, is known to the day from then on. What answered which message, and which
// nudge it delivered, stays: replies and edits find it.
//
// Others write in between, and where it was cut off it goes on the next time.
func (s *Store) Tidy(ctx context.Context, now time.Time, keep Keeping) error {
	today := model.DayOf(now.UTC())
	in := tidying{before: millis(now.AddDate(0, 0, -keep.Failed))}
	var out tidying
	err := s.Write(ctx, func(tx *Tx) (err error) {
		if out.border, err = tx.tide(today, keep.Sent); err != nil {
			return err
		}
		if out.from, err = tx.tidied(); err != nil {
			return err
		}
		_, err = tx.exec("DELETE FROM code WHERE expires_at <= ?", millis(now))
		return err
	})
	if err != nil {
		return fmt.Errorf("tidy: %w", err)
	}
	for _, some := range []func(*Tx) (bool, error){in.incoming, out.outgoing} {
		for more := true; more; {
			err := s.Write(ctx, func(tx *Tx) (err error) {
				more, err = some(tx)
				return err
			})
			if err != nil {
				return fmt.Errorf("tidy: %w", err)
			}
		}
	}
	return s.rest(ctx)
}

// tidying is how far a table is tidied.
type tidying struct {
	from   int64 // the row looked at last
	before int64 // of incoming: the moment
	border int64 // of outgoing: the last row
	held   bool  // a message that waits was met: the value stays before it
}

// incoming takes out some messages that came in before the moment and were handled;
// more says that there may be others. They lie about in the order of their moments.
func (t *tidying) incoming(tx *Tx) (more bool, err error) {
	var last sql.NullInt64
	var old int
	if _, err := tx.one("SELECT max(id), count(at <= ? OR NULL) FROM (SELECT id, at FROM incoming WHERE id > ? ORDER BY id LIMIT ?)",
		[]any{t.before, t.from, tidySpan}, &last, &old); err != nil || old == 0 {
		return false, err
	}
	_, err = tx.exec("DELETE FROM incoming WHERE id > ? AND id <= ? AND handled = 1 AND at <= ?", t.from, last.Int64, t.before)
	t.from = last.Int64
	return true, err
}

// outgoing takes the words and the names of files out of some messages up to the
// border that were sent or dropped; more says that there may be others.
func (t *tidying) outgoing(tx *Tx) (more bool, err error) {
	if t.from >= t.border {
		return false, nil
	}
	to := min(t.from+tidySpan, t.border)
	for _, q := range []string{
		"DELETE FROM attachment WHERE outgoing > ? AND outgoing <= ?" +
			" AND (SELECT state FROM outgoing WHERE id = attachment.outgoing) IN ('sent', 'dropped')",
		"UPDATE outgoing SET text = '', buttons = '' WHERE id > ? AND id <= ? AND state IN ('sent', 'dropped') AND (text <> '' OR buttons <> '')",
	} {
		if _, err := tx.exec(q, t.from, to); err != nil {
			return false, err
		}
	}
	if !t.held {
		var waits sql.NullInt64
		if _, err := tx.one("SELECT min(id) FROM outgoing WHERE id > ? AND id <= ? AND state NOT IN ('sent', 'dropped')",
			[]any{t.from, to}, &waits); err != nil {
			return false, err
		}
		upTo := to
		if t.held = waits.Valid; t.held {
			upTo = waits.Int64 - 1
		}
		if err := tx.SetValue(valueTidied, strconv.FormatInt(upTo, 10)); err != nil {
			return false, err
		}
	}
	t.from = to
	return true, nil
}

// tidied is up to which row of the outbox texts were taken out.
func (tx *Tx) tidied() (int64, error) {
	v, err := tx.Value(valueTidied)
	if err != nil || v == "" {
		return 0, err
	}
	n, err := strconv.ParseInt(v, 10, 64)
	if err != nil {
		return 0, fmt.Errorf("value %s: %w", valueTidied, err)
	}
	return n, nil
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
// was taken out. Where a reader is in the way, the next day does it. The most of it is
// folded while others write.
func (s *Store) rest(ctx context.Context) error {
	if _, err := s.folding.fold(); err != nil {
		return explainSQL(s.path, err)
	}
	if err := s.folding.sync(); err != nil {
		return explain(s.path, err)
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
		return explainSQL(s.path, s.emptied(func() error {
			var busy, log, done int
			return c.conn.QueryRowContext(ctx, "PRAGMA wal_checkpoint(TRUNCATE)").Scan(&busy, &log, &done)
		}))
	case <-ctx.Done():
		return ctx.Err()
	}
}
