package schedule

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

// Each day has one night's work, also where the clock leaves the hour out
// (Helsinki goes from 3 to 4) or goes through it twice.
func TestEachDayHasOneNight(t *testing.T) {
	for _, name := range []string{"America/Chicago", "Europe/Helsinki", "Africa/Cairo", "Australia/Lord_Howe", "UTC"} {
		zone, err := time.LoadLocation(name)
		require.NoError(t, err)
		last := model.DateDay(2025, 12, 31)
		begun := 0
		for now := time.Date(2026, 1, 1, 3, 20, 0, 0, zone); now.Before(time.Date(2027, 1, 1, 0, 0, 0, 0, zone)); now = now.Add(10 * time.Minute) {
			night := NightOf(now)
			if night == last {
				continue
			}
			require.Equal(t, last+1, night, "%s at %s", name, now)
			require.Contains(t, []int{3, 4}, now.Hour(), "%s at %s", name, now)
			last = night
			begun++
		}
		require.Equal(t, 365, begun, name)
	}
}
