package reading

// noSelling takes the days for which nothing is to be sold, told beside a drug, for those
// until the meat is clear: "levamisole yesterday, 7 days no selling".
func (r *reader) noSelling() {
	for k := 1; k < len(r.items); k++ {
		it := &r.items[k]
		if !it.is(sSold) && !sellVerbs[it.s] || it.kind != itWord || it.pig >= 0 || it.quest {
			continue
		}
		not := -1
		for n := k - 1; n >= 0 && n >= k-3 && r.items[n+1].gap == gapNone; n-- {
			if x := &r.items[n]; x.pig < 0 && (x.is(sNot) || noWords[x.s]) {
				not = n
				break
			}
		}
		if not < 0 {
			continue
		}
		i, j := max(not-3, 0), min(k+5, len(r.items))
		all := span{fDrug, r.sentenceStart(k), r.sentenceEnd(k)}
		if r.firstQty(span{fDrug, i, j}, days) < 0 || !r.has(all, sProduct) && !r.has(all, sWorm) && !r.has(all, sTreat) {
			continue
		}
		it.sense = setOf(sWithdraw)
		for n := not; n < k; n++ {
			r.blank(n)
		}
		for n := k + 1; n < j && r.items[n].gap == gapNone && !r.items[n].qty(days); n++ {
			if r.items[n].kind == itWord {
				r.blank(n) // "for", "within", "them"
			}
		}
	}
}

var (
	sellVerbs = setOfWords(split("sell, selling, sale, sales, sold"))
	noWords   = setOfWords(split("no, not, cant, can't, cannot, dont, don't, never, without"))
)
