package wording

import (
	"math"

	"troughbell/model"
)

// Exact conversions into US units.
const (
	kgPerLb    = 0.45359237
	litrePerGa = 3.785411784
	cmPerIn    = 2.54
	mPerFt     = 0.3048
	// kcalLbPerMJKg turns MJ/kg into kcal/lb: 1 kcal is 4.184 kJ.
	kcalLbPerMJKg = 1000 / 4.184 * kgPerLb
)

// Quantity writes a quantity in the person's units with no more digits than
// are known. Style may be empty.
func (v Voice) Quantity(q model.Quantity, style string) string {
	if style == styleExact {
		return v.exact(q)
	}
	if q.Unit == model.Money {
		return v.money(q.Value, style)
	}
	if style == styleSign {
		said := v.Quantity(q, "")
		if q.Value > 0 {
			said = "+" + said
		}
		return said
	}
	if style == styleLean {
		n, _ := v.number(q, styleFeed)
		return n
	}
	n, unit := v.number(q, style)
	if style == styleBare || unit == "" {
		return n
	}
	if q.Unit == model.Days {
		return dayNoun(n)
	}
	return n + unit
}

// Range writes two quantities of one kind as "167–193", to stand behind a number
// that says the unit.
func (v Voice) Range(low, high model.Quantity, style string) string {
	if low.Unit == model.Money {
		return v.money(low.Value, style) + "–" + v.money(high.Value, style)
	}
	l, _ := v.number(low, style)
	h, _ := v.number(high, style)
	if l == h {
		return l
	}
	return l + "–" + h
}

func dayNoun(n string) string {
	if n == "1" {
		return "1 day"
	}
	return n + " days"
}

// number gives the digits of a quantity and its unit with the blank before it.
func (v Voice) number(q model.Quantity, style string) (digits, unit string) {
	x, us := q.Value, !v.Metric()
	switch q.Unit {
	case model.Kilograms:
		return v.mass(x, style)
	case model.KilogramsPerDay:
		if us {
			x, unit = x/kgPerLb, " lb a day"
		} else {
			unit = " kg a day"
		}
		switch {
		case style == styleFeed:
			return plain(x, 0), unit
		case us:
			return plain(x, 1), unit
		}
		return plain(x, 2), unit
	case model.Litres, model.LitresPerDay:
		unit = " l"
		if us {
			x, unit = x/litrePerGa, " gal"
		}
		if q.Unit == model.LitresPerDay {
			unit += " a day"
		}
		if math.Abs(x) >= 100 {
			x = coarse(x, 5, style)
		}
		return whole(x, style), unit
	case model.Celsius:
		if us {
			return plain(x*9/5+32, 0), " °F"
		}
		return plain(x, 0), " °C"
	case model.Days:
		if style == styleDown && x > 0 && x < 1 {
			return "under 1", " days"
		}
		return whole(x, style), " days"
	case model.Percent:
		if style == styleFine {
			return fixed(x, 2), "%"
		}
		if math.Abs(x) < 5 {
			return plain(x, 1), "%"
		}
		return plain(x, 0), "%"
	case model.SquareMetres:
		if us {
			x, unit = x/(mPerFt*mPerFt), " sq ft"
		} else {
			unit = " m²"
		}
		if x < 20 {
			return plain(x, 1), unit
		}
		if x >= 1000 {
			x = step(x, 10)
		}
		return plain(x, 0), unit
	case model.Centimetres:
		switch {
		case us && math.Abs(x) < 10:
			return plain(x/cmPerIn, 1), " in"
		case math.Abs(x) < 10:
			return plain(x*10, 0), " mm"
		case us:
			return plain(step(x/cmPerIn, 0.5), 1), " in"
		}
		return plain(x, 0), " cm"
	case model.Metres:
		if us && x/mPerFt >= 100 {
			return plain(step(x/mPerFt, 5), 0), " ft"
		}
		if x >= 100 {
			return plain(step(x, 5), 0), " m"
		}
		if us {
			return plain(step(x/mPerFt, 0.5), 1), " ft"
		}
		return plain(x, 1), " m"
	case model.Kilovolts:
		return plain(x, 1), " kV"
	case model.MegajoulesPerKg:
		if us {
			return plain(step(x*kcalLbPerMJKg, 5), 0), " kcal/lb"
		}
		return plain(x, 1), " MJ/kg"
	case model.Ratio:
		return plain(x, 2), ""
	case model.Minutes:
		return plain(x, 0), " min"
	case model.Money:
		return v.money(x, style), ""
	}
	return whole(x, style), ""
}

// mass rounds a weight to a pound or, where small, half a kilogram, and feed
// from a hundred on to five.
func (v Voice) mass(kg float64, style string) (digits, unit string) {
	x, unit := kg, " kg"
	fine := math.Abs(x) < 20
	if !v.Metric() {
		x, unit, fine = kg/kgPerLb, " lb", false
	}
	switch {
	case style == styleFeed && math.Abs(x) >= 1000:
		return plain(coarse(x, 10, style), 0), unit
	case style == styleFeed && math.Abs(x) >= 100:
		return plain(coarse(x, 5, style), 0), unit
	case fine || math.Abs(x) < 5:
		return plain(step(x, 0.5), 1), unit
	}
	return whole(x, style), unit
}

func whole(x float64, style string) string {
	switch style {
	case styleDown:
		x = math.Floor(x)
	case styleUp:
		x = math.Ceil(x - 1e-9)
	}
	return plain(x, 0)
}

func coarse(x, by float64, style string) float64 {
	if style == styleDown {
		return math.Floor(x/by) * by
	}
	return step(x, by)
}
