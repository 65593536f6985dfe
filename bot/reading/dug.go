package reading

// dugWallow forces what was dug with its sizes and its depth into the wallow, where no
// pen is named: "dug one, 6 by 8 and a foot deep", "dug em a hole 6x8, 1 ft deep".
func (r *reader) dugWallow(k int) bool {
	it := &r.items[k]
	if it.kind != itWord || firstWord(it.s) != "dug" || it.quest || r.has(span{0, k, r.sentenceEnd(k)}, sFence) {
		return false
	}
	from, to := r.clauseFrom(k), r.sentenceEnd(k)
	sides := false
	for n := from; n < to; n++ {
		x := &r.items[n]
		switch {
		case x.pen >= 0, x.feeder >= 0, x.barrel >= 0, x.kind == itWord && x.isAny(setOf(sPen, sFeeder, sBarrel, sWallow, sNot, sPlan)) && !x.is(sFiller):
			return false
		case x.kind == itDim:
			sides = true
		}
	}
	if s := (span{0, from, to}); !sides || !r.has(s, sDeep) {
		return false
	}
	r.forceRange(from, to, fSetWallow)
	return true
}

// bareInBarrel forces a bare number put into a barrel into the water, so that no feed is
// asked for: "put 20 in the shed barrel".
func (r *reader) bareInBarrel(k int) bool {
	it := &r.items[k]
	if it.kind != itNum || it.soft || it.quest || k == 0 || !r.items[k-1].isAny(setOf(sPour, sGave)) || it.gap != gapNone || k+1 >= len(r.items) {
		return false
	}
	if w := r.items[k+1].s; w != "in" && w != "into" && w != "in the" && w != "to" {
		return false
	}
	for n := k + 1; n < len(r.items) && n <= k+4 && r.items[n].gap == gapNone; n++ {
		x := &r.items[n]
		if x.feeder >= 0 || x.is(sFeeder) || x.either {
			return false
		}
		if x.barrel >= 0 || x.kind == itWord && x.is(sBarrel) {
			end := n + 1
			if end < len(r.items) && r.items[end].gap == gapNone && r.items[end].is(sBarrel) {
				end++
			}
			r.forceRange(k-1, end, fWater)
			return true
		}
	}
	return false
}

// vesselTimes joins the word for a measure to how many times it went in: "bucket x3".
func (r *reader) vesselTimes() {
	for k := 0; k+2 < len(r.items); k++ {
		it, x, n := &r.items[k], &r.items[k+1], &r.items[k+2]
		if it.kind == itWord && it.unit != 0 && it.unit.dim() == vessel && x.s == "x" && x.gap == gapNone && n.kind == itNum && !n.soft && n.gap == gapNone && n.v <= mostVessels && !(k > 0 && r.items[k-1].number() && r.items[k].gap == gapNone) {
			it.kind, it.v = itQty, n.v
			r.blank(k + 1)
			r.blank(k + 2)
		}
	}
}

// bagsOfSize leaves the size of bags out where nobody says how many there are: "100 lb bags
// of soy, corn is 50s".
func (r *reader) bagsOfSize() {
	for k := 0; k+3 < len(r.items); k++ {
		it, u := &r.items[k], &r.items[k+1]
		if !it.qty(mass) || u.kind != itWord || u.unit == 0 || u.unit.dim() != vessel || u.gap != gapNone || u.s[len(u.s)-1] != 's' || !r.items[k+2].is(sOf) || !r.items[k+3].is(sIngredient) {
			continue
		}
		if k == 0 || !r.items[k-1].number() && !r.has(span{0, r.clauseFrom(k), k}, sBuy) {
			r.blank(k)
		}
	}
}
