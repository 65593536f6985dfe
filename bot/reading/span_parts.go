package reading

import "strings"

// byDay cuts a factual span at its days where it has several, so that each
// amount gets its own: "wed hosed 20, fri hosed 30".
func (r *reader) byDay(s span) []span {
	out := append(r.parts[:0], s)
	r.parts = out
	if !factual[s.frame] || s.frame == fArrive || s.frame == fStock {
		return out
	}
	var near [8]int
	days := near[:0]
	firstAmount := -1
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if it.kind == itDay && !it.day.every && !(s.frame == fWeather && it.day.form == daySlash) {
			days = append(days, k)
		}
		if firstAmount < 0 && (it.number() && !it.soft || it.kind == itDim || it.is(sFull) || it.is(sEmpty) || it.kind == itFrac) {
			firstAmount = k
		}
	}
	if len(days) == 1 && r.dayBefore(s.i) && r.items[days[0]].gap >= gapAnd && firstAmount >= 0 && firstAmount < days[0] && r.numberBetween(days[0], s.j) { // "sunday I give | 4 bags to the south and monday 3 to the north"
		r.parts = append(out[:0], span{s.frame, s.i, days[0]}, span{s.frame, days[0], s.j})
		return r.parts
	}
	if len(days) < 2 {
		return out
	}
	first := days[0] < firstAmount || firstAmount < 0
	out = out[:0]
	from := s.i
	for n := 1; n < len(days); n++ {
		at := days[n] // where the next day's part begins
		if !first {
			at = days[n-1] + 1
		}
		for k := days[n]; k > days[n-1]; k-- {
			if r.items[k].gap >= gapComma {
				at = k
				break
			}
		}
		if at > from {
			out = append(out, span{s.frame, from, at})
			from = at
		}
	}
	r.parts = append(out, span{s.frame, from, s.j})
	return r.parts
}

// onlyDay says that a span is a day and nothing else.
func (r *reader) onlyDay(s span) bool {
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if it.kind != itDay && it.kind != itClock && (it.kind != itWord || !it.isAny(setOf(sFiller, sAnd))) {
			return false
		}
	}
	return true
}

// trimNegated takes a closing clause that only says what was not done off a
// span: "shed and hill full, the blue one I skipped".
func (r *reader) trimNegated(s span) span {
	for k := s.i + 1; k < s.j; k++ {
		ahead := r.items[k].kind == itDay && r.items[k].day.form == dayOffset && r.items[k].day.a > 0
		plan := r.items[k].is(sPlan) && !r.items[k].isAny(setOf(sWell, sTook, sSick, sFull))
		later := r.laterOn(k, s)
		said := s.frame != fDrug && r.items[k].is(sHearsay) && r.items[k].kind == itWord && !r.fromVet(k) && !r.oneOfUs(k) && !r.items[k].isAny(setOf(sWithdraw, sAbout))
		said = said || r.items[k].s == "if" && r.clauseFrom(k) > s.i // "big hopper 140, no clue if full"
		if !r.items[k].is(sNot) && !plan && !ahead && !later && !said || r.items[k].pig >= 0 || r.items[k].isAny(setOf(sBut, sSick)) {
			continue
		}
		least := uint8(gapComma)
		if plan {
			least = gapAnd
		}
		from := k
		for !later && from > s.i && r.items[from].gap < least {
			from--
		}
		if n := r.leftUndone(k, s); n > 0 && from < n {
			from = n
		}
		if from <= s.i && !plan {
			for from = k; from > s.i && r.items[from].gap < gapAnd; {
				from-- // "otis 192 and hazel i did not get"
			}
		}
		if from <= s.i {
			return s
		}
		told := false
		for n := s.i; n < from; n++ {
			it := &r.items[n]
			told = told || it.number() && !it.soft || it.kind == itDim || it.kind == itFrac || it.isAny(setOf(sFull, sEmpty, sWorm, sProduct, sMove, sWatered, sSick, sFill, sHose, sDone))
			if it.is(sNot) {
				return s
			}
		}
		if said && r.items[from].gap == gapNone && k > from { // the words that say who said it
			for from = k; from > s.i && k-from < 2 && r.items[from-1].isAny(setOf(sPronoun, sFiller)); {
				from--
			}
		}
		for n := from; n < s.j && !said; n++ {
			told = told && (!r.items[n].number() || r.items[n].soft) && r.items[n].kind != itFrac
		}
		if told {
			for n := from; n < s.j; n++ {
				r.items[n].used = true
			}
			s.j = from
		}
		return s
	}
	return s
}

// leftUndone is the name right before a "not" at item k, where nothing but what
// was not done to it follows: "pepper 172 otis 190 clover i couldn't get". 0 if
// there is none.
func (r *reader) leftUndone(k int, s span) int {
	if it := &r.items[k]; !it.is(sNot) && !it.is(sPlan) && (it.kind != itDay || k != s.j-1) {
		return 0
	}
	for n := k; n < s.j; n++ {
		if it := &r.items[n]; it.number() && !it.soft || it.kind == itDim || it.isAny(setOf(sFull, sEmpty, sBut)) {
			return 0
		}
	}
	for n := k - 1; n > s.i && n >= k-3; n-- {
		if it := &r.items[n]; it.pig >= 0 || it.barrel >= 0 || it.feeder >= 0 || it.isAny(setOf(sBarrow, sGilt, sYoung, sOld, sRest, sFeeder, sBarrel, sWallow)) {
			return n
		} else if it.number() && !it.soft {
			return 0
		}
	}
	return 0
}

// laterOn says that item k begins what is only to be done: "filling it later".
func (r *reader) laterOn(k int, s span) bool {
	if !r.items[k].is(sFill) || !strings.HasSuffix(r.items[k].s, "ing") && !strings.HasPrefix(r.items[k].s, "will ") {
		return false
	}
	for n := k + 1; n < s.j+1 && n < len(r.items) && n <= k+3; n++ {
		if it := &r.items[n]; it.is(sSnooze) || it.kind == itDay && it.day.form == dayOffset && it.day.a > 0 {
			return true
		}
	}
	return false
}

// fourFigures reads a time of four figures that begins with a nought: "moved them 0900".
func (r *reader) fourFigures() {
	for k := range r.items {
		it := &r.items[k]
		if it.kind != itNum || len(it.s) != 4 || it.s[0] != '0' || it.v != float64(int(it.v)) || it.soft || it.ord {
			continue
		}
		if h, m := int(it.v)/100, int(it.v)%100; h > 0 && m < 60 {
			it.kind, it.clock, it.ampm = itClock, h*60+m, true
		}
	}
}

// leadingClock reads "810" at the head of a text as ten past eight, where a
// record follows it.
func (r *reader) leadingClock() {
	r.fourFigures()
	if len(r.items) < 2 {
		return
	}
	it := &r.items[0]
	if it.kind != itNum || it.v != float64(int(it.v)) || len(it.s) < 3 || len(it.s) > 4 || it.ord || it.soft {
		return
	}
	h, m := int(it.v)/100, int(it.v)%100
	if h > 23 || m > 59 {
		return
	}
	next := &r.items[1]
	if next.gap > gapComma || !(next.isAny(setOf(sFill, sPour, sWatered, sWorm, sTreat, sMove, sHose, sMixed, sGave)) || it.s[0] == '0' || next.pig >= 0 && len(it.s) == 4) || next.is(sFull) && !next.is(sFill) {
		return
	}
	if len(it.s) == 3 && len(r.items) < 3 || r.filledTheFeeder() {
		return
	}
	it.kind, it.clock = itClock, h*60+m
	it.ampm = it.s[0] == '0' || h > 12
}

// filledTheFeeder says that the number at the head of a text is what filled the
// feeder named behind it, "150 filled the big hopper": nothing else is an amount, and
// the feeder can hold it.
func (r *reader) filledTheFeeder() bool {
	fits := false
	for k := 1; k < len(r.items) && r.items[k].gap < gapStop; k++ {
		it := &r.items[k]
		if it.number() && !it.soft || it.kind == itDim {
			return false
		}
		if it.feeder >= 0 {
			fits = !r.tooMuch(r.c.Herd.Feeders[it.feeder].Name, r.massUnit().si(r.items[0].v))
		}
	}
	return fits
}
