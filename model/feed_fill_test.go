package model

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestFeedFillsAgainstWhatWasExpected(t *testing.T) {
	s := tellHerd(t).tell("2026-06-06 08:00", fourEaters(), feederKg("barrel", 130))
	s.tell("2026-06-06 09:00", Refill{FeedKg: Float(130), Full: true, FromEmpty: true})
	week := 7 * fourAt60(t)
	s.tell("2026-06-13 09:00", Refill{FeedKg: Float(week), Full: true})
	s.tell("2026-06-16 09:00", Refill{FeedKg: Float(20)})
	s.tell("2026-06-20 09:00", Refill{FeedKg: Float(week - 20), Full: true})
	s.tell("2026-06-27 09:00", Refill{FeedKg: Float(0.4 * week), Full: true})
	fills := s.fit(60).fills
	require.Len(t, fills, 3)
	require.InDelta(t, week, fills[0].Expected.Mid, 1)
	require.InDelta(t, week-20, fills[1].Expected.Mid, 3)
	require.False(t, fills[0].Strange)
	require.False(t, fills[1].Strange)
	require.True(t, fills[2].Strange, "not half of what was expected")
	require.Less(t, fills[2].TookKg, fills[2].Expected.Low)
	require.Equal(t, s.records[len(s.records)-1].ID, fills[2].Record)
	require.Empty(t, tellHerd(t).herd().FeedFills())
}

// Whatever is told, in whatever order and however absurd, figures stay figures.
func TestFeedFiguresBearAnyStory(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		s := tellHerd(t).tell("2026-06-06 08:00", fourEaters())
		names := []string{"", "left", "right", "crate"}
		if rapid.Bool().Draw(rt, "set up") {
			s.tell("2026-06-06 08:00", feederKg("left", 130), Setting{Key: SetFeeder, Thing: &Thing{Name: "right", CapacityL: Float(100)}})
		}
		at := s.moment("2026-06-06 09:00")
		kg := func() *float64 { return Float(rapid.Float64Range(0.1, 900).Draw(rt, "kg")) }
		for range rapid.IntRange(1, 25).Draw(rt, "records") {
			at = at.AddDate(0, 0, rapid.IntRange(0, 9).Draw(rt, "days"))
			day := at.Format("2006-01-02 15:04")
			name := rapid.SampledFrom(names).Draw(rt, "feeder")
			fraction := Float(rapid.Float64Range(0, 1).Draw(rt, "fraction"))
			switch rapid.IntRange(0, 10).Draw(rt, "what") {
			case 0:
				s.tell(day, Refill{Feeder: name, FeedKg: kg()})
			case 1:
				s.tell(day, Refill{Feeder: name, FeedKg: kg(), Full: true})
			case 2:
				s.tell(day, Refill{Feeder: name, FeedKg: kg(), Full: true, FromEmpty: true})
			case 3:
				s.tell(day, Refill{Feeder: name, Full: true})
			case 4:
				s.tell(day, Refill{Feeder: name, FeedKg: kg(), Fraction: fraction})
			case 5:
				s.tell(day, FeedLevel{Feeder: name, Fraction: fraction})
			case 6:
				s.tell(day, FeedLevel{Feeder: name, Fraction: Float(0)})
			case 7:
				s.tell(day, FeedLevel{Feeder: name, FeedKg: kg()})
			case 8:
				s.tell(day, FeedLevel{Feeder: name, Days: Float(rapid.Float64Range(0, 40).Draw(rt, "left"))})
			case 9:
				s.tell(day, Alarm{What: AlarmNoFeed})
			case 10:
				s.tell(day, Setting{Key: SetFeeder, Thing: &Thing{Name: name, Gone: true}})
			}
		}
		left, err := s.herd().FeedLeft(at)
		if err != nil {
			var missing *Missing
			require.ErrorAs(rt, err, &missing)
			return
		}
		number := func(vs ...float64) {
			for _, v := range vs {
				require.False(rt, math.IsNaN(v) || math.IsInf(v, 0))
				require.GreaterOrEqual(rt, v, 0.0)
			}
		}
		var use float64
		for _, fl := range left.Feeders {
			number(fl.LevelKg.Low, fl.LevelKg.Mid, fl.LevelKg.High, fl.Capacity.Mid, fl.Days, fl.LowDays, fl.EdgeDays)
			require.LessOrEqual(rt, fl.EdgeDays, fl.Days)
			use += fl.UseKgD.Mid
		}
		require.InEpsilon(rt, left.UseKgD.Mid, use, 1e-9)
		plan, err := s.herd().RefillPlan(at, at.AddDate(0, 0, 7))
		require.NoError(rt, err)
		for _, fd := range plan.Feeders {
			number(fd.PourKg, fd.RoomKg)
			require.LessOrEqual(rt, fd.PourKg, fd.RoomKg)
		}
	})
}

func TestFeedReasonCodesAreOfOneKind(t *testing.T) {
	seen := map[string]bool{}
	for _, code := range FeedReasonCodes() {
		require.Regexp(t, `^[a-z]+(_[a-z]+)+$`, code)
		require.False(t, seen[code], code)
		seen[code] = true
	}
}
