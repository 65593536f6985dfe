package reading

import "troughbell/model"

// otherDay reads a text that denies the day of the record just made and gives
// another, "not today, yesterday", or that says when it was done, "i did that
// yesterday", and gives the record as of that day.
func (r *reader) otherDay(rec *Recorded) (Entry, bool) {
	e := rec.Entry
	f, ok := e.Act.(Fact)
	if !ok || len(r.items) > 6 || r.c.Now.Sub(rec.At) > 15*60*1e9 || !backward(f.Fact) {
		return e, false
	}
	var day *model.Day
	not, told := false, false
	for k := range r.items {
		it := &r.items[k]
		switch {
		case it.kind == itDay && it.day.form == dayOffset && it.day.a == 0 && k > 0 && r.items[k-1].s == "not":
			not = true
		case it.s == "not today":
			not = true
		case it.kind == itDay && !it.day.every && day == nil:
			d, ok := it.day.on(r.today, lookBack, r.dayFirst)
			if !ok || d >= r.today {
				return e, false
			}
			day = &d
		case it.s == "did that", it.s == "did it", it.s == "weighed", it.s == "did", it.s == "filled it", it.s == "moved them":
			told = true
		case it.s == "that" && told, it.s == "i", it.s == "we", it.is(sPronoun), it.is(sNo), it.s == "not", it.kind == itWord && it.isAny(setOf(sFiller, sOn)) && it.pig < 0:
		default:
			return e, false
		}
	}
	if day == nil || !not && (!told || r.c.LastNudge != nil) { // "did it yesterday" may answer a nudge
		return e, false
	}
	e.On, e.Dated = *day, true
	return e, true
}
