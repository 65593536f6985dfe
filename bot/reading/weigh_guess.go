package reading

// guessedNow says that what sounds like a plan is a guess at what pigs weigh now: "hazel
// must be 180 by now". Whether to note it is asked.
func (r *reader) guessedNow(s span) bool {
	if s.frame != fWeigh || r.isQuestion(s.i) {
		return false
	}
	from, to := r.sentenceStart(s.i), r.sentenceEnd(s.j-1)
	weight := false
	for k := from; k < to; k++ {
		it := &r.items[k]
		switch {
		case it.kind == itDay && it.day.form != dayOffset, it.is(sIf), it.is(sTarget), it.is(sButcher):
			return false
		case it.kind == itNum && !it.soft && it.v >= 20, it.qty(mass):
			weight = true
		}
	}
	said := r.said(span{0, from, to})
	return weight && !saysAny(said, yetToBe) && (saysAny(said, mustWeigh) || saysAny(said, mayWeigh) && saysAny(said, byNow))
}

var (
	mustWeigh = phrasesOf("must be, must weigh, gotta be, got to be, gotta weigh, has to be, have to be, musta hit, must have hit, must have reached")
	mayWeigh  = phrasesOf("should be, should weigh, ought to be, ought to weigh, could be, might be, may be, would be, probably, likely")
	byNow     = phrasesOf("by now, now, already, these days, today, at this point")
	yetToBe   = phrasesOf("before, until, till, by the time, when, then, by the fair, to go, to ship, to make, in order, at least, minimum, for the, tomorrow, next, soon")
)
