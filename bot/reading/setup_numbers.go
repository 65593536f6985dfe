package reading

// listedSizes gives the bare numbers of a list the unit of its last: "400, 500 and
// 450 m2".
func (r *reader) listedSizes(s span) {
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if !it.qty(area) && !it.qty(volume) && !it.qty(mass) || it.gap < gapAnd {
			continue
		}
		for n := k - 1; n >= s.i && r.items[n].kind == itNum && !r.items[n].soft && !r.items[n].ord && r.items[n].v >= leastListed && r.items[n+1].gap >= gapAnd; n-- {
			r.items[n].kind, r.items[n].unit = itQty, it.unit
		}
	}
}

// mostNipples is the most that a bare number behind "with" is taken for.
const mostNipples = 8

// leastListed is the least that a bare number of a list of sizes is taken for one;
// smaller ones count or name things.
const leastListed = 20

// kindSoon says that a word of the kind follows within two items: "two 55 gal
// barrels", "2 water barrels".
func (r *reader) kindSoon(k int, s span, kind thingKind) bool {
	for n := k + 1; n < s.j && n <= k+3; n++ {
		it := &r.items[n]
		if it.gap > gapNone {
			return false
		}
		if it.isAny(kind.generic) && it.kind == itWord {
			return true
		}
	}
	return false
}

// countOfSized says that the number at k counts things, behind the word for their
// kind and before their size: "feeders: 2 at 200 lb", "water: 2 x 55 gal".
func (r *reader) countOfSized(k int, s span, kind thingKind) bool {
	if k == s.i || !r.items[k-1].isAny(kind.generic) || r.items[k].v != float64(int(r.items[k].v)) {
		return false
	}
	n := k + 1
	if n < s.j && (r.items[n].s == "at" || r.items[n].s == "@" || r.items[n].s == "of") {
		n++
	}
	return n < s.j && (r.items[n].qty(mass) || r.items[n].qty(volume)) && r.items[n].gap == gapNone
}

// massSoon is the weight said right behind item k, "6 sacks of 50 lb"; k if none.
func (r *reader) massSoon(k int, s span) int {
	for n := k + 1; n < s.j && n <= k+2 && r.items[n].gap <= gapComma; n++ {
		if r.items[n].qty(mass) {
			return n
		}
		if r.items[n].s != "of" && r.items[n].s != "at" && r.items[n].s != "@" {
			return k
		}
	}
	return k
}

// nipplesAt says that item k tells how many nipples a thing has, also by a bare
// number behind "with": "and a white barrel 30 gallons with one".
func (r *reader) nipplesAt(k int, w *setUpSaid) bool {
	it := &r.items[k]
	if it.qty(nippleCount) || it.kind == itNum && k+1 < w.s.j && r.items[k+1].unit == unitNipple && r.items[k+1].kind == itWord {
		return true
	}
	return it.kind == itNum && it.v >= 1 && it.v <= mostNipples && len(w.nipples) > 0 && k > w.s.i && r.items[k-1].s == "with" && (k+1 == w.s.j || r.items[k+1].gap >= gapAnd)
}
