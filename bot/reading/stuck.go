package reading

// A pig that got stuck and was freed: "3 had its head stuck in the feeder, got it out".

// gotStuck takes the place and the way out of it away from what is told of a pig that was
// stuck, so that neither feed nor an escape is made of them.
func (r *reader) gotStuck() {
	for k := 1; k < len(r.items); k++ {
		it := &r.items[k]
		if it.s != "stuck" && it.s != "stuck in" && it.s != "jammed" && it.s != "wedged" || it.quest || !r.partOfPig(k) {
			continue
		}
		for n := k + 1; n < r.sentenceEnd(k); n++ {
			x := &r.items[n]
			switch {
			case x.number() && !x.soft, x.isAny(setOf(sSick, sDied, sDown)):
				return
			case x.pig >= 0, x.kind == itDay:
			case x.feeder >= 0, x.barrel >= 0, x.isAny(setOf(sFeeder, sBarrel, sFence, sOut, sArrive, sGave)):
				r.blank(n)
			}
		}
		for n := r.clauseFrom(k); n < k; n++ {
			if r.items[n].isAny(setOf(sArrive, sGave)) && r.items[n].pig < 0 {
				r.blank(n)
			}
		}
	}
}

// partOfPig says that what is stuck at item k is a part of a pig, or a pig.
func (r *reader) partOfPig(k int) bool {
	for n := k - 1; n >= 0 && n >= k-4 && r.items[n+1].gap < gapComma; n-- {
		it := &r.items[n]
		if stuckParts[it.s] || stuckParts[lastWord(it.s)] || it.pig >= 0 {
			return true
		}
		if !it.isAny(setOf(sFiller, sPronoun, sIs, sArrive, sGave)) {
			return false
		}
	}
	return false
}

var stuckParts = setOfWords(split("head, nose, snout, leg, foot, neck, hoof, feet, jaw, ear, butt, ass, face"))
