package schedule

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

func TestUpcomingListsEachThingOnceInOrder(t *testing.T) {
	f := calm()
	f.feedDays, f.waterDays = 12, 8.5
	f.worm, f.move, f.weigh = d("2026-05-14"), d("2026-05-19"), d("2026-06-30")
	l := newHerd(t, "America/Chicago").add("2026-05-06 10:00",
		model.Remind{Day: d("2026-05-13"), What: "call the shop"},
		model.Remind{Day: d("2026-07-01"), What: "hay"},
		model.Booked{Day: d("2026-05-20")},
	)
	tests := []struct {
		name, now string
		days      int
		want      []string
	}{
		{"two weeks", "2026-05-06 12:00", 14, []string{CodeWaterBrim, CodeOwnReminder, CodeWormDue, CodeMoveDue, CodeBookAhead}},
		{"a few days", "2026-05-06 12:00", 4, []string{CodeWaterBrim}},
		{"on the chore day", "2026-05-09 08:00", 2, []string{CodeWaterBrim}},
		{"on its evening: the next visit", "2026-05-09 20:00", 14, []string{
			CodeWaterMidweek, CodeOwnReminder, CodeWormDue, CodeRefillVisit, CodeMoveDue, CodeBookAhead,
		}},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			now := l.time(tt.now)
			h := l.herd(now)
			got := upcoming(h, with(f)(h), now, tt.days)
			require.Equal(t, tt.want, codes(got))
			seen := map[string]bool{}
			for _, line := range got {
				require.False(t, seen[line.Topic])
				seen[line.Topic] = true
			}
		})
	}
}

func TestUpcomingOfARealHerd(t *testing.T) {
	l := sevenPigs(t)
	now := l.time("2026-07-08 12:00")
	lines := Upcoming(l.herd(now), now, 14)
	require.NotEmpty(t, lines)
	require.Contains(t, codes(lines), CodeWaterMidweek)
	require.Empty(t, Upcoming(model.Fold(nil), now, 14))
}

func TestLookAgainOfAnEmptyHerd(t *testing.T) {
	now := time.Date(2026, 5, 6, 12, 0, 0, 0, time.UTC)
	due, next := Decide(model.Fold(nil), now)
	require.Empty(t, due)
	require.Equal(t, now.Add(24*time.Hour), next)
}
