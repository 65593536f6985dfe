package model

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// Barrels found empty in one round speak of what the pigs drink; one of them, or
// all of them on different days, does not.
func TestBarrelsFoundEmptyTogetherTeachTheDraw(t *testing.T) {
	empty := func(name string) Water { return Water{Barrel: name, Fraction: Float(0), Seen: true} }
	seen := fourPigs(t).add("2026-05-16 09:00", Water{Full: true})
	before, err := seen.herd().WaterLeft(seen.moment("2026-05-16 09:00"))
	require.NoError(t, err)
	tests := []struct {
		name   string
		say    func(d *penDiary)
		learns bool
	}{
		{"one by one in a round", func(d *penDiary) {
			d.add("2026-05-25 09:00", empty("north")).add("2026-05-25 09:05", empty("south"))
		}, true},
		{"in one word", func(d *penDiary) {
			d.add("2026-05-25 09:05", Water{Fraction: Float(0), Seen: true})
		}, true},
		{"one only", func(d *penDiary) {
			d.add("2026-05-25 09:05", empty("north"))
		}, false},
		{"a fill in between", func(d *penDiary) {
			d.add("2026-05-25 09:00", empty("north")).add("2026-05-25 09:02", Water{Barrel: "north", Full: true}).
				add("2026-05-25 09:05", empty("south"))
		}, false},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			d := seen.fork()
			tt.say(d)
			d.add("2026-05-25 10:00", Water{Full: true})
			after, err := d.herd().WaterLeft(d.moment("2026-05-25 10:00"))
			require.NoError(t, err)
			// Nine days of growth account for less than a quarter.
			require.Equal(t, tt.learns, after.UseLD.Mid > 1.35*before.UseLD.Mid, "%.0f l after %.0f l", after.UseLD.Mid, before.UseLD.Mid)
		})
	}
}

func TestFilledBarrelsLastAsTheReplyToTheFillSays(t *testing.T) {
	d := fourPigs(t).add("2026-05-16 09:00", Water{Full: true})
	at := d.moment("2026-05-20 09:00")
	foreseen, err := d.herd().WaterFilled(at)
	require.NoError(t, err)
	now, err := d.herd().WaterLeft(at)
	require.NoError(t, err)
	require.True(t, foreseen.EdgeAt.After(now.EdgeAt))
	d.add("2026-05-20 09:00", Water{Full: true})
	told, err := d.herd().WaterLeft(at)
	require.NoError(t, err)
	require.InDelta(t, told.EdgeDays, foreseen.EdgeDays, 0.01)

	_, err = newPenDiary(t, "America/Chicago").herd().WaterFilled(at)
	var missing *Missing
	require.ErrorAs(t, err, &missing)
}

// That days go by of which nothing is told moves the cautious edge of water little.
func TestTheEdgeStaysWhileNothingIsTold(t *testing.T) {
	d := fourPigs(t).add("2026-07-18 09:00", Water{Full: true})
	h := d.herd()
	first, err := h.WaterLeft(d.moment("2026-07-18 09:00"))
	require.NoError(t, err)
	for _, day := range []string{"2026-07-19 09:00", "2026-07-20 09:00", "2026-07-21 09:00"} {
		w, err := h.WaterLeft(d.moment(day))
		require.NoError(t, err)
		require.InDelta(t, 0, w.EdgeAt.Sub(first.EdgeAt).Hours(), 12, day)
	}
}
