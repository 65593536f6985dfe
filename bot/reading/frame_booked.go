package reading

import (
	"slices"

	"troughbell/model"
)

// fillBooked reads appointments with the butcher: several days give several
// bookings.
func (r *reader) fillBooked(s span) {
	if r.tookThere(s) || r.butcherCame(s) {
		r.fillGone(s)
		return
	}
	if r.eitherBooked(s) {
		return
	}
	r.secondDay(s)
	cancel := r.has(s, sCancel) && !r.quoteHas(s, "rescheduled")
	var days []int
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.kind == itDay {
			days = append(days, k)
		}
	}
	if len(days) > 1 { // "called the butcher today, we got October 5"
		if first := &r.items[days[0]].day; first.form == dayOffset && first.a <= 0 {
			days = days[1:]
		}
	}
	if len(days) == 2 && r.fromTo(days[0], days[1]) { // "moved us from october 19 to the 26th"
		first := &r.items[days[0]]
		last := &r.items[days[1]]
		first.used = true
		if d, ok := first.day.on(r.today, lookForward, r.dayFirst); ok && last.day.form != dayWeekday {
			if to, ok := last.day.on(d, lookForward, r.dayFirst); ok {
				r.rebooked(s, to, days[1])
				return
			}
		}
		days = days[1:]
	}
	if len(days) == 0 {
		if cancel && !r.has(s, sButcher) && !r.has(s, sBook) && len(r.items) > 2 {
			r.idleSpan(s) // "a scratch on her back"
			return
		}
		if cancel {
			r.emitOn(Fact{model.Booked{Cancelled: true}}, s, r.today, nil, false)
			return
		}
		if r.has(s, sBook) && r.has(s, sButcher) && !r.has(s, sAsk) {
			r.clarify(Clarify{About: "booked", Code: "date_unclear", Want: "date", Draft: []Entry{r.draft(Fact{model.Booked{Count: r.bookedCount(s.i, s.j)}}, s)}}, s)
			return
		}
		r.idleSpan(s)
		return
	}
	told := 0 // pigs that the days before are for
	for n, k := range days {
		it := &r.items[k]
		lo, hi := s.i, s.j
		if n > 0 {
			lo = r.bookingStart(days[n-1]+1, k+1)
			if lo == days[n-1]+1 && r.items[lo].gap < gapAnd {
				lo = k
			}
		}
		if n+1 < len(days) {
			hi = r.bookingStart(k+1, days[n+1]+1)
			if hi == k+1 && r.items[hi].gap < gapAnd {
				hi = days[n+1]
			}
		}
		it.used = true
		if it.day.coarse { // the draft keeps about when, so that "the 3rd" is one of that month
			near, _ := it.day.on(r.today, lookForward, r.dayFirst)
			r.clarify(Clarify{About: "booked", Code: "date_unclear", Want: "date", Draft: []Entry{r.draft(Fact{model.Booked{Day: near, Count: r.bookedCount(lo, hi)}}, s)}}, s)
			continue
		}
		day, ok := it.day.on(r.today, lookForward, r.dayFirst)
		if !ok {
			continue
		}
		b := model.Booked{Day: day, Cancelled: cancel}
		for x := lo; x < hi; x++ {
			if c := &r.items[x]; c.kind == itClock && (n == 0 || x > k) {
				b.Minute = model.Int(settleClock(c.clock, c.ampm, it.day.part, false, r.nowMin, lookForward))
				c.used = true
				break
			}
		}
		if b.Minute == nil {
			for x := k + 1; x < hi; x++ {
				if r.items[x].kind == itNum && r.clockLike(x, s) {
					b.Minute = model.Int(settleClock(int(r.items[x].v)*60, r.items[x].v > 12, it.day.part, false, r.nowMin, lookForward))
					r.items[x].used = true
				}
			}
		}
		b.Count = r.bookedCount(lo, hi)
		if b.Count == 0 && n == 0 && lo > 0 && r.items[lo].gap == gapNone && r.items[lo].is(sBook) { // "got 4 | slots sep 8"
			b.Count = r.bookedCount(lo-1, lo)
		}
		if b.Count == 0 && len(days) == 1 {
			b.Count = r.headsBefore(s.i)
		}
		if b.Count == 0 && len(days) == 1 {
			b.Count = r.headsBehind(hi)
		}
		if len(days) == 1 && b.Count == 0 && r.onlyPigsIn(r.sentenceStart(lo), lo) && r.onlyPigsIn(hi, r.sentenceEnd(hi-1)) {
			lo, hi = r.sentenceStart(lo), r.sentenceEnd(hi-1) // "butcher oct 2, 501 to 505"
		}
		if sel := r.selectPigs(lo, hi); (b.Count == 0 || b.Count == len(sel.pigs)) && len(sel.pigs) > 0 && !sel.all {
			b.Count = len(sel.pigs)
			if names := sel.names(r); !sel.near && !slices.Contains(names, "") {
				b.Animals = names
			}
		}
		if n > 0 && told > 0 && b.Count == 0 && r.has(span{s.frame, lo, hi}, sRest) && told < r.alive {
			b.Count = r.alive - told
		}
		told += b.Count
		for x := lo; x < hi; x++ {
			if r.items[x].isAny(setOf(sButcher, sBook, sCancel, sMove, sPigs)) {
				r.items[x].used = true
			}
		}
		e := r.emitOn(Fact{b}, span{s.frame, lo, hi}, r.today, b.Minute, false)
		if e.Minute = b.Minute; r.alive > 0 && b.Count > r.alive+mostToCome {
			r.confirm(span{s.frame, lo, hi}, len(r.out)-1) // far more than there are
		}
	}
}

// onlyPigsIn says that items[i:j] name pigs and nothing else that means anything.
func (r *reader) onlyPigsIn(i, j int) bool {
	for k := i; k < j; k++ {
		it := &r.items[k]
		if it.used || it.pig < 0 && it.group < 0 && !it.isAny(whoWords) && !(it.kind == itWord && it.isAny(setOf(sFiller, sAnd, sTo, sIs, sBook, sButcher))) {
			return false
		}
	}
	return true
}

// headsBefore is the count of pigs that the sentence tells before item k, 0 if it
// tells none: "six pigs | go to the butcher on the nineteenth".
func (r *reader) headsBefore(k int) int {
	for n := r.sentenceStart(k); n+1 < k+1 && n+1 < len(r.items); n++ {
		if it := &r.items[n]; it.kind == itNum && !it.soft && !it.ord && !it.used && it.v >= 1 && it.v <= 60 && it.v == float64(int(it.v)) && r.items[n+1].is(sPigs) && r.items[n+1].gap == gapNone {
			it.used, r.items[n+1].used = true, true
			return int(it.v)
		}
	}
	return 0
}

// fromTo says that an appointment was moved from the day at item a to the one at
// item b.
func (r *reader) fromTo(a, b int) bool {
	to := false
	for n := a + 1; n < b; n++ {
		to = to || r.items[n].s == "to" || r.items[n].s == "to the"
	}
	if !to {
		return false
	}
	for n := max(r.sentenceStart(a), a-2); n < a; n++ {
		if w := r.items[n].s; w == "from" || w == "off" {
			return true
		}
	}
	return false
}

// rebooked records the day that an appointment was moved to.
func (r *reader) rebooked(s span, to model.Day, at int) {
	b := model.Booked{Day: to, Count: r.headsBehind(at + 1)}
	r.useAll(s)
	for k := at; k < s.j; k++ {
		if c := &r.items[k]; c.kind == itClock {
			b.Minute = model.Int(settleClock(c.clock, c.ampm, r.items[at].day.part, false, r.nowMin, lookForward))
		}
	}
	r.emitOn(Fact{b}, s, r.today, b.Minute, false).Minute = b.Minute
}

// bookedCount is how many pigs a booking is for, 0 where not said.
func (r *reader) bookedCount(i, j int) int {
	for k := i; k < j; k++ {
		it := &r.items[k]
		if it.kind == itNum && !it.soft && !it.ord && !it.used && it.v <= 60 && it.v >= 1 && it.v == float64(int(it.v)) && !r.clockLike(k, span{0, i, j}) {
			it.used = true
			return int(it.v)
		}
		if it.is(sBoth) && it.kind == itWord && r.alive >= 2 {
			it.used = true
			return 2
		}
		if it.is(sBoth) && it.pig < 0 && it.kind == itWord && r.alive == 2 {
			return 2
		}
	}
	return 0
}

// tookThere says that pigs were brought to the butcher already.
func (r *reader) tookThere(s span) bool {
	if s.i < s.j {
		s.i = r.sentenceStart(s.i)
	}
	return r.has(s, sButcher) && r.quoteHas(s, "took", "hauled", "went", "dropped", "dropped off", "brought", "sent", "loaded", "drove", "delivered", "taken", "gone") && !r.has(s, sPlan)
}
