package reading

import "troughbell/model"

// eitherBooked asks which day it is where an appointment is told with two to choose from:
// "butcher can do sept 12 or 19". Nothing is booked until then.
func (r *reader) eitherBooked(s span) bool {
	from, to := r.sentenceStart(s.i), r.sentenceEnd(s.j-1)
	or := -1
	for k := from + 1; k+1 < to; k++ {
		if r.items[k].s == "or" && r.items[k-1].kind == itDay && r.dayOrNumber(k+1) {
			or = k
		}
	}
	if or < 0 || or < s.i-1 || or > s.j {
		return false
	}
	for _, e := range r.out {
		if c, ok := e.Act.(Clarify); ok && c.About == "booked" {
			r.useAll(s)
			return true // the other of the two days
		}
	}
	count := 0
	for k := from; k < to && count == 0; k++ { // not the day behind the "or"
		if k < or-1 || k > or+1 {
			count = r.bookedCount(k, k+1)
		}
	}
	r.items[or+1].used = true
	first, _ := r.items[or-1].day.on(r.today, lookForward, r.dayFirst)
	c := Clarify{About: "booked", Code: "date_unclear", Want: "date", Draft: []Entry{r.draft(Fact{model.Booked{Day: first, Count: count}}, s)}}
	r.useAll(span{s.frame, from, to})
	r.clarify(c, s)
	return true
}

// dayOrNumber says that item k is a day, or the number of one of the month.
func (r *reader) dayOrNumber(k int) bool {
	it := &r.items[k]
	if it.kind == itDay || it.ord {
		return true
	}
	if it.kind != itNum || it.soft || it.v < 1 || it.v > 31 || it.v != float64(int(it.v)) {
		return false
	}
	return k+1 >= len(r.items) || r.items[k+1].gap > gapNone || !r.items[k+1].isAny(whoWords) && r.items[k+1].unit == 0
}

// offeredDay is the day of the month that item it answers with, in the month of the day
// that was offered: "the 19th" to "sept 12 or 19".
func (r *reader) offeredDay(c Clarify, it *item) (model.Day, bool) {
	f, ok := c.Draft[0].Act.(Fact)
	if !ok {
		return 0, false
	}
	b, ok := f.Fact.(model.Booked)
	if !ok || b.Day <= r.today {
		return 0, false
	}
	e := it.day
	switch {
	case it.kind == itDay && e.form == dayOfMonth:
	case it.kind == itNum && !it.soft && len(r.items) <= 3 && it.v >= 1 && it.v <= 31 && it.v == float64(int(it.v)):
		e = dayExpr{form: dayOfMonth, a: int(it.v)}
	default:
		return 0, false
	}
	y, m, _ := b.Day.Date()
	return e.on(max(model.DateDay(y, m, 1), r.today), lookForward, r.dayFirst)
}

// bookingStart is where, of items i to j with a day at the end, what belongs to that day
// begins: at the last of the strongest marks before it.
func (r *reader) bookingStart(i, j int) int {
	at, strongest := i, uint8(gapAnd)
	for k := i; k < j; k++ {
		if r.items[k].gap >= strongest {
			at, strongest = k, r.items[k].gap
		}
	}
	return at
}

// secondDay makes a day of the month of a bare number behind a date that cannot count the
// pigs: "butcher sept 12 and 19".
func (r *reader) secondDay(s span) {
	for k := s.i + 1; k < s.j; k++ {
		it, d := &r.items[k], &r.items[k-1]
		if it.kind != itNum || d.kind != itDay || d.day.form != dayDate || it.gap != gapAnd || !r.dayOrNumber(k) || it.ord || it.v <= float64(max(r.alive, d.day.b)) {
			continue
		}
		it.kind, it.day, it.v = itDay, dayExpr{form: dayDate, a: d.day.a, b: int(it.v), c: d.day.c}, 0
	}
}

// mostToCome is how many pigs more than are here an appointment may be for without being
// asked about: some may be still to come.
const mostToCome = 5

// headsBehind is the count of pigs that the sentence ends with from item k on, beside an
// hour: "butcher moved to oct 1; it remains five head". 0 where it tells anything else.
func (r *reader) headsBehind(k int) int {
	at := -1
	to := len(r.items)
	if k < to {
		to = r.sentenceEnd(max(k-1, 0))
	}
	for n := k; n < to; n++ {
		switch it := &r.items[n]; {
		case it.kind == itNum && !it.soft && !it.ord && !it.used && it.v >= 1 && it.v <= mostPigs && it.v == float64(int(it.v)) && n+1 < to && r.items[n+1].is(sPigs) && at < 0:
			at = n
		case n == at+1 && at >= 0, it.kind == itClock, it.kind == itWord && (it.isAny(setOf(sFiller, sPronoun, sIs, sNow)) && !it.isAny(setOf(sNot, sPlan)) || it.s == "remains" || it.s == "remain" || it.s == "still"):
		default:
			return 0
		}
	}
	if at < 0 {
		return 0
	}
	for n := k; n < to; n++ {
		r.items[n].used = true
	}
	return int(r.items[at].v)
}
