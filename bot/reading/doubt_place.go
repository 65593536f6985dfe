package reading

// The signs that a thing of the herd is only where something else is.

// inWallow says that the wallow is but the place where the pigs are, or what a pen
// looks like: "they're in the wallow", "cherry is a mud pit".
func (r *reader) inWallow(s span) bool {
	k := r.find(s, sWallow)
	if k < 1 || r.has(s, sFill) || r.has(s, sHose) || r.has(s, sPour) || r.has(s, sFull) || r.has(s, sWater) || r.has(s, sDone) || r.has(s, sWatered) || !r.amountless(s.i, s.j) {
		return false
	}
	n := k - 1
	for n > 0 && (r.items[n].s == "the" || r.items[n].s == "their" || r.items[n].s == "my" || r.items[n].s == "our" || r.items[n].s == "that") {
		n--
	}
	switch lastWord(r.items[n].s) {
	case "in", "into", "from", "near", "by", "love", "loves", "loving", "enjoy", "enjoying", "like", "likes", "a", "at", "around", "leave":
		return true
	}
	return false
}

// nameOfPlant says that the one pig a departure names may be the thing its name is
// the word for: "the fern died".
func (r *reader) nameOfPlant(s span) bool {
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if it.pig < 0 || it.capital || !r.lex.plain[it.s] && !plantWords[it.s] {
			continue
		}
		if k > 0 && (r.items[k-1].s == "the" || r.items[k-1].s == "a" || r.items[k-1].s == "my") && it.gap == gapNone {
			return true
		}
		if k+1 < len(r.items) && (r.items[k+1].s == "by the" || r.items[k+1].s == "by" || r.items[k+1].s == "in the") && r.items[k+1].gap == gapNone {
			return true
		}
	}
	return false
}

// plantWords are names of pigs that are plants.
var plantWords = setOfWords(split(`fern, clover, hazel, rose, daisy, plum, moss, apple, poppy, ivy, lily, basil, pepper, juniper, willow, violet, ginger, olive`))

// mentioned says that a pen is only named beside a word that is no moving: "mowed
// pear", "fixed the gate in pear".
func (r *reader) mentioned(s span) bool {
	if r.has(s, sMove) || r.has(s, sInUse) || r.saysWho(s) || r.quoteHas(s, "now", "in", "to", "pigs") && s.j-s.i < 3 && s.i == r.clauseFrom(s.i) {
		return false
	}
	for k := r.clauseFrom(s.i); k < r.clauseEnd(s.j-1); k++ {
		it := &r.items[k]
		if it.kind == itWord && it.pig < 0 && it.pen < 0 && it.unit == 0 && len(it.s) > 2 && (it.sense.empty() || it.isAny(setOf(sWallow, sWater, sFence, sDied, sSick))) && !penTalk[it.s] {
			return true
		}
	}
	return false
}

// penTalk are plain words beside the name of a pen that still tell where pigs are.
var penTalk = setOfWords(split(`over, side, now, crew, staying, stay, stays, today, next, rotation, rotate, rotating, time, change, changed, changing, went, put, brought, took, drove, herded, chased, led, walked, pushed, turned, sent, guided`))

// penNews are words that tell of a pen that was not there before.
var penNews = setOfWords(split(`new, pen, pens, new pen, another, added, built, fenced, add, made, paddock, lot, called, named`))

// soTheyCan says that a pen is named in what something is done for: "so the gilts can
// have Barn".
func (r *reader) soTheyCan(s span) bool {
	if r.has(s, sMove) || r.has(s, sInUse) {
		return false
	}
	so := false
	for k := r.clauseFrom(s.i); k < s.j; k++ {
		switch w := r.items[k].s; {
		case w == "so", w == "so that":
			so = true
		case so && (w == "can" || w == "could" || w == "can have" || w == "get"):
			return true
		}
	}
	return false
}

// weekdayAhead says that the weekday of a move is one to come: nothing tells that it was
// made, and words of what is to come: "garden on friday maybe", "woods till friday".
func (r *reader) weekdayAhead(s span, _ int) bool {
	from, to := r.sentenceStart(s.i), r.sentenceEnd(s.j-1)
	weekday := false
	for k := from; k < to; k++ {
		it := &r.items[k]
		weekday = weekday || it.kind == itDay && it.day.form == dayWeekday && it.day.mod >= 0 && !it.day.every
		if it.kind == itWord && it.pig < 0 && (pastTense(it.s) || it.s == "went" || it.s == "are in" || it.s == "is in" || it.s == "now") {
			return false
		}
	}
	return weekday && saysAny(r.said(span{0, from, to}), aheadWords)
}

var aheadWords = phrasesOf("maybe, probably, perhaps, till, until, til, they go, goes to, go to, go in, then")
