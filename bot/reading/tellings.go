package reading

// sackWords ask by themselves how a sack comes out whole.
var sackWords = phrasesOf("whole sacks, whole bags, whole sack, whole bag, batches per bag, batches per sack")

// forceTellings settles sentences that tell of what no frame is weighed up for:
// feed spilled, rain fallen, protein on a tag, the soil of the pens,
// pigs to come. They are rare, and known by whole
// phrases.
func (r *reader) forceTellings() {
	if r.helpOn() {
		r.forceRange(0, len(r.items), fHelp)
		return
	}
	if n := len(r.items); n > 0 && n <= 4 && saysAny(r.said(span{0, 0, n}), sackWords) {
		r.forceRange(0, n, fAsk)
		return
	}
	for k := range r.items {
		if r.expectStart(k) {
			if s, ok := r.expectSpan(k); ok {
				r.forceRange(s.i, s.j, fExpect)
			}
		}
		if r.force[k] != 0 {
			continue
		}
		switch {
		case r.flowStart(k) && r.flowSpan(k).j > 0:
			s := r.flowSpan(k)
			r.forceRange(s.i, s.j, fAsk)
		case r.spillStart(k):
			if s, ok := r.spillSpan(k); ok {
				r.forceRange(s.i, s.j, fSpill)
			}
		case r.rainStart(k):
			if from, to, ok := r.tellsRain(k); ok {
				r.forceRange(from, to, fRain)
			}
		case soilOf(r.items[k].s) != "":
			pieces := r.pieces(k)
			for _, s := range pieces[:2] {
				if r.tellsSoil(s) {
					r.forceRange(s.i, s.j, fSoil)
					break
				}
			}
		case r.proteinStart(k):
			if s, ok := r.proteinSpan(k); ok {
				r.forceRange(s.i, s.j, fProtein)
			}
		}
	}
}
