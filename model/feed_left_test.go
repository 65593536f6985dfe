package model

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestFeedLeftAsksForWhatItLacks(t *testing.T) {
	barrel := Setting{Key: SetFeeder, Thing: &Thing{Name: "barrel", CapacityL: Float(208)}}
	unsized := Setting{Key: SetFeeder, Thing: &Thing{Name: "trough"}}
	for _, c := range []struct {
		name  string
		facts []Fact
		what  string
		names []string
	}{
		{"no pigs", []Fact{barrel, Refill{Full: true}}, "pigs", nil},
		{"no weight", []Fact{Arrive{Count: 4}, barrel, Refill{Full: true}}, "weight", nil},
		{"no feeder", []Fact{fourEaters()}, "feeder", nil},
		{"never filled", []Fact{fourEaters(), barrel}, "level", []string{"barrel"}},
		{"no size and no amount", []Fact{fourEaters(), unsized, Refill{Full: true}}, "capacity", []string{"trough"}},
		{"level of nothing known", []Fact{fourEaters(), FeedLevel{Fraction: Float(0.5)}}, "capacity", []string{"feeder"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			s := tellHerd(t).tell("2026-06-06 08:00", c.facts...)
			for _, ask := range []func(h *Herd) error{
				func(h *Herd) error { _, err := h.FeedLeft(s.moment("2026-06-07 08:00")); return err },
				func(h *Herd) error {
					_, err := h.RefillPlan(s.moment("2026-06-07 08:00"), s.moment("2026-06-13 08:00"))
					return err
				},
			} {
				var missing *Missing
				require.ErrorAs(t, ask(s.herd()), &missing)
				require.Equal(t, c.what, missing.What)
				require.Equal(t, c.names, missing.Names)
			}
		})
	}
}

func TestFeedLeftWithoutSetUp(t *testing.T) {
	s := tellHerd(t).tell("2026-06-06 08:00", fourEaters(), Refill{FeedKg: Float(80)})
	left, err := s.herd().FeedLeft(s.moment("2026-06-08 08:00"))
	require.NoError(t, err)
	require.Len(t, left.Feeders, 1)
	require.Equal(t, "feeder", left.Feeders[0].Name)
	require.InDelta(t, 80-2*fourAt60(t), left.FeedKg.Mid, 4)
	require.Contains(t, codesOf(left.Reasons), ReasonFeedUnseen)
	require.Contains(t, codesOf(left.Reasons), ReasonFeedCapacityGuessed)
}

// Last year's pigs, of which no weight was ever told, do not stand in the way of
// this year's.
func TestFeedLeftForgivesPigsNeverWeighed(t *testing.T) {
	s := tellHerd(t).tell("2025-06-06 08:00", Arrive{Count: 3}, feederKg("barrel", 100), Refill{FeedKg: Float(100), Full: true})
	s.tell("2025-06-16 08:00", Refill{FeedKg: Float(50), Full: true})
	s.tell("2025-09-06 08:00", Gone{Animals: []string{All}, How: Butchered})
	s.tell("2026-06-06 08:00", fourEaters(), Refill{FeedKg: Float(100), Full: true, FromEmpty: true})
	left, err := s.herd().FeedLeft(s.moment("2026-06-07 08:00"))
	require.NoError(t, err)
	require.InDelta(t, 100-fourAt60(t), left.FeedKg.Mid, 4)
	appetite := s.herd().feeding().appetiteAt(s.moment("2025-06-16 08:00"))
	require.InDelta(t, appetiteSD, appetite.SD, 0.02, "a use that may be anything teaches nothing")
	var missing *Missing
	_, err = s.herd().FeedLeft(s.moment("2025-06-17 08:00"))
	require.ErrorAs(t, err, &missing)
	require.Equal(t, "weight", missing.What)
	_, err = s.herd().FeedNeed(s.moment("2025-06-17 08:00"), DateDay(2025, 7, 1))
	require.ErrorAs(t, err, &missing)
	require.Equal(t, "weight", missing.What)
}

func TestFeedLeftNamesFeederNeverFilled(t *testing.T) {
	s := tellHerd(t).tell("2026-06-06 08:00", fourEaters(), feederKg("left", 100), feederKg("right", 100))
	s.tell("2026-06-06 09:00", Refill{Feeder: "left", FeedKg: Float(100), Full: true})
	left, err := s.herd().FeedLeft(s.moment("2026-06-07 09:00"))
	require.NoError(t, err)
	require.Len(t, left.Feeders, 1)
	require.Contains(t, codesOf(left.Reasons), ReasonFeederNeverFilled)
}

func TestFeedLeftLongAfterIsEmptyNotNegative(t *testing.T) {
	s := tellHerd(t).tell("2026-06-06 08:00", fourEaters(), feederKg("barrel", 100), Refill{FeedKg: Float(100), Full: true})
	at := s.moment("2026-07-06 08:00")
	left, err := s.herd().FeedLeft(at)
	require.NoError(t, err)
	require.Zero(t, left.FeedKg.Mid)
	require.Zero(t, left.Days)
	require.Zero(t, left.EdgeDays)
	require.Equal(t, at, left.Empty)
}

func TestFeedLeftAnswersForThePastAndBetweenRecords(t *testing.T) {
	s := tellHerd(t).tell("2026-06-06 08:00", fourEaters(), feederKg("barrel", 100), Refill{FeedKg: Float(100), Full: true})
	s.tell("2026-06-13 08:00", Refill{FeedKg: Float(58), Full: true})
	h := s.herd()
	previous := 101.0
	for hour := range 7 * 24 {
		left, err := h.FeedLeft(s.moment("2026-06-06 08:00").Add(time.Duration(hour) * time.Hour))
		require.NoError(t, err)
		require.Less(t, left.FeedKg.Mid, previous)
		previous = left.FeedKg.Mid
	}
	left, err := h.FeedLeft(s.moment("2026-06-13 08:00"))
	require.NoError(t, err)
	require.InDelta(t, 100, left.FeedKg.Mid, 4)
}

// A feeder that will be dry in the night of a clock change is dry at a wall time
// that exists.
func TestFeedLeftAcrossClockChange(t *testing.T) {
	s := tellHerd(t).tell("2026-10-26 08:00", fourEaters(), feederKg("barrel", 100), Refill{FeedKg: Float(60), FromEmpty: true})
	left, err := s.herd().FeedLeft(s.moment("2026-10-26 08:00"))
	require.NoError(t, err)
	hours := left.Empty.Sub(s.moment("2026-10-26 08:00")).Hours()
	require.InDelta(t, 24*left.Days+1, hours, 1.1)
	require.Equal(t, "America/Chicago", left.Empty.Location().String())
}

func TestHeatAndColdChangeUse(t *testing.T) {
	at := "2026-06-08 12:00"
	use := func(w *Weather, wallow bool) float64 {
		s := tellHerd(t).tell("2026-06-06 08:00", fourEaters(), feederKg("barrel", 100), Refill{FeedKg: Float(100), Full: true})
		if w != nil {
			s.tell("2026-06-08 11:00", *w)
		}
		if wallow {
			s.tell("2026-06-06 08:30", Setting{Key: SetWallow, Thing: &Thing{AreaM2: Float(6)}})
		}
		left, err := s.herd().FeedLeft(s.moment(at))
		require.NoError(t, err)
		return left.UseKgD.Mid
	}
	plain := use(nil, false)
	require.Equal(t, plain, use(&Weather{HighC: Float(22), LowC: Float(14)}, false))
	hot := use(&Weather{HighC: Float(34), LowC: Float(22)}, false)
	require.InDelta(t, 0.82, hot/plain, 0.04)
	// Pigs that heat slows are a trifle lighter by the end of the day as well.
	require.InDelta(t, (1+hot/plain)/2, use(&Weather{HighC: Float(34), LowC: Float(22)}, true)/plain, 1e-3)
	require.InDelta(t, 1.05, use(&Weather{HighC: Float(0), LowC: Float(-10)}, false)/plain, 1e-9)
}

// With what was learned held, more feed never lasts fewer days, and the edges
// keep their order.
func TestMoreFeedNeverLastsLess(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		s := tellHerd(t).tell("2026-06-06 08:00", fourEaters(), feederKg("left", 120), feederKg("right", 80))
		s.tell("2026-06-06 09:00", Refill{Feeder: "left", FeedKg: Float(rapid.Float64Range(5, 120).Draw(rt, "left"))})
		s.tell("2026-06-06 09:00", Refill{Feeder: "right", FeedKg: Float(rapid.Float64Range(5, 80).Draw(rt, "right"))})
		f := s.fit(rapid.Float64Range(10, 140).Draw(rt, "weight"))
		require.NoError(rt, f.err)
		at := s.moment("2026-06-08 15:00")
		g, _, err := f.at(at)
		require.NoError(rt, err)
		for _, edge := range []float64{likely, lowEdge, cautiousEdge} {
			o, err := f.look(g, wallDays(at))
			require.NoError(rt, err)
			days, err := o.lasts(edge)
			require.NoError(rt, err)
			i := rapid.IntRange(0, 1).Draw(rt, "feeder")
			more := g.clone()
			more.mean[placeLevel(i)] += rapid.Float64Range(0, 50).Draw(rt, "more")
			if o, err = f.look(more, wallDays(at)); err != nil {
				rt.Fatal(err)
			}
			longer, err := o.lasts(edge)
			require.NoError(rt, err)
			for k := range days {
				require.GreaterOrEqual(rt, longer[k], days[k]-1e-9)
			}
		}
		left, err := f.left(at)
		require.NoError(rt, err)
		for _, fl := range left.Feeders {
			require.LessOrEqual(rt, fl.EdgeDays, fl.LowDays)
			require.LessOrEqual(rt, fl.LowDays, fl.Days)
			require.GreaterOrEqual(rt, fl.LevelKg.Low, 0.0)
			require.LessOrEqual(rt, fl.LevelKg.Low, fl.LevelKg.Mid)
			require.LessOrEqual(rt, fl.LevelKg.Mid, fl.LevelKg.High)
		}
	})
}

func TestFeedFiguresHoldWhateverTheOrderOfArrival(t *testing.T) {
	s := tellHerd(t).tell("2026-06-06 08:00", fourEaters(), feederKg("barrel", 100), Refill{FeedKg: Float(100), Full: true})
	s.tell("2026-06-10 18:00", FeedLevel{Fraction: Float(0.5)})
	s.tell("2026-06-13 08:00", Refill{FeedKg: Float(58), Full: true})
	s.tell("2026-06-15 08:00", Sick{Animals: []string{"Dot"}})
	s.tell("2026-06-16 08:00", FeedLevel{Days: Float(3)})
	at := s.moment("2026-06-17 08:00")
	want, err := s.herd().FeedLeft(at)
	require.NoError(t, err)
	rapid.Check(t, func(rt *rapid.T) {
		got, err := Fold(rapid.Permutation(s.records).Draw(rt, "order")).FeedLeft(at)
		require.NoError(rt, err)
		require.Equal(rt, want, got)
	})
	voided := append([]Record(nil), s.records...)
	voided = append(voided, Record{ID: "extra", On: DayOf(at), At: at.Add(-time.Hour), Fact: FeedLevel{Fraction: Float(0)}})
	voided = append(voided, Record{ID: "void", On: DayOf(at), At: at, Fact: Void{Record: "extra"}})
	got, err := Fold(voided).FeedLeft(at)
	require.NoError(t, err)
	require.Equal(t, want, got)
}
