package reading

import (
	"math"

	"troughbell/model"
)

// A weight that pigs are told to have come with is judged like any other: by their
// age where it is told, else by what pigs bought to be fattened can weigh.

// Between these weights, in kilograms, pigs come to be fattened: from a piglet
// raised by hand to one heavier than a finished hog. Common practice, no source.
const (
	lightestBought = 3.0
	heaviestBought = 150.0
)

// fitsArrival says whether pigs can have come at a weight, in kilograms each, and
// what their age leads to expect, 0 if their birth is not known.
func (r *reader) fitsArrival(a *model.Arrive, kg float64, on model.Day) (fits bool, expected float64) {
	if kg < lightestKg || kg > heaviestKg {
		fits = false
	} else {
		fits = kg >= lightestBought && kg <= heaviestBought || a.Born != nil || r.grownUp(a)
	}
	if a.Born == nil || *a.Born > on || r.grownUp(a) {
		return fits, 0
	}
	est, err := r.judge.bought(*a.Born, on)
	if err != nil || est.SD <= 0 {
		return fits, 0
	}
	return fits && math.Abs(kg-est.Mean) <= oddsWeird*math.Max(est.SD, 0.06*est.Mean+1.5), est.Mean
}

// grownUp says that the pigs that came are told to be sows or boars.
func (r *reader) grownUp(a *model.Arrive) bool {
	for _, s := range a.Sexes {
		if s == model.Sow || s == model.Boar {
			return true
		}
	}
	return false
}

// doubtWeight asks about the weight each of an arrival that does not fit: a digit
// too many, or the other unit. Nothing of the arrival is recorded until then.
func (r *reader) doubtWeight(e Entry, a model.Arrive) bool {
	if a.WeightKg == nil {
		return false
	}
	said := *a.WeightKg
	fits, expected := r.fitsArrival(&a, said, e.On)
	if fits {
		return false
	}
	with := func(kg float64) Entry {
		x, b := e, a
		b.WeightKg = model.Float(kg)
		x.Act = Fact{b}
		return x
	}
	quantity := func(kg float64) []model.Quantity { return []model.Quantity{{Value: kg, Unit: model.Kilograms}} }
	c := Clarify{About: "arrive", Code: "arrival_weight", Q: quantity(said), Want: "weight_kg", Draft: []Entry{e}}
	if expected > 0 {
		c.Q = append(c.Q, model.Quantity{Value: expected, Unit: model.Kilograms})
	}
	otherUnit := unitLb.si(said)
	if !r.saidMetric(said) {
		otherUnit = said / unitLb.si(1)
	}
	for _, kg := range []float64{otherUnit, said / 10, said * 10} {
		if fits, _ := r.fitsArrival(&a, kg, e.On); fits && len(c.Choices) < 2 && !chosenWeight(c.Choices, kg) {
			c.Choices = append(c.Choices, Choice{Code: "meant", Q: quantity(kg), Entries: []Entry{with(kg)}})
		}
	}
	if said >= lightestKg && said <= heaviestKg {
		c.Choices = append(c.Choices, Choice{Code: "as_said", Q: quantity(said), Entries: []Entry{with(said)}})
	}
	c.Choices = append(c.Choices, Choice{Code: "nothing"})
	e.Act = c
	r.out = append(r.out, e)
	return true
}

// saidMetric says that the weight was told in metric units.
func (r *reader) saidMetric(kg float64) bool {
	for k := range r.items {
		if it := &r.items[k]; it.qty(mass) && math.Abs(it.si()-kg) < 0.01*kg {
			return it.unit.metric()
		}
	}
	return r.massUnit().metric()
}

// chosenWeight says that a weight is among the choices.
func chosenWeight(cs []Choice, kg float64) bool {
	for _, c := range cs {
		if math.Abs(c.Q[0].Value-kg) < 0.5 {
			return true
		}
	}
	return false
}
