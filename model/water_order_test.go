package model

import (
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// aWateredSummer has a bit of everything that water, wallow, worming, moves and
// withdrawal read.
func aWateredSummer(t testing.TB) *penDiary {
	return fourPigs(t).
		add("2026-05-03 08:00", wallowSetting(4, 0.25), penSetting("orchard", 900, true), penSetting("hill", 900, false)).
		add("2026-05-09 09:00", Water{Full: true}, WallowFill{}).
		add("2026-05-12 07:00", Weather{HighC: Float(29), LowC: Float(16), RhPct: Float(55)}).
		add("2026-05-16 09:00", Water{Barrel: "north", Fraction: Float(0.5), Seen: true}, Water{Barrel: "south", Fraction: Float(0.75), Seen: true}).
		add("2026-05-16 09:10", Water{Full: true}, WallowFill{Litres: Float(350)}).
		add("2026-05-20 18:00", Treat{Treatment{Animals: []string{"Moss"}, Product: "shot", WithdrawalDays: Int(14)}}).
		add("2026-05-23 09:00", Water{Barrel: "north", Litres: Float(120)}, Move{Pen: "hill"}).
		add("2026-05-30 09:00", Water{Full: true, Litres: Float(150)}, Weigh{Animals: []string{"Fern"}, WeightKg: 39, By: ByScale}).
		add("2026-06-06 09:00", wormed(Int(5), All), WallowFill{Dry: true}, Booked{Day: penDay(t, "2026-09-15")})
}

// penFigures is every figure of this part of the model at one moment.
func penFigures(t require.TestingT, h *Herd, d *penDiary) []any {
	at := d.moment("2026-06-08 12:00")
	water, err := h.WaterLeft(at)
	require.NoError(t, err)
	wallow, err := h.WallowLeft(at)
	require.NoError(t, err)
	heat, err := h.heat(DayOf(at), h.Air(DayOf(at)), HeatHighTold)
	require.NoError(t, err)
	worm, err := h.WormingDue(DayOf(at))
	require.NoError(t, err)
	move, err := h.MoveDue(DayOf(at))
	require.NoError(t, err)
	booking, err := h.BookingDue(DayOf(at))
	require.NoError(t, err)
	out := []any{
		water, wallow, heat, worm.On, worm.Blocked, worm.Reasons, move.On, move.Pen.Name, move.Reasons,
		booking.Window, booking.On, booking.Booked,
	}
	for _, p := range h.Withdrawal(at) {
		out = append(out, p.Animal.Name, p.ClearAt, p.Known, p.Reasons)
	}
	return out
}

func TestPenFiguresDoNotDependOnTheOrderOfRecords(t *testing.T) {
	d := aWateredSummer(t)
	want := penFigures(t, d.herd(), d)
	rapid.Check(t, func(r *rapid.T) {
		shuffled := rapid.Permutation(d.records).Draw(r, "records")
		require.Equal(r, want, penFigures(r, Fold(shuffled), d))
	})
}

func TestPenFiguresAreRestoredWhenARecordIsTakenBack(t *testing.T) {
	d := aWateredSummer(t)
	want := penFigures(t, d.herd(), d)
	for _, f := range []Fact{
		Water{Barrel: "north", Fraction: Float(0), Seen: true},
		WallowFill{Litres: Float(900)},
		Weather{HighC: Float(38)},
		wormed(nil, "Fern"),
		Move{Pen: "orchard"},
		Booked{Day: penDay(t, "2026-08-01")},
	} {
		more := d.fork().add("2026-06-07 09:00", f)
		require.NotEqual(t, want, penFigures(t, more.herd(), more), "%s must matter", f.Kind())
		more.add("2026-06-07 09:30", Void{Record: more.records[len(more.records)-1].ID, Why: "undo"})
		require.Equal(t, want, penFigures(t, more.herd(), more), "%s", f.Kind())
	}
}

func BenchmarkPenFigures(b *testing.B) {
	d := aWateredSummer(b)
	h := d.herd()
	penFigures(b, h, d)
	for b.Loop() {
		penFigures(b, h, d)
	}
}
