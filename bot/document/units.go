package document

import (
	"strconv"
	"strings"
)

// extra is a column that says another one in US units.
type extra struct {
	name   string
	from   int // the column that it is computed from
	factor float64
	plus   float64
}

// usUnits has the US unit for each SI one that ends the name of a column; the
// factors are exact by definition (International yard and pound agreement of
// 1959; US gallon of 231 cubic inches).
var usUnits = []struct {
	si, us       string
	factor, plus float64
}{
	{"_kg", "_lb", 1 / 0.45359237, 0},
	{"_cm", "_in", 1 / 2.54, 0},
	{"_m2", "_ft2", 1 / (0.3048 * 0.3048), 0},
	{"_m", "_ft", 1 / 0.3048, 0},
	{"_l", "_gal", 1 / 3.785411784, 0},
	{"litres", "gallons", 1 / 3.785411784, 0},
	{"_c", "_f", 1.8, 32},
}

func extras(cols []string) (out []extra) {
	for i, c := range cols {
		for _, u := range usUnits {
			if stem, ok := strings.CutSuffix(c, u.si); ok {
				out = append(out, extra{name: stem + u.us, from: i, factor: u.factor, plus: u.plus})
				break
			}
		}
	}
	return out
}

// of is the cell for one of the SI column: empty where that is, or is no single
// number.
func (x extra) of(si string) string {
	v, err := strconv.ParseFloat(si, 64)
	if err != nil {
		return ""
	}
	return strconv.FormatFloat(v*x.factor+x.plus, 'f', 2, 64)
}
