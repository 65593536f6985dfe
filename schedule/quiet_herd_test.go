package schedule

import (
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

// After four weeks without a word one line says so; then the round and what is always
// told come, and nothing else, until the person writes.
func TestAfterALongSilenceItRests(t *testing.T) {
	f := calm()
	f.waterDays = 6
	l := newHerd(t, "America/Chicago").add("2026-05-04 09:00",
		model.Booked{Day: d("2026-06-25")},
		model.Remind{Day: d("2026-06-20"), What: "hay"}).
		add("2026-06-30 12:00", model.Note{What: "back"}).
		add("2026-07-01 12:00", model.Weigh{Animals: []string{"Dot"}, WeightKg: 100})
	var after []string
	last, rounds := "", 0
	for _, s := range l.walk("2026-05-04 08:00", "2026-07-05 12:00", with(f)) {
		if s.Standing {
			rounds++
			continue
		}
		if s.Lines[0].Code == CodeCheckSilenceLast {
			last = s.at.Format("2006-01-02 15:04")
		} else if last != "" && s.at.After(l.time(last)) {
			after = append(after, s.at.Format("01-02 ")+s.Lines[0].Code)
		}
	}
	require.Equal(t, "2026-06-01 19:00", last)
	require.Equal(t, []string{"06-23 book_eve", "06-24 book_eve", "06-25 check_gone"}, after[:3])
	require.Equal(t, 8, rounds) // none while nobody says whether the pigs went
}

// Who saw the feeders empty is asked for the pour; not told besides that they may be
// empty, nor that nobody has looked.
func TestFeedSeenEmptyIsOneThingToTell(t *testing.T) {
	f := calm()
	f.feedDays = 4
	seen := model.FeedLevel{Fraction: model.Float(0)}
	told := func(l *log) []string {
		var out []string
		for _, s := range l.walk("2026-05-04 08:00", "2026-05-08 12:00", with(f)) {
			for _, x := range s.Lines {
				if x.About == aboutRefill {
					out = append(out, s.at.Format("Mon 15:04 ")+x.Code)
				}
			}
		}
		return out
	}
	require.Equal(t, []string{"Tue 10:00 refill_seen_empty", "Wed 10:00 refill_seen_empty"}, told(newHerd(t, "America/Chicago").add("2026-05-05 08:00", seen)))
	f.oddFeed = []model.OddFeed{{Kind: model.OddEmpty, Feeder: "hopper", Record: "r5", At: newHerd(t, "America/Chicago").time("2026-05-05 08:00"), WantKg: 100}}
	require.Equal(t, []string{"Tue 12:00 refill_seen_empty", "Wed 12:00 refill_seen_empty"}, told(newHerd(t, "America/Chicago").add("2026-05-05 08:00", seen)))
	require.NotContains(t, told(newHerd(t, "America/Chicago").add("2026-05-05 08:00", seen).add("2026-05-05 09:00", model.Refill{FeedKg: model.Float(80)})), "Tue 10:00 refill_seen_empty")
}

func TestAnAlarmNobodyAnswersIsHeldOnTopOfReplies(t *testing.T) {
	held := func(l *log, at string) int { return len(HeldAlarms(l.herd(l.time(at)), l.time(at))) }
	out := model.Alarm{What: model.AlarmOut}
	l := newHerd(t, "America/Chicago").add("2026-05-05 22:30", out)
	l.walk("2026-05-05 22:30", "2026-05-07 12:00", with(calm()))
	require.Zero(t, held(l, "2026-05-06 06:29")) // told three times so far
	require.Equal(t, 1, held(l, "2026-05-06 07:00"))
	require.Zero(t, held(l, "2026-05-08 07:00"))
	l.add("2026-05-06 08:00", model.Alarm{What: model.AlarmOut, Over: true})
	require.Zero(t, held(l, "2026-05-06 08:01"))
}
