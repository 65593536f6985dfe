package schedule

import (
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

func eve(hour ...string) model.Setting { return model.Setting{Key: model.SetEve, List: hour} }

func standingAt(ss []sent) []string {
	var out []string
	for _, s := range ss {
		if s.Standing {
			out = append(out, s.at.Format("Mon 15:04"))
		}
	}
	return out
}

// Chores are on Saturdays at seven; the herd came on Monday 4 May 2026.
func TestTheRoundIsToldOnTheEveningBeforeIt(t *testing.T) {
	chore := func(days ...string) model.Setting { return model.Setting{Key: model.SetChore, List: days} }
	tests := []struct {
		name string
		says func(l *log)
		to   string
		want []string
	}{
		{"from the start", func(l *log) { l.add("2026-05-04 09:00", eve("19:00")) }, "2026-05-17 12:00", []string{"Fri 19:00", "Fri 19:00"}},
		{"asked for when the hour has passed: the morning", func(l *log) { l.add("2026-05-08 20:00", eve("19:00")) }, "2026-05-17 12:00", []string{"Sat 07:00", "Fri 19:00"}},
		{"taken back after it was told: not twice", func(l *log) {
			l.add("2026-05-04 09:00", eve("19:00")).add("2026-05-08 20:00", eve())
		}, "2026-05-17 12:00", []string{"Fri 19:00", "Sat 07:00"}},
		{"asked for on the chore day after the round, with the next day one too", func(l *log) {
			l.add("2026-05-04 09:00", chore("sat", "sun")).add("2026-05-09 12:00", eve("19:00"))
		}, "2026-05-17 12:00", []string{"Sat 07:00", "Sun 07:00", "Fri 19:00", "Sat 19:00"}},
		{"the chore day moved on the evening itself", func(l *log) {
			l.add("2026-05-04 09:00", eve("19:00")).add("2026-05-08 12:00", chore("sun"))
		}, "2026-05-17 12:00", []string{"Sat 19:00", "Sat 19:00"}},
		{"away on the evening, back for the round", func(l *log) {
			l.add("2026-05-04 09:00", eve("19:00"), model.AwayFrom{From: model.DateDay(2026, 5, 6), To: model.DateDay(2026, 5, 8)})
		}, "2026-05-10 12:00", []string{"Sat 07:00"}},
		{"away for the round", func(l *log) {
			l.add("2026-05-04 09:00", eve("19:00"), model.AwayFrom{From: model.DateDay(2026, 5, 9), To: model.DateDay(2026, 5, 9)})
		}, "2026-05-16 12:00", []string{"Fri 19:00"}},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			l := newHerd(t, "America/Chicago")
			tt.says(l)
			require.Equal(t, tt.want, standingAt(l.walk("2026-05-04 08:00", tt.to, with(calm()))))
		})
	}
}

// A fill logged between the evening's message and the round leaves nothing to ask
// for; one that nobody logs is asked for on the evening after the round.
func TestTheEveningsMessageIsTheOneThatAsksForTheFill(t *testing.T) {
	f := calm()
	f.waterDays = 6
	notFilled := func(l *log) bool {
		for _, s := range l.walk("2026-05-04 08:00", "2026-05-11 06:00", with(f)) {
			for _, x := range s.Lines {
				if x.Code == CodeCheckNotFilled {
					require.Equal(t, "Sun 19:00", s.at.Format("Mon 15:04"))
					return true
				}
			}
		}
		return false
	}
	require.True(t, notFilled(newHerd(t, "America/Chicago").add("2026-05-04 09:00", eve("19:00"))))
	require.False(t, notFilled(newHerd(t, "America/Chicago").add("2026-05-04 09:00", eve("19:00")).add("2026-05-09 09:00", model.Water{Full: true})))
}
