package reading

// Pigs that came are told by a range of weights: "40 to 50 pounds", "between 40 and 50 lb
// each". It is made one amount, as "40-50 lb" is.

// arrivalRanges makes such a range of two amounts in a sentence of pigs that came.
func (r *reader) arrivalRanges() {
	for k := 0; k+1 < len(r.items); k++ {
		end := k + 2
		between := k > 0 && r.items[k-1].s == "between"
		if between && r.items[k+1].number() { // the "and" is no item there
			end = k + 1
		}
		if end >= len(r.items) {
			return
		}
		a, to, b := &r.items[k], &r.items[k+1], &r.items[end]
		if to.s != "to" && !between || a.kind != itNum && !a.qty(mass) || a.soft || a.ord || a.rng || to.gap > gapAnd || b.gap > gapAnd || !b.qty(mass) && b.kind != itNum {
			continue
		}
		if a.qty(mass) && b.qty(mass) && a.unit != b.unit || b.soft || b.ord || b.v <= a.v || b.v > 2*a.v || !r.pigsCame(k) {
			continue
		}
		unit := max(a.unit, b.unit)
		a.rng, a.v2, a.to = true, b.v, b.to
		if unit != 0 {
			a.kind, a.unit = itQty, unit
		}
		for n := k + 1; n <= end; n++ {
			r.blank(n)
			r.items[n].gap = gapNone
		}
		if between {
			r.blank(k - 1)
		}
	}
}

// pigsCame says that the sentence of item k tells of pigs that came, none of them of the
// herd yet.
func (r *reader) pigsCame(k int) bool {
	pigs, came := false, r.alive == 0
	for n := r.sentenceStart(k); n < r.sentenceEnd(k); n++ {
		it := &r.items[n]
		if it.pig >= 0 || it.is(sGain) && n < k {
			return false
		}
		pigs = pigs || it.isAny(setOf(sPigs, sBarrow, sGilt, sYoung)) || it.qty(head)
		came = came || it.is(sArrive)
	}
	return pigs && came
}
