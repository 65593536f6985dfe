package model

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func TestWeatherOfADay(t *testing.T) {
	day := penDay(t, "2026-07-10")
	expect := func(high, low, rh *float64) Forecast {
		return Forecast{Days: []ForecastDay{{On: day, HighC: high, LowC: low, RhPct: rh}}}
	}
	for _, c := range []struct {
		name      string
		facts     []Fact
		high, low *float64
		forecast  bool
	}{
		{"nothing", nil, nil, nil, false},
		{"forecast", []Fact{expect(Float(31), Float(18), nil)}, Float(31), Float(18), true},
		{"a later forecast", []Fact{expect(Float(31), Float(18), nil), expect(Float(34), nil, nil)}, Float(34), Float(18), true},
		{"told", []Fact{expect(Float(31), Float(18), nil), Weather{HighC: Float(28)}}, Float(28), Float(18), false},
		{"told before the forecast", []Fact{Weather{HighC: Float(28)}, expect(Float(31), Float(18), nil)}, Float(28), Float(18), false},
		{"only the night told", []Fact{expect(Float(31), Float(18), nil), Weather{LowC: Float(12)}}, Float(31), Float(12), true},
		{"only the humidity told", []Fact{expect(Float(31), nil, Float(30)), Weather{RhPct: Float(70)}}, Float(31), nil, true},
	} {
		t.Run(c.name, func(t *testing.T) {
			d := fourPigs(t)
			for i, f := range c.facts {
				d.add("2026-07-10 0"+string(rune('6'+i))+":00", f)
			}
			h := d.herd()
			w, forecast, ok := h.WeatherOf(day)
			require.Equal(t, c.high, w.HighC)
			require.Equal(t, c.low, w.LowC)
			require.Equal(t, c.forecast, forecast)
			require.Equal(t, len(c.facts) > 0, ok)
			require.Equal(t, c.high != nil, h.Air(day).HighTold)
		})
	}
}

func TestForecastChecks(t *testing.T) {
	day := Day(20600)
	require.NoError(t, Forecast{Days: []ForecastDay{{On: day, LowC: Float(-4)}}}.Check())
	for _, bad := range []Forecast{
		{},
		{Days: []ForecastDay{{HighC: Float(20)}}},
		{Days: []ForecastDay{{On: day}}},
		{Days: []ForecastDay{{On: day, HighC: Float(75)}}},
	} {
		require.Error(t, bad.Check())
	}
}

func TestOnlyNewsOfAForecastIsKept(t *testing.T) {
	day := penDay(t, "2026-07-10")
	h := fourPigs(t).add("2026-07-09 17:00", Forecast{Days: []ForecastDay{{On: day, HighC: Float(31), LowC: Float(18), RhPct: Float(40)}}}).herd()
	for _, c := range []struct {
		name string
		day  ForecastDay
		news bool
	}{
		{"the same", ForecastDay{On: day, HighC: Float(31), LowC: Float(18), RhPct: Float(40)}, false},
		{"nearly the same", ForecastDay{On: day, HighC: Float(31.6), LowC: Float(17.5), RhPct: Float(44)}, false},
		{"less of it", ForecastDay{On: day, HighC: Float(31)}, false},
		{"hotter", ForecastDay{On: day, HighC: Float(32.2)}, true},
		{"colder night", ForecastDay{On: day, LowC: Float(15)}, true},
		{"damper", ForecastDay{On: day, HighC: Float(31), RhPct: Float(60)}, true},
		{"another day", ForecastDay{On: day + 1, LowC: Float(18)}, true},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := h.ForecastNews([]ForecastDay{c.day})
			require.Equal(t, c.news, len(got) == 1)
		})
	}
}

func TestPlaceIsKeptCoarsely(t *testing.T) {
	p, err := CoarsePlace(44.3149, -89.9512)
	require.NoError(t, err)
	require.Equal(t, "44.3,-90.0", p.String())
	same, err := ParsePlace(p.String())
	require.NoError(t, err)
	require.Equal(t, p, same)
	for _, bad := range []string{"", "44.3", "north,west", "91,0", "0,181", "NaN,0", "Inf,0"} {
		_, err := ParsePlace(bad)
		require.ErrorIs(t, err, errPlace, bad)
	}
	h := newPenDiary(t, "America/Chicago").add("2026-05-01 08:00", Setting{Key: SetPlace, Text: "-34.1,150.8"}).herd()
	require.True(t, h.southern())
	require.InDelta(t, -34.1, h.latitudeDeg(), 1e-9)
	require.Error(t, Setting{Key: SetPlace, Text: "the hill"}.Check())
	require.NoError(t, Setting{Key: SetPlace}.Check())
}
