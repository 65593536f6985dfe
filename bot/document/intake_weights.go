package document

import (
	"slices"
	"strings"

	"troughbell/model"
)

// What the columns of a plain list of weights are called, in lower case, the unit
// taken off the end.
var listColumns = map[string][]string{
	"date":   {"date", "day", "on", "on_day", "weighed", "weighed_on", "when", "datum", "tag", "gewogen"},
	"time":   {"time", "hour", "clock", "uhrzeit", "zeit"},
	"pig":    {"pig", "pigs", "name", "animal", "animals", "ear_tag", "eartag", "tier", "tiere", "schwein", "ohrmarke"},
	"weight": {"weight", "weights", "mass", "live_weight", "gewicht", "lebendgewicht"},
	"girth":  {"girth", "heart_girth", "chest", "brustumfang", "umfang"},
	"length": {"length", "body_length", "länge", "laenge"},
}

// column is a column of a plain list.
type column struct {
	what string // of listColumns
	unit string // "kg", "lb", "cm", "in", or empty: the herd's
}

// listColumn tells what a column of a plain list holds, by its name: "Weight (kg)",
// "girth_in", "kg".
func listColumn(name string) (column, bool) {
	words := strings.FieldsFunc(strings.ToLower(name), func(r rune) bool { return strings.ContainsRune(" _-()[]/,:", r) })
	if len(words) > 1 && words[len(words)-2] == "in" { // "weight in kg"
		words = slices.Delete(words, len(words)-2, len(words)-1)
	}
	if len(words) == 0 {
		return column{}, false
	}
	c := column{}
	if u, ok := units[words[len(words)-1]]; ok {
		c.unit = u
		words = words[:len(words)-1]
	}
	if len(words) == 0 {
		c.what = "weight"
		return c, c.unit == "kg" || c.unit == "lb"
	}
	stem := strings.Join(words, "_")
	for what, names := range listColumns {
		if slices.Contains(names, stem) {
			c.what = what
			measures := what == "weight" && (c.unit == "kg" || c.unit == "lb") || (what == "girth" || what == "length") && (c.unit == "cm" || c.unit == "in")
			return c, c.unit == "" || measures
		}
	}
	return column{}, false
}

// weights reads a plain list of weights or tape readings, a pig a line.
func (in *intake) weights(s *sheet) error {
	cols := map[string]int{}
	unit := map[string]string{}
	before := len(in.out.Unread)
	for i, h := range s.heads {
		c, ok := listColumn(h)
		if !ok {
			in.unread(shown(h))
			continue
		}
		if _, twice := cols[c.what]; twice {
			return unreadable("column_twice", s.name, shown(h))
		}
		cols[c.what], unit[c.what] = i, c.unit
	}
	has := func(what string) bool { _, ok := cols[what]; return ok }
	if !has("date") || !has("pig") || !has("weight") && !has("girth") {
		if in.out.Whole { // somebody's own file beside the tables
			in.out.Unread = in.out.Unread[:before]
			in.unread(s.name)
			return nil
		}
		return unreadable("no_columns", s.name)
	}
	in.out.Swapped = s.datesIn([]string{s.cols[cols["date"]]}, in.how.Units) || in.out.Swapped
	var numbers []string
	for _, what := range []string{"weight", "girth", "length"} {
		if has(what) {
			numbers = append(numbers, s.cols[cols[what]])
		}
	}
	s.numbersIn(numbers)
	for _, l := range s.lines {
		list := listLine{in: in, s: s, cols: cols, unit: unit, l: l}
		r, f := list.row()
		in.add(r, f)
	}
	return nil
}

// listLine is one line of a plain list.
type listLine struct {
	in   *intake
	s    *sheet
	cols map[string]int
	unit map[string]string
	l    sheetLine
}

func (l listLine) cell(what string) string {
	i, ok := l.cols[what]
	if !ok || i >= len(l.l.cells) {
		return ""
	}
	return strings.TrimSpace(l.l.cells[i])
}

func (l listLine) row() (Row, *fault) {
	r := Row{File: l.s.name, Line: l.l.number, Listed: true}
	if l.s.wide(l.l) {
		return r, faulty("row_wide")
	}
	if f := l.when(&r); f != nil {
		return r, f
	}
	pig := asItWas(l.cell("pig"))
	if pig == "" {
		return r, faulty("row_no_pig")
	}
	weight, f := l.measure("weight", 0.3, 600)
	if f != nil {
		return r, f
	}
	girth, f := l.measure("girth", 20, 250)
	if f != nil {
		return r, f
	}
	length, f := l.measure("length", 20, 250)
	if f != nil {
		return r, f
	}
	w := model.Weigh{Animals: []string{pig}}
	switch {
	case weight != 0 && girth != 0:
		return r, faulty("row_both")
	case weight != 0:
		w.WeightKg, w.By = weight, model.ByScale
	case girth != 0:
		w.GirthCm, w.LengthCm = girth, length
	default:
		return r, faulty("row_no_weight")
	}
	r.Fact = w
	return r, nil
}

// when reads the day, and the time where the line tells one.
func (l listLine) when(r *Row) *fault {
	cell := l.cell("date")
	if cell == "" {
		return faulty("row_no_day")
	}
	d, minute, ok := l.s.day(cell)
	if !ok {
		return faulty("row_day", shown(cell))
	}
	if clock := l.cell("time"); clock != "" {
		m, ok := clockOf(clock)
		if !ok {
			return faulty("row_moment", shown(clock))
		}
		minute = &m
	}
	r.On, r.At = d, noonOf(d, l.in.how.Zone)
	if minute != nil && (*minute != 0 || l.cell("time") != "") { // a spreadsheet puts midnight behind a bare day
		r.At, r.Timed, r.Stated = d.At(*minute, l.in.how.Zone), true, true
	} else if r.At.After(l.in.how.Now) && d == model.DayOf(l.in.how.Now) {
		r.At = l.in.how.Now
	}
	return nil
}

// toSI has what one of a unit is in SI, exactly.
var toSI = map[string]float64{"kg": 1, "lb": 0.45359237, "cm": 1, "in": 2.54}

// measure reads a weight in kilograms or a length in centimetres; 0 where the line
// has none.
func (l listLine) measure(what string, least, most float64) (float64, *fault) {
	cell := l.cell(what)
	if cell == "" {
		return 0, nil
	}
	digits, unit := withoutUnit(cell)
	x, _, ok := l.s.number(digits)
	if !ok {
		return 0, faulty("row_cell", what, shown(cell))
	}
	column := l.unit[what]
	switch {
	case unit != "" && column != "" && unit != column:
		return 0, faulty("row_unit", what, shown(cell))
	case unit == "":
		unit = column
	}
	if unit == "" {
		herds := map[string]string{model.US + "weight": "lb", model.Metric + "weight": "kg", model.US: "in", model.Metric: "cm"}
		if what == "weight" {
			unit = herds[l.in.how.Units+"weight"]
		} else {
			unit = herds[l.in.how.Units]
		}
	}
	if factor, known := toSI[unit]; !known || (what == "weight") != (unit == "kg" || unit == "lb") {
		return 0, faulty("row_unit", what, shown(cell))
	} else {
		x *= factor
	}
	if x == 0 { // an empty place in a form
		return 0, nil
	}
	if x < least || x > most {
		return 0, faulty("row_range", shown(cell))
	}
	return x, nil
}
