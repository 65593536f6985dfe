package reading

import "troughbell/model"

// The day on which meat is clear told by its date: "no butchering till the 29th".

// clearDates makes of such a date the days from the dose until then.
func (r *reader) clearDates() {
	for k := 1; k < len(r.items); k++ {
		it := &r.items[k]
		if it.kind != itDay || it.day.every || it.quest || it.day.form != dayDate && it.day.form != dayOfMonth {
			continue
		}
		lead := r.clearLead(k)
		if lead < 0 {
			continue
		}
		s := span{fDrug, r.sentenceStart(k), r.sentenceEnd(k)}
		if !r.has(s, sProduct) && !r.has(s, sWorm) || r.has(s, sPlan) || r.has(s, sBook) || r.firstQty(s, days) >= 0 {
			continue
		}
		dose := r.today
		for n := s.i; n < s.j; n++ {
			if x := &r.items[n]; n != k && x.kind == itDay && !x.day.every {
				if d, ok := x.day.on(r.today, lookBack, r.dayFirst); ok && d <= r.today {
					dose = d
				}
			}
		}
		clear, ok := it.day.on(r.today, lookForward, r.dayFirst)
		if !ok || clear <= r.today || clear-dose > mostWaiting {
			continue
		}
		it.kind, it.unit, it.v, it.day = itQty, unitDay, float64(clear-dose), dayExpr{}
		r.items[lead].sense = setOf(sWithdraw)
		for n := lead + 1; n < k; n++ {
			r.blank(n)
		}
	}
}

// mostWaiting is the most days that a date is taken for the end of a wait.
const mostWaiting model.Day = 120

// clearLead is the word shortly before the day at item k that makes it the day on which
// meat is clear, -1 if none does.
func (r *reader) clearLead(k int) int {
	for n := k - 1; n >= 0 && n >= k-3 && r.items[n+1].gap == gapNone; n-- {
		it := &r.items[n]
		switch it.s {
		case "till", "until", "til", "before", "clear", "safe", "is clear", "they're clear", "clears":
			return n
		}
		if it.is(sWithdraw) {
			return n
		}
		if !it.is(sFiller) && !it.isAny(setOf(sOn, sBy, sFrom, sTo)) {
			return -1
		}
	}
	return -1
}
