package reading

import (
	"strings"

	"troughbell/model"
)

// correction reads a text that puts an earlier record right: "no, moss", "37
// not 38", "that was yesterday", or a reply to a message. It yields the full
// new entry with the record that it replaces.
func (r *reader) correction() (Reading, bool) {
	target, reply := r.corrected()
	if got, ok := r.unitInstead(); ok {
		return got, true
	}
	if got, ok := r.lengthToo(); ok {
		return got, true
	}
	if got, ok := r.crateOff(); ok {
		return got, true
	}
	if got, ok := r.levelDenied(); ok {
		return got, true
	}
	if got, ok := r.amended(reply); ok && !r.noneOrExpected() {
		return got, true
	}
	if target == nil || len(r.items) > 14 || r.noneOrExpected() {
		return Reading{}, false
	}
	r.slipsOfTongue()
	if rec, e, ok := r.treatmentCompleted(); ok {
		return r.replaced(rec, e), true
	}
	if rec, e, ok := r.sexesTold(); ok {
		return r.replaced(rec, e), true
	}
	if rec, ok := r.livesAfterAll(); ok {
		got := r.just(Undo{Of: "gone", Record: rec.ID})
		return got, true
	}
	if k := r.theOtherOne(); k > 0 {
		if f, ok := target.Entry.Act.(Fact); ok {
			all := r.items
			r.items = r.items[:k+1]
			if es, ok := r.patched(target, f.Fact, k, true); ok {
				return r.replaced(target, es), true
			}
			r.items = all
		}
	}
	lead, rest := r.correctionLead()
	if e, ok := r.otherDay(target); ok {
		return r.replaced(target, e), true
	}
	fact, ok := target.Entry.Act.(Fact)
	if !ok {
		return Reading{}, false
	}
	if was, day, minute, ok := r.dayOnly(rest); ok && (lead || reply || was || r.bareDay(target, rest)) {
		e := target.Entry
		if day != nil {
			if *day > r.today && backward(fact.Fact) {
				return Reading{}, false
			}
			if b, is := fact.Fact.(model.Booked); is {
				d := r.bookedDay(rest, b.Day)
				if d == nil {
					return Reading{}, false
				}
				b.Day = *d
				e.Act = Fact{b}
			} else {
				e.On, e.Dated = *day, true
			}
		}
		if minute != nil {
			e.Minute = minute
			if b, is := e.Act.(Fact).Fact.(model.Booked); is {
				b.Minute = minute
				e.Act = Fact{b}
			}
		}
		return r.replaced(target, e), true
	}
	if !reply && (r.addsOn() || r.noSuchThing()) {
		return Reading{}, false
	}
	if !lead && !reply && !r.followsUp(fact.Fact, rest) {
		return Reading{}, false
	}
	if es, ok := r.patched(target, fact.Fact, rest, lead || reply); ok {
		return r.replaced(target, es), true
	}
	return Reading{}, false
}

// addsOn says that the text tells something besides what was told before: "sorry, one
// bag in the small hopper too", "sorry, forgot juno 66".
func (r *reader) addsOn() bool {
	for k := range r.items {
		switch it := &r.items[k]; it.s {
		case "not":
			return false
		case "too", "also", "as well", "another", "additional", "plus", "on top", "besides":
			return true
		case "forgot", "i forgot", "forgot to say", "forgot to mention", "forgot to add", "more":
			if k+1 < len(r.items) && r.valueFrom(k+1) || it.s != "more" {
				return true
			}
		}
	}
	return false
}

// noSuchThing says that the text opens with what there was none of, "no rain today".
func (r *reader) noSuchThing() bool {
	if len(r.items) < 2 || r.items[0].s != "no" || r.items[1].gap != gapNone {
		return false
	}
	it := &r.items[1]
	return it.kind == itWord && !it.soft && it.unit == 0 && !it.isAny(setOf(sFiller, sNo, sPronoun, sIs, sNot, sProduct, sFull, sEmpty)) && it.pig < 0
}

// correctionLead says whether the text opens as a correction, and where what
// is right begins.
func (r *reader) correctionLead() (lead bool, rest int) {
	if r.notThen(0) {
		lead = true
	}
	if strings.HasPrefix(strings.TrimSpace(r.text), "*") && !strings.Contains(r.text, "\n") { // the messenger's own way
		lead = true
	}
	if k := r.wasThat(); k > 0 { // "that was pepper"
		return true, k
	}
	if n := len(r.items); n > 1 && n <= 4 && r.items[n-1].is(sNo) && r.items[n-1].pig < 0 { // "39.5 sorry"
		lead = true
	}
	if k := r.readWrong(); k > 0 {
		lead, rest = true, k
	}
	for rest < len(r.items) {
		it := &r.items[rest]
		switch {
		case it.pig >= 0 || it.kind == itThing:
			return lead, rest
		case it.is(sNo), it.is(sUndo) && rest+1 < len(r.items) && r.items[rest+1].gap >= gapComma && r.valueFrom(rest+1): // "scrap that, otis was 214"
			lead = true
		case lead && it.is(sFiller) && !it.isAny(setOf(sNot)), lead && it.is(sPronoun), !lead && it.s == "sorry":
		default:
			if k := r.notThen(rest); k {
				return true, rest
			}
			return lead, rest
		}
		rest++
	}
	return lead, rest
}

// readWrong is the item behind words that say that something was read or written
// wrong, at the head of the text: "oh shoot I read the scale wrong, it was 68". 0 if
// there are none.
func (r *reader) readWrong() int {
	read := false
	for k := 0; k < len(r.items) && k < 8; k++ {
		it := &r.items[k]
		if it.number() && !it.soft || it.kind == itDim || it.pig >= 0 || it.kind == itThing || k > 0 && it.gap >= gapStop {
			return 0
		}
		switch strings.TrimPrefix(it.s, "i ") {
		case "read", "got", "wrote", "typed", "heard", "put", "had", "saw", "entered":
			read = true
		case "wrong", "backwards", "it wrong", "that wrong":
			if read && k+1 < len(r.items) && r.items[k+1].gap >= gapAnd && r.valueFrom(k+1) {
				return k + 1
			}
		}
	}
	return 0
}

// valueFrom says that a number, a pig or a thing stands from item k on.
func (r *reader) valueFrom(k int) bool {
	for ; k < len(r.items); k++ {
		if it := &r.items[k]; it.number() && !it.soft || it.kind == itDim || it.pig >= 0 || it.kind == itThing {
			return true
		}
	}
	return false
}

// bareDay says that the text is but a day, said right after a record that was
// told without one: "yesterday" behind "420 full".
func (r *reader) bareDay(rec *Recorded, from int) bool {
	if r.c.Pending != nil || rec.Entry.Dated || from != 0 || r.c.Now.Sub(rec.At) > 15*60*1e9 || len(r.items) > 3 {
		return false
	}
	return r.items[0].kind == itDay && r.items[0].day.form == dayOffset && r.items[0].day.a <= 0
}

// notThen says that a new and an old number stand beside "not": "37 not 38".
func (r *reader) notThen(k int) bool {
	n := len(r.items)
	num := func(i int) bool { return i < n && r.items[i].number() && !r.items[i].soft }
	for i := k; i < n; i++ {
		if r.items[i].s == "not" && (num(i+1) && (i > 0 && num(i-1) || i > 1 && num(i-2) && r.items[i-1].is(sPigs) || num(i+2)) || r.otherThan(i) || i+1 < n && r.items[i+1].pig >= 0 && (i > 0 && r.items[i-1].pig >= 0 || i+2 < n && r.items[i+2].pig >= 0 && n <= 4)) {
			return true
		}
	}
	return false
}

// otherThan says that behind the "not" at item k one thing of the herd is denied
// and another named: "not the big one, the small".
func (r *reader) otherThan(k int) bool {
	things := 0
	for n := k + 1; n < len(r.items); n++ {
		it := &r.items[n]
		switch {
		case it.kind == itThing:
			things++
		case it.soft:
		case it.kind != itWord || !it.is(sFiller) && it.s != "one":
			return false
		}
	}
	return things == 2
}

// dayOnly says that all the text tells is a day or a time: "that was
// yesterday", "at 6pm". was is true where it plainly speaks of a record.
func (r *reader) dayOnly(from int) (was bool, day *model.Day, minute *int, ok bool) {
	part := partNone
	for k := from; k < len(r.items); k++ {
		it := &r.items[k]
		switch {
		case it.kind == itDay && !it.day.every:
			if d, found := it.day.on(r.today, lookBack, r.dayFirst); found {
				day, part = &d, it.day.part
			}
		case it.kind == itClock:
			today := day == nil || *day == r.today
			minute = model.Int(settleClock(it.clock, it.ampm, part, today, r.nowMin, lookBack))
		case firstWord(it.s) == "that" && strings.HasSuffix(it.s, " was"):
			was = true
		case it.s == "that" || it.s == "it" || it.s == "this" || it.s == "those" || it.s == "was" || it.s == "from" || it.s == "were" || it.s == "for" || it.is(sPronoun):
			was = was || it.s == "was" || it.s == "were"
		case it.is(sFiller) || it.is(sNo) || it.is(sIs):
		default:
			return false, nil, nil, false
		}
	}
	if day == nil && minute == nil {
		return false, nil, nil, false
	}
	if !was && minute != nil && day == nil { // a bare time completes a treatment without one
		was = r.latestTreatment()
	}
	return was, day, minute, true
}

func (r *reader) latestTreatment() bool {
	if len(r.c.Before) == 0 {
		return false
	}
	switch f := r.c.Before[0].Entry.Act.(type) {
	case Fact:
		switch f.Fact.(type) {
		case model.Treat, model.Worm:
			return r.c.Before[0].Entry.Minute == nil
		}
	}
	return false
}

// bookedDay is the day that an appointment is put off to from the day it had. A
// day of the month or of the week stays as near to that one as it can, and no
// appointment lies behind today.
func (r *reader) bookedDay(from int, was model.Day) *model.Day {
	for k := from; k < len(r.items); k++ {
		it := &r.items[k]
		if it.kind != itDay || r.movedFrom(k) {
			continue
		}
		start := r.today
		switch {
		case was < r.today:
		case it.day.form == dayOfMonth: // the same month, where that is not over
			y, m, _ := was.Date()
			start = max(start, model.DateDay(y, m, 1))
		case it.day.form == dayWeekday && it.day.mod == 0:
			start = max(start, was-4)
		}
		if d, ok := it.day.on(start, lookForward, r.dayFirst); ok {
			return &d
		}
	}
	return nil
}

// movedFrom says that the day at item k is the one that an appointment was moved
// from: "moved from oct 2 to oct 9".
func (r *reader) movedFrom(k int) bool {
	for n := k + 1; n < len(r.items); n++ {
		if r.items[n].kind == itDay {
			return r.fromTo(k, n)
		}
	}
	return false
}

func backward(f model.Fact) bool {
	_, booked := f.(model.Booked)
	return !booked
}

// followsUp says that a short text without any lead completes the record just
// made: a bare number right after a pour, the days of a treatment.
func (r *reader) followsUp(f model.Fact, from int) bool {
	if r.c.Pending != nil || len(r.c.Before) == 0 || r.c.Now.Sub(r.c.Before[0].At) > 15*60*1e9 {
		return false
	}
	if from != 0 {
		return false
	}
	switch v := f.(type) {
	case model.Weigh:
		return r.swappedDigits(v)
	case model.Refill:
		return r.swappedDigits(v)
	case model.Treat:
		return v.WithdrawalDays == nil && r.onlyDays()
	case model.Worm:
		return v.WithdrawalDays == nil && r.onlyDays()
	case model.Booked:
		return r.putsOff() && (r.has(span{0, 0, len(r.items)}, sButcher) || r.onlyPutOff())
	}
	return false
}

// onlyPutOff says that the text is a word of putting off and a day: "moved to the
// 25th".
func (r *reader) onlyPutOff() bool {
	day := false
	for k := range r.items {
		switch it := &r.items[k]; {
		case it.kind == itDay:
			day = true
		case it.kind == itClock, it.kind == itWord && it.pen < 0 && it.isAny(setOf(sMove, sBook, sFiller, sPronoun, sTo, sIs)):
		default:
			return false
		}
	}
	return day
}

// swappedDigits says that the text is but a number with the digits of the one
// just recorded, in another order: "163" behind "136".
func (r *reader) swappedDigits(f model.Fact) bool {
	if len(r.items) != 1 || !r.items[0].number() {
		return false
	}
	now := []byte(itoa(int(r.items[0].v)))
	if r.items[0].v < 10 {
		return false
	}
	for a := range now {
		for b := a + 1; b < len(now); b++ {
			now[a], now[b] = now[b], now[a]
			v := 0.0
			for _, d := range now {
				v = v*10 + float64(d-'0')
			}
			now[a], now[b] = now[b], now[a]
			if v != r.items[0].v && r.holdsNumber(f, v) {
				return true
			}
		}
	}
	return false
}

// replaced is the reading that puts e in the place of a record.
func (r *reader) replaced(rec *Recorded, e Entry) Reading {
	e.Replace = rec.ID
	if e.Replace == "" {
		e.Replace = "latest"
	}
	e.From, e.To = 0, len(r.text)
	e = r.judgeDay(e)
	return Reading{Entries: []Entry{e}}
}

// onlyDays says that the text is a number of days and nothing else.
func (r *reader) onlyDays() bool {
	it, ok := r.onlyAmount()
	return ok && (it.qty(days) || it.kind == itNum && it.v <= 120 && it.v == float64(int(it.v)))
}

// noneOrExpected says that a text only seems to begin with a word of correcting:
// "no mineral left", "supposed to be 101 on tuesday".
func (r *reader) noneOrExpected() bool {
	if len(r.items) < 2 {
		return false
	}
	a, b := &r.items[0], &r.items[1]
	if a.is(sTell) && r.hourAmong(1, len(r.items)) { // "nudge at 6 not 7"
		return true
	}
	for k := range r.items {
		if s := r.items[k].s; s == "anything" || s == "nothing" { // "nah didn't fill anything today"
			return true
		}
	}
	if a.s == "no" && b.gap == gapNone && b.isAny(setOf(sIngredient, sFeed)) {
		return true
	}
	return strings.HasSuffix(a.s, "supposed to be") && r.hasDay(span{0, 1, len(r.items)})
}
