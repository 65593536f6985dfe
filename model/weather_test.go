package model

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func TestAirOfADay(t *testing.T) {
	day := penDay(t, "2026-07-10")
	for _, c := range []struct {
		name      string
		facts     []Fact
		high, low float64
		told      bool
		guessed   bool
	}{
		{"high and low", []Fact{Weather{HighC: Float(30), LowC: Float(17)}}, 30, 17, true, false},
		{"only the high", []Fact{Weather{HighC: Float(30)}}, 30, 20, true, false},
		{"only the low", []Fact{Weather{LowC: Float(17)}}, 27, 17, false, false},
		{"low above the high", []Fact{Weather{HighC: Float(15), LowC: Float(17)}}, 15, 15, true, false},
		{"felt stands over forecast", []Fact{Forecast{Days: []ForecastDay{{On: day, HighC: Float(35)}}}, Weather{HighC: Float(28), LowC: Float(15)}}, 28, 15, true, false},
	} {
		t.Run(c.name, func(t *testing.T) {
			d := fourPigs(t)
			for i, f := range c.facts {
				d.add("2026-07-10 0"+string(rune('6'+i))+":00", f)
			}
			air := d.herd().Air(day)
			require.Equal(t, c.high, air.HighC)
			require.Equal(t, c.low, air.LowC)
			require.Equal(t, c.told, air.HighTold)
			require.Equal(t, c.guessed, air.Guessed)
			require.True(t, air.RhAssumed)
			require.GreaterOrEqual(t, air.DaytimeC(), air.MeanC())
			require.LessOrEqual(t, air.DaytimeC(), air.HighC)
		})
	}
}

func TestUntoldDaysFollowSeasonAndHemisphere(t *testing.T) {
	north := newPenDiary(t, "America/Chicago").herd()
	south := newPenDiary(t, "Australia/Sydney").herd()
	unknown := &Herd{}
	july, january := penDay(t, "2026-07-15"), penDay(t, "2026-01-15")
	require.True(t, north.Air(july).Guessed)
	require.Greater(t, north.Air(july).MeanC(), north.Air(january).MeanC()+15)
	require.Less(t, south.Air(july).MeanC(), south.Air(january).MeanC()-8)
	require.Equal(t, north.Air(july), unknown.Air(july))
	require.Negative(t, south.latitudeDeg())
}

func TestAToldDayColoursTheDaysBesideIt(t *testing.T) {
	d := fourPigs(t)
	plain := d.herd().Air(penDay(t, "2026-07-11")).HighC
	d.add("2026-07-10 12:00", Weather{HighC: Float(40), LowC: Float(28)})
	h := d.herd()
	next := h.Air(penDay(t, "2026-07-11"))
	require.True(t, next.Guessed)
	require.Greater(t, next.HighC, plain+3)
	require.Less(t, h.Air(penDay(t, "2026-07-15")).HighC, next.HighC)
	require.InDelta(t, plain, h.Air(penDay(t, "2026-07-25")).HighC, 1.5, "two weeks on nothing is left of it")
}

func TestEvaporationRefusesWhatItDoesNotCover(t *testing.T) {
	_, err := ExtraterrestrialRadiation(70, 100)
	var out *OutOfRange
	require.ErrorAs(t, err, &out)
	require.Equal(t, "latitude_deg", out.Quantity)
	_, err = ExtraterrestrialRadiation(40, 367)
	require.ErrorAs(t, err, &out)
	require.Equal(t, "year_day", out.Quantity)
	for _, c := range [][3]float64{{20, 10, 30}, {10, 95, 30}, {-80, 10, 30}, {10, 20, -1}, {10, 20, 80}} {
		_, err = ReferenceEvapotranspiration(c[0], c[1], c[2])
		require.ErrorAs(t, err, &out)
	}
	frost, err := ReferenceEvapotranspiration(-40, -30, 10)
	require.NoError(t, err)
	require.Zero(t, frost, "deep frost gives nothing off")
}

func TestHumidityOfLow(t *testing.T) {
	// FAO-56 (1998), annex 2, table 2.3, saturation vapour pressure, from memory:
	// 3.17 kPa at 25 C, 5.62 kPa at 35 C.
	require.InDelta(t, 100*3.17/5.62, humidityOfLow(35, 25), 0.2)
	require.InDelta(t, 100, humidityOfLow(20, 20), 1e-9)
}
