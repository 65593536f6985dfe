package schedule

import (
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"troughbell/model"
)

// killed lives the span as walkSpan does, in a program that is killed and started
// again at the drawn moments: what was decided but not yet kept is gone, and the
// first thing after the start is a look.
func (l *log) killed(rt *rapid.T, from, to time.Time, of func(*model.Herd) figures) []sent {
	var out []sent
	for now := from; !now.After(to); {
		h := l.herd(now)
		due, next := decide(h, of(h), now)
		if rapid.IntRange(0, 3).Draw(rt, "killed before it was kept") == 0 {
			h = l.herd(now)
			due, next = decide(h, of(h), now)
		}
		for _, n := range due {
			out = append(out, sent{now, n})
		}
		if at, ok := l.nextSaid(now); ok && at.Before(next) {
			next = at
		}
		l.tell(now, due)
		if rapid.IntRange(0, 3).Draw(rt, "killed after it was kept") == 0 {
			gap := int(next.Sub(now) / time.Minute)
			next = now.Add(time.Duration(rapid.IntRange(1, max(1, gap)).Draw(rt, "started again")) * time.Minute)
		}
		now = next
	}
	return out
}

func TestARestartAtAnyPointLosesAndRepeatsNothing(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		l, of, from, to := drawn(rt, t)
		undisturbed := l.copy().walkSpan(from, to, of)
		killed := l.copy().killed(rt, from, to, of)
		require.Equal(t, texts(undisturbed), texts(killed))
		for i := range killed {
			require.Equal(t, undisturbed[i].Key, killed[i].Key)
		}
	})
}

func TestNothingIsToldThatARecordHasSettled(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		l, of, from, to := drawn(rt, t)
		for _, s := range l.walkSpan(from, to, of) {
			h := l.herd(s.at)
			f := of(h)
			v, at := newView(h, f, nil, s.at), s.at
			if eve := viewOn(h, f, nil, v.day+1, v.loc); s.Standing && strings.HasPrefix(s.Key, standingToken(eve.day)) { // told the evening before
				v, at = eve, eve.visit
			}
			next := v.next
			late := v.evening(model.DayOf(next.In(v.loc)) + 1).Add(deed) // a round that slips by a day
			for _, line := range s.Lines {
				switch line.Code {
				case CodeRefillVisit, CodeRefillBrim:
					p, err := f.RefillPlan(at, next)
					require.NoError(t, err)
					require.True(t, p.Needed, "%s", s)
				case CodeRefillMidweek, CodeRefillMidweekBrim:
					p, err := f.RefillPlan(s.at, late)
					require.NoError(t, err)
					require.True(t, p.Needed, "%s", s)
				case CodeRefillOut:
					p, err := f.RefillPlan(s.at, next)
					require.NoError(t, err)
					require.False(t, p.LikelyAt.After(s.at), "%s: feed is there until %s", s, p.LikelyAt)
				case CodeWaterMidweek:
					w, err := f.WaterLeft(s.at)
					require.NoError(t, err)
					require.True(t, w.EdgeAt.Before(late), "%s: water is safe until %s", s, w.EdgeAt)
				case CodeWaterVisit, CodeWaterBrim:
					w, err := f.WaterLeft(at)
					require.NoError(t, err)
					require.True(t, w.EdgeAt.Before(next), "%s: water is safe until %s", s, w.EdgeAt)
				case CodeWaterOut:
					w, err := f.WaterLeft(s.at)
					require.NoError(t, err)
					require.False(t, w.LikelyAt.After(s.at), "%s: water is there until %s", s, w.LikelyAt)
				case CodeWaterSeenEmpty:
					last := h.Waters[len(h.Waters)-1]
					require.True(t, last.F.Seen, "%s: filled at %s", s, last.At)
				case CodeAlarmOut, CodeAlarmDown, CodeAlarmFence:
					require.Equal(t, line.At, lastAlarm(h, line.Code).At, "%s", s)
				}
			}
		}
	})
}

// lastAlarm is the latest alarm of the kind that a line speaks of.
func lastAlarm(h *model.Herd, code string) model.Dated[model.Alarm] {
	var last model.Dated[model.Alarm]
	for _, a := range h.Alarms {
		if alarmCodes[a.F.What] == code {
			last = a
		}
	}
	return last
}
