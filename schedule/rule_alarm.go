package schedule

import (
	"time"

	"troughbell/model"
)

const (
	alarmEvery    = 2 * time.Hour // a reported alarm is brought up again after so long
	alarmTellings = 4             // and no more often than this
	fenceWantKv   = 3.0           // the least a fence should read with pigs in it (from memory: 3,000 V)
)

var alarmCodes = map[string]string{
	model.AlarmOut: CodeAlarmOut, model.AlarmDown: CodeAlarmDown, model.AlarmNoWater: CodeAlarmNoWater,
	model.AlarmNoFeed: CodeAlarmNoFeed, model.AlarmFence: CodeAlarmFence,
}

// alarmBetween brings up a reported emergency again until it is called over,
// settled by a record, or answered.
func alarmBetween(v *view) []need {
	var out []need
	open := map[string]bool{}
	for i := len(v.h.Alarms) - 1; i >= 0; i-- {
		a := v.h.Alarms[i]
		if open[a.F.What] {
			continue
		}
		open[a.F.What] = true // only the latest word on each counts
		if a.F.Over || v.alarmSettled(a) {
			continue
		}
		n := need{
			breaks: a.F.What != model.AlarmFence,
			Line: Line{
				About: aboutAlarm, Topic: "alarm:" + a.F.What, Grade: Danger, Code: alarmCodes[a.F.What],
				Names: a.F.Animals, At: a.At,
			},
		}
		at := a.At.Add(alarmEvery)
		for try := 1; try <= alarmTellings; try++ {
			n.token = token(n.Topic, a.At, try)
			if told, ok := v.toldAt(n.token); ok {
				at = told.Add(alarmEvery)
				continue
			}
			n.Earliest, n.Latest = at, a.At.Add(2*day)
			n.Q = []model.Quantity{{Value: float64(try), Unit: model.Count}}
			out = append(out, n)
			break
		}
	}
	return out
}

// alarmSettled reports whether something logged after the alarm settles it.
func (v *view) alarmSettled(a model.Dated[model.Alarm]) bool {
	n := need{Line: Line{About: aboutAlarm, Topic: "alarm:" + a.F.What}}
	for _, d := range v.h.Dones {
		if d.At.After(a.At) && v.speaksOf(d.F.About, d.F.Topics, d.At, &n) {
			return true
		}
	}
	switch a.F.What {
	case model.AlarmNoWater:
		for _, w := range v.h.Waters {
			if w.At.After(a.At) && !w.F.Seen {
				return true
			}
		}
	case model.AlarmNoFeed:
		for _, r := range v.h.Refills {
			if r.At.After(a.At) {
				return true
			}
		}
	case model.AlarmFence:
		for _, f := range v.h.Fences {
			if f.At.After(a.At) && f.F.Kv >= fenceWantKv {
				return true
			}
		}
	}
	return false
}

// alarmVisit says that the fence last read too low to hold pigs.
func alarmVisit(v *view) []need {
	if len(v.h.Fences) == 0 {
		return nil
	}
	f := v.h.Fences[len(v.h.Fences)-1]
	if f.F.Kv >= fenceWantKv {
		return nil
	}
	return []need{{quiet: 6 * day, Line: Line{
		About: aboutAlarm, Topic: "alarm:fence_low", Grade: Welfare, Code: CodeAlarmFenceLow, On: f.On,
		Q: []model.Quantity{{Value: f.F.Kv, Unit: model.Kilovolts}, {Value: fenceWantKv, Unit: model.Kilovolts}},
	}}}
}
