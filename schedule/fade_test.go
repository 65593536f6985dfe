package schedule

import (
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

func TestIgnoredTopicsFade(t *testing.T) {
	f := calm()
	f.move = d("2026-05-05")
	note := func(l *log, at string) { l.add(at, model.Note{What: "all good"}) }
	tests := []struct {
		name string
		say  func(*log)
		want []string // of the chore days from 9 May on
	}{
		{"never answered: asked the fourth time, then monthly", func(*log) {}, []string{
			"move_due", "move_due", "move_due", "keep_asking", "", "", "move_due", "", "", "", "move_due",
		}},
		{"keep", func(l *log) {
			at := l.time("2026-05-30 08:00")
			l.add("2026-05-30 08:00", model.Snooze{Topics: []string{aboutMove}, Until: at})
		}, []string{"move_due", "move_due", "move_due", "keep_asking", "move_due", "move_due", "move_due", "keep_asking", "", "", "move_due"}},
		{"monthly", func(l *log) {
			l.add("2026-05-30 08:00", model.Snooze{Topics: []string{aboutMove}, Until: l.time("2026-06-27 07:00")})
		}, []string{"move_due", "move_due", "move_due", "keep_asking", "", "", "", "move_due", "move_due", "move_due", "keep_asking"}},
		{"stop", func(l *log) {
			l.add("2026-05-30 08:00", model.Snooze{About: []string{aboutMove}, Stop: true})
		}, []string{"move_due", "move_due", "move_due", "keep_asking", "", "", "", "", "", "", ""}},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			l := newHerd(t, "America/Chicago")
			for _, day := range []string{"05-11", "05-18", "05-25", "06-01", "06-08", "06-15", "06-22", "06-29", "07-06", "07-13"} {
				note(l, "2026-"+day+" 12:00")
			}
			tt.say(l)
			var got []string
			for _, s := range l.walk("2026-05-04 08:00", "2026-07-18 12:00", with(f)) {
				require.True(t, s.Standing, "%s", s)
				code := ""
				if len(s.Lines) > 0 {
					code = s.Lines[0].Code
					require.Equal(t, []string{aboutMove}, s.About())
				}
				if code == CodeKeepAsking {
					require.Equal(t, []Button{ButtonKeep, ButtonMonthly, ButtonStop}, s.Buttons)
				}
				got = append(got, code)
			}
			require.Equal(t, tt.want, got)
		})
	}
}

func TestAnIgnoredEveningWaitsForTheChoreDay(t *testing.T) {
	l := newHerd(t, "America/Chicago").add("2026-05-04 09:00",
		model.Recipe{Ingredients: map[string]float64{"corn": 30, "soybean meal 48": 10}},
		model.Stock{Ingredient: "soybean meal 48", FeedKg: model.Float(5)})
	for _, day := range []string{"05-11", "05-18", "05-25"} {
		l.add("2026-"+day+" 12:00", model.Note{What: "all good"})
	}
	f := calm()
	f.pour = 35
	var evenings []string
	for _, s := range l.walk("2026-05-04 08:00", "2026-05-31 12:00", with(f)) {
		if !s.Standing {
			evenings = append(evenings, s.String())
		}
	}
	require.Equal(t, []string{
		"Fri 2026-05-08 17:00 off-day routine stock_eve", "Fri 2026-05-15 17:00 off-day routine stock_eve",
	}, evenings)
}
