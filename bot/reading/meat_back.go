package reading

// meatBack takes the buying from what came home as meat: "got 162 lb of meat back from gus".
func (r *reader) meatBack() {
	for k := 1; k+1 < len(r.items); k++ {
		if !r.items[k].qty(mass) || r.items[k].quest || !r.items[k+1].is(sPackaged) || r.items[k+1].gap != gapNone {
			continue
		}
		for n := k - 1; n >= r.clauseFrom(k) && n >= k-2; n-- {
			if it := &r.items[n]; it.kind == itWord && it.pig < 0 && it.isAny(setOf(sBuy, sArrive, sGave)) && !it.is(sPackaged) {
				r.blank(n)
			}
		}
	}
}
