package reading

// A target that somebody of the house wants, and that is asked about, is supposed and not
// set: "dad wants to go to 300, when would that even be".

// wantedWeights reads such a wish as a supposition.
func (r *reader) wantedWeights() {
	for k := 1; k+1 < len(r.items); k++ {
		it := &r.items[k]
		if !it.is(sPlan) || firstWord(it.s) != "wants" && firstWord(it.s) != "want" && firstWord(it.s) != "thinks" || !persons[lastWord(r.items[k-1].s)] || r.items[k-1].pig >= 0 {
			continue
		}
		end := r.sentenceEnd(k)
		kg := false
		for n := k + 1; n < end; n++ {
			kg = kg || r.finishKg(n) > 0
		}
		last := end
		if end < len(r.items) {
			last = r.sentenceEnd(end)
		}
		if !kg || !saysAny(r.said(span{0, k, last}), whenWouldThat) {
			continue
		}
		r.items[k-1].s, r.items[k-1].sense = "suppose", setOf(sIf, sWhatIf)
		r.blank(k)
		if end < len(r.items) {
			r.items[end].gap = gapComma
		}
	}
}

var whenWouldThat = phrasesOf("when would, when's that, when is that, how long would, how much longer would, how much longer is, how long is, when will that, how late would")
