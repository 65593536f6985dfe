package reading

// What a thing is full of: water and feed go without saying, anything else makes it
// no level.

// fullOfItsOwn takes the water out of "blue barrel full of water" and "filled blue
// with water", where it would be a second thing to be full.
func (r *reader) fullOfItsOwn() {
	for k := 1; k+2 < len(r.items); k++ {
		it := &r.items[k]
		if !it.is(sFull) || it.quest || r.items[k+1].gap != gapNone || !r.items[k+1].is(sOf) && r.items[k+1].s != "with" {
			continue
		}
		n := k + 2
		for n+1 < len(r.items) && n < k+4 && r.items[n].gap == gapNone && r.items[n].kind == itWord && !r.items[n].is(sWater) && r.items[n].unit == 0 {
			n++
		}
		if of := &r.items[n]; of.gap != gapNone || !of.is(sWater) || of.kind != itWord || of.pig >= 0 || of.barrel >= 0 {
			continue
		}
		for b := r.clauseFrom(k); b < k; b++ {
			x, from := &r.items[b], k+1
			switch {
			case x.feeder >= 0 || x.is(sFeeder) && x.barrel < 0:
				from = k // a feeder full of water holds no feed, and no barrel is full
			case x.barrel < 0 && !x.isAny(setOf(sBarrel, sWallow)):
				continue
			}
			for ; n >= from; n-- {
				r.blank(n)
			}
			break
		}
	}
}

// fullOfOther says that a thing is told to be full of what is no feed and no water:
// "the barrel is full of leaves".
func (r *reader) fullOfOther(s span, _ int) bool {
	for k := s.i; k+2 < len(r.items) && k < s.j; k++ {
		if !r.items[k].is(sFull) || !r.items[k+1].is(sOf) || r.items[k+1].gap != gapNone {
			continue
		}
		for n := k + 2; n < len(r.items) && (n == k+2 || r.items[n].gap == gapNone); n++ {
			if of := &r.items[n]; of.kind != itWord || of.unit != 0 || of.isAny(setOf(sWater, sFeed, sIngredient, sRecipe, sBarrel, sFeeder, sFull, sMixed, sPronoun)) {
				return false
			}
		}
		return true
	}
	return false
}
