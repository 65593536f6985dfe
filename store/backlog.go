package store

import (
	"database/sql"
	"fmt"
	"time"
)

// Backlog is how much waits.
type Backlog struct {
	Incoming int       // messages not handled yet
	Since    time.Time // when the oldest of them came
	Outgoing int       // messages not sent yet
	Herds    int
}

// Backlog counts what waits.
func (tx *Tx) Backlog() (b Backlog, err error) {
	var since sql.NullInt64
	_, err = tx.one("SELECT (SELECT count(*) FROM incoming WHERE handled = 0), (SELECT min(at) FROM incoming WHERE handled = 0),"+
		" (SELECT count(*) FROM outgoing WHERE state = 'pending') + (SELECT count(*) FROM outgoing WHERE state = 'sending'),"+
		" (SELECT count(*) FROM herd)", nil, &b.Incoming, &since, &b.Outgoing, &b.Herds)
	if err != nil {
		return Backlog{}, fmt.Errorf("backlog: %w", err)
	}
	b.Since = instant(since.Int64)
	return b, nil
}
