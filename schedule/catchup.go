package schedule

import (
	"time"

	"troughbell/model"
)

// shortOutage is how long the program may be off without a word about it.
const shortOutage = 2 * time.Hour

// DecideAfter is Decide for the first look after the program was off since
// downFrom. Old routine nudges are dropped, and one nudge says what was missed
// and what is due now; an outage under two hours is passed over and what fell
// due in it goes out as usual. In the quiet hours only dangers go out: call
// DecideAfter with the same downFrom until it gives a nudge about "catch_up",
// or the outage was short.
func DecideAfter(h *model.Herd, now, downFrom time.Time) (due []Nudge, lookAgain time.Time) {
	return decideAfter(h, h, now, downFrom)
}

func decideAfter(h *model.Herd, f figures, now, downFrom time.Time) (due []Nudge, lookAgain time.Time) {
	v := newView(h, f, h.Tolds, now)
	mark := token(aboutCatchUp, "down", downFrom)
	if now.Sub(downFrom) < shortOutage || len(v.pigs) == 0 || v.told(mark) || v.h.Away(v.day) {
		return decide(h, f, now)
	}
	if v.h.Quiet.Holds(model.MinuteOf(now)) {
		due, lookAgain = decide(h, f, now)
		if w := v.awake(now); w.Before(lookAgain) {
			lookAgain = w
		}
		return due, lookAgain
	}
	danger, rest, _ := v.dueNeeds(now)
	due = pages(danger, time.Time{})
	back := need{token: mark, Line: Line{
		About: aboutCatchUp, Topic: aboutCatchUp, Grade: Routine, Code: CodeCatchUpDown, On: v.day, At: downFrom,
		Earliest: now, Latest: v.end,
		Q: []model.Quantity{{Value: now.Sub(downFrom).Hours(), Unit: model.Ratio}},
	}}
	catchUp := []need{back}
	for _, n := range rest {
		if n.Grade == Routine && !n.exact && n.About != aboutCatchUp {
			catchUp[0].also = append(catchUp[0].also, n.token) // an old routine nudge is dropped
			continue
		}
		catchUp = append(catchUp, n)
	}
	if r, ok := v.round(); ok && !r.at.After(now) && now.Before(r.until) {
		n, left := v.standing(r, nil)
		due = append(due, n)
		catchUp = append(catchUp, left...)
	} else if v.missedVisit(downFrom, now) {
		w := v.as(now)
		for _, n := range w.visitLines() {
			n.token = token(n.Topic, "missed", v.day)
			catchUp = append(catchUp, n)
		}
	}
	due = append(due, pages(catchUp, v.end)...)
	v = newView(h, f, toldNow(h.Tolds, due, now), now)
	return due, v.upcoming(now)
}

// missedVisit reports whether the standing message of a chore day fell into the
// time the program was off, and was not sent.
func (v *view) missedVisit(from, to time.Time) bool {
	c := v.nextVisit(from.In(v.loc))
	for ; !c.After(to); c = v.nextVisit(c) {
		if !v.told(standingToken(model.DayOf(c))) {
			return true
		}
	}
	return false
}
