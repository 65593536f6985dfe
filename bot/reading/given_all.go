package reading

// forceGivenAll settles what is given by count, "gave all five their dewormer": the
// number is of pigs, not of feed.
func (r *reader) forceGivenAll() {
	for k := range r.items {
		if !r.items[k].is(sGave) || r.force[k] != 0 {
			continue
		}
		numbers := 0
		for n := k + 1; n < r.clauseEnd(k); n++ {
			it := &r.items[n]
			if it.isAny(setOf(sWorm, sProduct)) && it.pig < 0 {
				if numbers == 1 {
					r.forceRange(k, r.givenUntil(n), fDrug)
				}
				break
			}
			if it.kind == itNum && !it.soft && it.v <= float64(r.alive) {
				numbers++
				continue
			}
			if it.kind != itWord || it.unit != 0 || !it.isAny(setOf(sAll, sEach, sBoth, sPigs, sPronoun, sFiller, sRest)) {
				break
			}
		}
	}
}

// givenUntil is where what was given at item n ends, with a product named in a clause
// of its own.
func (r *reader) givenUntil(n int) int {
	end := r.clauseEnd(n)
	if end < len(r.items) && r.items[end].gap < gapStop && r.items[end].is(sProduct) && r.clauseEnd(end) == end+1 {
		end++
	}
	return end
}
