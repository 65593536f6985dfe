package model

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// heatWave tells ten days of a high and a low from the tenth day on.
func heatWave(b *book, highC, lowC float64) *book {
	for d := range 10 {
		b.add(growthStart+10+Day(d), Weather{HighC: Float(highC), LowC: Float(lowC)})
	}
	return b
}

func weighedOnce(kg float64) *book {
	return new(book).arrive(growthStart, 0, "Ada").scale(growthStart, "Ada", kg)
}

// lostDays is how many days of growth by the table the later book's pig is behind
// the earlier one's.
func lostDays(t *testing.T, cool, hot *book, on Day) float64 {
	return tableDay(weightOf(t, cool.herd(), "Ada", on).WeightKg.Mid) - tableDay(weightOf(t, hot.herd(), "Ada", on).WeightKg.Mid)
}

func TestHeatSlowsGrowthAsItTakesTheAppetite(t *testing.T) {
	on := growthStart + 30
	for _, c := range []struct {
		name        string
		kg          float64
		high, low   float64
		least, most float64 // days of growth lost
	}{
		{"mild", 60, 24, 12, 0, 0},
		{"frost", 60, -2, -10, 0, 0},
		{"warm, light pig", 20, 30, 18, 0.1, 0.6},
		{"hot, light pig", 20, 35, 22, 0.8, 1.8},
		{"hot, heavy pig", 80, 35, 22, 2, 2.8},
		{"hotter than the formula, heavy pig", 80, 45, 33, 2.5, 2.8},
	} {
		t.Run(c.name, func(t *testing.T) {
			lost := lostDays(t, weighedOnce(c.kg), heatWave(weighedOnce(c.kg), c.high, c.low), on)
			require.GreaterOrEqual(t, lost, c.least-1e-9)
			require.LessOrEqual(t, lost, c.most+1e-9)
		})
	}
}

// The growth that heat takes is what the feed model takes of the appetite, and
// somewhat more.
func TestHeatAgreesWithTheFeed(t *testing.T) {
	const kg, high, low = 80.0, 33.0, 21.0
	taken := 0.0
	for d := range 10 {
		factor, err := WeatherFeedFactor((high+low)/2, tableKg(kg, 10+float64(d)), false)
		require.NoError(t, err)
		taken += 1 - factor
	}
	lost := lostDays(t, weighedOnce(kg), heatWave(weighedOnce(kg), high, low), growthStart+30)
	require.InDelta(t, heatGainPerFeed*taken, lost, 1e-6)
}

func TestHeatWidensUntilAWeighing(t *testing.T) {
	on := growthStart + 30
	cool, hot := weighedOnce(80), heatWave(weighedOnce(80), 35, 22)
	spread := func(b *book) float64 { return tableSpread(t, b.herd(), 0, on).curve }
	require.Greater(t, spread(hot), 1.001*spread(cool))
	require.Contains(t, codes(weightOf(t, hot.herd(), "Ada", on).Reasons), ReasonHeatSlow)
	require.NotContains(t, codes(weightOf(t, cool.herd(), "Ada", on).Reasons), ReasonHeatSlow)
	require.NotContains(t, codes(weightOf(t, hot.herd(), "Ada", growthStart+60).Reasons), ReasonHeatSlow, "long past")

	unscathed := heatWave(weighedOnce(80), 35, 22).scale(growthStart+21, "Ada", tableKg(80, 21))
	require.InDelta(t, tableKg(80, 21), weightOf(t, unscathed.herd(), "Ada", growthStart+21).WeightKg.Mid, 1.5, "the scale is believed")
	require.Less(t, unscathed.herd().growth().theta[heatSlow], 0.0, "these pigs mind heat less")
}

func TestHeatThatNobodyToldOfSlowsNothing(t *testing.T) {
	july := DateDay(2026, 7, 1)
	plain := func() *book { return new(book).arrive(july, 0, "Ada").scale(july, "Ada", 80) }
	before := plain().add(july-1, Weather{HighC: Float(40), LowC: Float(26)})
	require.Greater(t, before.herd().Air(july+1).MeanC(), mildC, "the guess for the next days is a hot one")
	require.Equal(t, weightOf(t, plain().herd(), "Ada", july+20).WeightKg, weightOf(t, before.herd(), "Ada", july+20).WeightKg)
}

func TestForecastHeatAndAWallow(t *testing.T) {
	on := growthStart + 30
	var days []ForecastDay
	for d := range 10 {
		days = append(days, ForecastDay{On: growthStart + 10 + Day(d), HighC: Float(35), LowC: Float(22)})
	}
	told := lostDays(t, weighedOnce(80), heatWave(weighedOnce(80), 35, 22), on)
	require.InDelta(t, told, lostDays(t, weighedOnce(80), weighedOnce(80).add(growthStart+9, Forecast{Days: days}), on), 1e-9)
	wallow := heatWave(weighedOnce(80).add(growthStart, Setting{Key: SetWallow, Thing: &Thing{AreaM2: Float(5)}}), 35, 22)
	require.InDelta(t, told/2, lostDays(t, weighedOnce(80), wallow, on), 0.01)
}
