package schedule

import (
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

// odd is a herd of which a feeder took too much and a barrel too little on the
// same Wednesday.
func odd(l *log) fake {
	f := calm()
	at := l.time("2026-05-06 10:00")
	f.oddFeed = []model.OddFeed{{Kind: model.OddMore, Record: "fill", Feeder: "hopper", From: at.AddDate(0, 0, -7), At: at, UsedKg: 60, WantKg: 40}}
	f.oddWater = []model.OddWater{{Kind: model.OddLess, Record: "seen", Barrels: []string{"barrel"}, From: at.AddDate(0, 0, -3), At: at, DrawnL: 20, WantL: 60}}
	return f
}

func TestOneQuestionADayTheGravestFirst(t *testing.T) {
	l := newHerd(t, "America/Chicago")
	got := texts(l.walk("2026-05-06 08:00", "2026-05-09 06:00", with(odd(l))))
	require.Equal(t, []string{"Wed 2026-05-06 19:00 off-day welfare odd_water_less", "Thu 2026-05-07 07:00 off-day routine odd_feed_more"}, got)
}

func TestQuestionsCarryTheirChoices(t *testing.T) {
	l := newHerd(t, "America/Chicago")
	f := odd(l)
	for _, kind := range []model.OddKind{model.OddMore, model.OddLess, model.OddEmpty} {
		f.oddFeed[0].Kind = kind
		for _, sent := range l.copy().walk("2026-05-06 08:00", "2026-05-09 06:00", with(f)) {
			for _, line := range sent.Lines {
				require.Equal(t, aboutCheck, line.About)
				require.Len(t, line.Choices, 4)
				require.Subset(t, Choices, line.Choices)
				require.NotEmpty(t, line.Of)
				require.Equal(t, []Button{}, sent.Buttons, "its choices are its buttons")
			}
		}
	}
}

func TestQuestionsKeepQuietHoursAndAreSettled(t *testing.T) {
	l := newHerd(t, "America/Chicago")
	f := calm()
	late := l.time("2026-05-06 20:40")
	f.oddFeed = []model.OddFeed{{Kind: model.OddLess, Record: "fill", Feeder: "hopper", From: late.AddDate(0, 0, -7), At: late, UsedKg: 20, WantKg: 40}}
	l.add("2026-05-06 20:40", model.Refill{FeedKg: model.Float(20), Full: true})
	got := texts(l.copy().walk("2026-05-06 20:40", "2026-05-09 06:00", with(f)))
	require.Equal(t, []string{"Thu 2026-05-07 07:00 off-day welfare odd_feed_less"}, got)
	muted := l.copy().add("2026-05-05 08:00", model.Setting{Key: model.SetMute, Text: aboutCheck})
	require.Empty(t, muted.walk("2026-05-06 20:40", "2026-05-09 06:00", with(f)))
	// A question of the program's own is not put again in the evening or at the visit.
	asked := newHerd(t, "America/Chicago").add("2026-05-06 10:00", model.Question{About: aboutCheck, Code: CodeOddFeedMore, Of: "fill"})
	for _, s := range asked.walk("2026-05-06 11:00", "2026-05-10 06:00", with(calm())) {
		require.NotContains(t, s.String(), CodeCheckQuestion)
	}
}

// What was foretold wrong is owned once, in the next standing message.
func TestMissedForecastIsOwned(t *testing.T) {
	fill := func(l *log, used float64) model.FeedFill {
		at := l.time("2026-05-06 10:00")
		return model.FeedFill{
			Record: "fill", Feeder: "hopper", At: at, Since: at.Add(-7 * 24 * time.Hour), Closed: true,
			TookKg: used, UsedKg: used, Expected: model.Interval{Mid: 40}, Before: 1, After: 1 + (used/40-1)/4,
		}
	}
	tests := []struct {
		name string
		used float64
		say  []model.Fact
		want int
	}{
		{"a fifth more", 48, nil, 1},
		{"a fifth less", 32, nil, 1},
		{"as foretold", 43, nil, 0},
		{"asked about", 48, []model.Fact{model.Question{About: aboutCheck, Code: CodeOddFeedMore, Of: "fill"}}, 0},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			for _, busy := range []bool{false, true} {
				l := newHerd(t, "America/Chicago").add("2026-05-06 10:05", tt.say...)
				f := calm()
				f.fills = []model.FeedFill{fill(l, tt.used)}
				if busy {
					f.move = d("2026-05-10")
				}
				told := 0
				for _, s := range l.walk("2026-05-08 08:00", "2026-05-24 08:00", with(f)) {
					for _, line := range append(s.Lines, s.Well...) {
						if line.Code == CodeMissedFeed {
							told++
							require.True(t, s.Standing)
							require.Len(t, line.Q, 3)
							require.Equal(t, busy, strings.Contains(strings.Join(s.About(), " "), aboutCheck), "alone it is still all well")
						}
					}
				}
				require.Equal(t, tt.want, told)
			}
		})
	}
}
