package schedule

import (
	"slices"
	"time"

	"troughbell/model"
)

// slowLook is how many of the latest calls between visits are looked at, slowCalls
// how many of them may be answered late before calls come a day earlier, and
// slowDays how many days later counts as an answer still.
const (
	slowLook  = 6
	slowCalls = 2
	slowDays  = 2
)

// lead is how much earlier than at the last moment feed and water are called for:
// a day where the household was seen to act, but a day late; else nothing.
func (v *view) lead() time.Duration {
	late, seen := 0, 0
	for i := len(v.tolds) - 1; i >= 0 && seen < slowLook; i-- {
		t := v.tolds[i]
		if !slices.ContainsFunc(t.F.Topics, func(topic string) bool { return topic == "refill:between" || topic == "water:between" }) {
			continue
		}
		d := model.DayOf(t.At.In(v.loc))
		if d >= v.day {
			continue // its day is not over
		}
		seen++
		over := d + 1
		for over <= d+slowDays && !v.h.IsChoreDay(over) { // a chore day brings the fill anyway
			over++
		}
		evening := (d + 1).At(0, v.loc)
		if !v.filledBetween(t.At, evening) && v.filledBetween(evening, over.At(0, v.loc)) {
			late++
		}
	}
	if late >= slowCalls {
		return day
	}
	return 0
}

// filledBetween reports whether feed or water was filled, or a call answered with
// Done, in a span.
func (v *view) filledBetween(from, to time.Time) bool {
	in := func(at time.Time) bool { return at.After(from) && at.Before(to) }
	return slices.ContainsFunc(v.h.Refills, func(r model.Dated[model.Refill]) bool { return in(r.At) }) ||
		slices.ContainsFunc(v.h.Waters, func(w model.Dated[model.Water]) bool { return in(w.At) && !w.F.Seen }) ||
		slices.ContainsFunc(v.h.Dones, func(d model.Dated[model.Done]) bool { return in(d.At) })
}
