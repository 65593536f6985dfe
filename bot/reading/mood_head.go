package reading

// What stands at the head of a sentence, or of the whole text, governs all of it.

// headMood says why a factual span records nothing because of what stands before
// it in its sentence: a day to come, an "if", somebody else's animals.
func (r *reader) headMood(s span) string {
	start := max(r.sentenceStart(s.i), s.i-headReach)
	for k := start; k < s.i; k++ {
		it := &r.items[k]
		if firstWord(it.s) == "if" && (it.s == "if" || !it.is(sFiller)) || it.s == "unless" || it.is(sIf) && !it.is(sFiller) {
			return NonePlan // "if the price goes up we would sell ulan"
		}
		if !it.is(sFiller) && !it.is(sAnd) {
			break
		}
	}
	for k := s.i - 1; k >= start && r.items[k+1].gap < gapComma; k-- {
		if r.items[k].s == "if" && r.items[k].gap < gapComma && k > 0 && !r.ifNot(k-1) && (s.frame == fSpend || s.frame == fGone) {
			return NonePlan // "I sell Moss maybe if somebody pays 400"
		}
	}
	if r.sinceDone(s) || r.invertedIf(s) {
		return NonePlan
	}
	for k := s.i; k > start && r.items[k].gap < gapComma; k-- {
		p := &r.items[k-1]
		if p.kind == itDay && p.day.form != dayWeekday && !p.day.every || p.kind == itWord && r.turnsBack(k-1) {
			if p.kind == itDay && (p.day.form == dayOffset && p.day.a > 0) && r.onlySmallBefore(k-1) {
				return NoneFuture // "next week I mix 3 batches"
			}
			break
		}
	}
	if !ofAnimals[s.frame] || r.namesThing(s) {
		return ""
	}
	for k := start; k < s.i; k++ {
		it := &r.items[k]
		if it.is(sForeign) && !household[it.s] && it.pig < 0 && !r.spokenFor(k, s.i) && !r.householdDid(k) {
			return NoneForeign
		}
	}
	return ""
}

// sinceDone says that a deed is but the time from which something else is
// counted: "it's been 4 days since i filled the feeder".
func (r *reader) sinceDone(s span) bool {
	for k := max(r.sentenceStart(s.i), s.i-headReach); k+1 < s.j; k++ {
		if r.items[k].s != "since" {
			continue
		}
		for n := k + 1; n < s.j && n <= k+3 && r.items[n].gap == gapNone; n++ {
			if r.items[n].isAny(setOf(sFill, sPour, sWorm, sTreat, sMove, sMixed, sWeigh, sTape, sHose)) {
				for x := s.i; x < s.j; x++ { // an amount of its own was poured all the same
					if it := &r.items[x]; it.number() && !it.soft && !it.qty(days) && !it.qty(hours) {
						return false
					}
				}
				return true
			}
		}
	}
	return false
}

// toFetch says that a span tells of goods, or pigs, that are still to be fetched: its clause
// begins with "getting" or its like and names a day, which without a "last" is one to
// come: "getting 2 bags friday".
func (r *reader) toFetch(s span) bool {
	if s.frame != fFeed && s.frame != fStock && s.frame != fSpend && s.frame != fArrive {
		return false
	}
	k := r.clauseFrom(s.i)
	for k < s.j && (r.isI(k) || r.items[k].is(sPronoun) || r.items[k].isAny(setOf(sFiller)) && !fetching[r.items[k].s]) {
		k++
	}
	if k >= s.j || !fetching[r.items[k].s] {
		return false
	}
	for n := k; n < r.clauseEnd(s.j-1); n++ {
		if it := &r.items[n]; it.kind == itDay && it.day.form == dayWeekday && it.day.mod >= 0 && !it.day.every {
			return true
		}
	}
	return false
}

var fetching = listed("getting, buying, picking, picking up, grabbing, fetching, collecting, ordering, hauling")

// headReach is how many items the head of a sentence may stand before a span.
const headReach = 40

// ofAnimals are the frames that tell of animals, so that whose they are matters.
var ofAnimals = map[frame]bool{fSick: true, fGone: true, fWeigh: true, fDrug: true}

// turnsBack says that the word at item k turns away from what was said before.
func (r *reader) turnsBack(k int) bool {
	switch r.items[k].s {
	case "but", "so", "anyway", "now", "already":
		return true
	}
	return false
}

// onlySmallBefore says that nothing but small words stands before item k in its
// clause.
func (r *reader) onlySmallBefore(k int) bool {
	for n := r.clauseFrom(k); n < k; n++ {
		if !r.items[n].is(sFiller) {
			return false
		}
	}
	return true
}

// namesThing says that a span names a pig or a thing of the herd.
func (r *reader) namesThing(s span) bool {
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.pig >= 0 && !it.near || it.feeder >= 0 || it.barrel >= 0 || it.pen >= 0 || it.group >= 0 {
			return true
		}
	}
	return false
}

// spokenFor says that the person speaks of what is their own between items k and
// end: "the neighbor came by and we weighed them".
func (r *reader) spokenFor(k, end int) bool {
	for n := k + 1; n < end; n++ {
		switch r.items[n].s {
		case "i", "we", "our", "ours", "my", "mine", "i've", "we've", "ive", "weve", "i'm", "im":
			return true
		}
		if r.items[n].kind == itName {
			return true
		}
	}
	return false
}

// oneOfUs says that the word of hearsay at item k is about what one of the house
// saw: "wife says east tank empty". Strangers have no business at the barrels.
func (r *reader) oneOfUs(k int) bool {
	for n := k - 1; n >= 0 && n >= k-3 && r.items[n].gap <= gapAnd; n-- {
		it := &r.items[n]
		if household[it.s] || !it.known && it.capital && n == r.sentenceStart(k) {
			return true
		}
		if it.is(sForeign) || it.s == "they" || it.s == "he" || it.s == "she" {
			return false
		}
	}
	return false
}
