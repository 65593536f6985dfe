package reading

// How much a feeder holds is told by some in bags: "hog feeder takes like 6 bags, bags
// are 50s", "the feeder holds six 50 lb bags". Where it is known what one holds it is read
// as that weight; else it is asked, as with bags that were poured.

var holdWords = setOfWords(split("holds, hold, takes, fits, will hold, can hold, will take, can take, has room for, capacity, holds about, hold about, holding"))

// capacityInBags makes of such bags what they weigh.
func (r *reader) capacityInBags() {
	for k := 2; k < len(r.items); k++ {
		it := &r.items[k]
		if !it.qty(vessel) || it.unit == unitBale || it.unit == unitBatch || !r.heldByFeeder(k) {
			continue
		}
		kg := it.v2
		if size, ok := r.sizeOf(it.unit); kg == 0 && ok {
			kg = size
		}
		if kg == 0 {
			kg = r.bagToldBehind(k)
		}
		if kg == 0 {
			continue
		}
		u := r.massUnit()
		it.unit, it.v, it.v2 = u, it.v*kg/u.si(1), 0
	}
}

// heldByFeeder says that the bags of item k are what a feeder can hold: the words for
// that stand between the two, and nothing tells that they were poured.
func (r *reader) heldByFeeder(k int) bool {
	n := k - 1
	for n > 0 && r.items[n].gap == gapNone && r.items[n].is(sFiller) && !holdWords[r.items[n].s] {
		n--
	}
	if !holdWords[r.items[n].s] || r.items[n].quest {
		return false
	}
	feeder := false
	for m := r.clauseFrom(n); m < n; m++ {
		it := &r.items[m]
		if it.s == "still" || it.s == "now" {
			return false // "the feeder still holds 2 bags"
		}
		feeder = feeder || it.is(sFeeder) || it.feeder >= 0
	}
	for m := k + 1; m < r.clauseEnd(k) && r.items[m].gap == gapNone; m++ {
		if r.items[m].isAny(setOf(sFill, sFull)) || r.items[m].kind == itDay || r.items[m].kind == itFrac || r.items[m].is(sPer) || r.items[m].qty(days) {
			return false // "takes 3 bags to fill", "takes 3 bags a week"
		}
	}
	return feeder
}

// bagToldBehind is what one bag holds by the clause behind item k, "bags are 50s"; 0 if
// that is not said.
func (r *reader) bagToldBehind(k int) float64 {
	said := false
	for n := k + 1; n < len(r.items) && n < k+7; n++ {
		it := &r.items[n]
		switch {
		case it.unit.dim() == vessel:
			said = true
		case said && r.fifties(it) > 0:
			it.used = true
			return r.fifties(it)
		case said && (it.kind == itNum || it.qty(mass)):
			return r.ofOneBag(it.v, it.unit)
		case it.kind != itWord:
			return 0
		}
	}
	return 0
}
