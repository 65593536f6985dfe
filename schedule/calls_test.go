package schedule

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

// offDay lists what is told between visits of a herd that logs these facts.
func offDay(t *testing.T, f fake, to string, say func(l *log)) []string {
	t.Helper()
	l := newHerd(t, "America/Chicago")
	if say != nil {
		say(l)
	}
	var out []string
	for _, s := range l.walk("2026-05-04 08:00", to, with(f)) {
		if !s.Standing && s.Lines[0].About != aboutCheck {
			out = append(out, s.String())
		}
	}
	return out
}

func TestFeedAndWaterOfOneEveningAreOneTrip(t *testing.T) {
	f := calm()
	f.feedDays, f.waterDays = 3.5, 4.5 // cautious edges: Thursday 20:00 and Friday 20:00
	require.Equal(t, []string{"Thu 2026-05-07 07:00 off-day welfare refill_midweek,water_midweek"}, offDay(t, f, "2026-05-08 12:00", nil))
	f.waterDays = 6.5 // safe to the visit
	require.Equal(t, []string{"Thu 2026-05-07 07:00 off-day welfare refill_midweek"}, offDay(t, f, "2026-05-07 12:00", nil))
}

// Whoever was seen to act a day late twice is called a day earlier.
func TestALateHandIsCalledEarlier(t *testing.T) {
	f := calm()
	f.waterDays = 3.5
	fills := func(hour string, days ...string) func(l *log) {
		return func(l *log) {
			for _, d := range days {
				l.add("2026-05-"+d+" "+hour, model.Water{Full: true})
			}
		}
	}
	// Filled on the 16th at 20:00 it is safe until Wednesday the 20th, 8:00.
	inTime := offDay(t, f, "2026-05-19 23:00", fills("20:00", "07", "10", "13", "16"))
	require.Equal(t, "Tue 2026-05-19 19:00 off-day welfare water_midweek", inTime[len(inTime)-1])
	late := offDay(t, f, "2026-05-19 18:00", fills("20:00", "08", "12", "16"))
	require.Equal(t, "Mon 2026-05-18 19:00 off-day welfare water_midweek", late[len(late)-1])
}

// Where rounds were seen to slip by a day, what is safe to the round but hardly to
// the day after is called for on the evening before; where they were not, it is
// left to the round.
func TestARoundThatSlippedIsNotWaitedFor(t *testing.T) {
	f := calm()
	f.waterDays = 7.2 // from a Saturday 19:30 safe to the next one's night, likely for nine days
	fills := func(at ...string) func(l *log) {
		return func(l *log) {
			for _, a := range at {
				l.add("2026-05-"+a, model.Water{Full: true})
			}
		}
	}
	tests := []struct {
		name, until string
		fills       []string
		calls       string // the last one that begins with it; empty: none
	}{
		{"in time each week", "2026-05-23 06:00", []string{"09 09:00", "16 09:00"}, ""},
		{"once a day late", "2026-05-23 06:00", []string{"10 19:30", "16 09:00"}, "Fri 2026-05-22 19:00 off-day welfare water_midweek"},
		{"late, and lasting past a late round", "2026-05-23 06:00", []string{"10 19:30", "18 20:00"}, ""},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			var late []string
			for _, c := range offDay(t, f, tt.until, fills(tt.fills...)) {
				if strings.Contains(c, "2026-05-22") {
					late = append(late, c)
				}
			}
			require.Equal(t, tt.calls, strings.Join(late, "; "))
		})
	}
}

func TestHeatOfASpellIsToldOnceADay(t *testing.T) {
	f := calm()
	f.heat = map[model.Day]model.HeatClass{}
	l := newHerd(t, "America/Chicago")
	for _, day := range []string{"2026-05-11", "2026-05-12", "2026-05-13"} {
		f.heat[d(day)] = model.HeatDanger
		l.weather("2026-05-10 12:00", day, 36, 20)
	}
	var got []string
	for _, s := range l.walk("2026-05-10 13:00", "2026-05-13 23:00", with(f)) {
		if s.Lines[0].About == aboutHeat {
			got = append(got, s.String())
		}
	}
	require.Equal(t, []string{
		"Sun 2026-05-10 19:00 off-day danger heat_danger",
		"Mon 2026-05-11 07:00 off-day danger heat_danger", // the first day of it once more
		"Mon 2026-05-11 19:00 off-day danger heat_danger",
		"Tue 2026-05-12 19:00 off-day danger heat_danger",
	}, got)
}
