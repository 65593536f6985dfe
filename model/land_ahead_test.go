package model

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestPenNitrogenOfASeason(t *testing.T) {
	_, err := newPenDiary(t, "America/Chicago").herd().PenNitrogenYear(penDay(t, "2026-06-01"))
	requireMissing(t, err, "pigs")
	_, err = fourPigs(t).herd().PenNitrogenYear(penDay(t, "2026-06-01"))
	requireMissing(t, err, "pen")
	d := fourPigs(t).add("2026-05-02 09:30", penSetting("orchard", 1000, true), penSetting("hill", 0, false),
		Recipe{Ingredients: map[string]float64{"corn": 75, "soybean meal 48": 22, "mineral premix": 3}})
	h := d.herd()
	got, err := h.PenNitrogenYear(penDay(t, "2026-09-15"))
	require.NoError(t, err)
	require.Len(t, got, 1, "the hill had no pigs")
	n := got[0]
	require.Equal(t, "orchard", n.Pen.Name)
	// The same sum in one go: feed of the span, gain between its ends.
	need, err := h.FeedNeed(d.moment("2026-05-02 09:00"), penDay(t, "2026-09-15"))
	require.NoError(t, err)
	require.InEpsilon(t, need.FeedKg.Mid, n.FeedKg, 0.03)
	start, err := h.MeanWeight(h.Alive(penDay(t, "2026-05-02")), penDay(t, "2026-05-02"))
	require.NoError(t, err)
	end, err := h.MeanWeight(h.Alive(penDay(t, "2026-09-15")), penDay(t, "2026-09-15"))
	require.NoError(t, err)
	require.InEpsilon(t, 4*(end.WeightKg.Mid-start.WeightKg.Mid), n.GainKg, 0.03)
	require.InDelta(t, n.FedKg, n.KeptKg+n.ExcretedKg, 1e-9)
	require.InDelta(t, n.ExcretedKg*10, n.KgHa, 1e-9)
	require.True(t, n.Over, "four pigs on a quarter acre, all summer")
	reasonWith(t, n.Reasons, ReasonNitrogenCeiling)
	require.NotContains(t, reasonCodes(n.Reasons), ReasonNitrogenAssumed)
	// More ground, less of it on each hectare; and without a mix it is assumed.
	wide, err := fourPigs(t).add("2026-05-02 09:30", penSetting("orchard", 8000, true)).herd().PenNitrogenYear(penDay(t, "2026-09-15"))
	require.NoError(t, err)
	require.False(t, wide[0].Over)
	reasonWith(t, wide[0].Reasons, ReasonNitrogenAssumed)
}

func TestWormEggsRipenInTheWarmthOnly(t *testing.T) {
	worm := Parasites()[0]
	require.Equal(t, LargeRoundworm, worm.Name)
	shed := DateDay(2026, 10, 1)
	at := func(c float64) func(Day) float64 { return func(Day) float64 { return c } }
	day, ok := worm.Ripens(shed, at(20))
	require.True(t, ok)
	require.Equal(t, shed+20, day)
	_, ok = worm.Ripens(shed, at(14))
	require.False(t, ok, "below 14.5 °C they wait")
	_, ok = worm.Ripens(shed, at(math.NaN()))
	require.False(t, ok)
	// Ten warm days in autumn, the rest in May.
	day, ok = worm.Ripens(shed, func(d Day) float64 {
		if d < shed+10 || d >= DateDay(2027, 5, 1) {
			return 18
		}
		return 3
	})
	require.True(t, ok)
	require.Equal(t, DateDay(2027, 5, 11), day)
	for _, p := range Parasites() {
		require.NotEmpty(t, p.Source)
		require.LessOrEqual(t, p.PrepatentLowDays, p.PrepatentHighDays)
	}
}

func TestPenWormsOfPensUsed(t *testing.T) {
	_, err := newPenDiary(t, "America/Chicago").herd().PenWorms(penDay(t, "2026-06-01"))
	requireMissing(t, err, "pigs")
	_, err = fourPigs(t).herd().PenWorms(penDay(t, "2026-06-01"))
	requireMissing(t, err, "pen")
	h := fourPigs(t).add("2026-05-02 09:30", penSetting("orchard", 1000, true), penSetting("hill", 500, false)).
		add("2026-06-10 09:00", Move{Pen: "hill"}).herd()
	got, err := h.PenWorms(penDay(t, "2026-08-01"))
	require.NoError(t, err)
	require.Len(t, got, 2)
	if got[0].Pen.Name == "hill" {
		got[0], got[1] = got[1], got[0]
	}
	require.Equal(t, penDay(t, "2026-05-02"), got[0].Since)
	require.Equal(t, penDay(t, "2026-06-09"), got[0].LastUse)
	require.True(t, got[0].Ripe)
	require.GreaterOrEqual(t, got[0].InfectiveFrom, got[0].Since+20)
	require.Greater(t, got[0].CleanBy, penDay(t, "2034-01-01"))
	require.Equal(t, penDay(t, "2026-06-10"), got[1].Since)
	reasonWith(t, got[1].Reasons, ReasonWormSoil)
}

func TestStockingOfTheTrialIsOne(t *testing.T) {
	s, err := StockingRate(37, MeanPigKg, 1e4, 98)
	require.NoError(t, err)
	require.InDelta(t, 37, s.PigsPerHa, 1e-9)
	require.InDelta(t, 1, s.OverCover, 0.002)
}
