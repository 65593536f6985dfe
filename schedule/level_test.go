package schedule

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

// The figures here are the model's own: 250 kg filled on Monday, three pigs of
// 25 kg eat some 4 kg a day of it.
func TestFeederSeenTooFullMayBeBridged(t *testing.T) {
	tests := []struct {
		name string
		say  model.Fact
		want bool
	}{
		{"far too full", model.FeedLevel{FeedKg: model.Float(248)}, true},
		{"as expected", model.FeedLevel{FeedKg: model.Float(200)}, false},
		{"emptier than expected", model.FeedLevel{FeedKg: model.Float(90)}, false},
		{"days only", model.FeedLevel{Days: model.Float(60)}, false},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			l := newHerd(t, "America/Chicago").
				add("2026-05-04 09:00", model.Refill{FeedKg: model.Float(240), Full: true, FromEmpty: true}).
				add("2026-05-18 09:00", tt.say)
			now := l.time("2026-05-18 10:00")
			h := l.herd(now)
			due, _ := Decide(h, now)
			var got []Line
			for _, n := range due {
				for _, x := range n.Lines {
					if x.Code == CodeLevelBridged {
						got = append(got, x)
					}
				}
			}
			require.Equal(t, tt.want, len(got) == 1, "%v", got)
			if tt.want {
				require.Equal(t, []string{"hopper"}, got[0].Names)
				require.InDelta(t, 248, got[0].Q[0].Value, 0.01)
				require.Less(t, got[0].Q[1].Value, 220.0)
				poured := l.add("2026-05-18 09:30", model.Refill{FeedKg: model.Float(5)}).herd(now)
				again, _ := Decide(poured, now)
				for _, n := range again {
					require.NotContains(t, codes(n.Lines), CodeLevelBridged)
				}
			}
		})
	}
}

func TestLevelMidweekForWhoAsked(t *testing.T) {
	l := newHerd(t, "America/Chicago").add("2026-05-04 09:00", model.Setting{Key: model.SetLevel, Text: model.LevelMidweek}).
		add("2026-05-18 09:00", model.Refill{FeedKg: model.Float(20)})
	var got []string
	for _, s := range texts(l.walk("2026-05-09 08:00", "2026-05-31 08:00", with(calm()))) {
		if strings.Contains(s, CodeLevelMidweek) {
			got = append(got, s)
		}
	}
	require.Equal(t, []string{"Tue 2026-05-12 19:00 off-day routine level_midweek", "Tue 2026-05-26 19:00 off-day routine level_midweek"}, got)
}
