package reading

// What one "got in" was poured, not bought: "only got 4 bags in before it was full".

// bagsGotIn makes a pour of such a getting, and of "3 bags got the big hopper full".
func (r *reader) bagsGotIn() {
	for k := 0; k+2 < len(r.items); k++ {
		got, amount, in := &r.items[k], &r.items[k+1], &r.items[k+2]
		if k > 0 && got.s == "got" && got.gap == gapNone && (r.items[k-1].qty(vessel) || r.items[k-1].qty(mass)) && (amount.feeder >= 0 || amount.s == "the" && (in.feeder >= 0 || in.is(sFeeder)) || amount.is(sFeeder)) {
			got.sense = setOf(sPour)
			continue
		}
		if got.kind != itWord || lastWord(got.s) != "got" && lastWord(got.s) != "get" || !amount.qty(vessel) && !amount.qty(mass) || amount.gap != gapNone || in.gap != gapNone {
			continue
		}
		if in.s != "in" && in.s != "in it" && in.s != "into it" && in.s != "in there" || r.ingredientBehind(k+1) {
			continue
		}
		if !r.intoFeeder(k + 3) {
			continue // "got 4 bags in the truck"
		}
		got.sense = setOf(sPour)
	}
}

// intoFeeder says that what follows from item k on names no other place than a feeder.
func (r *reader) intoFeeder(k int) bool {
	if k >= len(r.items) || r.items[k].gap != gapNone {
		return true
	}
	it := &r.items[k]
	if it.s == "the" && k+1 < len(r.items) {
		it = &r.items[k+1]
		return it.is(sFeeder) || it.feeder >= 0
	}
	return it.isAny(setOf(sPronoun, sFeeder)) || it.feeder >= 0 || it.s == "before" || it.s == "and"
}
