package reading

import (
	"strings"

	"troughbell/model"
)

// planOpenings are the words before what is to be done, longest first.
var planOpenings = split("i think i'll, i think we'll, i am going to, i'm going to, im going to, we are going to, we're going to, we will be, i will be, i'll be, we'll be, i plan to, we plan to, i'm planning to, planning to, plan to, i want to, we want to, i need to, we need to, i have to, we have to, i gotta, gotta, i'm gonna, we're gonna, gonna, going to, i will, we will, i'll, ill, we'll, will, need to, have to, want to, must, i should, we should, should, i'm, we're, i, we")

// plansAhead says that a text of which nothing was understood begins with a plan for
// a day to come: "i'll clean the trough tomorrow".
func (r *reader) plansAhead() bool {
	if len(r.items) < 2 || !r.items[0].is(sPlan) && !r.items[1].is(sPlan) {
		return false
	}
	_, ok := r.dayToCome(span{0, 0, len(r.items)})
	return ok
}

// Planned reads a text that tells of a plan as if it had asked to be reminded of
// it; false where it names no day or nothing to do.
func Planned(c Context, text string) (model.Remind, bool) {
	r := Read(c, "remind me: "+text)
	if len(r.Entries) != 1 {
		return model.Remind{}, false
	}
	f, ok := r.Entries[0].Act.(Fact)
	if !ok {
		return model.Remind{}, false
	}
	m, ok := f.Fact.(model.Remind)
	if !ok || m.Day < model.DayOf(c.Now) {
		return model.Remind{}, false
	}
	low := strings.ToLower(m.What)
	for _, p := range planOpenings {
		if strings.HasPrefix(low, p+" ") {
			m.What = strings.TrimSpace(m.What[len(p):])
			break
		}
	}
	return m, m.What != ""
}

// notYet says that the sentence behind a span takes it back for now: "Garden Friday. Not
// yet."
func (r *reader) notYet(s span) bool {
	end := r.sentenceEnd(s.j - 1)
	if s.frame == fAlarm {
		return false
	}
	if end >= len(r.items) {
		return saysAny(r.said(span{0, s.i, end}), notYetWords)
	}
	switch r.said(span{0, end, r.sentenceEnd(end)}) {
	case " not yet ", " not done yet ", " but not yet ", " not yet though ", " haven't yet ", " havent yet ", " not done it yet ", " not today ":
		return true
	}
	return saysAny(r.said(span{0, s.i, end}), notYetWords)
}

var notYetWords = phrasesOf("not yet, not done yet")

// movingThen says that a move is told as one going to be on a weekday: "moving to garden
// friday".
func (r *reader) movingThen(s span) bool {
	verb := false
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		switch firstWord(it.s) {
		case "moving", "shifting", "rotating", "switching":
			verb = true
		}
		if verb && it.kind == itDay && it.day.form == dayWeekday && it.day.mod == 0 {
			d, ok := it.day.on(r.today, lookBack, r.dayFirst)
			return ok && d != r.today
		}
	}
	return false
}
