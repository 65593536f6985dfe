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

// noTrouble says that a lack of feed or water is denied: "not out of water yet", "no
// water problems".
func (r *reader) noTrouble(s span) bool {
	for k := s.i; k < s.j; k++ {
		if !r.items[k].isAny(setOf(sNoWater, sNoFeed)) {
			continue
		}
		for n := k - 1; n >= 0 && n >= k-2 && r.items[n+1].gap == gapNone; n-- {
			if r.items[n].is(sNot) {
				return true
			}
			if !r.items[n].isAny(setOf(sFiller, sIs)) {
				break
			}
		}
		if k+1 < len(r.items) && r.items[k+1].gap == gapNone {
			switch r.items[k+1].s {
			case "problem", "problems", "issue", "issues", "trouble", "troubles", "worries", "leak", "leaks", "complaints", "bills", "bill", "needed", "today", "wasted", "added", "change", "changes":
				return r.items[k+1].s != "today"
			}
		}
	}
	return false
}

// ownIll says that the person tells of being unwell: "i have a cough".
func (r *reader) ownIll(k int) bool {
	from := r.clauseFrom(k)
	for n := from; n < r.clauseEnd(k); n++ {
		if it := &r.items[n]; it.pig >= 0 || it.group >= 0 || it.isAny(whoWords) {
			return false
		}
	}
	for n := k - 1; n >= from && n >= k-4; n-- {
		switch r.items[n].s {
		case "i'm", "im", "i am", "i", "i've", "ive", "i have", "i got", "i feel", "we're", "my", "my own", "i had":
			return true
		}
		if !r.items[n].isAny(setOf(sFiller, sIs, sGave, sArrive)) {
			return false
		}
	}
	return false
}

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

// daysUntil says that days are told until a time away, not of it: "2 weeks till
// vacation".
func (r *reader) daysUntil(s span) bool {
	for k := s.i; k+1 < s.j; k++ {
		if r.items[k].qty(days) {
			switch r.items[k+1].s {
			case "till", "til", "until", "to", "before", "til about", "to go till", "to go until":
				return !r.hasDay(s)
			}
		}
	}
	return false
}

// offered says that a day with the butcher is offered, not made: "butcher can take
// 2 on sep 3".
func (r *reader) offered(s span) bool {
	from, to := r.sentenceStart(s.i), r.sentenceEnd(s.j-1)
	offer := false
	for k := from; k < to; k++ { // what was talked over with him is settled
		if w := firstWord(r.items[k].s); r.items[k].is(sButcher) && (w == "talked" || w == "spoke" || w == "called") {
			return false
		}
	}
	for k := from; k < to; k++ {
		switch r.items[k].s {
		case "can take", "could take", "could do", "can do", "has room", "has room for", "has a spot", "has an opening", "has openings", "offered", "offers", "offering", "would work", "had a cancellation", "an opening", "opening", "openings", "works", "if", "could", "asked", "available", "is open", "free", "has a slot", "has slots":
			offer = true
		case "booked", "book", "took it", "confirmed", "took that", "said yes", "signed", "reserved", "booked it", "so booked", "we took", "scheduled", "penciled in", "penciled us in", "got us in", "has us down", "we're down for", "put us down", "us", "for us", "it's set":
			return false
		}
		if r.items[k].s == "can" && k+1 < to && (r.items[k+1].s == "take" || r.items[k+1].s == "do" || r.items[k+1].s == "takes" || r.items[k+1].s == "fit") {
			offer = true
		}
	}
	return offer
}

// closedThen says that the butcher is told not to work on a day.
func (r *reader) closedThen(s span) bool {
	return r.quoteHas(span{s.frame, r.sentenceStart(s.i), r.sentenceEnd(s.j - 1)}, "closed", "is closed", "on vacation", "booked up", "booked solid", "never called") && !r.has(s, sBook)
}

// penNews are words that tell of a pen that was not there before.
var penNews = setOfWords(split(`new, pen, pens, new pen, another, added, built, fenced, add, made, paddock, lot, called, named`))

// headsBought says that what was got is pigs, told by what each weighs and by no
// word of feed: "got three more today, 40 lb each".
func (r *reader) headsBought(s span) bool {
	all := span{s.frame, r.sentenceStart(s.i), r.sentenceEnd(s.j - 1)}
	return r.has(all, sEach) && r.firstQty(all, mass) >= 0 && r.firstQty(all, vessel) < 0 && r.firstQty(all, money) < 0 && !r.has(all, sFeed) && !r.has(all, sIngredient) && !r.has(all, sShed) && !r.has(all, sFeeder) && (r.has(all, sMore) || r.alive == 0)
}

// habit says that a filling is what is always done, not what was: "i fill feed and
// water on saturdays".
func (r *reader) habit(s span) bool {
	from, to := r.clauseFrom(s.i), r.clauseEnd(s.j-1)
	for k := from; k < to; k++ {
		if it := &r.items[k]; it.kind == itDay && it.day.every {
			return r.amountless(from, to) && (r.quoteHas(span{s.frame, from, to}, "fill", "i fill", "we fill", "refill", "do", "top", "check", "fill up"))
		}
	}
	return false
}
