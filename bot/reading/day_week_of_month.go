package reading

// weekOfMonth reads "the 2nd week of october", "first week in may", as a day of that month
// that nobody knows.
func (d dayReader) weekOfMonth(i int) (dayExpr, int) {
	j := i
	if j < len(d.toks) && d.toks[j].s == "the" {
		j++
	}
	if j+3 >= len(d.toks) {
		return dayExpr{}, 0
	}
	n := weekNumber[d.toks[j].s]
	if t := &d.toks[j]; n == 0 && t.kind == tokNum && t.ordinal && t.v >= 1 && t.v <= 4 {
		n = int(t.v)
	}
	if n == 0 || d.toks[j+1].s != "week" && d.toks[j+1].s != "wk" || d.toks[j+2].s != "of" && d.toks[j+2].s != "in" {
		return dayExpr{}, 0
	}
	m := d.month(j + 3)
	if m == 0 {
		return dayExpr{}, 0
	}
	return dayExpr{form: dayMonth, a: m, b: min(7*n-3, 28), coarse: true}, j + 4 - i
}

var weekNumber = map[string]int{"first": 1, "second": 2, "third": 3, "fourth": 4, "last": 4}
