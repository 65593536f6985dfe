package reading

// A word of the trade that stands in the clause of a record, that nothing was made
// of and that the record's frame knows nothing about, tells of something else.

// tellTale are the words that change what a clause is about: moving, leaking,
// emptying, the other things of the place.
var tellTale = setOf(sMove, sWallow, sHose, sFeeder, sBarrel, sFence, sWorm, sTreat, sOut, sDown, sSick, sDied, sSold, sGirth)

// uncovered says that such a word stands in the clause of a span and belongs to
// none of the spans that were recorded.
func (r *reader) uncovered(s span) bool {
	for k := r.clauseFrom(s.i); k < r.clauseEnd(s.j-1); k++ {
		it := &r.items[k]
		inside := k >= s.i && k < s.j
		if it.used || !inside && !r.idleAt(k) || it.kind != itWord && it.kind != itThing || !it.isAny(tellTale) || it.isAny(setOf(sFiller, sAbout)) {
			continue
		}
		if r.besideUsed(k) && !r.votesFor(s.frame, it) {
			return true
		}
	}
	return false
}

// besideUsed says that an amount, a name or a level that was used stands in the
// same clause as item k, no "and" between.
func (r *reader) besideUsed(k int) bool {
	from, to := r.stretch(k)
	for n := from; n < to; n++ {
		if it := &r.items[n]; it.used && (it.number() || it.kind == itDim || it.kind == itFrac || it.kind == itName || it.kind == itThing || it.isAny(setOf(sFull, sEmpty))) {
			return true
		}
	}
	return false
}

// votesFor says that a frame has a use for a trade sense of the item.
func (r *reader) votesFor(f frame, it *item) bool {
	r.features(it)
	r.countVotes()
	return r.voted&(1<<f) != 0
}

// doubtCovered asks about what a span yielded where a word of the trade beside it
// was left over.
func (r *reader) doubtCovered(s span, from int) {
	if from >= len(r.out) || !factual[s.frame] || s.frame == fAlarm || len(r.c.Herd.Animals) == 0 {
		return
	}
	for n := from; n < len(r.out); n++ {
		if _, ok := r.out[n].Act.(Fact); !ok {
			return
		}
	}
	if r.uncovered(s) {
		r.confirm(s, from)
	}
}
