package model

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestTHIRefusesWhatIsNoWeather(t *testing.T) {
	for _, c := range []struct {
		name      string
		temp, rh  float64
		wrong     string
		low, high float64
	}{
		{"Fahrenheit by mistake", 95, 50, "temp_c", -60, 60},
		{"too cold", -61, 50, "temp_c", -60, 60},
		{"no number", math.NaN(), 50, "temp_c", -60, 60},
		{"over full", 30, 101, "rh_pct", 0, 100},
		{"negative", 30, -1, "rh_pct", 0, 100},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := THI(c.temp, c.rh)
			var out *OutOfRange
			require.ErrorAs(t, err, &out)
			require.Equal(t, c.wrong, out.Quantity)
			require.Equal(t, []float64{c.low, c.high}, []float64{out.Low, out.High})
		})
	}
}

func TestTHIAgreesWithTheHandbookForm(t *testing.T) {
	// THI = 0.8 T + RH (T - 14.4) + 46.4, T in Celsius, RH as a fraction:
	// Veterinary Handbook, section 14.2.
	for temp := 24.0; temp <= 38; temp += 0.5 {
		for rh := 20.0; rh <= 90; rh += 5 {
			v, err := THI(temp, rh)
			require.NoError(t, err)
			require.InDelta(t, 0.8*temp+rh/100*(temp-14.4)+46.4, v, 0.25)
		}
	}
}

func TestTHIRisesWithHeatAndInHeatWithHumidity(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		temp := rapid.Float64Range(15, 45).Draw(r, "temp")
		rh := rapid.Float64Range(0, 95).Draw(r, "rh")
		v := sumOf(t)(THI(temp, rh))
		require.Less(r, v, sumOf(t)(THI(temp+1, rh)))
		require.Less(r, v, sumOf(t)(THI(temp, rh+5)))
	})
}

func TestHeatClassOfTheHerd(t *testing.T) {
	for _, c := range []struct {
		name     string
		weightKg float64
		weather  Weather
		class    HeatClass
		assumed  bool
		why      string
	}{
		{"mild", 30, Weather{HighC: Float(20)}, HeatNormal, true, HeatHighTold},
		{"warm, light pigs", 30, Weather{HighC: Float(25), RhPct: Float(30)}, HeatNormal, false, HeatHumidity},
		{"warm, heavy pigs", 95, Weather{HighC: Float(24), RhPct: Float(30)}, HeatWatch, false, HeatHeavyPigs},
		{"warm, unknown weight", 0, Weather{HighC: Float(24), RhPct: Float(30)}, HeatWatch, false, HeatWeightUnknown},
		{"hot and dry, light pigs", 30, Weather{HighC: Float(27), RhPct: Float(20)}, HeatWatch, false, HeatPlainLine},
		{"alert", 30, Weather{HighC: Float(27.5), RhPct: Float(52)}, HeatAlert, false, HeatIndex},
		{"danger", 30, Weather{HighC: Float(30.5), RhPct: Float(52)}, HeatDanger, false, HeatIndex},
		{"emergency", 30, Weather{HighC: Float(35), RhPct: Float(60)}, HeatEmergency, false, HeatIndex},
		{"humidity assumed", 30, Weather{HighC: Float(32)}, HeatDanger, true, HeatHumidityAssumed},
		{"frost", 30, Weather{HighC: Float(-5)}, HeatNormal, true, HeatHighTold},
	} {
		t.Run(c.name, func(t *testing.T) {
			pigs := Arrive{Count: 3}
			if c.weightKg > 0 {
				pigs.WeightKg = Float(c.weightKg)
			}
			d := newPenDiary(t, "America/Chicago").add("2026-07-10 09:00", pigs).add("2026-07-10 10:00", c.weather)
			f, err := d.herd().Heat(penDay(t, "2026-07-10"))
			require.NoError(t, err)
			require.Equal(t, c.class, f.Class)
			require.Equal(t, c.assumed, f.RhAssumed)
			require.Equal(t, *c.weather.HighC, f.HighC)
			reasonWith(t, f.Reasons, c.why)
		})
	}
}

func TestHeatOfAForecast(t *testing.T) {
	day := penDay(t, "2026-07-10")
	expected := Forecast{Days: []ForecastDay{{On: day, HighC: Float(32), LowC: Float(19), RhPct: Float(40)}}}
	d := fourPigs(t).add("2026-07-09 17:00", expected)
	f, err := d.herd().Heat(day)
	require.NoError(t, err)
	require.Equal(t, HeatDanger, f.Class)
	require.False(t, f.RhAssumed)
	reasonWith(t, f.Reasons, HeatHighForecast)

	// What is told stands, the forecast's moisture in the air of the told high.
	f, err = d.add("2026-07-10 15:00", Weather{HighC: Float(28)}).herd().Heat(day)
	require.NoError(t, err)
	require.Equal(t, 28.0, f.HighC)
	require.InDelta(t, 40*4.755/3.780, f.RhPct, 0.2, "saturation pressure at 32 and 28 °C: FAO-56 table 2.3, from memory")
	reasonWith(t, f.Reasons, HeatHighTold)
}

func TestHeatAsksForTheTemperature(t *testing.T) {
	day := penDay(t, "2026-07-10")
	for _, c := range []struct {
		name  string
		facts []Fact
	}{
		{"nothing told", nil},
		{"only the night", []Fact{Weather{LowC: Float(22)}}},
		{"only the humidity", []Fact{Weather{RhPct: Float(80)}}},
	} {
		t.Run(c.name, func(t *testing.T) {
			d := fourPigs(t).add("2026-07-10 08:00", c.facts...)
			_, err := d.herd().Heat(day)
			requireMissing(t, err, "temperature")
		})
	}
	t.Run("told for another day", func(t *testing.T) {
		d := fourPigs(t).add("2026-07-09 08:00", Weather{HighC: Float(33)})
		_, err := d.herd().Heat(day)
		requireMissing(t, err, "temperature")
	})
}
