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
		if k+3 < len(r.items) && r.items[k+3].gap == gapNone && !r.items[k+3].isAny(setOf(sPronoun, sFeeder)) && r.items[k+3].s != "before" && r.items[k+3].feeder < 0 && r.items[k+3].s != "the" && r.items[k+3].s != "and" {
			continue // "got 4 bags in the truck"
		}
		if k+4 < len(r.items) && r.items[k+3].s == "the" && !r.items[k+4].is(sFeeder) && r.items[k+4].feeder < 0 {
			continue
		}
		got.sense = setOf(sPour)
	}
}

// waterRun makes a hosing of water that was run for a span of time, where no barrel is
// named: "ran water in it half an hour".
func (r *reader) waterRun() {
	if r.c.Herd.Wallow == nil {
		return
	}
	for k := range r.items {
		it := &r.items[k]
		if it.s != "ran water" && !(it.s == "ran" && k+1 < len(r.items) && r.items[k+1].s == "water") {
			continue
		}
		lasted := false
		for n := k + 1; n < r.clauseEnd(k); n++ {
			x := &r.items[n]
			if x.barrel >= 0 || x.is(sBarrel) || x.qty(volume) || x.is(sNot) {
				return
			}
			lasted = lasted || x.qty(hours) || x.kind == itFrac
		}
		if !lasted {
			continue
		}
		it.sense = setOf(sHose)
		if n := k + 1; it.s == "ran" {
			r.blank(n)
		}
	}
}
