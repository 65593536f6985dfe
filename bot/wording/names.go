package wording

import (
	"strings"

	"troughbell/model"
)

// Names joins names as "Dot, Moss and Plum"; all pigs are "all pigs".
func (v Voice) Names(names []string) string {
	if len(names) == 1 && names[0] == model.All {
		return "all pigs"
	}
	return Join(names, "and")
}

// plainly names a feeder or barrel that has no name of its own.
func plainly(name string) string {
	if name == model.SetFeeder || name == model.SetBarrel {
		return "the " + name
	}
	return name
}

// Join joins words with commas and a last conjunction.
func Join(words []string, conjunction string) string {
	if len(words) < 2 {
		return strings.Join(words, "")
	}
	last := len(words) - 1
	return strings.Join(words[:last], ", ") + " " + conjunction + " " + words[last]
}

// ownName is the name of a pig of this herd, for an example; "pigs" where none
// has a name.
func (v Voice) ownName() string {
	if v.Herd != nil {
		for _, a := range v.Herd.Alive(v.today()) {
			if a.Name != "" {
				return a.Name
			}
		}
	}
	return "pigs"
}

// ownFeeder is the person's word for a feeder, for an example.
func (v Voice) ownFeeder() string {
	if v.Herd != nil && len(v.Herd.Feeders) > 0 {
		return v.Herd.Feeders[0].Name
	}
	return "feeder"
}

// ownBarrel is the person's word for a water barrel, for an example.
func (v Voice) ownBarrel() string {
	if v.Herd != nil && len(v.Herd.Barrels) > 0 {
		return v.Herd.Barrels[0].Name
	}
	return "barrel"
}

// ownPen is the person's word for a pen, for an example.
func (v Voice) ownPen() string {
	if v.Herd != nil && len(v.Herd.Pens) > 0 {
		return v.Herd.Pens[0].Name
	}
	return "pen 1"
}
