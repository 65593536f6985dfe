package bot

import (
	"slices"
	"strings"

	"troughbell/model"
)

// The units that give away which system a person thinks in.
var (
	metricUnits = []string{"kg", "kgs", "kilo", "kilos", "kilogram", "kilograms", "cm", "l", "ltr", "liter", "liters", "litre", "litres", "m", "m2", "sqm", "ha", "hectare"}
	usUnits     = []string{"lb", "lbs", "pound", "pounds", "gal", "gals", "gallon", "gallons", "inch", "inches", "ft", "feet", "acre", "acres"}
)

// implied marks a record that nobody said, but that follows from how it was said.
const implied = "implied"

// implyUnits keeps the system that a text's units speak of for the herd's, as
// long as the person has not chosen one.
func (t *talk) implyUnits() error {
	if t.s.Herd.Units != "" || len(t.recorded) == 0 {
		return nil
	}
	words := strings.FieldsFunc(strings.ToLower(t.m.Text), func(c rune) bool {
		return !(c >= 'a' && c <= 'z' || c == '2')
	})
	has := func(units []string) bool {
		return slices.ContainsFunc(words, func(w string) bool { return slices.Contains(units, strings.TrimLeft(w, "2")) })
	}
	system := ""
	switch metric, us := has(metricUnits), has(usUnits); {
	case metric && !us:
		system = model.Metric
	case us && !metric:
		system = model.US
	default:
		return nil
	}
	e := t.note(model.Setting{Key: model.SetUnits, Text: system})
	e.Judged = implied
	return t.append(e)
}
