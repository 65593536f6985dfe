package reading

// "None of the gilts did" behind what the others had tells of no gilt.

// noneDid takes such a clause out.
func (r *reader) noneDid() {
	for k := 1; k+2 < len(r.items); k++ {
		if r.items[k].s != "none" || r.items[k].quest {
			continue
		}
		n := k + 1
		for n < len(r.items) && r.items[n].gap == gapNone && (r.items[n].s == "of" || r.items[n].is(sFiller) && !doesOrHas[r.items[n].s]) {
			n++
		}
		if n+1 >= len(r.items) || r.items[n].gap != gapNone || !r.items[n].isAny(whoWords) && r.items[n].group < 0 || !doesOrHas[r.items[n+1].s] || r.items[n+1].gap != gapNone {
			continue
		}
		if n+2 < len(r.items) && r.items[n+2].gap == gapNone && !r.items[n+2].is(sFiller) {
			continue // "none of the gilts got wormed" says it all by itself
		}
		for x := k; x <= n+1; x++ {
			r.blank(x)
		}
		r.items[k].gap = max(r.items[k].gap, gapComma)
	}
}

var doesOrHas = setOfWords(split("did, have, has, had, got, were, are, do"))
