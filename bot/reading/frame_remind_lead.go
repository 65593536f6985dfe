package reading

// remindsFirst forces a reminder whose day or hour stands before it: "friday 6pm
// remind me to check the wire".
func (r *reader) remindsFirst(k int) bool {
	it := &r.items[k]
	if !it.is(sRemind) || it.pig >= 0 || r.isQuestion(k) {
		return false
	}
	from, timed := k, false
	for from > r.sentenceStart(k) {
		p := &r.items[from-1]
		if p.kind == itDay || p.kind == itClock {
			timed = true
		} else if p.kind != itWord || !p.isAny(setOf(sFiller, sOn, sAt)) || p.pig >= 0 {
			return false
		}
		from--
	}
	if !timed {
		return false
	}
	r.forceRange(from, r.sentenceEnd(k), fRemind)
	return true
}

// tellWords ask for a message; with a day and a thing to do they ask for a reminder.
var tellWords = setOfWords(split(`tell me, text me, message me, ping me, nudge me, poke me, bug me, write me, alert me, notify me, buzz me, poke, bug, nag, nag me, badger, pester`))

// tellsToDo reads "text me friday to check the wire" as a reminder: a day, and what
// is to be done behind a "to".
func (r *reader) tellsToDo(k int) bool {
	if k != r.sentenceStart(k) && !r.fillersBefore(k) || !r.dayToDo(k) {
		return false
	}
	r.items[k].sense = setOf(sRemind)
	r.forceRange(k, r.sentenceEnd(k), fRemind)
	return true
}

// tellsLater reads "bug me in 2 hrs" as a wish to be told again then.
func (r *reader) tellsLater(k int) bool {
	if !tellWords[r.items[k].s] || k != r.sentenceStart(k) && !r.fillersBefore(k) {
		return false
	}
	end, timed := r.sentenceEnd(k), false
	for n := k + 1; n < end; n++ {
		it := &r.items[n]
		switch {
		case it.qty(hours) && r.items[n-1].s == "in" && !timed:
			timed = true
		case it.s == "me", it.s == "in", it.s == "again", it.s == "about", it.s == "please", it.kind == itWord && it.isAny(setOf(sFiller, sPronoun)) && !it.isAny(setOf(sNot)):
		default:
			return false
		}
	}
	if timed {
		r.items[k].sense = setOf(sSnooze)
		r.forceRange(k, end, fSnooze)
	}
	return timed
}

// dayToDo says that item k asks for a message, and what follows tells on which day and
// what to do.
func (r *reader) dayToDo(k int) bool {
	if !tellWords[r.items[k].s] {
		return false
	}
	day, what := false, false
	for n := k + 1; n < r.sentenceEnd(k); n++ {
		x := &r.items[n]
		day = day || x.kind == itDay && !x.day.every
		if x.is(sChore) || x.kind == itDay && x.day.every {
			return false
		}
		if x.s == "about" && n+1 < r.sentenceEnd(k) && (r.items[n+1].kind == itWord || r.items[n+1].kind == itThing) && day { // "nag me wed about the drippy valve"
			what = true
		}
		if x.s == "to" && n+1 < r.sentenceEnd(k) {
			y := &r.items[n+1]
			what = what || y.kind == itWord && y.unit == 0 && !y.isAny(setOf(sTell, sMute, sWeather))
		}
	}
	return day && what
}

// tellAgainIn says that a span asks to be told again in so many hours, whatever stands
// beside it: "can't talk, bug me again in 3 hours".
func (r *reader) tellAgainIn(s span) bool {
	if r.firstQty(s, hours) < 0 {
		return false
	}
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.is(sSnooze) && (tellWords[firstWord(it.s)+" me"] || tellWords[firstWord(it.s)]) {
			return true
		}
	}
	return false
}
