package schedule

import (
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

func TestDecideAfterAnOutage(t *testing.T) {
	tests := []struct {
		name           string
		f              func(*fake)
		say            func(*log)
		down, up       string
		want           []string
		later, laterIs string // a second look, with the same outage
	}{
		{name: "short, nothing fell due", down: "2026-05-06 10:00", up: "2026-05-06 11:30"},
		{name: "short, the standing message fell due", down: "2026-05-09 06:30", up: "2026-05-09 07:40", want: []string{
			"Sat 2026-05-09 07:40 standing routine ",
		}},
		{name: "long, nothing fell due", down: "2026-05-06 08:00", up: "2026-05-06 12:00", want: []string{
			"Wed 2026-05-06 12:00 off-day routine catch_up_down",
		}},
		{name: "over the chore hour, back before the evening", down: "2026-05-08 22:00", up: "2026-05-09 13:00", want: []string{
			"Sat 2026-05-09 13:00 standing routine ", "Sat 2026-05-09 13:00 off-day routine catch_up_down",
		}},
		{
			name: "over the chore day: folded in", f: func(f *fake) { f.move = d("2026-05-10") },
			down: "2026-05-08 22:00", up: "2026-05-10 09:00", want: []string{
				"Sun 2026-05-10 09:00 off-day routine catch_up_down,move_due",
			},
		},
		{
			name: "back in the evening of the chore day: folded in", f: func(f *fake) { f.move = d("2026-05-10") },
			down: "2026-05-08 22:00", up: "2026-05-09 20:00", want: []string{
				"Sat 2026-05-09 20:00 off-day routine catch_up_down,move_due",
			},
		},
		{name: "an old question is dropped, a reminder is not", say: func(l *log) {
			l.add("2026-05-06 10:00", model.Question{About: "refill", Code: "bag_size"},
				model.Remind{Day: d("2026-05-06"), Minute: model.Int(18 * 60), What: "call the shop"})
		}, down: "2026-05-06 12:00", up: "2026-05-06 20:30", want: []string{
			"Wed 2026-05-06 20:30 off-day routine catch_up_down,own_reminder",
		}},
		{name: "an alarm goes out by itself", say: func(l *log) {
			l.add("2026-05-06 10:00", model.Alarm{What: model.AlarmOut})
		}, down: "2026-05-06 11:00", up: "2026-05-06 20:30", want: []string{
			"Wed 2026-05-06 20:30 off-day danger alarm_out", "Wed 2026-05-06 20:30 off-day routine catch_up_down",
		}},
		{name: "in the night: dangers now, the rest in the morning", say: func(l *log) {
			l.add("2026-05-06 10:00", model.Alarm{What: model.AlarmOut})
		}, down: "2026-05-06 11:00", up: "2026-05-07 03:00", want: []string{
			"Thu 2026-05-07 03:00 off-day danger alarm_out",
		}, later: "2026-05-07 06:00", laterIs: CodeCatchUpDown},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			l := newHerd(t, "America/Chicago")
			f := calm()
			if tt.f != nil {
				tt.f(&f)
			}
			if tt.say != nil {
				tt.say(l)
			}
			l.walkSpan(l.time("2026-05-04 08:00"), l.time(tt.down), with(f))
			now, from := l.time(tt.up), l.time(tt.down)
			look := func() []string {
				due, next := decideAfter(l.herd(now), with(f)(l.herd(now)), now, from)
				require.True(t, next.After(now))
				var got []string
				for _, n := range due {
					got = append(got, sent{now, n}.String())
				}
				l.tell(now, due)
				if later := tt.later; later != "" && now.Before(l.time(later)) {
					require.False(t, next.After(l.time(later)))
				}
				return got
			}
			require.Equal(t, tt.want, look())
			if tt.later != "" {
				now = l.time(tt.later)
				got := look()
				require.Len(t, got, 2) // the alarm once more, and the word on the outage
				require.Contains(t, got[1], tt.laterIs)
				tt.later = ""
			}
			now = now.Add(minutes(1))
			require.Empty(t, look(), "it is said again")
		})
	}
}

func TestStillDue(t *testing.T) {
	f := calm()
	f.waterDays = 5
	f.heat = map[model.Day]model.HeatClass{d("2026-05-08"): model.HeatAlert}
	l := newHerd(t, "America/Chicago")
	l.weather("2026-05-07 12:00", "2026-05-08", 33, 20)
	evening := l.time("2026-05-07 19:00")
	l.walkSpan(l.time("2026-05-04 08:00"), evening.Add(-minutes(1)), with(f))
	h := l.herd(evening)
	due, _ := decide(h, with(f)(h), evening)
	require.Len(t, due, 1)
	require.Equal(t, []string{aboutHeat}, due[0].About())
	key := due[0].Key
	tests := []struct {
		name, at string
		say      model.Fact
		want     bool
	}{
		{"a minute later", "2026-05-07 19:01", nil, true},
		{"late in the evening: rather late than never", "2026-05-07 22:30", nil, true},
		{"the day after", "2026-05-09 08:00", nil, false},
		{"stopped meanwhile", "2026-05-07 19:30", model.Snooze{About: []string{aboutHeat}, Stop: true}, false},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			c := l.copy()
			if tt.say != nil {
				c.add("2026-05-07 19:10", tt.say)
			}
			now := l.time(tt.at)
			h := c.herd(now)
			require.Equal(t, tt.want, stillDue(h, with(f)(h), key, now))
		})
	}
	require.True(t, StillDue(l.herd(evening), token(aboutCatchUp, "down", evening), evening))
}
