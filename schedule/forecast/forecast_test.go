package forecast_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/model"
	"troughbell/schedule/forecast"
)

// hours makes hours from a local moment on, each a tenth of a degree warmer than
// the one before, with the humidity of its number.
func hours(t *testing.T, zone *time.Location, from string, n int) []forecast.Hour {
	at, err := time.ParseInLocation("2006-01-02 15:04", from, zone)
	require.NoError(t, err)
	var out []forecast.Hour
	for i := range n {
		out = append(out, forecast.Hour{At: at.Add(time.Duration(i) * time.Hour).UTC(), TempC: float64(i) / 10, RhPct: model.Float(float64(i))})
	}
	return out
}

func TestByDay(t *testing.T) {
	zone, err := time.LoadLocation("America/Chicago")
	require.NoError(t, err)
	day := model.DateDay(2026, 7, 10)
	for _, c := range []struct {
		name, from string
		n          int
		want       []model.ForecastDay
	}{
		{"nothing", "2026-07-10 00:00", 0, nil},
		{"a whole day", "2026-07-10 00:00", 24, []model.ForecastDay{{On: day, HighC: model.Float(2.3), LowC: model.Float(0), RhPct: model.Float(23)}}},
		{"from noon on, the night to come", "2026-07-10 12:00", 24, []model.ForecastDay{{On: day + 1, LowC: model.Float(1.2)}}},
		{"the afternoon only", "2026-07-10 10:00", 9, []model.ForecastDay{{On: day, HighC: model.Float(0.8), RhPct: model.Float(8)}}},
		{"not a whole afternoon", "2026-07-10 13:00", 8, nil},
		{"two days", "2026-07-10 00:00", 48, []model.ForecastDay{
			{On: day, HighC: model.Float(2.3), LowC: model.Float(0), RhPct: model.Float(23)},
			{On: day + 1, HighC: model.Float(4.7), LowC: model.Float(2.4), RhPct: model.Float(47)},
		}},
		{"the night that skips an hour", "2027-03-14 00:00", 12, []model.ForecastDay{{On: model.DateDay(2027, 3, 14), LowC: model.Float(0)}}},
	} {
		t.Run(c.name, func(t *testing.T) {
			require.Equal(t, c.want, forecast.ByDay(hours(t, zone, c.from, c.n), zone))
		})
	}
}

func TestHalfHourZonesHaveWholeDays(t *testing.T) {
	zone, err := time.LoadLocation("Asia/Kolkata")
	require.NoError(t, err)
	at := time.Date(2026, 7, 9, 18, 0, 0, 0, time.UTC) // 23:30 there
	var in []forecast.Hour
	for i := range 30 {
		in = append(in, forecast.Hour{At: at.Add(time.Duration(i) * time.Hour), TempC: 20})
	}
	got := forecast.ByDay(in, zone)
	require.Len(t, got, 1)
	require.NotNil(t, got[0].HighC)
	require.NotNil(t, got[0].LowC)
	require.Nil(t, got[0].RhPct)
}
