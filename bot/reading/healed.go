package reading

// A sign of illness that is told to be gone tells that a pig is well again: "no sign of
// lameness in Clover any more", "hazel isn't coughing now".

// healedSigns takes such a sign for a recovery.
func (r *reader) healedSigns() {
	for k := 1; k < len(r.items); k++ {
		it := &r.items[k]
		if it.pig >= 0 || !it.is(sSick) || it.is(sWell) || it.quest || !r.signGone(k) {
			continue
		}
		it.sense.drop(sSick)
		it.sense.add(sWell)
		for n := k - 1; n >= 0 && n >= k-3 && r.items[n+1].gap == gapNone; n-- {
			if x := &r.items[n]; x.pig < 0 && (x.is(sNot) || goneHeads[firstWord(x.s)]) {
				r.blank(n)
				break
			}
		}
	}
}

// signGone says that the words around item k say that the sign it tells is gone.
func (r *reader) signGone(k int) bool {
	head := r.said(span{0, max(r.clauseFrom(k), k-3), k})
	if saysAny(head, goneFully) {
		return true
	}
	tail := r.said(span{0, k, min(r.clauseEnd(k), k+4)})
	return saysAny(head, goneNow) && saysAny(tail, anyMore) || saysAny(tail, clearAgain) && !saysAny(tail, goneNow)
}

var (
	goneHeads = setOfWords(split("no, zero, without"))
	goneFully = phrasesOf("no sign of, no signs of, no more, no longer, no trace of, no further")
	goneNow   = phrasesOf("not, isn't, isnt, ain't, aint, no, never")
	// clearAgain are what a sign is said to be behind it when it is gone: "her eye is clear".
	clearAgain = phrasesOf("is clear, are clear, looks clear, look clear, clear again, clear now, looks normal, is normal, is all better, is healed, has healed, is cleared up")
	anyMore    = phrasesOf("anymore, any more, any longer, now")
)

// toldGone says that a span tells a recovery by the sign that is gone.
func (r *reader) toldGone(s span) bool {
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.is(sWell) {
			if m := r.lex.of[it.s]; m != nil && !m.sense.has(sWell) {
				return true
			}
		}
	}
	return false
}
