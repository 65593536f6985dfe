package reading

// What is told of a thing and is neither its level nor its size: sacks that lie
// somewhere else, nipples that were replaced, a share of nothing.

// lyingElsewhere says that an amount is told to lie in no feeder: "2 bags still
// sitting in the truck".
func (r *reader) lyingElsewhere(s span, _ int) bool {
	if r.has(s, sFill) || r.has(s, sPour) {
		return false
	}
	for k := s.i; k < s.j; k++ {
		if r.items[k].feeder >= 0 {
			return false
		}
	}
	said := r.said(span{0, r.clauseFrom(s.i), r.sentenceEnd(s.j - 1)})
	return saysAny(said, vehicles) && saysAny(said, restingWords)
}

var (
	restingWords = phrasesOf("sitting, siting, waiting, lying, laying, stacked, stashed, parked, stuck, riding, still, left")
	vehicles     = phrasesOf("in the truck, in my truck, on the truck, in truck, in the pickup, in the trailer, on the trailer, in the car, in my car, in the van, in the boot, in the trunk, in the cab, in the back seat, on the wagon, in the wagon, on the tractor, on the porch, in the carport, at the store, at the feed store, at the mill, at the shop, at the co-op, at the coop, at work")
)

// partsMended says that parts of a thing were seen to, which says nothing of how many
// it has: "replaced 2 nipples on blue".
func (r *reader) partsMended(s span, _ int) bool {
	said := r.said(span{0, r.clauseFrom(s.i), r.clauseEnd(s.j - 1)})
	return saysAny(said, mendingWords) && !saysAny(said, nowHas)
}

var (
	mendingWords = phrasesOf("replaced, fixed, repaired, mended, cleaned, unclogged, unplugged, swapped, swapped out, changed out, changed, tightened, thawed, thawed out, scrubbed, flushed, broke, broken, leaking, leaks, clogged, plugged, frozen, froze, stuck")
	nowHas       = phrasesOf("has, have, now has, with, holds, so it has, makes")
)

// percentOfNothing says that a share is told that is none of the air's: "100 percent
// done with this heat".
func (r *reader) percentOfNothing(s span, _ int) bool {
	if r.firstQty(s, percent) < 0 || r.has(s, sHumid) {
		return false
	}
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.number() && !it.soft && !it.qty(percent) || it.kind == itSlash {
			return false
		}
	}
	return r.otherWords(s) > 0 || r.strangeWords(s) > 0
}
