package model

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/require"
)

// fedWeekly is a herd of four at 60 kg whose barrel was filled each Saturday with
// so many times what the table says of a week.
func fedWeekly(t testing.TB, weeks ...float64) *toldHerd {
	s := tellHerd(t).tell("2026-04-04 08:00", fourEaters(), feederKg("barrel", 160))
	at := s.moment("2026-04-25 09:00")
	s.tell("2026-04-25 09:00", Refill{FeedKg: Float(160), Full: true, FromEmpty: true})
	for _, by := range weeks {
		at = at.AddDate(0, 0, 7)
		s.tell(at.Format("2006-01-02 15:04"), Refill{FeedKg: Float(7 * by * fourAt60(t)), Full: true})
	}
	return s
}

// odd is what does not fit, by the fit of pigs that stay at 60 kg.
func (s *toldHerd) odd() []OddFeed {
	h := s.herd()
	f := fitFeed(h, steadyWeights{h, 60, 0})
	h.figures.feed.get(func() *feedFit { return f })
	return h.OddFeed()
}

func TestOddFeed(t *testing.T) {
	tests := []struct {
		name  string
		weeks []float64
		want  OddKind
		both  bool
	}{
		{"as expected", []float64{1, 1.02, 0.98, 1}, "", false},
		{"a fifth is nothing yet for four pigs", []float64{1, 1, 1, 1.2}, "", false},
		{"half as much again", []float64{1, 1, 1, 1.5}, OddMore, false},
		{"half", []float64{1, 1, 1, 0.5}, OddLess, false},
		{"a quarter more twice", []float64{1, 1, 1, 1, 1.26, 1.3}, OddMore, true},
		{"more and less", []float64{1, 1, 1, 1.26, 0.74}, "", false},
		{"a herd that always ate much", []float64{1.3, 1.3, 1.3, 1.3, 1.3}, "", false},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			s := fedWeekly(t, tt.weeks...)
			got := s.odd()
			if tt.want == "" {
				require.Empty(t, got)
				return
			}
			require.Len(t, got, 1)
			o := got[0]
			require.Equal(t, tt.want, o.Kind)
			require.Equal(t, tt.both, o.Both)
			require.Equal(t, s.records[len(s.records)-1].ID, o.Record)
			spans := 1.0
			if o.Both {
				spans = 2
			}
			require.InEpsilon(t, spans*7*fourAt60(t), o.WantKg, 0.1)
			require.Equal(t, spans*7, o.At.Sub(o.From).Hours()/24)
			require.Equal(t, ReasonFeedOdd, o.Reasons[0].Code)
			require.Less(t, o.Reasons[0].Q[2].Value, o.WantKg, "half the range")
		})
	}
}

// What may be explained is not asked.
func TestOddFeedIsGuarded(t *testing.T) {
	half := 3.5 * fourAt60(t)
	base := func() *toldHerd { return fedWeekly(t, 1, 1, 1) } // the last fill is on 16 May
	for name, tell := range map[string]func(s *toldHerd) *toldHerd{
		"a short span": func(s *toldHerd) *toldHerd {
			return s.tell("2026-05-19 09:00", Refill{FeedKg: Float(5), Full: true})
		},
		"not said to be full": func(s *toldHerd) *toldHerd { return s.tell("2026-05-23 09:00", Refill{FeedKg: Float(half)}) },
		"not said to be full before": func(s *toldHerd) *toldHerd {
			return s.tell("2026-05-17 09:00", Refill{Fraction: Float(0.9)}).tell("2026-05-23 09:00", Refill{FeedKg: Float(half), Full: true})
		},
		"told as spilled": func(s *toldHerd) *toldHerd {
			return s.tell("2026-05-23 08:59", FeedLevel{Spilled: true}).tell("2026-05-23 09:00", Refill{FeedKg: Float(3 * half), Full: true})
		},
		"a pig was sick": func(s *toldHerd) *toldHerd {
			return s.tell("2026-05-17 09:00", Sick{Animals: []string{All}}).tell("2026-05-23 09:00", Refill{FeedKg: Float(half * 1.3), Full: true})
		},
		"new pigs came": func(s *toldHerd) *toldHerd {
			return s.tell("2026-05-17 09:00", Arrive{Count: 2, WeightKg: Float(60)}).tell("2026-05-23 09:00", Refill{FeedKg: Float(half), Full: true})
		},
	} {
		t.Run(name, func(t *testing.T) { require.Empty(t, tell(base()).odd()) })
	}
	require.Len(t, base().tell("2026-05-23 09:00", Refill{FeedKg: Float(half), Full: true}).odd(), 1)
	// In July, of which nobody told the weather, a quarter less may be the heat.
	july := tellHerd(t).tell("2026-06-06 08:00", fourEaters(), feederKg("barrel", 160)).
		tell("2026-06-20 09:00", Refill{FeedKg: Float(160), Full: true, FromEmpty: true})
	for _, day := range []string{"2026-06-27", "2026-07-04", "2026-07-11"} {
		july.tell(day+" 09:00", Refill{FeedKg: Float(7 * fourAt60(t)), Full: true})
	}
	cool := &toldHerd{loc: july.loc, records: slices.Clone(july.records)}
	for d := 11; d <= 25; d++ {
		cool.tell(DateDay(2026, 7, d).String()+" 06:00", Weather{HighC: Float(22), LowC: Float(12)})
	}
	for _, day := range []string{"2026-07-18", "2026-07-25"} {
		less := Refill{FeedKg: Float(7 * 0.74 * fourAt60(t)), Full: true}
		july.tell(day+" 09:00", less)
		cool.tell(day+" 09:00", less)
	}
	require.Empty(t, july.odd())
	require.Len(t, cool.odd(), 1)
}

func TestFeederFoundEmptyEarly(t *testing.T) {
	for _, say := range []Fact{FeedLevel{Fraction: Float(0)}, Refill{FeedKg: Float(50), FromEmpty: true}} {
		s := fedWeekly(t, 1, 1, 1).tell("2026-05-19 09:00", say)
		got := s.odd()
		require.Len(t, got, 1)
		require.Equal(t, OddEmpty, got[0].Kind)
		require.InDelta(t, 160-3*fourAt60(t), got[0].WantKg, 8)
		late := fedWeekly(t, 1, 1, 1).tell("2026-05-31 09:00", say) // by then it may be empty
		require.Empty(t, late.odd())
	}
}

// An answer decides what the span teaches, and ends the question.
func TestVerdictsTeachOrLeaveOut(t *testing.T) {
	season := func(how string) *toldHerd {
		s := fedWeekly(t, 1, 1, 1, 1.5)
		fill := s.records[len(s.records)-1].ID
		if how == "" {
			return s
		}
		s.tell("2026-05-23 19:00", Question{About: "check", Code: "odd_feed_more", Of: fill})
		return s.tell("2026-05-23 19:05", Settled{Question: s.records[len(s.records)-1].ID, How: how})
	}
	appetite := func(how string) float64 {
		s := season(how)
		return believed(t, s.fit(60), s.moment("2026-05-24 09:00"), placeAppetite).Mean
	}
	before := believed(t, fedWeekly(t, 1, 1, 1).fit(60), tellHerd(t).moment("2026-05-23 08:59"), placeAppetite).Mean
	require.InDelta(t, before, appetite(LeftOut), 0.02)
	require.Greater(t, appetite(""), appetite(LeftOut)+0.02)
	require.Greater(t, appetite(AsUsual), appetite("")+0.02)
	require.InDelta(t, appetite(""), appetite("dropped"), 1e-12)
	require.Len(t, season("").odd(), 1)
	require.Empty(t, season(LeftOut).odd())
	require.Empty(t, season(AsUsual).odd())
	// Left out or not, the feeder is full after the fill.
	left, err := season(LeftOut).fit(60).left(season("").moment("2026-05-23 09:30"))
	require.NoError(t, err)
	require.InDelta(t, 160, left.FeedKg.Mid, 6)
}
