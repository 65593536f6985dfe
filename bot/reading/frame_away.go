package reading

import (
	"troughbell/model"
)

// fillAway reads a span of days of absence.
func (r *reader) fillAway(s span) {
	var days []model.Day
	var exprs []dayExpr
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if it.kind != itDay {
			continue
		}
		from := r.today
		if len(days) > 0 {
			from = days[len(days)-1]
		}
		e := it.day
		var d model.Day
		var ok bool
		if e.form == dayWeekday && len(days) > 0 {
			d, ok = from.Next(weekdayOf(e.a)), true
		} else if e.form == dayOffset && e.coarse {
			d, ok = r.today+7, true
		} else {
			d, ok = e.on(from, lookForward, r.dayFirst)
		}
		if ok {
			it.used = true
			days = append(days, d)
			exprs = append(exprs, e)
		}
	}
	if len(days) == 2 && exprs[0].form == dayDate && exprs[0].c == 0 && exprs[1].c != 0 { // the year stands once, behind the second
		for _, y := range []int{exprs[1].c, exprs[1].c - 1} {
			e := exprs[0]
			e.c = y
			if d, ok := e.on(r.today, lookForward, r.dayFirst); ok && d <= days[1] {
				days[0] = d
				break
			}
		}
	}
	// "jul 24 to 27", "24th-27th of july": a bare number closes the span.
	if len(days) == 1 && exprs[0].form == dayDate {
		for k := s.i; k < s.j; k++ {
			it := &r.items[k]
			if it.kind == itNum && !it.soft && it.v >= 1 && it.v <= 31 && it.v == float64(int(it.v)) && !it.used {
				e := exprs[0]
				e.b = int(it.v)
				if d, ok := e.on(r.today, lookForward, r.dayFirst); ok {
					if d < days[0] && k < r.dayAt(s) {
						days = []model.Day{d, days[0]}
					} else if d >= days[0] {
						days = append(days, d)
					}
					it.used = true
					if d, ok := r.yearBehind(k, s, days, exprs[0]); ok {
						days = d
					}
					break
				}
			}
		}
	}
	a := model.AwayFrom{}
	if from, to, ok := r.aroundHoliday(s); ok {
		days = []model.Day{from, to}
	}
	switch {
	case len(days) == 0 && r.someMonth(s):
		r.useAll(s)
		r.clarify(Clarify{About: "away", Code: "date_unclear"}, s)
		return
	case len(days) >= 2:
		a.From, a.To = days[0], days[1]
	case len(days) == 1:
		a.From, a.To = days[0], days[0]
		if k := r.firstOpenDays(s); k >= 0 {
			a.To = a.From + model.Day(r.items[k].si()) - 1
			r.items[k].used = true
		} else if r.quoteHas(s, "until", "till", "til", "through", "thru", "back", "bis") && !r.has(s, sFrom) {
			a.From = r.today
		}
		if exprs[0].weekend && a.To == days[0] {
			a.From, a.To = longWeekend(days[0])
		}
		if exprs[0].form == dayWeekday && a.To == a.From { // a weekend has two days
			a.To += model.Day(exprs[0].b)
		}
		if exprs[0].coarse && exprs[0].form == dayOffset {
			a.From = r.today + model.Day((8-int(r.today.Weekday()))%7)
			if a.From <= r.today {
				a.From += 7
			}
			a.To = a.From + 6
		}
	default:
		if k := r.firstOpenDays(s); k >= 0 {
			a.From, a.To = r.today, r.today+model.Day(r.items[k].si())-1
			r.items[k].used = true
		} else {
			r.idleSpan(s)
			return
		}
	}
	if a.To < a.From {
		r.clarify(Clarify{About: "away", Code: "date_unclear", Want: "", Draft: []Entry{r.draft(Fact{a}, s)}}, s)
		return
	}
	for k := s.i; k < s.j; k++ {
		if r.items[k].is(sAway) {
			r.items[k].used = true
		}
	}
	r.emitOn(Fact{a}, s, r.today, nil, false)
}

// yearBehind moves a span within one month to the year that stands behind the
// number that closes it: "jan 10 to 11, 2027".
func (r *reader) yearBehind(k int, s span, days []model.Day, e dayExpr) ([]model.Day, bool) {
	if k+1 >= s.j || len(days) != 2 || e.c != 0 {
		return nil, false
	}
	it := &r.items[k+1]
	if it.kind != itNum || it.used || it.gap > gapComma || it.v < 2000 || it.v >= 2100 || it.v != float64(int(it.v)) {
		return nil, false
	}
	e.c = int(it.v)
	from, ok := e.on(r.today, lookForward, r.dayFirst)
	if !ok {
		return nil, false
	}
	it.used = true
	return []model.Day{from, from + days[1] - days[0]}, true
}

// awayDays reads a text of nothing but days as the answer to the question from
// which day to which an absence is: "aug 3 to 5".
func (r *reader) awayDays(c Clarify) bool {
	if c.About != "away" || c.Code != "date_unclear" {
		return false
	}
	day := false
	for k := range r.items {
		it := &r.items[k]
		day = day || it.kind == itDay
		if it.kind != itDay && it.kind != itNum && !it.qty(days) && !it.isAny(setOf(sFiller, sFrom, sTo, sAway, sYes)) {
			return false
		}
	}
	if !day {
		return false
	}
	r.fillAway(span{fAway, 0, len(r.items)})
	return len(r.out) > 0
}

// someMonth says that the absence lies in a month or a season to come of which no
// day is told: "3 days next month".
func (r *reader) someMonth(s span) bool {
	for k := s.i; k < r.clauseEnd(s.j-1); k++ {
		switch r.items[k].s {
		case "next month", "later this month", "sometime", "some time", "next summer", "this fall", "in the fall", "next year":
			return true
		case "next":
			if k+1 < len(r.items) && (r.items[k+1].s == "month" || r.items[k+1].unit == unitMonth) {
				return true
			}
		}
	}
	return false
}

func (r *reader) dayAt(s span) int {
	for k := s.i; k < s.j; k++ {
		if r.items[k].kind == itDay {
			return k
		}
	}
	return s.j
}

func (r *reader) firstOpenDays(s span) int { return r.firstQty(s, days) }
