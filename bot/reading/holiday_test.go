package reading

import (
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

// TestHolidays holds the moving holidays against the calendar of the year.
func TestHolidays(t *testing.T) {
	l := words()
	for _, c := range []struct {
		words string
		year  int
		want  string
	}{
		{"easter", 2024, "2024-03-31"},
		{"easter", 2025, "2025-04-20"},
		{"easter", 2026, "2026-04-05"},
		{"easter", 2038, "2038-04-25"},
		{"good friday", 2026, "2026-04-03"},
		{"easter monday", 2026, "2026-04-06"},
		{"labor day", 2026, "2026-09-07"},
		{"memorial day", 2026, "2026-05-25"},
		{"memorial day", 2027, "2027-05-31"},
		{"thanksgiving", 2026, "2026-11-26"},
		{"mother's day", 2026, "2026-05-10"},
		{"father's day", 2026, "2026-06-21"},
	} {
		require.Equal(t, c.want, l.of[c.words].day.movingIn(c.year).String(), "%s %d", c.words, c.year)
	}
	day := func(s string) model.Day {
		d, err := model.ParseDay(s)
		require.NoError(t, err)
		return d
	}
	for _, c := range []struct{ holiday, from, to string }{
		{"2026-09-07", "2026-09-05", "2026-09-07"}, // a Monday
		{"2026-11-26", "2026-11-26", "2026-11-29"}, // a Thursday
		{"2026-07-04", "2026-07-04", "2026-07-05"}, // a Saturday
	} {
		from, to := longWeekend(day(c.holiday))
		require.Equal(t, c.from, from.String())
		require.Equal(t, c.to, to.String())
	}
}
