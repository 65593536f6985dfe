package schedule

import (
	"slices"
	"sort"
	"time"

	"troughbell/model"
)

// Upcoming lists what falls due from now over so many days, in order, for
// "what's due?": the lines of the next visit (today's, until its evening), and
// what is dated within the days, each once.
func Upcoming(h *model.Herd, now time.Time, days int) []Line { return upcoming(h, h, now, days) }

func upcoming(h *model.Herd, f figures, now time.Time, days int) []Line {
	v := newView(h, f, h.Tolds, now)
	if v.asleep() {
		return nil
	}
	at := v.listed(now)
	horizon := (v.day + model.Day(days) + 1).At(0, v.loc)
	var dated []datedLine
	unheard := v.unheard()
	for _, r := range rules {
		if len(v.pigs) == 0 && !r.idle || unheard && !r.always {
			continue
		}
		if r.visit != nil && at.visit.Before(horizon) && !unheard {
			for _, n := range r.visit(at) {
				dated = append(dated, datedLine{n, n.when(at.visit), later(now, at.visit)})
			}
		}
		if r.between != nil && (r.always || !v.resting()) {
			for _, n := range r.between(v) {
				open := !n.Latest.Before(now) && !v.told(n.token) || n.Grade == Danger && !n.Earliest.After(now)
				if open && n.About != aboutCheck && n.Topic != stockEve {
					dated = append(dated, datedLine{n, n.when(n.Earliest), now})
				}
			}
		}
	}
	dated = slices.DeleteFunc(dated, func(d datedLine) bool {
		return !d.when.Before(horizon) || v.stopped(&d.n) || v.done(&d.n, d.asOf)
	})
	sort.SliceStable(dated, func(i, j int) bool {
		if !dated[i].when.Equal(dated[j].when) {
			return dated[i].when.Before(dated[j].when)
		}
		return ranking[dated[i].n.About] < ranking[dated[j].n.About]
	})
	var out []Line
	seen := map[string]bool{}
	for _, d := range dated {
		key := topicKey(d.n)
		if d.n.About == aboutBook && d.n.On != 0 {
			key = token(aboutBook, d.n.On) // the booked day, not each word on it
		}
		if !seen[key] {
			seen[key] = true
			out = append(out, d.n.Line)
		}
	}
	return out
}

// listed is the view of the visit whose lines are listed: today's until its evening,
// else the next.
func (v *view) listed(now time.Time) *view {
	if v.visit.IsZero() || !now.Before(v.evening(v.day)) {
		return viewOn(v.h, v.f, v.tolds, model.DayOf(v.nextVisit(now)), v.loc)
	}
	return v
}

type datedLine struct {
	n    need
	when time.Time
	asOf time.Time // when it is judged whether a Done silences it
}

// when is the moment that a line speaks of, for putting lines in order: its
// own, else the day's it names, else the one at which it is told.
func (n *need) when(told time.Time) time.Time {
	switch {
	case n.Code == CodeRefillVisit, n.Code == CodeRefillBrim, n.Code == CodeWaterVisit, n.Code == CodeWaterBrim:
		return told // they speak of the visit; At is how long it then lasts
	case !n.At.IsZero():
		return n.At
	case n.On != 0:
		return n.On.At(0, told.Location())
	}
	return told
}
