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
	words := unitWords(t.m.Text)
	has := func(units []string) bool {
		return slices.ContainsFunc(words, func(w string) bool { return slices.Contains(units, w) })
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

// unitWords are the words of a text that may be units, in lower case and without the
// numbers they are written together with. A single letter is one behind a number alone,
// so that the m of "i'm" is no metre.
func unitWords(text string) []string {
	words := strings.FieldsFunc(strings.ToLower(text), func(c rune) bool {
		return !(c >= 'a' && c <= 'z' || c >= '0' && c <= '9' || c == '\'' || c == '’')
	})
	var out []string
	behind := false
	for _, w := range words {
		bare := strings.TrimLeft(w, "0123456789")
		if len(bare) > 1 || behind || bare != w {
			out = append(out, bare)
		}
		behind = bare == ""
	}
	return out
}
