package reading

// weeksFrom reads a day that is counted on from another: "a week from friday", "two weeks
// from saturday". How many tokens it takes is 0 if none begins at token i.
func (d dayReader) weeksFrom(i int) (dayExpr, int) {
	if d.word(i) == "week" && d.word(i+1) == "from" && i+2 < len(d.toks) { // the "a" was said with the word before
		e, took := d.at(i + 2)
		if took > 0 && e.form == dayWeekday && !e.every {
			e.weeks = 1
			return e, 2 + took
		}
		return dayExpr{}, 0
	}
	if i+3 >= len(d.toks) || d.word(i+1) != "week" && d.word(i+1) != "weeks" || d.word(i+2) != "from" {
		return dayExpr{}, 0
	}
	v, n := d.count(i)
	if n != 1 || v < 1 || v > 12 || v != float64(int(v)) {
		return dayExpr{}, 0
	}
	e, took := d.at(i + 3)
	if took == 0 || e.form != dayWeekday || e.every {
		return dayExpr{}, 0
	}
	e.weeks = int8(v)
	return e, 3 + took
}
