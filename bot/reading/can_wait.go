package reading

// canWait leaves out the things that are told to wait: "both hoppers full, barrels can
// wait till tomorrow".
func (r *reader) canWait() {
	for k := 1; k < len(r.items); k++ {
		it := &r.items[k]
		if it.kind != itWord || it.s != "wait" && it.s != "can wait" && it.s != "keep" || it.quest || it.gap != gapNone || it.s != "can wait" && !waitsFor[r.items[k-1].s] {
			continue
		}
		i, j := r.stretchOf(k), r.stretchEnd(k)
		thing := false
		for n := i; n < k; n++ {
			x := &r.items[n]
			if x.number() && !x.soft || x.pig >= 0 || x.isAny(setOf(sFill, sFull, sEmpty, sPour, sGave, sWorm)) && !x.is(sFiller) && x.barrel < 0 && x.feeder < 0 {
				thing = false
				break
			}
			thing = thing || x.barrel >= 0 || x.feeder >= 0 || x.kind == itWord && x.isAny(setOf(sWater, sBarrel, sFeeder, sFeed, sWallow))
		}
		if !thing {
			continue
		}
		gap := r.items[i].gap
		for n := i; n < j; n++ {
			r.blank(n)
		}
		r.items[i].gap = max(gap, gapStop)
		if j < len(r.items) {
			r.items[j].gap = max(r.items[j].gap, gapStop)
		}
	}
}

// waitsFor stand before "wait" of what is not done now.
var waitsFor = setOfWords(split("can, could, will, gotta, must, to, should, they'll, it'll, that'll"))
