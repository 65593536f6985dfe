package wording

import "troughbell/model"

func (v Voice) echoWater(w model.Water) string {
	s := "water " + v.whichBarrel(w.Barrel)
	switch {
	case w.Litres != nil:
		s += " " + v.l(*w.Litres)
		if w.Seen {
			return s + " left"
		}
		if w.Full {
			s += ", full"
		} else if w.Fraction != nil {
			s += ", now " + levelFull(*w.Fraction)
		}
	case w.Seen && w.Fraction != nil:
		s += " " + levelLeft(*w.Fraction)
	case w.Full && w.Seen:
		s += " seen full"
	case w.Full:
		s += " full"
	case w.Fraction != nil:
		s += " filled to " + level(*w.Fraction)
	}
	return s
}

// whichBarrel names a barrel, or all of them: "both" where there are two.
func (v Voice) whichBarrel(name string) string {
	switch {
	case name != "":
		return name
	case v.Herd != nil && len(v.Herd.Barrels) == 2:
		return "both"
	case v.Herd != nil && len(v.Herd.Barrels) == 1:
		return v.Herd.Barrels[0].Name
	}
	return "all"
}

func (v Voice) echoWallow(w model.WallowFill) string {
	switch {
	case w.Dry:
		return "wallow dry"
	case w.Litres != nil:
		return "wallow " + v.l(*w.Litres)
	case w.Minutes != nil:
		return "wallow hosed " + v.Quantity(model.Quantity{Value: *w.Minutes, Unit: model.Minutes}, styleExact)
	}
	return "wallow topped up"
}
