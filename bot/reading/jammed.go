package reading

// Feed and water that do not come: "hopper jammed, nothing coming down", "nothing comes out
// of the nipples". The pigs go without, in whatever words it is told.

// nothingComes gives the sense of a lack of feed or water to a "nothing" that comes from a
// feeder or a barrel.
func (r *reader) nothingComes() {
	if r.alive == 0 {
		return
	}
	for k := range r.items {
		it := &r.items[k]
		if it.kind != itWord || it.quest || !nothings[firstWord(it.s)] {
			continue
		}
		from, to := r.sentenceStart(k), r.sentenceEnd(k)
		s := span{0, from, to}
		said := r.said(s)
		if !saysAny(said, comesOut) || saysAny(said, flowsAgain) || r.has(s, sIf) || r.has(s, sPlan) {
			continue
		}
		feed, water := false, false
		for n := from; n < to; n++ {
			x := &r.items[n]
			feed = feed || x.is(sFeeder) && x.barrel < 0 || x.feeder >= 0
			water = water || x.is(sBarrel) || x.barrel >= 0 || x.is(sWater) || nippleWords[lastWord(x.s)]
		}
		lack := sNoWater
		switch {
		case feed == water:
			continue
		case feed:
			lack = sNoFeed
		}
		for n := from; n < to; n++ {
			if x := &r.items[n]; x.pig < 0 && x.barrel < 0 && x.feeder < 0 && (n > k && saysAny(" "+x.s+" ", comesWords) || jamWords[x.s] || x.is(sEmpty)) {
				r.blank(n)
			}
		}
		it.sense, it.unit, it.known = setOf(lack), 0, true
		last := k
		for n := k + 1; n < r.clauseEnd(k); n++ {
			if x := &r.items[n]; x.barrel >= 0 || x.feeder >= 0 || x.isAny(setOf(sBarrel, sFeeder)) || nippleWords[lastWord(x.s)] {
				r.blank(n)
				last = n
			}
		}
		r.forceRange(k, last+1, fAlarm)
		return
	}
}

var (
	nothings    = setOfWords(split("nothing, nothings, nothing's, nothin, nuthin, nothing is"))
	nippleWords = setOfWords(split("nipple, nipples, drinker, drinkers, waterer, waterers, spigot"))
	jamWords    = setOfWords(split("jammed, clogged, blocked, bridged, plugged, stuck, stopped up, is jammed, is clogged, is blocked, dry"))
	comesOut    = phrasesOf("nothing coming, nothing comes, nothings coming, nothing is coming, nothing's coming, nothin coming, nothin comes, nothin comin, nothing comin, nothing came, nothing dropping, nothing drops, nothing flowing, nothing flows, nothing running, nothing runs, nothing dripping, nothing falling, nothing falls, nothing is dropping")
	comesWords  = phrasesOf("coming, comes, comin, came, out, down, of, from, through, the, dropping, drops, flowing, running, coming down, coming out")
	flowsAgain  = phrasesOf("cleared, unclogged, fixed, unjammed, freed, works again, working again, running again, flowing again, sorted, got it going, all good")
)
