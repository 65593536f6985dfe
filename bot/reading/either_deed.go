package reading

// eitherDeed asks about what a span yielded, r.out[from:], where it is told as one of two
// things of which one may have been: "I either put a bucket in or that was the hens".
func (r *reader) eitherDeed(s span, from int) {
	if from >= len(r.out) || s.frame == fAlarm || !factual[s.frame] {
		return
	}
	k, end := s.i, r.sentenceEnd(s.j-1)
	for k >= r.sentenceStart(s.i) && r.items[k].s != "either" {
		k--
	}
	if k < r.sentenceStart(s.i) || k+1 >= len(r.items) || r.items[k].quest || r.items[k].gap >= gapComma && k > r.sentenceStart(s.i) {
		return
	}
	if !r.isDeed(k+1) && !(k > 0 && r.isI(k-1)) {
		return // of two pigs, days or amounts another asks
	}
	for n := k + 1; n < end; n++ {
		if r.items[n].s == "or" {
			r.confirm(s, from)
			return
		}
	}
}

// isDeed says that the word at item k is a verb of a chore.
func (r *reader) isDeed(k int) bool {
	return r.items[k].isAny(setOf(sFill, sPour, sMove, sWorm, sTreat, sGave, sWatered, sHose, sMixed, sBuy, sWeigh, sTape)) && r.items[k].kind == itWord
}
