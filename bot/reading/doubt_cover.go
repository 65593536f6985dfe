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
		if k > s.j && r.items[k].gap >= gapAnd || k < s.i && r.andBetween(k, s.i) {
			continue
		}
		if !r.votesFor(s.frame, it) {
			return true
		}
	}
	return false
}

// andBetween says that an "and" or more parts item k from item n.
func (r *reader) andBetween(k, n int) bool {
	for x := k + 1; x <= n; x++ {
		if r.items[x].gap >= gapAnd {
			return true
		}
	}
	return false
}

// votesFor says that a frame has a use for a trade sense of the item.
func (r *reader) votesFor(f frame, it *item) bool {
	r.features(it)
	for _, x := range r.feats {
		if votes.of[f][x].set {
			return true
		}
	}
	return false
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
