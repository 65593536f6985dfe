package model

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// A herd that is known to spill learns no appetite from the feed that no pig ate.
func TestSpilledFeedIsNotEaten(t *testing.T) {
	season := func(spill ...Fact) *toldHerd {
		s := tellHerd(t).tell("2026-06-06 08:00", fourEaters(), feederKg("drum", 130), Refill{FeedKg: Float(130), Full: true})
		s.tell("2026-06-13 08:00", Refill{FeedKg: Float(62), Full: true})
		s.tell("2026-06-18 18:00", spill...)
		return s.tell("2026-06-20 08:00", Refill{FeedKg: Float(105), Full: true}) // some 40 kg more than four pigs eat
	}
	appetite := func(s *toldHerd) Estimate {
		return believed(t, s.fit(60), s.moment("2026-06-20 09:00"), placeAppetite)
	}
	clean := appetite(tellHerd(t).tell("2026-06-06 08:00", fourEaters(), feederKg("drum", 130), Refill{FeedKg: Float(130), Full: true}).
		tell("2026-06-13 08:00", Refill{FeedKg: Float(62), Full: true}).tell("2026-06-20 08:00", Refill{FeedKg: Float(65), Full: true}))
	untold := appetite(season())
	told := appetite(season(FeedLevel{Spilled: true, SpilledKg: Float(40)}))
	unknown := appetite(season(FeedLevel{Spilled: true}))
	require.Greater(t, untold.Mean-clean.Mean, 0.03, "without a word it looks like appetite")
	require.InDelta(t, clean.Mean, told.Mean, 0.02)
	require.InDelta(t, clean.Mean, unknown.Mean, 0.04)
	require.Greater(t, unknown.SD, told.SD, "what was lost is not known: the span teaches less")

	at := tellHerd(t).moment("2026-06-18 19:00")
	before, err := season().herd().FeedLeft(at)
	require.NoError(t, err)
	after, err := season(FeedLevel{Spilled: true, SpilledKg: Float(40)}).herd().FeedLeft(at)
	require.NoError(t, err)
	require.InDelta(t, before.FeedKg.Mid-40, after.FeedKg.Mid, 1)
	vague, err := season(FeedLevel{Spilled: true}).herd().FeedLeft(at)
	require.NoError(t, err)
	require.Less(t, vague.EdgeDays, after.EdgeDays+before.EdgeDays)
	require.Less(t, vague.FeedKg.Low, after.FeedKg.Low)
}

func TestSpillsAreCheckedByThemselves(t *testing.T) {
	for _, bad := range []FeedLevel{
		{Spilled: true, Fraction: Float(0.5)}, {Spilled: true, SpilledKg: Float(0)}, {SpilledKg: Float(3)}, {SpilledKg: Float(3), FeedKg: Float(4)},
	} {
		require.Error(t, bad.Check(), "%+v", bad)
	}
	require.NoError(t, FeedLevel{Spilled: true}.Check())
	require.NoError(t, FeedLevel{Spilled: true, SpilledKg: Float(9)}.Check())
	// A spill of more than there was leaves an empty feeder, not less.
	s := tellHerd(t).tell("2026-06-06 08:00", fourEaters(), feederKg("drum", 130), Refill{FeedKg: Float(30)}).
		tell("2026-06-06 12:00", FeedLevel{Spilled: true, SpilledKg: Float(500)})
	left, err := s.herd().FeedLeft(s.moment("2026-06-06 13:00"))
	require.NoError(t, err)
	require.InDelta(t, 0, left.FeedKg.Mid, 1)
	require.GreaterOrEqual(t, left.FeedKg.Low, 0.0)
}
