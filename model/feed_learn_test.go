package model

import (
	"math"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

// The use of four pigs of 60 kg, by the published equations.
func fourAt60(t testing.TB) float64 {
	one, err := FeedUseKgD(60, "", 0)
	require.NoError(t, err)
	return 4 * one
}

func TestSpanBetweenFullMarksIsEatenExactly(t *testing.T) {
	s := tellHerd(t).tell("2026-06-06 08:00", fourEaters(), feederKg("barrel", 130))
	day := 6
	for range 3 {
		s.tell(time.Date(2026, 6, day, 9, 0, 0, 0, time.UTC).Format("2006-01-02 15:04"), Refill{FeedKg: Float(70), Full: true})
		day += 7
	}
	f := s.fit(60)
	require.NoError(t, f.err)
	// Right after each full mark the feeder holds what it can hold: 70 kg went in
	// and 70 kg had been eaten.
	for i, step := range f.steps {
		w := f.levelUnder(0, 1)
		short, variance := step.g.along(w)
		require.InDelta(t, 0, short, 1, "mark %d", i)
		require.LessOrEqual(t, math.Sqrt(variance), brimSD*130*1.05)
	}
	// Carried to just before the next fill, 70 kg are gone.
	before := believed(t, f, s.moment("2026-06-20 08:59"), placeLevel(0))
	capacity := believed(t, f, s.moment("2026-06-20 08:59"), placeCapacity(0))
	require.InDelta(t, 70, capacity.Mean-before.Mean, 4)
}

func TestAppetiteIsLearnedFromFullMarks(t *testing.T) {
	for _, truth := range []float64{0.75, 0.9, 1, 1.1, 1.3} {
		s := tellHerd(t).tell("2026-06-06 08:00", fourEaters(), feederKg("barrel", 130))
		s.tell("2026-06-06 09:00", Refill{FeedKg: Float(130), Full: true, FromEmpty: true})
		at := s.moment("2026-06-06 09:00")
		previous := appetiteSD
		for range 12 {
			at = at.AddDate(0, 0, 7)
			s.tell(at.Format("2006-01-02 15:04"), Refill{FeedKg: Float(7 * truth * fourAt60(t)), Full: true})
			f := s.fit(60)
			e := believed(t, f, at, placeAppetite)
			require.Less(t, e.SD, previous, "every closed span teaches")
			previous = e.SD
		}
		e := believed(t, s.fit(60), at, placeAppetite)
		require.InDelta(t, math.Log(truth), e.Mean, 0.05, "truth %v", truth)
		require.Less(t, e.SD, 0.06)
	}
}

func TestFillFromEmptyTeachesCapacity(t *testing.T) {
	s := tellHerd(t).tell("2026-06-06 08:00", fourEaters(),
		Setting{Key: SetFeeder, Thing: &Thing{Name: "barrel", CapacityL: Float(208.2)}})
	s.tell("2026-06-06 09:00", Refill{FeedKg: Float(142), Full: true, FromEmpty: true})
	c := believed(t, s.fit(60), s.moment("2026-06-06 09:00"), placeCapacity(0))
	require.InDelta(t, 142, c.Mean, 3)
	require.Less(t, c.SD, 4.0)
}

func TestPourBeyondTheRoomIsNoError(t *testing.T) {
	for _, c := range []struct {
		name string
		kg   float64
		odd  int
	}{{"a little", 25, 0}, {"far", 60, 1}} { // some 16 kg can have been eaten
		t.Run(c.name, func(t *testing.T) {
			s := tellHerd(t).tell("2026-06-06 08:00", fourEaters(), feederKg("barrel", 100))
			s.tell("2026-06-06 09:00", Refill{FeedKg: Float(95), Full: true, FromEmpty: true})
			first := believed(t, s.fit(60), s.moment("2026-06-06 09:00"), placeCapacity(0))
			s.tell("2026-06-08 09:00", Refill{FeedKg: Float(c.kg)})
			f := s.fit(60)
			require.NoError(t, f.err)
			at := s.moment("2026-06-08 09:00")
			level, capacity := believed(t, f, at, placeLevel(0)), believed(t, f, at, placeCapacity(0))
			require.Less(t, level.Mean, capacity.Mean+2*brimSD*100)
			require.Greater(t, capacity.Mean, first.Mean, "the feeder holds more than was thought")
			require.Greater(t, believed(t, f, at, placeAppetite).Mean, 0.0, "and the pigs had eaten more")
			require.Len(t, f.odd, c.odd)
		})
	}
}

func TestEmptySeenIsABound(t *testing.T) {
	full := func() *toldHerd {
		s := tellHerd(t).tell("2026-06-06 08:00", fourEaters(), feederKg("barrel", 100))
		return s.tell("2026-06-06 09:00", Refill{FeedKg: Float(100), Full: true, FromEmpty: true})
	}
	use := fourAt60(t)
	lasts := 100 / use
	t.Run("long after it ran dry nothing is learned", func(t *testing.T) {
		s := full()
		at := s.moment("2026-06-06 09:00").Add(time.Duration(2 * lasts * 24 * float64(time.Hour)))
		s.tell(at.Format("2006-01-02 15:04"), FeedLevel{Fraction: Float(0)})
		e := believed(t, s.fit(60), at, placeAppetite)
		require.InDelta(t, 0, e.Mean, 0.02)
		require.InDelta(t, appetiteSD, e.SD, 0.01)
		level := believed(t, s.fit(60), at, placeLevel(0))
		require.InDelta(t, 0, level.Mean, 0.01)
		require.LessOrEqual(t, level.SD, emptySD*110)
	})
	t.Run("earlier than it should be, the pigs eat more", func(t *testing.T) {
		s := full()
		at := s.moment("2026-06-06 09:00").Add(time.Duration(0.85 * lasts * 24 * float64(time.Hour)))
		s.tell(at.Format("2006-01-02 15:04"), FeedLevel{Fraction: Float(0)})
		e := believed(t, s.fit(60), at, placeAppetite)
		require.Greater(t, e.Mean, 0.05)
	})
	t.Run("feed still seen when it should be gone, the pigs eat less", func(t *testing.T) {
		s := full()
		at := s.moment("2026-06-06 09:00").Add(time.Duration(1.1 * lasts * 24 * float64(time.Hour)))
		s.tell(at.Format("2006-01-02 15:04"), FeedLevel{Fraction: Float(0.25)})
		f := s.fit(60)
		require.Less(t, believed(t, f, at, placeAppetite).Mean, -0.05)
		require.InDelta(t, 25, believed(t, f, at, placeLevel(0)).Mean, 10)
	})
}

func TestStrangeSpanIsLeftOutAndSaidSo(t *testing.T) {
	s := tellHerd(t).tell("2026-06-06 08:00", fourEaters(), feederKg("barrel", 130))
	at := s.moment("2026-06-06 09:00")
	s.tell(at.Format("2006-01-02 15:04"), Refill{FeedKg: Float(130), Full: true, FromEmpty: true})
	for range 8 {
		at = at.AddDate(0, 0, 7)
		s.tell(at.Format("2006-01-02 15:04"), Refill{FeedKg: Float(7 * fourAt60(t)), Full: true})
	}
	before := believed(t, s.fit(60), at, placeAppetite)
	at = at.AddDate(0, 0, 7)
	s.tell(at.Format("2006-01-02 15:04"), Refill{FeedKg: Float(15 * fourAt60(t)), Full: true}) // twice as much went in
	f := s.fit(60)
	after := believed(t, f, at, placeAppetite)
	require.InDelta(t, before.Mean, after.Mean, 0.06)
	require.Len(t, f.odd, 1)
	left, err := f.left(at)
	require.NoError(t, err)
	require.Contains(t, codesOf(left.Reasons), ReasonFeedLeftOut)
	require.InDelta(t, 130, left.FeedKg.Mid, 8, "the feeder is full all the same")
}

func TestSickPigsTeachLess(t *testing.T) {
	run := func(sick bool) Estimate {
		s := tellHerd(t).tell("2026-06-06 08:00", fourEaters(), feederKg("barrel", 130))
		s.tell("2026-06-06 09:00", Refill{FeedKg: Float(130), Full: true, FromEmpty: true})
		if sick {
			s.tell("2026-06-07 09:00", Sick{Animals: []string{"Dot", "Tank"}, Note: "off feed"})
			s.tell("2026-06-13 08:00", Sick{Animals: []string{All}, Well: true})
		}
		s.tell("2026-06-13 09:00", Refill{FeedKg: Float(7 * 0.8 * fourAt60(t)), Full: true})
		return believed(t, s.fit(60), s.moment("2026-06-13 09:00"), placeAppetite)
	}
	well, ill := run(false), run(true)
	require.Less(t, well.Mean, ill.Mean)
	require.Less(t, well.SD, ill.SD)
}

func TestSickPigsAreNamedAsTheReason(t *testing.T) {
	s := tellHerd(t).tell("2026-06-06 08:00", fourEaters(), feederKg("barrel", 130), Refill{FeedKg: Float(130), Full: true})
	s.tell("2026-06-07 09:00", Sick{Animals: []string{"Dot"}})
	s.tell("2026-06-09 09:00", Sick{Animals: []string{"Dot"}, Well: true})
	told := func(at string) []Reason {
		left, err := s.fit(60).left(s.moment(at))
		require.NoError(t, err)
		var out []Reason
		for _, r := range left.Reasons {
			if r.Code == ReasonFeedSick {
				out = append(out, r)
			}
		}
		return out
	}
	require.Empty(t, told("2026-06-06 12:00"))
	require.Equal(t, []Reason{{Code: ReasonFeedSick, Names: []string{"Dot"}, On: DateDay(2026, 6, 8)}}, told("2026-06-12 12:00"))
	require.Empty(t, told("2026-06-30 12:00"))
}

func TestFeedersShareTheHerd(t *testing.T) {
	s := tellHerd(t).tell("2026-06-06 08:00", fourEaters(), feederKg("left", 100), feederKg("right", 100))
	at := s.moment("2026-06-06 09:00")
	s.tell(at.Format("2006-01-02 15:04"), Refill{Feeder: "left", Full: true, FeedKg: Float(100), FromEmpty: true}, Refill{Feeder: "right", Full: true, FeedKg: Float(100), FromEmpty: true})
	use := fourAt60(t)
	for range 8 { // pigs take three parts in four from the left one
		at = at.AddDate(0, 0, 7)
		s.tell(at.Format("2006-01-02 15:04"), Refill{Feeder: "left", Full: true, FeedKg: Float(7 * use * 0.75)}, Refill{Feeder: "right", Full: true, FeedKg: Float(7 * use * 0.25)})
	}
	f := s.fit(60)
	left, err := f.left(at)
	require.NoError(t, err)
	require.Len(t, left.Feeders, 2)
	require.InDelta(t, use, left.Feeders[0].UseKgD.Mid+left.Feeders[1].UseKgD.Mid, 0.08*use)
	require.InDelta(t, left.UseKgD.Mid, left.Feeders[0].UseKgD.Mid+left.Feeders[1].UseKgD.Mid, 1e-9)
	require.InDelta(t, 0.75, left.Feeders[0].UseKgD.Mid/left.UseKgD.Mid, 0.05)
	require.Less(t, left.Feeders[0].Days, left.Feeders[1].Days)
	require.Equal(t, left.Feeders[0].Days, left.Days)
	// Once the left one is dry the right one feeds all: together they hold what
	// they hold.
	require.InDelta(t, 200/use, left.Feeders[1].Days, 0.12*200/use)
}

func TestFeederTakenAwayNoLongerFeeds(t *testing.T) {
	s := tellHerd(t).tell("2026-06-06 08:00", fourEaters(), feederKg("old", 100), feederKg("new", 100))
	s.tell("2026-06-06 09:00", Refill{Feeder: "old", Full: true, FeedKg: Float(100), FromEmpty: true}, Refill{Feeder: "new", Full: true, FeedKg: Float(100), FromEmpty: true})
	s.tell("2026-06-10 09:00", Setting{Key: SetFeeder, Thing: &Thing{Name: "old", Gone: true}})
	f := s.fit(60)
	left, err := f.left(s.moment("2026-06-11 09:00"))
	require.NoError(t, err)
	require.Len(t, left.Feeders, 1)
	require.Equal(t, "new", left.Feeders[0].Name)
	use := fourAt60(t)
	require.InDelta(t, 100-2*use-use, left.FeedKg.Mid, 1) // half of four days, all of one
	require.InDelta(t, use, left.Feeders[0].UseKgD.Mid, 0.01)
}

func codesOf(rs []Reason) []string {
	var out []string
	for _, r := range rs {
		out = append(out, r.Code)
	}
	return out
}
