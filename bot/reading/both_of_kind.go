package reading

// bothOfKind takes "filled both" for the kind of thing of which the herd has two, where
// the other kind is told of behind it: "filled both and topped the barrels" where there are
// two hoppers and three barrels.
func (r *reader) bothOfKind() {
	feeders, barrels := len(r.c.Herd.Feeders), len(r.c.Herd.Barrels)
	if (feeders == 2) == (barrels == 2) {
		return
	}
	f, other := fFeed, sBarrel
	if barrels == 2 {
		f, other = fWater, sFeeder
	}
	for k := 1; k+1 < len(r.items); k++ {
		it, n := &r.items[k], &r.items[k+1]
		if it.s != "both" || it.quest || it.kind != itWord || it.gap != gapNone || n.gap < gapAnd || n.gap >= gapStop || !r.items[k-1].is(sFill) || r.force[k] != 0 {
			continue
		}
		if r.find(span{0, k + 1, r.sentenceEnd(k)}, other) < 0 {
			continue
		}
		r.forceRange(k-1, k+1, f)
		n.gap = max(n.gap, gapComma)
	}
}
