package schedule

import (
	"slices"
	"strings"
	"time"

	"troughbell/model"
)

// Decide says what goes out at the moment now (in the herd's zone), given that
// nothing is said twice (model.Herd.Tolds), and when to look again if these
// nudges are told now and no other record comes: never more than a day off, and
// early enough that nothing falls due in between.
func Decide(h *model.Herd, now time.Time) (due []Nudge, lookAgain time.Time) {
	return decide(h, h, now)
}

func decide(h *model.Herd, f figures, now time.Time) (due []Nudge, lookAgain time.Time) {
	v := newView(h, f, h.Tolds, now)
	if v.asleep() {
		return nil, now.Add(day)
	}
	due = v.due(now)
	if len(due) > 0 { // what was told changes what is still to come today
		v = newView(h, f, toldNow(h.Tolds, due, now), now)
	}
	return due, v.upcoming(now)
}

// asleep reports whether nothing can fall due, whatever the day.
func (v *view) asleep() bool {
	return len(v.h.Animals) == 0 && len(v.h.Reminds) == 0 && len(v.h.Expecteds) == 0
}

// toldNow is what has been told once these nudges have gone out.
func toldNow(tolds []model.Dated[model.Told], due []Nudge, now time.Time) []model.Dated[model.Told] {
	out := append([]model.Dated[model.Told](nil), tolds...)
	for _, n := range due {
		t := n.Told()
		out = append(out, model.Dated[model.Told]{Record: model.Record{On: model.DayOf(now), At: now, Fact: t}, F: t})
	}
	return out
}

// StillDue reports whether a nudge that was decided on but not yet delivered is
// still worth delivering at the moment now. untold is the herd without the
// record that the nudge was told. A nudge of several lines is, while one of
// them is.
func StillDue(untold *model.Herd, key string, now time.Time) bool {
	return stillDue(untold, untold, key, now)
}

func stillDue(untold *model.Herd, f figures, key string, now time.Time) bool {
	v := newView(untold, f, untold.Tolds, now)
	v.late = true
	in := map[string]bool{}
	for _, n := range v.due(now) {
		for _, k := range strings.Split(n.Key, tokenGap) {
			in[k] = true
		}
	}
	for _, k := range strings.Split(key, tokenGap) {
		// Decide knows of no outage: that it was off stays true while the day lasts.
		if in[k] || OfOutage(k) {
			return true
		}
	}
	return false
}

// OfOutage reports whether the nudge of that key tells that the program was off.
func OfOutage(key string) bool {
	return slices.ContainsFunc(strings.Split(key, tokenGap), func(k string) bool {
		return strings.HasPrefix(k, token(aboutCatchUp, "down"))
	})
}
