package schedule

import "troughbell/model"

// outgrowing is what the pigs outgrow that wants a hand, by the code of its
// reason.
var outgrowing = map[string]struct {
	code, topic string
	forAll      bool // the figure is of one pig: the line gives that of all too
}{
	model.ReasonOutgrownNipple:  {CodeOutgrownNipple, "capacity:height", false},
	model.ReasonOutgrownShelter: {CodeOutgrownShelter, "capacity:shelter", true},
	model.ReasonOutgrownShade:   {CodeOutgrownShade, "capacity:shade", true},
}

// outgrownFrom is how many days after the pigs came things are still set for them.
const outgrownFrom = 14

// outgrown says once what the pigs outgrow before the next visit, or have since
// the one before, a weighing having shown it.
func (v *view) outgrown() []need {
	a, err := v.f.Adequacy(model.DayOf(v.prev))
	if err != nil { // the pigs came since, or no weight is known
		if a, err = v.f.Adequacy(v.day); err != nil {
			return nil
		}
	}
	var out []need
	for _, o := range a.Ahead {
		what, ok := outgrowing[o.Code]
		if !ok || o.Days.Mid > model.DayOf(v.next.In(v.loc)) || what.topic == "capacity:height" && len(v.h.Barrels) == 0 {
			continue
		}
		if o.Days.Mid < model.DayOf(v.seasonStart().In(v.loc))+outgrownFrom { // they were set for these pigs
			continue
		}
		tok := token(what.topic, int(o.FromKg+0.5))
		if v.told(tok) {
			continue
		}
		l := Line{About: aboutCapacity, Topic: what.topic, Grade: Routine, Code: what.code, On: max(o.Days.Mid, v.day), Reasons: o.Reasons}
		if what.forAll {
			l.Q = []model.Quantity{{Value: o.Value * float64(len(v.pigs)), Unit: model.SquareMetres}, {Value: o.Value, Unit: model.SquareMetres}}
		} else {
			l.Q = []model.Quantity{{Value: o.Value, Unit: model.Centimetres}}
		}
		l.Q = append(l.Q, model.Quantity{Value: o.FromKg, Unit: model.Kilograms})
		out = append(out, need{Line: l, token: tok})
	}
	return out
}
