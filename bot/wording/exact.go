package wording

import (
	"math"
	"strconv"
	"strings"

	"troughbell/model"
)

// exact writes a quantity that the person stated so that it reads back to the
// same value: in the person's unit, unless the number is plainly rounder in the
// other system, which is then the one it was said in.
func (v Voice) exact(q model.Quantity) string {
	x := q.Value
	var us, si float64
	var usUnit, siUnit string
	switch q.Unit {
	case model.Kilograms:
		us, usUnit, si, siUnit = x/kgPerLb, " lb", x, " kg"
	case model.Litres:
		us, usUnit, si, siUnit = x/litrePerGa, " gal", x, " l"
	case model.Celsius:
		us, usUnit, si, siUnit = x*9/5+32, " °F", x, " °C"
	case model.Centimetres:
		us, usUnit, si, siUnit = x/cmPerIn, " in", x, " cm"
	case model.SquareMetres:
		us, usUnit, si, siUnit = x/(mPerFt*mPerFt), " sq ft", x, " m2"
	case model.Days:
		return dayNoun(plain(x, 2))
	case model.Minutes:
		return plain(x, 1) + " min"
	case model.Kilovolts:
		return plain(x, 2) + " kV"
	case model.Percent:
		return plain(x, 1) + "%"
	case model.Money:
		return v.money(x, styleExact)
	default:
		return plain(x, 2)
	}
	ownIsUS := !v.Metric()
	own, other := decimals(us), decimals(si)
	if !ownIsUS {
		own, other = other, own
	}
	if v.Own && own > other {
		return v.Quantity(q, "")
	}
	if ownIsUS == (own <= other) {
		return plain(us, 2) + usUnit
	}
	return plain(si, 2) + siUnit
}

// decimals is how many decimals, at most two, a number needs.
func decimals(x float64) int {
	s := strconv.FormatFloat(math.Round(x*100)/100, 'f', 2, 64)
	return len(strings.TrimRight(s, "0")) - len(s) + 2
}
