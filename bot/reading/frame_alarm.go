package reading

import (
	"troughbell/model"
)

// openAlarm is the latest alarm of a kind that nothing has ended since, of the
// last days; nil if there is none.
func (r *reader) openAlarm(what string) *model.Alarm {
	alarms := r.c.Herd.Alarms
	for k := len(alarms) - 1; k >= 0; k-- {
		if a := &alarms[k]; a.F.What == what {
			if a.F.Over || r.today-a.On > alarmLasts {
				return nil
			}
			return &a.F
		}
	}
	return nil
}

// alarmLasts is for how many days words without a subject, such as "all in",
// may still speak of an alarm.
const alarmLasts = 5

// fillAlarm reads emergencies. They are recorded at once and never asked about
// where the words are clear.
func (r *reader) fillAlarm(s span) {
	if n := r.secondAlarm(s); n > s.i {
		r.fillAlarm(span{s.frame, s.i, n})
		r.fillAlarm(span{s.frame, n, s.j})
		return
	}
	sel := r.selectPigs(s.i, s.j)
	var names []string
	if sel.any && !sel.all && len(sel.pigs) > 0 && (len(sel.pigs) == 1 || !r.oneOf(s)) { // "one of the little ones is out"
		names = sel.names(r)
	}
	a := model.Alarm{Animals: names}
	switch {
	case r.has(s, sNoWater) && r.hasBarrel(s) && !r.quoteHas(s, "no water") && !r.frozenIn(s): // "water all gone in the blue barrel"
		r.fillWater(span{fWater, s.i, s.j})
		return
	case r.has(s, sNoWater):
		a.What, a.Animals = model.AlarmNoWater, nil
	case r.has(s, sNoFeed) && len(r.c.Herd.Feeders) > 1 && r.feederGone(s):
		return
	case r.has(s, sNoFeed):
		a.What, a.Animals = model.AlarmNoFeed, nil
	case r.has(s, sBackIn) && !r.has(s, sOut):
		a.What, a.Over = model.AlarmOut, true
	case r.has(s, sFence) && r.has(s, sDown) && r.find(s, sFence) < r.find(s, sDown) && r.find(s, sDown)-r.find(s, sFence) <= 2:
		a.What, a.Animals = model.AlarmFence, nil
	case r.has(s, sDown) && (sel.any || len(r.subject) > 0):
		a.What = model.AlarmDown
		if !sel.any && len(r.subject) > 0 {
			a.Animals = selection{pigs: r.subject}.names(r)
		}
	case r.has(s, sFence) && !sel.any:
		a.What = model.AlarmFence
	case r.has(s, sOut):
		a.What, a.Over = model.AlarmOut, r.backSince(s)
	case r.has(s, sDown):
		a.What = model.AlarmDown
	default:
		r.idleSpan(s)
		return
	}
	if a.What == model.AlarmFence && r.fixedSince(s.i) {
		r.useAll(span{s.frame, s.i, r.sentenceEnd(s.j - 1)})
		if r.openAlarm(model.AlarmFence) != nil {
			a.Over = true
			r.emit(Fact{a}, s)
		}
		return
	}
	if a.What == model.AlarmDown && len(a.Animals) > 0 && r.putThemDown(s) { // "had to put bram down"
		r.useAll(s)
		r.remember(sel)
		from := len(r.out)
		r.emit(Fact{model.Gone{Animals: a.Animals, How: model.Died}}, s)
		if k := r.find(s, sDown); k >= 0 && k+1 < len(r.items) && r.items[k+1].gap == gapNone && (r.items[k+1].s == "for" || r.items[k+1].s == "as" || r.items[k+1].s == "for a") && !r.quoteHas(span{s.frame, r.sentenceStart(s.i), s.j}, "had to", "had to put", "have to") {
			r.confirm(s, from) // "put otis down for a nap"
		}
		return
	}
	if all := (span{s.frame, r.sentenceStart(s.i), r.sentenceEnd(s.j - 1)}); a.Over && a.What == model.AlarmOut && r.has(all, sMove) && r.quoteHas(all, "moved", "move", "moved them", "walked") && r.hasThing(all) { // "moved them all back to apple"
		r.fillMove(span{fMove, all.i, all.j})
		return
	}
	if a.Over && !r.has(s, sOut) && r.notAllBack(s, a.Animals) { // "got most of them back in"
		r.idleSpan(s)
		r.left = append(r.left, r.quote(r.sentenceStart(s.i), r.sentenceEnd(s.j-1)))
		return
	}
	if a.What == model.AlarmDown && r.putDown(s) { // "had to put one down"
		r.useAll(s)
		r.goneCount(s, func(n []string, c int) Act { return Fact{model.Gone{Animals: n, Count: c, How: model.Died}} }, model.Died)
		return
	}
	since := false
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if it.isAny(setOf(sOut, sDown, sNoWater, sNoFeed, sBackIn, sFence)) || a.What == model.AlarmNoWater && (it.barrel >= 0 || it.is(sBarrel)) || it.kind == itNum && it.v <= float64(max(r.alive, 1)) {
			it.used = true
		}
		since = since || it.s == "since"
	}
	r.remember(sel)
	if a.What == model.AlarmNoWater {
		a.Hours = r.lasting(s, since)
	}
	if on, _, _ := r.when(s, lookBack); since || a.Hours != nil || on > r.today { // "no water since yesterday", "fence down, will fix it tomorrow": an alarm of today
		r.emitOn(Fact{a}, s, r.today, nil, false)
		return
	}
	r.emit(Fact{a}, s)
}

// feederGone reads feed that is gone in one feeder of several as its level.
func (r *reader) feederGone(s span) bool {
	to := r.clauseEnd(s.j - 1)
	names := r.feedersSaid(s.i, to)
	if len(names) != 1 {
		return false
	}
	r.useAll(span{s.frame, s.i, to})
	r.emit(Fact{model.FeedLevel{Feeder: names[0], Fraction: model.Float(0)}}, span{fFeed, s.i, to})
	return true
}

// putThemDown says that nothing but pigs stands between a "put" and its "down": not "put in
// 3 pails, and munti cannot stand".
func (r *reader) putThemDown(s span) bool {
	for k := s.i; k < s.j; k++ {
		if r.items[k].s != "down" {
			continue
		}
		for n := k - 1; n >= r.sentenceStart(s.i) && n >= k-6; n-- {
			it := &r.items[n]
			if it.s == "put" || it.s == "had to put" {
				return true
			}
			if it.pig < 0 && it.group < 0 && !it.isAny(whoWords) && !it.isAny(setOf(sAnd, sPronoun, sFiller)) {
				break
			}
		}
	}
	return false
}

// putDown says that one pig that is not named was put down.
func (r *reader) putDown(s span) bool {
	for k := max(s.i, 2); k < s.j; k++ {
		if r.items[k].is(sDown) && (r.items[k-1].soft || r.items[k-1].s == "one") && (lastWord(r.items[k-2].s) == "put") {
			return true
		}
	}
	return false
}

// askAlarm asks what a lone "out" or "down" means, the emergency first.
func (r *reader) askAlarm(down bool) {
	s := span{fAlarm, 0, len(r.items)}
	what := model.AlarmOut
	if down {
		what = model.AlarmDown
	}
	e := r.draft(Fact{model.Alarm{What: what}}, s)
	choices := []Choice{{Code: "alarm_" + what, Entries: []Entry{e}}}
	if !down {
		choices = append(choices,
			Choice{Code: "alarm_no_water", Entries: []Entry{r.draft(Fact{model.Alarm{What: model.AlarmNoWater}}, s)}},
			Choice{Code: "alarm_no_feed", Entries: []Entry{r.draft(Fact{model.Alarm{What: model.AlarmNoFeed}}, s)}})
	} else {
		choices = append(choices, Choice{Code: "alarm_fence", Entries: []Entry{r.draft(Fact{model.Alarm{What: model.AlarmFence}}, s)}})
	}
	choices = append(choices, Choice{Code: "nothing"})
	r.clarify(Clarify{About: "alarm", Code: "out_what", Draft: []Entry{e}, Choices: choices}, s)
}

// strangerDown says that a text is but a word for somebody who is down, which may
// be a pig's name that the keyboard bent: "Odds is down".
func (r *reader) strangerDown() bool {
	if len(r.items) < 2 || len(r.items) > 4 || r.alive == 0 || !r.items[0].capital || r.items[0].kind != itWord || !r.items[0].sense.empty() {
		return false
	}
	if r.items[0].quest || neverDown[r.items[0].s] {
		return false
	}
	last := &r.items[len(r.items)-1]
	for _, it := range r.items[1 : len(r.items)-1] {
		if !it.isAny(setOf(sIs, sFiller)) {
			return false
		}
	}
	return last.is(sDown)
}

// neverDown are things that are down and no pigs.
var neverDown = map[string]bool{"power": true, "internet": true, "wifi": true, "phone": true, "site": true, "tree": true, "sun": true, "price": true, "prices": true, "corn": true, "truck": true, "gate": true}

// noTrouble says that a lack of feed or water is denied: "not out of water yet", "no
// water problems".
func (r *reader) noTrouble(s span) bool {
	for k := s.i; k < s.j; k++ {
		if !r.items[k].isAny(setOf(sNoWater, sNoFeed)) {
			continue
		}
		for n := k - 1; n >= 0 && n >= k-2 && r.items[n+1].gap == gapNone; n-- {
			if r.items[n].is(sNot) {
				return true
			}
			if !r.items[n].isAny(setOf(sFiller, sIs)) {
				break
			}
		}
		if k+1 < len(r.items) && r.items[k+1].gap == gapNone {
			switch r.items[k+1].s {
			case "problem", "problems", "issue", "issues", "trouble", "troubles", "worries", "leak", "leaks", "complaints", "bills", "bill", "needed", "today", "wasted", "added", "change", "changes":
				return r.items[k+1].s != "today"
			case "from me", "from us", "by me", "by us":
				return true
			case "from", "by":
				return k+2 < len(r.items) && (r.items[k+2].s == "me" || r.items[k+2].s == "us" || r.items[k+2].is(sForeign))
			}
		}
	}
	return false
}
