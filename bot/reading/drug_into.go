package reading

// drugInto takes the meaning from the "into" between a drug and the pigs that got it:
// "levamisole into all of them this morning" moves nobody.
func (r *reader) drugInto() {
	for k := 0; k+2 < len(r.items); k++ {
		it, to := &r.items[k+1], &r.items[k+2]
		if !r.items[k].isAny(setOf(sProduct, sWorm)) || it.s != "into" && it.s != "in" || it.gap != gapNone || to.gap != gapNone {
			continue
		}
		n := k + 2
		for n+1 < len(r.items) && (r.items[n].s == "the" || r.items[n].s == "their") && r.items[n+1].gap == gapNone {
			n++
		}
		if who := &r.items[n]; who.pig >= 0 || who.group >= 0 || who.isAny(setOf(sAll, sBarrow, sGilt)) {
			it.sense, it.unit = setOf(sFiller), 0
		} else if who.kind == itWord && who.pig < 0 && (who.isAny(setOf(sFeed, sWater)) && !who.isAny(setOf(sFeeder, sBarrel)) || carriers[who.s]) {
			for x := k + 1; x <= n; x++ {
				r.blank(x) // "fenbendazole in the feed" fills nothing
			}
		}
	}
}

// carriers are what a drug is hidden in.
var carriers = setOfWords(split("bread, mash, slop, jam, apples, banana, marshmallow, peanut butter, sandwich, treat, treats, morning feed, evening feed, breakfast, supper"))
