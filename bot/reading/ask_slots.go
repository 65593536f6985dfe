package reading

import (
	"strings"
	"time"

	"troughbell/model"
)

// feedTo is the weight that a what-if feeds the pigs to, "what if I feed them to
// 300", in kilograms; 0 if none.
func (r *reader) feedTo(s span) float64 {
	for k := s.i + 1; k < s.j; k++ {
		it := &r.items[k]
		if r.items[k-1].s != "to" || !it.number() || it.soft {
			continue
		}
		u := it.unit
		if it.kind == itNum {
			u = r.massUnit()
		}
		if u.dim() != mass {
			continue
		}
		if kg := u.si(it.v); kg >= 60 && kg <= 250 {
			return kg
		}
	}
	return 0
}

// askDay finds the day asked about. Questions look forward; those of what was,
// back.
func (r *reader) askDay(a *Ask, s span) {
	if a.Topic == "why" { // the day is that of the answer that is doubted
		return
	}
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if it.kind != itDay || it.day.every {
			continue
		}
		l := lookForward
		if a.Topic == "history" || r.pastQuestion(s) {
			l = lookBack
		}
		if it.day.coarse && it.day.form == dayOffset && (a.Topic == "today" || a.Topic == "history") {
			continue
		}
		if d, ok := it.day.on(r.today, l, r.dayFirst); ok {
			if it.day.form == dayOffset && it.day.a == 0 && (it.day.part == partNone || a.Topic == "today") && !(a.Topic == "weight") {
				continue // "today" is what every answer is about
			}
			if it.day.form == dayOffset && it.day.a == 0 && a.Topic == "weight" {
				continue
			}
			a.On = &d
			return
		}
	}
	if d, ok := r.monthAsked(s); ok && a.On == nil && a.Topic != "history" && a.Topic != "withdrawal" {
		a.On = &d
	}
	if d, ok := r.endAsked(s); ok && a.On == nil {
		a.On = &d
	}
	if n := r.daysAsked(s); n > 0 && a.On == nil && (a.Topic == "feed_need" || a.Topic == "weight" || a.Topic == "growth" || a.Topic == "water_left") {
		d := r.today + model.Day(n)
		a.On = &d
	}
}

// endAsked is the last day of the month or the year that a question names: "at the
// end of the month".
func (r *reader) endAsked(s span) (model.Day, bool) {
	said := r.said(s)
	year, month, _ := r.c.Now.Date()
	switch {
	case saysAny(said, monthEnd):
		month++
	case saysAny(said, nextMonthEnd):
		month += 2
	case saysAny(said, yearEnd):
		year, month = year+1, time.January
	default:
		return 0, false
	}
	return model.DayOf(time.Date(year, month, 0, 12, 0, 0, 0, time.UTC)), true
}

var yearEnd = phrasesOf("end of the year, year's end, end of this year")

var nextMonthEnd = phrasesOf("end of next month")

var monthEnd = phrasesOf("end of the month, end of this month, month end, month's end, months end, end o the month")

// daysAsked is for how many days a question asks, 0 if not said: "feed for 2
// weeks", "the next 10 days".
func (r *reader) daysAsked(s span) int {
	for k := s.i + 1; k < s.j; k++ {
		it := &r.items[k]
		if !it.qty(days) {
			continue
		}
		switch r.items[k-1].s {
		case "in":
			if it.si() > 1 { // "how much do they drink in a day" asks for a rate
				return int(it.si() + 0.5)
			}
		case "for", "next", "another", "over", "coming", "the next", "for the next", "for another", "for about":
			return int(it.si() + 0.5)
		}
	}
	return 0
}

// monthAsked reads a month without a day behind a word for an end as its first
// day: "until july".
func (r *reader) monthAsked(s span) (model.Day, bool) {
	from, to := r.tokenRange(s)
	for i := from + 1; i < to; i++ {
		m := r.lex.of[r.toks[i].s]
		if m == nil || m.month == 0 || len(r.toks[i].s) < 3 && r.toks[i].s != "may" {
			continue
		}
		day := 1
		switch r.toks[i-1].s {
		case "until", "till", "til", "to", "by", "in", "through", "before", "for":
		case "of":
			if i < 2 || r.toks[i-2].s != "middle" {
				continue
			}
			day = 15
		default:
			continue
		}
		d := model.DayOf(time.Date(r.c.Now.Year(), time.Month(m.month), day, 12, 0, 0, 0, time.UTC))
		if d <= r.today {
			d = model.DayOf(time.Date(r.c.Now.Year()+1, time.Month(m.month), day, 12, 0, 0, 0, time.UTC))
		}
		return d, true
	}
	return 0, false
}

func (r *reader) pastQuestion(s span) bool {
	for k := s.i; k < s.j; k++ {
		switch r.items[k].s {
		case "did", "was", "were", "how did", "what did", "what was", "when did", "did i", "did we", "weighed":
			return true
		}
	}
	return false
}

// askAmounts finds a weight or a count asked about.
func (r *reader) askAmounts(a *Ask, s span) {
	skip := -1
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		next, prev := &item{}, &item{}
		if k+1 < s.j {
			next = &r.items[k+1]
		}
		if k > s.i {
			prev = &r.items[k-1]
		}
		switch {
		case k == skip:
		case it.kind == itNum && !it.soft && (next.is(sPigs) || next.is(sMore) || next.is(sFewer) || next.is(sArrive) && a.Topic == "plan"):
			if !next.is(sMore) && !next.is(sFewer) || a.Topic == "plan" {
				a.Count = int(it.v)
			}
		case it.qty(mass), it.kind == itNum && !it.soft && !it.ord && it.v >= 20 && r.weightTopic(a.Topic) && !prev.is(sAll):
			u := it.unit
			if it.kind == itNum {
				u = r.massUnit()
			}
			kg := u.si(it.v)
			switch {
			case a.Topic == "plan":
				if a.WeightKg == nil && kg < 60 {
					a.WeightKg = model.Float(kg)
				} else {
					a.TargetKg = model.Float(kg)
				}
			case r.asksHeat(s):
			case kg >= 20 && kg <= 400 && (r.weightTopic(a.Topic) || a.Topic == "feed_need" || a.Topic == ""):
				a.TargetKg = model.Float(kg)
			}
		}
	}
}

// askAssume reads what-ifs: "2 more pigs", "target 280", "skip a Saturday".
func (r *reader) askAssume(a *Ask, s span) {
	what := r.has(s, sWhatIf) || r.quoteHas(s, "if", "what would", "how would", "would", "could we", "could i")
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		var as model.Assumption
		switch {
		case (it.is(sMore) || it.s == "more") && k > s.i && r.items[k-1].kind == itNum && !r.items[k-1].used && r.pigsNear(k, s) && what:
			as.CountDelta = int(r.items[k-1].v)
		case what && it.kind == itNum && r.herdOf(k, s) > 0 && r.addedPigs(k, s):
			as.CountDelta = int(it.v)
		case what && r.alive > 0 && r.herdOf(k, s) > 0 && r.herdOf(k, s) != r.alive && a.Topic != "plan":
			as.CountDelta = r.herdOf(k, s) - r.alive
		case it.s == "another" && what && r.pigsNear(k, s):
			as.CountDelta = 1
			if k+1 < s.j && r.items[k+1].kind == itNum {
				as.CountDelta = int(r.items[k+1].v)
			}
		case it.is(sFewer) && what && r.pigsNear(k, s):
			n := 1
			if k > s.i && r.items[k-1].kind == itNum {
				n = int(r.items[k-1].v)
			} else if k+1 < s.j && r.items[k+1].kind == itNum {
				n = int(r.items[k+1].v)
			}
			as.CountDelta = -n
		case it.s == "skip" || it.s == "skipped" || it.s == "miss" || it.s == "skip this" || it.s == "skipping" || it.s == "missed":
			if r.pastQuestion(s) {
				continue // "did i miss anything"
			}
			as.SkipDays = 7
			for n := k; n < s.j; n++ {
				if r.items[n].qty(days) {
					as.SkipDays = int(r.items[n].si() + 0.5)
				}
			}
			a.On = nil
		default:
			continue
		}
		if a.Assume == nil {
			a.Assume = &model.Assumption{}
		}
		if as.CountDelta != 0 {
			a.Assume.CountDelta = as.CountDelta
			a.Count = 0
		}
		if as.SkipDays != 0 {
			a.Assume.SkipDays = as.SkipDays
		}
	}
	if kg := r.targetInstead(s); kg > 0 && a.Assume == nil && a.Topic != "plan" {
		a.Assume, a.TargetKg = &model.Assumption{TargetKg: &kg}, nil
		if a.Topic == "" || a.Topic == "target" || a.Topic == "history" {
			a.Topic = "butcher_date"
		}
	}
	if what && a.TargetKg != nil && (r.has(s, sTarget) || r.has(s, sWhatIf)) && a.Topic != "plan" {
		if a.Assume == nil {
			a.Assume = &model.Assumption{}
		}
		a.Assume.TargetKg = a.TargetKg
		a.TargetKg = nil
	}
}

// targetInstead is a target weight that a question puts in the place of the one that
// holds, in kilograms, 0 if none: "how much more feed would 270 take instead of 250",
// "would a target of 270 push them past thanksgiving".
func (r *reader) targetInstead(s span) float64 {
	would := r.quoteHas(s, "would", "would a", "would the", "would that", "would it") || strings.Contains(r.said(s), " would ")
	instead := strings.Contains(r.said(s), " instead of ") || strings.Contains(r.said(s), " rather than ")
	goal := r.has(s, sTarget)
	if !instead && !(would && goal) {
		return 0
	}
	for k := s.i; k < s.j; k++ {
		if kg := r.finishKg(k); kg > 0 && !r.insteadOf(k, s.i) {
			return kg
		}
	}
	return 0
}

// addedPigs says that the number at item k is of pigs to be added to the herd: "if
// I add 2 pigs".
func (r *reader) addedPigs(k int, s span) bool {
	for n := max(s.i, k-2); n < k; n++ {
		switch r.items[n].s {
		case "add", "added", "adding", "take on", "throw in", "put in", "squeeze in":
			return true
		}
	}
	return false
}

// herdOf is the size of the herd that the number at item k supposes, 0 if none:
// "if I only had 6 pigs".
func (r *reader) herdOf(k int, s span) int {
	it := &r.items[k]
	if it.kind != itNum || it.ord || it.v < 1 || it.v > 60 || it.v != float64(int(it.v)) || k+1 >= s.j || !r.items[k+1].isAny(setOf(sPigs)) || r.items[k+1].gap > gapNone {
		return 0
	}
	for n := max(s.i, k-4); n < k; n++ {
		switch r.items[n].s {
		case "add", "added", "adding", "take on", "throw in", "put in", "squeeze in", "had", "have", "i had", "we had", "if i had", "keep", "kept", "raise", "raised", "if we had", "only", "if i", "if we", "there were", "if there were", "what if i", "feeding", "with":
			return int(it.v)
		}
	}
	return 0
}

func (r *reader) pigsNear(k int, s span) bool {
	for n := max(s.i, k-2); n < min(s.j, k+4); n++ {
		if r.items[n].is(sPigs) || r.items[n].isAny(setOf(sBarrow, sGilt)) {
			return true
		}
	}
	return k+1 >= s.j || r.items[k].s != "more"
}
