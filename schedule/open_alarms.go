package schedule

import (
	"time"

	"troughbell/model"
)

// alarmHeld is for how long after it was reported an alarm that nobody answered is
// held on top of the replies.
const alarmHeld = 2 * day

// HeldAlarms lists the reported emergencies that were brought up as often as they
// are and are still neither settled nor called over: they stand on top of each reply.
func HeldAlarms(h *model.Herd, now time.Time) []Line {
	v := newView(h, h, h.Tolds, now)
	var out []Line
	open := map[string]bool{}
	for i := len(h.Alarms) - 1; i >= 0; i-- {
		a := h.Alarms[i]
		topic := "alarm:" + a.F.What
		if open[a.F.What] {
			continue
		}
		open[a.F.What] = true
		if a.F.Over || now.Sub(a.At) > alarmHeld || !v.told(token(topic, a.At, alarmTellings)) || v.alarmSettled(a) {
			continue
		}
		out = append(out, AlarmLine(a.F, a.At))
	}
	return out
}

// AlarmLine is the line that tells of an emergency reported at a moment.
func AlarmLine(a model.Alarm, at time.Time) Line {
	return Line{About: aboutAlarm, Topic: "alarm:" + a.What, Grade: Danger, Code: alarmCodes[a.What], Names: a.Animals, At: at}
}
