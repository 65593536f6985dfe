package reading

// awayThere reads a place and a span of days, "we shall be in Ohio from the 17th
// until the 19th", as days away: nobody sets a time zone for three days.
func (r *reader) awayThere(k int) bool {
	it := &r.items[k]
	zone := it.canon == zoneCanon
	if !zone && !(lastWord(it.s) == "in" && k+1 < len(r.items) && r.items[k+1].gap == gapNone && r.placeLike(k+1)) || it.pig >= 0 {
		return false
	}
	from, to := r.sentenceStart(k), r.sentenceEnd(k)
	days, span := 0, false
	for n := from; n < to; n++ {
		x := &r.items[n]
		switch {
		case x.kind == itDay && !x.day.every:
			days++
		case days == 1 && x.isAny(setOf(sTo)):
			span = true
		case x.number() && !x.soft && !x.used, x.isAny(setOf(sPigs, sArrive)) && !x.is(sFiller) && !x.is(sIs), x.is(sUnits), x.s == "time", x.pig >= 0 && n != k, x.feeder >= 0, x.barrel >= 0:
			return false
		}
	}
	if days < 2 || !span || len(r.c.Herd.Animals) == 0 {
		return false
	}
	it.canon, it.kind, it.sense = "", itWord, setOf(sAway)
	r.forceRange(from, to, fAway)
	return true
}

// placeLike says that item k may be the name of a place that is not of the herd.
func (r *reader) placeLike(k int) bool {
	it := &r.items[k]
	return it.kind == itWord && it.pig < 0 && it.pen < 0 && it.feeder < 0 && it.barrel < 0 && (it.canon == zoneCanon || !it.known && it.capital)
}
