package reading

// apartSentences takes the pig out of a sentence that tells no figure and nothing of the
// trade, where the next one names another with a figure: "209 was all mud. 206 taped 43.5".
func (r *reader) apartSentences() {
	for i := 0; i < len(r.items); {
		j := r.sentenceEnd(i)
		from := i
		i = j
		if j >= len(r.items) || !r.saysNothing(from, j) || !r.nextMeasured(j) {
			continue
		}
		for n := from; n < j; n++ {
			r.blank(n)
		}
	}
}

// saysNothing says that items[i:j] name a pig and tell how it looks, in words that mean
// nothing here, or that it was not weighed.
func (r *reader) saysNothing(i, j int) bool {
	pig, other, not := false, false, false
	for n := i; n < j; n++ {
		it := &r.items[n]
		switch {
		case it.quest, it.kind == itDay, it.kind == itThing:
			return false
		case it.pig >= 0:
			pig = true
		case it.number() && !it.soft, it.kind != itWord && !it.soft:
			return false
		case it.is(sNot):
			not = true
		case it.isAny(setOf(sWeigh, sTape)):
			if !not {
				return false
			}
			other = true
		case it.sense.empty() && it.unit == 0:
			other = true
		case !it.isAny(setOf(sFiller, sIs, sPronoun, sAll)):
			return false
		}
	}
	return pig && other
}

// nextMeasured says that the sentence at item k names a pig before its first figure.
func (r *reader) nextMeasured(k int) bool {
	pig := false
	for n := k; n < r.sentenceEnd(k); n++ {
		it := &r.items[n]
		switch {
		case it.pig >= 0:
			pig = true
		case onePronouns[it.s] && !pig:
			return false
		case it.number() && !it.soft || it.kind == itDim:
			return pig
		}
	}
	return false
}
