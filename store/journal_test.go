package store

import (
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

func TestJournalGivesBackWhatWasAppended(t *testing.T) {
	s := newStore(t)
	var f farm
	var first, second Envelope
	write(t, s, func(tx *Tx) {
		f = newFarm(t, tx)
		first = f.envelope(model.Weigh{Animals: []string{"Dot"}, GirthCm: 96.5})
		require.NoError(t, tx.Append(&first))
		second = f.envelope(model.Refill{Feeder: "hopper", FeedKg: model.Float(81.65), Full: true})
		second.Zone, second.Stated = "Europe/London", true
		require.NoError(t, tx.Append(&second))
	})
	require.Equal(t, "r1", first.ID)
	require.Equal(t, "America/Chicago", first.Zone)
	require.Equal(t, "2026-05-16T07:00:00-05:00", first.At.Format("2006-01-02T15:04:05Z07:00"))
	read(t, s, func(tx *Tx) {
		all, err := tx.Journal(f.herd)
		require.NoError(t, err)
		require.Equal(t, []Envelope{first, second}, all)
		later, err := tx.JournalSince(f.herd, 1)
		require.NoError(t, err)
		require.Equal(t, []Envelope{second}, later)
		row, err := tx.Herd(f.herd)
		require.NoError(t, err)
		require.Equal(t, int64(2), row.Seq)
	})
}
