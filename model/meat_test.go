package model

import (
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestYieldByThePublishedShares(t *testing.T) {
	s := tellHerd(t).tell("2026-06-06 08:00", fourEaters())
	s.tell("2026-06-06 09:00", Weigh{Animals: []string{All}, WeightKg: 113.4, By: ByScale})
	y, err := s.herd().Yield(DateDay(2026, 6, 6))
	require.NoError(t, err)
	require.Equal(t, 4, y.Pigs)
	require.InDelta(t, 0.72, y.HangingKg.Mid/y.LiveKg.Mid, 1e-9)
	require.InDelta(t, 0.65, y.RetailKg.Mid/y.HangingKg.Mid, 1e-9)
	for _, i := range []Interval{y.LiveKg, y.HangingKg, y.RetailKg} {
		require.Less(t, i.Low, i.Mid)
		require.Less(t, i.Mid, i.High)
	}
	// Going from live to home adds doubt, it never takes any.
	width := func(i Interval) float64 { return (i.High - i.Low) / i.Mid }
	require.Less(t, width(y.LiveKg), width(y.HangingKg))
	require.Less(t, width(y.HangingKg), width(y.RetailKg))
	require.Equal(t, []string{ReasonYieldDressing, ReasonYieldTakeHome}, codesOf(y.Reasons))
}

func TestYieldLearnsFromTheButcher(t *testing.T) {
	s := tellHerd(t).tell("2026-06-06 08:00", fourEaters(), Arrive{Count: 2, WeightKg: Float(60)})
	s.tell("2026-08-30 08:00", Weigh{Animals: []string{"Tank"}, WeightKg: 120, By: ByScale}, Weigh{Animals: []string{"Dot"}, WeightKg: 110, By: ByScale})
	s.tell("2026-08-31 18:00", Gone{Animals: []string{"Tank"}, How: Butchered}, Gone{Animals: []string{"Dot"}, How: Butchered})
	s.tell("2026-09-02 18:00", Gone{Animals: []string{"Tank"}, How: Butchered, HangingKg: Float(91)}, Gone{Animals: []string{"Dot"}, How: Butchered, HangingKg: Float(83.5)})
	s.tell("2026-09-05 18:00", Gone{Animals: []string{"Tank", "Dot"}, How: Butchered, PackagedKg: Float(63)})
	h := s.herd()
	dressing, n := h.learnedDressing()
	require.Equal(t, 2, n)
	require.Greater(t, dressing.Mean, 0.725, "these pigs dress 76 %")
	require.Less(t, dressing.Mean, 0.76)
	require.Less(t, dressing.SD, dressingSD)
	takeHome, n := h.learnedTakeHome()
	require.Equal(t, 2, n)
	require.Greater(t, takeHome.Mean, 0.68, "and 72 % of it came home")
	y, err := h.Yield(DateDay(2026, 9, 6))
	require.NoError(t, err)
	require.Equal(t, 4, y.Pigs)
	require.Equal(t, []string{ReasonYieldOwnDressing, ReasonYieldOwnTakeHome}, codesOf(y.Reasons))
}

func TestYieldPassesOverSlips(t *testing.T) {
	s := tellHerd(t).tell("2026-06-06 08:00", fourEaters())
	s.tell("2026-08-31 18:00", Gone{Animals: []string{"Tank"}, How: Butchered, HangingKg: Float(400)}) // pounds for kilograms
	_, n := s.herd().learnedDressing()
	require.Zero(t, n)
}

func TestTotalHangingWeightIsShared(t *testing.T) {
	s := tellHerd(t).tell("2026-06-06 08:00", fourEaters())
	s.tell("2026-08-31 18:00", Gone{Animals: []string{All}, How: Butchered, HangingKg: Float(320)})
	h := s.herd()
	pigs, each, ok := h.hungEach(h.Gones[0])
	require.True(t, ok)
	require.Len(t, pigs, 4)
	require.InDelta(t, 80, each, 1e-9)
}

func TestYieldAsksForWhatItLacks(t *testing.T) {
	var missing *Missing
	_, err := tellHerd(t).herd().Yield(DateDay(2026, 6, 6))
	require.ErrorAs(t, err, &missing)
	require.Equal(t, "pigs", missing.What)
	_, err = tellHerd(t).tell("2026-06-06 08:00", Arrive{Count: 1}).herd().Yield(DateDay(2026, 6, 6))
	require.ErrorAs(t, err, &missing)
	require.Equal(t, "weight", missing.What)
}

func TestEstimateLearnsBetweenWhatItKnewAndSaw(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		e := Estimate{rapid.Float64Range(-10, 10).Draw(t, "mean"), rapid.Float64Range(0.01, 5).Draw(t, "sd")}
		seen := rapid.Float64Range(-10, 10).Draw(t, "seen")
		l := e.learn(seen, rapid.Float64Range(0.01, 5).Draw(t, "error"))
		require.LessOrEqual(t, l.SD, e.SD)
		require.GreaterOrEqual(t, l.Mean, min(e.Mean, seen)-1e-12)
		require.LessOrEqual(t, l.Mean, max(e.Mean, seen)+1e-12)
	})
}
