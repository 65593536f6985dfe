package store

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

// A file that SQLite itself keeps small stands for a full disk everywhere; when
// there is room again the next write goes well.
func TestNoRoomAndRoomAgain(t *testing.T) {
	s := newStore(t)
	var f farm
	write(t, s, func(tx *Tx) { f = newFarm(t, tx) })
	limit := func(pages string) {
		c := <-s.writer
		_, err := c.conn.ExecContext(t.Context(), "PRAGMA max_page_count = "+pages)
		s.writer <- c
		require.NoError(t, err)
	}
	limit("120")
	var err error
	var kept int64
	for range 2000 {
		e := f.envelope(model.Note{What: strings.Repeat("it rained ", 100)})
		if err = s.Write(t.Context(), func(tx *Tx) error { return tx.Append(&e) }); err != nil {
			break
		}
		kept = e.Seq
	}
	requireProblem(t, err, Full, s.path)
	limit("1000000")
	e := f.envelope(model.Note{What: "dry again"})
	write(t, s, func(tx *Tx) { require.NoError(t, tx.Append(&e)) })
	require.Equal(t, kept+1, e.Seq)
}
