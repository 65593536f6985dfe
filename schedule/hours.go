package schedule

import (
	"time"

	"troughbell/model"
)

// The hours of off-day messages, as minutes after midnight, where the quiet
// hours allow them.
const (
	eveningMinute = 19 * 60
	morningMinute = 7 * 60
	noon          = 12 * 60
)

// act is how long before a cautious edge a nudge of the evening must come to be
// of use, deed how long after that hour what a nudge asked for is done.
const (
	act  = 4 * time.Hour
	deed = time.Hour
)

// lateReply is how long a nudge waits after a fact that made it due at once:
// the reply to the fact has just said so.
const lateReply = time.Hour

// morning is the hour of the day's first off-day message: the person's own
// hour where it is a waking one before noon.
func (v *view) morning(d model.Day) time.Time {
	m := morningMinute
	if c := v.h.Chore.Minute; c < noon {
		m = c
	}
	q := v.h.Quiet
	if q.Holds(m) {
		m = q.To
	}
	return d.At(m, v.loc)
}

// evening is the hour of the day's last off-day message.
func (v *view) evening(d model.Day) time.Time {
	m := eveningMinute
	q := v.h.Quiet
	if q.Holds(m) || q.Holds(m+30) {
		m = q.From - 60
		if m < 0 || q.Holds(m) {
			m = q.To
		}
	}
	return d.At(m, v.loc)
}

// lastSlot is the latest morning or evening at which a word still comes in time
// before the edge. Whoever reads it in the morning acts in the evening, after the
// day's work; whoever has acted late gets it a day earlier.
func (v *view) lastSlot(edge time.Time) time.Time {
	edge = edge.Add(-v.lead())
	for d := model.DayOf(edge.In(v.loc)); ; d-- {
		e := v.evening(d)
		if !e.Add(act).After(edge) {
			return e
		}
		if !e.Add(deed).After(edge) {
			return v.morning(d)
		}
	}
}

// callAt is when feed or water that runs dry at the edge is called for. Whoever
// has just filled something, and heard how long it lasts, is not called back at
// once where the next evening will do.
func (v *view) callAt(edge time.Time) time.Time {
	m := v.afterVisit(v.lastSlot(edge))
	if !v.fact.IsZero() && !m.After(v.fact) && !v.evening(v.day+1).Add(deed).After(edge) {
		return v.morning(v.day + 1)
	}
	return m
}

// awake is the first moment from t on that lies outside the quiet hours.
func (v *view) awake(t time.Time) time.Time {
	t = t.In(v.loc)
	if !v.h.Quiet.Holds(model.MinuteOf(t)) {
		return t
	}
	d := model.DayOf(t)
	if w := d.At(v.h.Quiet.To, v.loc); !w.Before(t) {
		return w
	}
	return (d + 1).At(v.h.Quiet.To, v.loc)
}

// wholeMinute is the first whole minute from t on.
func wholeMinute(t time.Time) time.Time {
	m := t.Truncate(time.Minute)
	if m.Before(t) {
		m = m.Add(time.Minute)
	}
	return m
}

// days is a number of days as a span of time.
func days(n float64) time.Duration { return time.Duration(n * float64(day)) }
