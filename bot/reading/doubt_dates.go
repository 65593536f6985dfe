package reading

// The signs that a day is no appointment and no absence.

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

// eitherDay says that a span leaves open which of two days it was: "mon or tues".
func (r *reader) eitherDay(s span) bool {
	for k := s.i + 1; k+1 < s.j; k++ {
		if r.items[k].s == "or" && r.items[k-1].kind == itDay && r.items[k+1].kind == itDay && r.items[k+1].day != r.items[k-1].day {
			return true
		}
	}
	return false
}

// confirmDay asks whether what a span of two days yielded is meant.
func (r *reader) confirmDay(s span, from int) {
	if from < len(r.out) {
		r.confirm(s, from)
	}
}
