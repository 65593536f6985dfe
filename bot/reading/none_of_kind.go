package reading

// noneOfKind takes a kind of pigs out that is told to have had no part in what the sentence
// tells of others before: "the barrows got fenbendazole, none of the gilts did".
func (r *reader) noneOfKind() {
	for k := 1; k+1 < len(r.items); k++ {
		it := &r.items[k]
		if it.kind != itWord || it.quest || it.pig >= 0 || it.s != "none" && it.s != "none of" && it.s != "neither" && it.s != "neither of" && it.s != "no" {
			continue
		}
		n := k + 1
		for n < len(r.items)-1 && r.items[n].gap == gapNone && (r.items[n].is(sOf) || r.items[n].is(sFiller)) && !r.items[n].isAny(kindWords) {
			n++
		}
		if r.items[n].gap != gapNone || !r.items[n].isAny(kindWords) && r.items[n].group < 0 {
			continue
		}
		told := false
		for b := r.sentenceStart(k); b < k; b++ {
			x := &r.items[b]
			told = told || x.pig >= 0 || x.group >= 0 || x.isAny(kindWords)
		}
		if !told {
			continue
		}
		for n++; n < len(r.items) && r.items[n].gap == gapNone && noneBehind[r.items[n].s]; n++ {
		}
		for b := k; b < n; b++ {
			r.blank(b)
		}
		r.items[k].gap = max(r.items[k].gap, gapComma)
		if n < len(r.items) {
			r.items[n].gap = max(r.items[n].gap, gapComma)
		}
	}
}

var (
	kindWords  = setOf(sBarrow, sGilt, sBoar, sSow, sYoung, sOld)
	noneBehind = setOfWords(split("did, got, got any, got it, got some, had, had any, any, were, was, are, is, have, went, go, yet, so far, today, moved, treated, wormed, dewormed, though, tho"))
)
