package reading

// vesselsOf takes "2 bags of 50 lb" and "3 sacks at 50" for the weight they come
// to. What was bought stays as it was counted.
func (r *reader) vesselsOf() {
	for k := range r.items {
		if r.items[k].isAny(setOf(sBuy)) || r.items[k].unit.dim() == money {
			return
		}
	}
	for k := 0; k+2 < len(r.items); k++ {
		it, of, each := &r.items[k], &r.items[k+1], &r.items[k+2]
		if !it.qty(vessel) || it.unit == unitBale || it.unit == unitBatch || it.rng || of.gap != gapNone || each.gap != gapNone {
			continue
		}
		if k > 0 && r.items[k-1].is(sIs) { // "the hopper is 6 sacks of 50 lb": its size
			continue
		}
		if of.s != "of" && of.s != "at" && of.s != "@" {
			continue
		}
		unit := each.unit
		if each.kind == itNum && !each.soft && !each.ord && it.unit == unitBag && each.v >= 20 && each.v <= 110 {
			unit = r.massUnit()
		} else if !each.qty(mass) || each.rng {
			continue
		}
		it.v, it.unit, it.to = it.v*each.v, unit, each.to
		r.items = append(r.items[:k+1], r.items[k+3:]...)
	}
}
