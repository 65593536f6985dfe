package reading

import (
	"strings"
	"time"

	"troughbell/model"
)

// fillRemind reads a reminder of the person's own. "... and next saturday to
// check the wire" makes a second one.
func (r *reader) fillRemind(s span) {
	cut := s.j
	for k := s.i + 2; k < s.j; k++ {
		it := &r.items[k]
		if it.kind == itDay && it.gap == gapAnd && r.dayBetween(s.i, k) {
			cut = k
			break
		}
	}
	r.oneReminder(span{s.frame, s.i, cut})
	if cut < s.j {
		r.fillRemind(span{s.frame, cut, s.j})
	}
}

func (r *reader) dayBetween(i, j int) bool {
	for k := i; k < j; k++ {
		if r.items[k].kind == itDay {
			return true
		}
	}
	return false
}

func (r *reader) oneReminder(s span) {
	m := model.Remind{}
	day, part, dated := r.today, partNone, false
	var clockAt int = -1
	from, to := s.i, s.j
	var used []int
	unsure := false
	if d, i, j, ok := r.daysBefore(s); ok {
		day, dated, unsure = d, true, d < r.today
		for k := i; k < j; k++ {
			r.items[k].kind, r.items[k].used = itDay, true
		}
	}
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		switch {
		case it.kind == itDay && !dated:
			if d, ok := it.day.on(r.today, lookForward, r.dayFirst); ok {
				day, part, dated = d, it.day.part, true
				if it.day.form == dayWeekday && it.day.mod == 0 && it.day.a == int(r.today.Weekday()) && r.laterToday(s, part) {
					day = r.today
				}
				used = append(used, k)
			}
		case it.kind == itClock && clockAt < 0:
			clockAt = k
			used = append(used, k)
		case it.is(sRemind):
			used = append(used, k)
		case it.kind == itNum && r.clockLike(k, s) && clockAt < 0 && !it.soft:
			clockAt = k
			used = append(used, k)
		case it.kind == itQty && it.unit == unitHour && k > s.i && r.items[k-1].s == "in", it.kind == itQty && it.unit == unitMinute && k > s.i && r.items[k-1].s == "in":
			at := r.c.Now.Add(time.Duration(it.si() * float64(time.Hour)))
			day, dated = model.DayOf(at), true
			m.Minute = model.Int(model.MinuteOf(at))
			used = append(used, k, k-1)
		}
	}
	for _, k := range used {
		r.items[k].used = true
	}
	if clockAt >= 0 {
		it := &r.items[clockAt]
		c, said := it.clock, it.ampm
		if it.kind == itNum {
			c, said = int(it.v)*60%1440, it.v > 12
		}
		m.Minute = model.Int(settleClock(c, said, part, false, r.nowMin, lookForward))
		if !dated && *m.Minute <= r.nowMin {
			if !said && *m.Minute+720 > r.nowMin && *m.Minute < 720 {
				*m.Minute += 720
			} else {
				day = r.today + 1
			}
		}
	} else if part == partEvening && m.Minute == nil {
		m.Minute = model.Int(18 * 60)
	} else if part == partMorning && m.Minute == nil {
		m.Minute = model.Int(7 * 60)
	}
	m.Day = day
	// The words are what is left once the asking and the time are taken away.
	for from < to && r.trimmed(from) {
		from++
	}
	for to > from && r.trimmed(to-1) {
		to--
	}
	m.What = politeTail(r.wordsWithout(from, to))
	if m.What == "" && clockAt >= 0 { // "call the vet at noon, remind me at 12"
		if from := r.clauseFrom(s.i); from == s.i && s.i > 0 && r.items[s.i].gap < gapStop {
			begin := r.sentenceStart(s.i)
			if r.idleRun(begin, s.i) {
				for k := begin; k < s.i; k++ { // the same hour needs no telling twice
					if it := &r.items[k]; it.kind == itClock && m.Minute != nil && it.clock%720 == *m.Minute%720 {
						it.used = true
					}
				}
				m.What = r.wordsWithout(begin, s.i)
				s.i = begin
			}
		}
	}
	if begin := r.clauseToDo(s.i); m.What == "" && begin >= 0 { // "they need straw, remind me on the 26th"
		if d, ok := r.dayNamedIn(begin, s.i); ok && !dated {
			m.Day, dated = d, true
		}
		m.What, s.i = r.wordsWithout(begin, s.i), begin
	}
	if m.What == "" && clockAt >= 0 && !r.saidAhead(s.i) { // "remind me at 6:30 am": the hour of the nudges
		r.fillChore(s)
		return
	}
	if m.What == "" {
		r.clarify(Clarify{About: "remind", Code: "remind_what", Want: "what", Draft: []Entry{r.draft(Fact{m}, s)}}, s)
		return
	}
	for k := s.i; k < s.j; k++ {
		r.items[k].used = true
	}
	if unsure {
		r.clarify(Clarify{About: "remind", Code: "date_unclear", Want: "date", Draft: []Entry{r.draft(Fact{m}, s)}}, s)
		return
	}
	if !dated && clockAt < 0 && m.Minute == nil {
		next := r.c.Herd.NextChore(r.c.Now)
		m.Day = model.DayOf(next)
	}
	r.emitOn(Fact{m}, s, r.today, nil, false)
}

// laterToday says that the clock of the span is still to come today.
func (r *reader) laterToday(s span, part int8) bool {
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.kind == itClock {
			return settleClock(it.clock, it.ampm, part, false, r.nowMin, lookForward) > r.nowMin
		}
	}
	return false
}

func (r *reader) trimmed(k int) bool {
	it := &r.items[k]
	if it.used && (it.kind == itDay || it.kind == itClock || it.is(sRemind) || it.kind == itNum || it.unit == unitHour || it.unit == unitMinute) {
		return true
	}
	switch it.s {
	case "to", "that", "on", "at", "about", "in", "please", "by", "for", "me", "@", "us", "in the morning", "and", "then", "also":
		return true
	}
	return false
}

// wordsWithout is the text of items[i:j] without the days and times in it.
func (r *reader) wordsWithout(i, j int) string {
	var parts []string
	for k := i; k < j; k++ {
		it := &r.items[k]
		if it.used && (it.kind == itDay || it.kind == itClock) || it.used && it.is(sRemind) && it.kind == itWord {
			continue
		}
		n := k
		for n+1 < j && !(r.items[n+1].used && (r.items[n+1].kind == itDay || r.items[n+1].kind == itClock || r.items[n+1].is(sRemind))) {
			n++
		}
		parts = append(parts, strings.TrimSpace(r.text[it.from:r.items[n].to]))
		k = n
	}
	out := strings.Join(parts, " ")
	out = strings.Trim(out, " ,.;:-")
	for _, p := range []string{"to ", "on ", "at "} {
		out = strings.TrimPrefix(out, p)
	}
	for _, p := range []string{" on", " at", " to", " in"} {
		out = strings.TrimSuffix(out, p)
	}
	return out
}

// remindsHere says that a wish to be reminded begins in the middle of a sentence
// without a mark: "fair weigh in is the 22nd remind me the 21st to wash plum".
func (r *reader) remindsHere(k int) bool {
	if w := r.items[k].s; !strings.HasPrefix(w, "remind me") && !strings.HasPrefix(w, "remind us") {
		return false
	}
	p := &r.items[k-1]
	return !p.isAny(setOf(sPlan, sNot, sAsk, sPronoun)) && p.s != "you" && p.s != "to" && p.s != "please" && p.s != "that"
}
