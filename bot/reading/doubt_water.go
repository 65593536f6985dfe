package reading

var (
	waterGoes  = phrasesOf("losing water, losing all the water, loosing water, lost water, lost a lot of water, losing it all, nipple off, nipple broke off, chewed the nipple, chewed off the nipple, broke the nipple, busted the nipple, nipple is broken, nipple broke, spraying everywhere")
	waterComes = phrasesOf("filled, filled it, refilled, topped, topped up, topped off, filled up, full again, full now")
)

// waterLost says that the sentence of a span tells of water that runs away, and of none
// that was filled in.
func (r *reader) waterLost(s span, _ int) bool {
	said := r.said(span{0, r.sentenceStart(s.i), r.sentenceEnd(s.j - 1)})
	return saysAny(said, waterGoes) && !saysAny(said, waterComes)
}

// noteInstead keeps the sentence of a span as a note.
func noteInstead(r *reader, s span, from int) {
	r.out = r.out[:from]
	r.noteSpan(s)
}
