package reading

// dayUntold says that a move names a weekday or a day of the month and nothing tells
// whether it was made then or is to be: "Garden friday", "move to Pear on the 15th".
func (r *reader) dayUntold(s span, _ int) bool {
	if r.alive == 0 || r.force[s.i] != 0 {
		return false
	}
	from, to := r.clauseFrom(s.i), r.clauseEnd(s.j-1)
	said := false
	for k := from; k < to; k++ {
		it := &r.items[k]
		switch {
		case it.kind == itDay:
			if it.day.every || it.day.mod < 0 || it.day.form != dayWeekday && it.day.form != dayOfMonth {
				return false
			}
			d, ok := it.day.on(r.today, lookBack, r.dayFirst)
			said = said || ok && d != r.today
		case it.kind == itWord && it.pig < 0 && it.pen < 0 && (pastTense(it.s) || movedBy[it.s] || movedBy[firstWord(it.s)]):
			return false
		}
	}
	return said && !saysAny(r.said(span{0, from, to}), sinceThen)
}

var sinceThen = phrasesOf("since, seit, as of, vom")

// movedBy are the words beside pastTense that tell of a move as made.
var movedBy = setOfWords(split(`went, was, were, been, let, let them, took, brought, drove, led, sent, ran, are, is, they're, theyre, they've, it's, in there, came,
	had, has, have, did, done, made, ago, already, finally, last, back, swapped, now, got`))
