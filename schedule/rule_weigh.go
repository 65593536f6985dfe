package schedule

import (
	"slices"

	"troughbell/model"
)

// weighVisit says that a weighing before the next visit would change a decision,
// and where the tape should be held against the scale at it.
func weighVisit(v *view) []need {
	d, err := v.f.WeighDue(v.day)
	if err != nil || d.Blocked {
		return nil
	}
	l := Line{
		About: aboutWeigh, Topic: aboutWeigh, Grade: Routine, Code: CodeWeighDue,
		Names: v.names(d.Pigs), On: d.On, Latest: (d.On + 1).At(0, v.loc), Reasons: d.Reasons,
	}
	if i := slices.IndexFunc(d.Reasons, func(r model.Reason) bool { return r.Code == model.ReasonWeighCheck }); i >= 0 {
		l.Code, l.Q = CodeWeighCheck, d.Reasons[i].Q
	}
	return []need{{quiet: 14 * day, Line: l}}
}
