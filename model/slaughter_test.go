package model

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestFeedGoesOffInTheWindow(t *testing.T) {
	kill := time.Date(2026, 9, 15, 10, 0, 0, 0, time.UTC)
	f := FeedOffFor(kill)
	require.Equal(t, time.Date(2026, 9, 14, 16, 0, 0, 0, time.UTC), f.From)
	require.Equal(t, time.Date(2026, 9, 14, 20, 0, 0, 0, time.UTC), f.At)
	require.Equal(t, time.Date(2026, 9, 14, 22, 0, 0, 0, time.UTC), f.To)
	require.Equal(t, time.Date(2026, 9, 14, 10, 0, 0, 0, time.UTC), f.NotBefore)
}

func TestFeedOutSaysWhatWouldBeLeft(t *testing.T) {
	s := tellHerd(t).tell("2026-06-06 08:00", fourEaters(), feederKg("drum", 130))
	_, err := s.herd().FeedOut(s.moment("2026-06-06 10:00"))
	requireMissing(t, err, "booking")
	s.tell("2026-06-06 09:00", Booked{Day: DateDay(2026, 6, 12), Minute: Int(600), Count: 4}, Refill{FeedKg: Float(100), Full: true})
	h := s.herd()
	full, err := h.FeedOut(s.moment("2026-06-06 10:00"))
	require.NoError(t, err)
	require.Equal(t, s.moment("2026-06-11 20:00"), full.At)
	require.True(t, full.All)
	require.Greater(t, full.LeftKg.Mid, 50.0)
	require.True(t, full.LeftKg.Low <= full.LeftKg.Mid && full.LeftKg.Mid <= full.LeftKg.High)
	require.Zero(t, full.PourKg)
	require.True(t, full.RunsOut.IsZero())
	s.tell("2026-06-08 09:00", FeedLevel{FeedKg: Float(4)})
	low, err := s.herd().FeedOut(s.moment("2026-06-08 10:00"))
	require.NoError(t, err)
	require.Zero(t, low.LeftKg)
	require.Greater(t, low.PourKg.Mid, 15.0)
	require.True(t, low.RunsOut.Before(low.At))
	require.NotContains(t, codesOf(low.Reasons), ReasonFeedOffAssumed)
	_, err = s.herd().FeedOut(s.moment("2026-06-12 07:00"))
	var out *OutOfRange
	require.ErrorAs(t, err, &out, "feed should be off by then")
}

func TestFeedOutOfAnUnknownHour(t *testing.T) {
	s := tellHerd(t).tell("2026-06-06 08:00", fourEaters(), feederKg("drum", 130), Booked{Day: DateDay(2026, 6, 12), Count: 2}, Refill{FeedKg: Float(100), Full: true})
	f, err := s.herd().FeedOut(s.moment("2026-06-06 10:00"))
	require.NoError(t, err)
	require.False(t, f.All, "two stay")
	require.Contains(t, codesOf(f.Reasons), ReasonFeedOffAssumed)
	require.Equal(t, s.moment("2026-06-12 08:00"), f.Slaughter)
}

func TestLastDoseIsClearAtLoading(t *testing.T) {
	s := tellHerd(t).tell("2026-06-06 08:00", fourEaters())
	_, err := s.herd().LastDoseBefore(s.moment("2026-06-07 08:00"), 14)
	requireMissing(t, err, "booking")
	s.tell("2026-06-06 09:00", Booked{Day: DateDay(2026, 11, 3), Minute: Int(7 * 60)})
	h := s.herd()
	at := s.moment("2026-06-07 08:00")
	rapid.Check(t, func(t *rapid.T) {
		days := rapid.IntRange(0, 365).Draw(t, "days")
		d, err := h.LastDoseBefore(at, days)
		require.NoError(t, err)
		require.False(t, clearMoment(d.At, true, days).After(d.Load), "clear when loaded")
		require.True(t, clearMoment(d.At.Add(time.Hour+time.Minute), true, days).After(d.Load), "and hardly earlier than it must be")
		require.Equal(t, d.At.Before(at), d.Gone)
	})
	var out *OutOfRange
	for _, days := range []int{-1, 366} {
		_, err = h.LastDoseBefore(at, days)
		require.ErrorAs(t, err, &out)
	}
	_, known := h.WormerDays()
	require.False(t, known)
	s.tell("2026-06-08 08:00", Worm{Treatment{Animals: []string{All}, WithdrawalDays: Int(14)}})
	days, known := s.herd().WormerDays()
	require.True(t, known)
	require.Equal(t, 14, days)
}

func TestFreezerTakesMoreForMore(t *testing.T) {
	f, err := FreezerL(53)
	require.NoError(t, err)
	require.InDelta(t, 88, f.Mid, 1)
	require.True(t, f.Low < f.Mid && f.Mid < f.High)
	for _, x := range append([]float64{-1, 2e5}, notNumbers...) {
		refused(t, map[string]func() error{"freezer": func() error { _, err := FreezerL(x); return err }})
	}
}

func TestMoneyFiguresRefuseNonsense(t *testing.T) {
	for _, x := range append([]float64{-1, 1e10}, notNumbers...) {
		refused(t, map[string]func() error{
			"money":  func() error { _, err := BreakEven(x, 100); return err },
			"kg":     func() error { _, err := BreakEven(100, x); return err },
			"income": func() error { _, err := MostForPig(x, 1); return err },
			"cost":   func() error { _, err := MostForPig(1, x); return err },
			"feed":   func() error { _, err := FeedConversion(x, 1); return err },
			"gain":   func() error { _, err := FeedConversion(1, x); return err },
		})
	}
	refused(t, map[string]func() error{
		"none sold":   func() error { _, err := BreakEven(100, 0); return err },
		"none gained": func() error { _, err := FeedConversion(100, 0); return err },
	})
}

func TestFeedPerGainOfTheHerd(t *testing.T) {
	s := tellHerd(t).tell("2026-06-06 08:00", Arrive{Count: 4, WeightKg: Float(30)})
	var out *OutOfRange
	_, err := s.herd().FeedPerGain(s.moment("2026-06-08 08:00"))
	require.ErrorAs(t, err, &out, "nothing can be said in the first days")
	s.tell("2026-08-20 08:00", Weigh{Animals: []string{All}, WeightKg: 90, By: ByScale})
	got, err := s.herd().FeedPerGain(s.moment("2026-08-20 18:00"))
	require.NoError(t, err)
	require.True(t, got.Ratio.Low < got.Ratio.Mid && got.Ratio.Mid < got.Ratio.High)
	require.InDelta(t, 2.6, got.Ratio.Mid, 0.5, "published: about 2.5 between 30 and 90 kg")
	require.InDelta(t, 240, got.GainKg, 30)
	require.Zero(t, got.Cost)
	s.tell("2026-08-19 08:00", Stock{FeedKg: Float(100), Amount: Float(40), Currency: "USD"})
	priced, err := s.herd().FeedPerGain(s.moment("2026-08-20 18:00"))
	require.NoError(t, err)
	require.InDelta(t, priced.Ratio.Mid*0.4, priced.Cost, 1e-9)
	// A death costs the others.
	s.tell("2026-08-19 10:00", Gone{Count: 1, How: Died})
	dead, err := s.herd().FeedPerGain(s.moment("2026-08-20 18:00"))
	require.NoError(t, err)
	require.Greater(t, dead.Ratio.Mid, priced.Ratio.Mid*1.2)
}

func TestFeederSpanComesAsPigsGrow(t *testing.T) {
	s := tellHerd(t).tell("2026-06-06 08:00", Arrive{Count: 4, WeightKg: Float(25)}, feederKg("drum", 60), Refill{FeedKg: Float(60), Full: true})
	now, err := s.herd().FeederSpan(s.moment("2026-06-06 10:00"))
	require.NoError(t, err)
	require.Equal(t, 7, now.SpanDays)
	require.False(t, now.Never)
	require.True(t, now.From.Low < now.From.Mid && now.From.Mid < now.From.High)
	// On the likely day a week's feed is what they hold.
	need, err := s.herd().FeedNeed(now.From.Mid.At(0, s.loc), now.From.Mid+6)
	require.NoError(t, err)
	require.InDelta(t, now.HoldsKg.Mid, need.FeedKg.Mid, 1.5)
	s.tell("2026-06-06 09:00", Setting{Key: SetChore, List: []string{"sat", "wed"}})
	twice, err := s.herd().FeederSpan(s.moment("2026-06-06 10:00"))
	require.NoError(t, err)
	require.Equal(t, 4, twice.SpanDays)
	require.Greater(t, twice.From.Mid, now.From.Mid)
	s.tell("2026-06-06 09:30", feederKg("drum", 400))
	big, err := s.herd().FeederSpan(s.moment("2026-06-06 10:00"))
	require.NoError(t, err)
	require.True(t, big.Never)
}
