package reading

// testerDead takes what tells of the tester of the fence, and not of the fence, for none of
// its readings: "zap tester dead, no number for the fence this week".
func (r *reader) testerDead() {
	for k := range r.items {
		it := &r.items[k]
		if it.kind != itWord || !testers[lastWord(it.s)] || it.quest {
			continue
		}
		i, j := r.clauseFrom(k), r.clauseEnd(k)
		failed := false
		for n := i; n < j; n++ {
			x := &r.items[n]
			if x.number() && !x.soft && n > k {
				failed = false
				break
			}
			failed = failed || n > k && (x.isAny(setOf(sDead, sDied)) || testerFails[x.s] || testerFails[firstWord(x.s)])
		}
		if !failed {
			continue
		}
		for n := i; n < j; n++ {
			r.blank(n)
		}
		for n := r.sentenceStart(k); n < r.sentenceEnd(k); n++ { // "no number for the fence"
			if x := &r.items[n]; x.is(sFence) && r.amountless(r.clauseFrom(n), r.clauseEnd(n)) && !r.has(span{fFence, r.clauseFrom(n), r.clauseEnd(n)}, sDead) && !r.has(span{fFence, r.clauseFrom(n), r.clauseEnd(n)}, sDown) {
				r.blank(n)
			}
		}
	}
}

var (
	testers     = setOfWords(split("tester, meter, voltmeter, multimeter"))
	testerFails = setOfWords(split("dead, died, broke, broken, quit, flat, kaput, busted, lost, missing, battery, batteries, needs, bust, gone, acting"))
)
