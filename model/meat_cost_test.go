package model

import (
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestCostSumsWhatWasPaid(t *testing.T) {
	s := tellHerd(t).tell("2026-04-10 08:00", Spend{Amount: 100, Currency: "USD", What: "deposit"})
	s.tell("2026-04-18 08:00", fourEaters(), Spend{Amount: 280, Currency: "USD", What: "pigs"})
	s.tell("2026-04-20 08:00", Stock{Ingredient: "corn", FeedKg: Float(400), Amount: Float(100), Currency: "USD"})
	s.tell("2026-04-21 08:00", Spend{Amount: 50, Currency: "EUR", What: "strap"})
	s.tell("2026-04-22 08:00", Spend{Amount: 30, Currency: "USD", What: "manure", Income: true})
	s.tell("2026-04-23 08:00", Stock{Ingredient: "soybean meal 48", FeedKg: Float(100)})
	s.tell("2026-05-30 08:00", Spend{Amount: 5000, Currency: "USD", What: "later"})
	at := s.moment("2026-05-01 08:00")
	c, err := s.herd().Cost(at)
	require.NoError(t, err)
	require.InDelta(t, 480, c.Spent, 1e-9)
	require.InDelta(t, 30, c.Received, 1e-9)
	require.Equal(t, "USD", c.Currency)
	require.InDelta(t, 100, c.UnpricedFeedKg, 1e-9)
	require.Contains(t, codesOf(c.Reasons), ReasonCostFeedUnpriced)
	require.Contains(t, codesOf(c.Reasons), ReasonCostOtherMoney)
	// The rest of the feed at 25 cents a kilogram.
	h := s.herd()
	target, err := h.Target(h.TargetKg, DayOf(at))
	require.NoError(t, err)
	need, err := h.FeedNeed(at, target.Herd.Days.Mid)
	require.NoError(t, err)
	require.InDelta(t, 480+0.25*(need.FeedKg.Mid-500), c.Forecast, 1e-6)
	live := 4 * DefaultTargetKg
	require.InDelta(t, (c.Forecast-30)/live, c.PerKgLive, 1e-9)
	require.InDelta(t, c.PerKgLive/0.72, c.PerKgHanging, 1e-9)
}

func TestCostOfFeedFollowsTheRecipe(t *testing.T) {
	s := tellHerd(t).tell("2026-04-18 08:00", fourEaters(), Recipe{Ingredients: map[string]float64{"corn": 75, "soybean meal 48": 25}})
	s.tell("2026-04-20 08:00", Stock{Ingredient: "corn", FeedKg: Float(100), Amount: Float(20)}, Stock{Ingredient: "soybean meal 48", FeedKg: Float(100), Amount: Float(60)})
	h := s.herd()
	price, ok := h.feedPrice(h.account(h.season(DateDay(2026, 5, 1)), s.moment("2026-05-01 08:00")))
	require.True(t, ok)
	require.InDelta(t, 0.75*0.2+0.25*0.6, price, 1e-9)
}

func TestCostWithoutPriceSaysSo(t *testing.T) {
	s := tellHerd(t).tell("2026-04-18 08:00", fourEaters(), Spend{Amount: 280, What: "pigs"})
	c, err := s.herd().Cost(s.moment("2026-05-01 08:00"))
	require.NoError(t, err)
	require.Equal(t, 280.0, c.Forecast)
	require.Greater(t, c.UnpricedFeedKg, 300.0)
	require.Empty(t, c.Currency)
}

func TestDeadPigsCostTheOthers(t *testing.T) {
	s := tellHerd(t).tell("2026-04-18 08:00", fourEaters(), Spend{Amount: 280})
	whole, err := s.herd().Cost(s.moment("2026-05-01 09:00"))
	require.NoError(t, err)
	s.tell("2026-05-01 08:00", Gone{Animals: []string{"Dot"}, How: Died})
	c, err := s.herd().Cost(s.moment("2026-05-01 09:00"))
	require.NoError(t, err)
	require.InDelta(t, whole.PerKgLive*4/3, c.PerKgLive, 1e-9)
	require.Contains(t, codesOf(c.Reasons), ReasonCostDead)
}

func TestFinishedSeasonCostsWhatItCost(t *testing.T) {
	s := tellHerd(t).tell("2025-04-18 08:00", fourEaters(), Spend{Amount: 300})
	s.tell("2025-09-01 08:00", Gone{Animals: []string{All}, How: Butchered, HangingKg: Float(320)})
	s.tell("2025-09-10 08:00", Spend{Amount: 500, What: "butcher"})
	c, err := s.herd().Cost(s.moment("2025-10-01 08:00"))
	require.NoError(t, err)
	require.Equal(t, 800.0, c.Spent)
	require.Equal(t, 800.0, c.Forecast)
	require.InDelta(t, 2.5, c.PerKgHanging, 1e-9)
	// The next season starts its own account.
	s.tell("2026-03-01 08:00", Spend{Amount: 40, What: "deposit"})
	s.tell("2026-04-18 08:00", Arrive{Count: 2, WeightKg: Float(20)}, Spend{Amount: 160, What: "pigs"})
	c, err = s.herd().Cost(s.moment("2026-05-01 08:00"))
	require.NoError(t, err)
	require.Equal(t, 200.0, c.Spent)
	c, err = s.herd().Cost(s.moment("2025-10-01 08:00"))
	require.NoError(t, err)
	require.Equal(t, 800.0, c.Spent)
}

func TestCostAsksForMoneySpent(t *testing.T) {
	s := tellHerd(t).tell("2026-04-18 08:00", fourEaters(), Spend{Amount: 20, Income: true}, Stock{FeedKg: Float(100)})
	_, err := s.herd().Cost(s.moment("2026-05-01 08:00"))
	var missing *Missing
	require.ErrorAs(t, err, &missing)
	require.Equal(t, "spend", missing.What)
}

func TestBagsCountByTheirSize(t *testing.T) {
	s := tellHerd(t).tell("2026-04-18 08:00", fourEaters(), Setting{Key: SetSize, Thing: &Thing{Name: "bag", FeedKg: Float(25)}})
	s.tell("2026-04-19 08:00", Stock{Ingredient: "corn", Count: Float(4), Amount: Float(50)})
	h := s.herd()
	a := h.account(h.season(DateDay(2026, 5, 1)), s.moment("2026-05-01 08:00"))
	require.Equal(t, 100.0, a.boughtKg)
	require.Equal(t, pricedFeed{100, 50}, a.priced["corn"])
}

// Money is neither lost between seasons nor counted twice.
func TestEveryDayBelongsToOneSeason(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		s := tellHerd(t)
		day := DateDay(2024, 4, 1)
		starts := []Day{}
		for range rapid.IntRange(1, 4).Draw(rt, "seasons") {
			starts = append(starts, day)
			end := day + Day(rapid.IntRange(1, 200).Draw(rt, "length"))
			s.tell(day.String()+" 08:00", Arrive{Count: 1, WeightKg: Float(20)})
			s.tell(end.String()+" 08:00", Gone{Animals: []string{All}, How: Butchered})
			day = end + Day(rapid.IntRange(1, 300).Draw(rt, "pause"))
		}
		h := s.herd()
		for d := DateDay(2024, 1, 1); d < day; d += 3 {
			holds := 0
			for _, start := range starts {
				holds += count(h.season(start).holds(d))
			}
			require.Equal(rt, 1, holds, "%v", d)
		}
	})
}
