package store

import (
	"errors"
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

// A part that fails is undone by itself, whatever it did; what goes before and
// after it stays.
func TestTry(t *testing.T) {
	s := newStore(t)
	var f farm
	write(t, s, func(tx *Tx) { f = newFarm(t, tx) })
	heard := 0
	s.OnQueued(func(w []Waiting) { heard += len(w) })
	note := func(tx *Tx, what string) error {
		e := f.envelope(model.Note{What: what})
		if err := tx.Append(&e); err != nil {
			return err
		}
		_, err := tx.Queue(&Outgoing{Key: what, Herd: f.herd, Chat: f.chat, Kind: "reply", Text: what})
		return err
	}
	no := errors.New("no")
	write(t, s, func(tx *Tx) {
		for _, what := range []string{"first", "second", "third"} {
			fault, err := tx.Try(func() error {
				require.NoError(t, note(tx, what))
				if what == "second" {
					return no
				}
				return nil
			})
			require.NoError(t, err)
			if what == "second" {
				require.Equal(t, no, fault)
				continue
			}
			require.NoError(t, fault)
		}
		fault, err := tx.Try(func() error {
			inner, err := tx.Try(func() error { return errors.Join(note(tx, "inner"), no) })
			require.Error(t, inner)
			require.NoError(t, err)
			return note(tx, "outer")
		})
		require.NoError(t, fault)
		require.NoError(t, err)
		require.Error(t, note(tx, ""), "a statement that fails")
	})
	require.Equal(t, 3, heard)
	read(t, s, func(tx *Tx) {
		all, err := tx.Journal(f.herd)
		require.NoError(t, err)
		var said []string
		for _, e := range all {
			said = append(said, e.Fact.(model.Note).What)
		}
		require.Equal(t, []string{"first", "third", "outer"}, said)
		for what, there := range map[string]bool{"first": true, "second": false, "third": true, "inner": false, "outer": true} {
			_, ok, err := tx.OutgoingByKey(what)
			require.NoError(t, err)
			require.Equal(t, there, ok, what)
		}
	})
}
