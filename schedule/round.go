package schedule

import (
	"slices"
	"time"

	"troughbell/model"
)

// round is a visit whose standing message is still to be told: the view of the
// visit's day, when the message goes out, and until when it is worth sending.
type round struct {
	*view
	at, until time.Time
}

func standingToken(visit model.Day) string { return token("standing", visit) }

func (r round) key() string { return standingToken(r.day) }

// round is the visit of which the day is to tell; false if there is none, or it was
// told. It is the day's own; or, for who wants to be told on the evening before, that
// of the next day, unless the day has a standing message already.
func (v *view) round() (round, bool) {
	if v.unheard() {
		return round{}, false
	}
	if r, ok := v.roundOfDay(); ok {
		return r, true
	}
	return v.roundOfTomorrow()
}

func (v *view) roundOfDay() (round, bool) {
	if v.visit.IsZero() || v.told(standingToken(v.day)) || !v.livesAt(v.visit) || v.visit.Before(v.h.Chore.Since) || v.stoodToday() {
		return round{}, false
	}
	until := v.evening(v.day)
	if !v.visit.Before(until) {
		until = v.end
	}
	return round{v, wholeMinute(v.visit), until}, true
}

func (v *view) roundOfTomorrow() (round, bool) {
	eve := v.h.Chore.EveMinute
	if eve == nil || !v.h.IsChoreDay(v.day+1) || v.h.Away(v.day) || v.stoodToday() {
		return round{}, false
	}
	w := viewOn(v.h, v.f, v.tolds, v.day+1, v.loc)
	at := v.day.At(*eve, v.loc)
	if w.visit.IsZero() || v.told(standingToken(w.day)) || !w.livesAt(w.visit) || at.Before(v.h.Chore.Since) {
		return round{}, false
	}
	return round{w, wholeMinute(at), v.end}, true
}

// stoodToday reports whether a standing message went out on the day.
func (v *view) stoodToday() bool {
	return slices.ContainsFunc(v.tolds, func(t model.Dated[model.Told]) bool {
		return t.F.Standing && !t.At.Before(v.start) && t.At.Before(v.end)
	})
}

// resting reports whether the person was told, before the day, that between
// rounds hardly anything comes until they write, and has not written since.
func (v *view) resting() bool {
	said := model.DayOf(lastWord(v.h).In(v.loc))
	at, ok := v.toldAt(token("check:silence", said, int(restDays)))
	return ok && at.Before(v.start)
}
