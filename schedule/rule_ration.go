package schedule

import (
	"sort"
	"time"

	"troughbell/model"
)

// richFactor is how much more SID lysine than needed makes it worth saying that
// the mix could be stepped down (common practice, no source).
const richFactor = 1.25

// rationVisit says, once for a recipe and again after four weeks, that the mix
// holds too little or clearly more than the pigs need.
func rationVisit(v *view) []need {
	r, err := v.f.RationCheck(v.day)
	if err != nil || len(r.Unknown) > 0 || r.OK && r.SIDLysinePct < richFactor*r.NeededSIDLysinePct {
		return nil
	}
	l := Line{
		About: aboutRation, Topic: "ration:short", Grade: Routine, Code: CodeRationShort, On: v.day, Reasons: r.Reasons,
		Q: []model.Quantity{
			{Value: r.SIDLysinePct, Unit: model.Percent},
			{Value: r.NeededSIDLysinePct, Unit: model.Percent},
			{Value: r.ForWeightKg, Unit: model.Kilograms},
		},
	}
	if r.OK {
		l.Topic, l.Code = "ration:rich", CodeRationRich
	}
	for name := range r.Change {
		l.Names = append(l.Names, name)
	}
	sort.Strings(l.Names)
	for _, name := range l.Names {
		l.Q = append(l.Q, model.Quantity{Value: r.Change[name], Unit: model.Kilograms})
	}
	var mixed time.Time
	latest(v.h.Recipes, func(at time.Time) { mixed = at })
	return []need{{Line: l, since: later(mixed, v.visit.Add(-27*day)), quiet: 21 * day}}
}
