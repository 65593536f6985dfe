package schedule

import (
	"time"

	"troughbell/model"
)

// untilNext gives the reasons why something must last until the next visit, in
// front of those of the figure.
func (v *view) untilNext(figure []model.Reason) []model.Reason {
	out := []model.Reason{{Code: ReasonNextVisit, On: model.DayOf(v.next.In(v.loc))}}
	if usual := v.h.NextChore(v.visitAt().In(v.loc)); usual.Before(v.next) {
		for _, a := range v.h.Aways {
			if d := model.DayOf(usual); a.F.From <= d && d <= a.F.To {
				out = append(out, model.Reason{Code: ReasonAway, On: a.F.To})
				break
			}
		}
	}
	return append(out, figure...)
}

// notLogged is the reason that the latest word on something is old.
func (v *view) notLogged(since time.Time) model.Reason {
	if since.IsZero() { // never
		since = v.h.First
	}
	return model.Reason{Code: ReasonNotLogged, On: model.DayOf(since.In(v.loc))}
}
