package model

import (
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func penSetting(name string, areaM2 float64, inUse bool) Setting {
	thing := &Thing{Name: name, InUse: &inUse}
	if areaM2 > 0 {
		thing.AreaM2 = Float(areaM2)
	}
	return Setting{Key: SetPen, Thing: thing}
}

func TestMoveDueAsksForWhatItLacks(t *testing.T) {
	_, err := newPenDiary(t, "America/Chicago").herd().MoveDue(penDay(t, "2026-06-01"))
	requireMissing(t, err, "pigs")
	_, err = fourPigs(t).herd().MoveDue(penDay(t, "2026-06-01"))
	requireMissing(t, err, "pen")
}

func TestMoveDueOfAPenOfUnknownSize(t *testing.T) {
	d := fourPigs(t).add("2026-05-10 09:00", Move{Pen: "orchard"})
	due, err := d.herd().MoveDue(penDay(t, "2026-05-12"))
	require.NoError(t, err)
	require.Equal(t, penDay(t, "2026-05-24"), due.On)
	require.Equal(t, "orchard", due.Pen.Name)
	require.Len(t, due.Pigs, 4)
	reasonWith(t, due.Reasons, MoveDefaultDays)
}

func TestMoveDueBySizeAndWeight(t *testing.T) {
	// 400 m2 bear 145 pig-days at 75 kg; four pigs near 75 kg use 4 a day.
	d := newPenDiary(t, "America/Chicago").add("2026-06-01 09:00",
		Arrive{Count: 4, WeightKg: Float(60)}, penSetting("orchard", 400, true), penSetting("hill", 400, false))
	h := d.herd()
	due, err := h.MoveDue(penDay(t, "2026-06-10"))
	require.NoError(t, err)
	require.InDelta(t, 36, float64(due.On-penDay(t, "2026-06-01")), 4)
	load := reasonWith(t, due.Reasons, MoveLoad)
	require.InDelta(t, 145, load.Q[1].Value, 0.5)
	require.InDelta(t, 30, load.Q[0].Value, 8)
	require.Equal(t, []string{"hill"}, reasonWith(t, due.Reasons, MoveRested).Names)

	later, err := h.MoveDue(penDay(t, "2026-07-30"))
	require.NoError(t, err)
	require.Equal(t, due.On, later.On, "an overdue day stays where it was")
}

func TestAnEarlierStayCountsUntilThePenHasRested(t *testing.T) {
	start := func() *penDiary {
		return newPenDiary(t, "America/Chicago").add("2026-06-01 09:00",
			Arrive{Count: 6, WeightKg: Float(60)}, penSetting("orchard", 600, true), penSetting("hill", 600, false)).
			add("2026-06-20 09:00", Move{Pen: "hill"})
	}
	stay := func(d *penDiary, back string) int {
		due, err := d.add(back+" 09:00", Move{Pen: "orchard"}).herd().MoveDue(penDay(t, back))
		require.NoError(t, err)
		require.Equal(t, "orchard", due.Pen.Name)
		return int(due.On - penDay(t, back))
	}
	soon, rested := stay(start(), "2026-07-01"), stay(start(), "2026-08-20")
	require.Less(t, soon, rested, "though the pigs are heavier then")
}

func TestMoveDueOfTheFirstOfSeveralPens(t *testing.T) {
	d := fourPigs(t).add("2026-05-10 09:00", penSetting("orchard", 2000, true), penSetting("hill", 60, false)).
		add("2026-05-11 09:00", Move{Pen: "hill", Animals: []string{"Moss", "Fern"}})
	due, err := d.herd().MoveDue(penDay(t, "2026-05-12"))
	require.NoError(t, err)
	require.Equal(t, "hill", due.Pen.Name)
	require.Len(t, due.Pigs, 2)
}

func TestMoreGroundNeverMeansAnEarlierMove(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		less := rapid.Float64Range(20, 3000).Draw(r, "less")
		more := rapid.Float64Range(less, 3000).Draw(r, "more")
		on := func(area float64) Day {
			due, err := fourPigs(t).add("2026-05-10 09:00", penSetting("orchard", area, true)).herd().MoveDue(penDay(t, "2026-05-12"))
			require.NoError(r, err)
			return due.On
		}
		require.LessOrEqual(r, on(less), on(more))
	})
}

func TestLandRefusesNonsense(t *testing.T) {
	var out *OutOfRange
	_, err := PenPigDays(0)
	require.ErrorAs(t, err, &out)
	for _, c := range [][3]float64{{-1, 16, 100}, {300, 101, 100}, {300, 16, -1}} {
		_, err = NitrogenBalance(c[0], c[1], c[2])
		require.ErrorAs(t, err, &out)
	}
	_, err = Nitrogen{ExcretedKg: 5}.KgHa(4, 0)
	require.ErrorAs(t, err, &out)
}

func TestNitrogenIsNeitherMadeNorLost(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		n, err := NitrogenBalance(rapid.Float64Range(0, 5000).Draw(r, "feed"), rapid.Float64Range(0, 30).Draw(r, "protein"),
			rapid.Float64Range(0, 2000).Draw(r, "gain"))
		require.NoError(r, err)
		require.InDelta(r, n.FedKg, n.KeptKg+n.ExcretedKg, 1e-9)
		require.GreaterOrEqual(r, n.ExcretedKg, 0.0)
	})
}
