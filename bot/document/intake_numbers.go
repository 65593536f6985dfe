package document

import (
	"math"
	"regexp"
	"strconv"
	"strings"
)

// numberStyle is how a table writes its numbers.
type numberStyle int

const (
	points   numberStyle = iota // 38.5
	commas                      // 38,5
	eitherOf                    // 1.250 may be a thousand and a quarter thousand
)

var (
	commaNumber = regexp.MustCompile(`^-?([0-9]+|[0-9]{1,3}(\.[0-9]{3})+),[0-9]+$`)
	pointNumber = regexp.MustCompile(`^-?[0-9]+\.[0-9]+$`)
	thousands   = regexp.MustCompile(`^-?[1-9][0-9]{0,2}\.[0-9]{3}$`)
)

// numbersIn finds how numbers are written, by the cells of columns of numbers. With
// a comma between the cells there is no doubt.
func (s *sheet) numbersIn(cols []string) {
	if s.comma == ',' {
		return
	}
	doubt := false
	for _, l := range s.lines {
		for _, col := range cols {
			v, _ := withoutUnit(s.cell(l, col))
			switch {
			case commaNumber.MatchString(v):
				s.nums = commas
				return
			case thousands.MatchString(v):
				doubt = true
			case pointNumber.MatchString(v):
				return
			}
		}
	}
	if doubt {
		s.nums = eitherOf
	}
}

// number reads a plain number of a table.
func (s *sheet) number(v string) (x float64, decimals int, ok bool) {
	v = strings.TrimSpace(v)
	switch {
	case s.nums == eitherOf && thousands.MatchString(v):
		return 0, 0, false
	case s.nums == commas && commaNumber.MatchString(v):
		v = strings.ReplaceAll(strings.ReplaceAll(v, ".", ""), ",", ".")
	case s.nums == commas && strings.Contains(v, "."):
		if !thousands.MatchString(v) {
			return 0, 0, false
		}
		v = strings.ReplaceAll(v, ".", "")
	}
	if !number.MatchString(strings.ToLower(v)) {
		return 0, 0, false
	}
	x, err := strconv.ParseFloat(v, 64)
	if err != nil || math.IsInf(x, 0) || math.IsNaN(x) {
		return 0, 0, false
	}
	mantissa, power, scientific := strings.Cut(strings.ToLower(v), "e")
	if _, after, has := strings.Cut(mantissa, "."); has {
		decimals = len(after)
	}
	if n, err := strconv.Atoi(power); scientific && err == nil {
		decimals = max(0, decimals-n)
	}
	return x, decimals, true
}

// plain writes a number as the tables do.
func plain(x float64) string { return strconv.FormatFloat(x, 'g', -1, 64) }

// same reports whether a cell's number says the exact one, as far as it has places:
// a spreadsheet shows some of them. With none or one it may be another number.
func same(cell float64, decimals int, exact float64) bool {
	if math.Abs(cell-exact) <= 1e-9*math.Max(1, math.Abs(exact)) {
		return true
	}
	return decimals >= 2 && math.Abs(cell-exact) <= 0.5000001*math.Pow10(-decimals)
}

// units are what may stand behind a number, by the unit that ends a column's name.
var units = map[string]string{
	"kg": "kg", "kgs": "kg", "kilo": "kg", "kilos": "kg",
	"lb": "lb", "lbs": "lb", "pound": "lb", "pounds": "lb", "#": "lb",
	"cm": "cm", "in": "in", "inch": "in", "inches": "in", `"`: "in", "″": "in", "”": "in",
}

var numberAndUnit = regexp.MustCompile(`^(-?[0-9][0-9.,]*)\s*([^0-9.,\s]+)\.?$`)

// withoutUnit takes a known unit off the end of a cell.
func withoutUnit(cell string) (number, unit string) {
	cell = strings.TrimSpace(cell)
	m := numberAndUnit.FindStringSubmatch(cell)
	if m == nil {
		return cell, ""
	}
	u, ok := units[strings.ToLower(m[2])]
	if !ok {
		return cell, ""
	}
	return m[1], u
}
