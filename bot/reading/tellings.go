package reading

// forceTellings settles sentences that tell of what no frame is weighed up for:
// feed spilled, rain fallen, protein on a tag, the soil of the pens. They are rare, and known by whole
// phrases.
func (r *reader) forceTellings() {
	if r.helpOn() {
		r.forceRange(0, len(r.items), fHelp)
		return
	}
	for k := range r.items {
		if r.force[k] != 0 {
			continue
		}
		switch {
		case r.flowStart(k) && r.tellsFlow(k):
			r.forceRange(r.sentenceStart(k), r.sentenceEnd(k), fAsk)
		case r.spillStart(k) && r.tellsSpill(k):
			from, to := r.spillRange(k)
			r.forceRange(from, to, fSpill)
		case r.rainStart(k):
			if from, to, ok := r.tellsRain(k); ok {
				r.forceRange(from, to, fRain)
			}
		case soilOf(r.items[k].s) != "":
			if s := (span{fSoil, r.clauseFrom(k), r.clauseEnd(k)}); r.tellsSoil(s) {
				r.forceRange(s.i, s.j, fSoil)
			}
		case r.proteinStart(k):
			if s, ok := r.proteinSpan(k); ok {
				r.forceRange(s.i, s.j, fProtein)
			}
		}
	}
}
