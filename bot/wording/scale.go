package wording

import (
	"troughbell/model"
)

// Scaled gives the value of a quantity in the person's units, not rounded, and
// the name of the unit, for the scale of a picture.
func (v Voice) Scaled(q model.Quantity) (x float64, unit string) {
	us := !v.Metric()
	switch q.Unit {
	case model.Kilograms:
		if us {
			return q.Value / kgPerLb, "lb"
		}
		return q.Value, "kg"
	case model.Litres:
		if us {
			return q.Value / litrePerGa, "gal"
		}
		return q.Value, "l"
	case model.Celsius:
		if us {
			return q.Value*9/5 + 32, "°F"
		}
		return q.Value, "°C"
	}
	return q.Value, ""
}

// Mark writes a round number of a scale.
func Mark(x float64) string { return plain(x, 2) }

// Weekday writes a day of the week as "Sat".
func (v Voice) Weekday(d model.Day) string { return d.Weekday().String()[:3] }

// WeekStart is the day on which the person's weeks begin: Sunday with US units,
// Monday with metric ones.
func (v Voice) WeekStart(d model.Day) model.Day {
	first := 0 // Sunday
	if v.Metric() {
		first = 1
	}
	return d - model.Day((int(d.Weekday())-first+7)%7)
}
