package reading

import (
	"slices"
	"sort"
	"strings"

	"troughbell/model"
)

// settle puts the entries in the order of the text, judges their days, and
// gathers what was not understood.
func (r *reader) settle() Reading {
	for k := range r.out {
		r.out[k] = r.judgeDay(r.out[k])
	}
	r.ofNoPigs()
	r.out = r.merged(r.out)
	sort.SliceStable(r.out, func(a, b int) bool { return r.out[a].From < r.out[b].From })
	r.onlyWhole()
	if r.noise() {
		return r.just(None{Reason: NoneUnknown})
	}
	if !r.answered {
		r.daysOfLabel()
		r.oneWeightForAll()
		r.tagOrWeight()
		r.leftOver()
		r.doubtLeft()
	}
	if len(r.out) == 0 && len(r.c.Herd.Animals) == 0 {
		r.bareArrival()
	}
	if len(r.out) == 0 && len(r.items) == 1 && r.items[0].isAny(setOf(sOut, sDown)) && !r.items[0].is(sPigs) {
		r.askAlarm(r.items[0].is(sDown) && !r.items[0].is(sOut))
	}
	if len(r.out) == 0 && !r.answered {
		r.loneAmount()
	}
	if len(r.out) == 0 && r.strangerDown() {
		r.askAlarm(true)
	}
	if len(r.out) == 0 {
		reason := NoneChatter
		if len(r.left) > 0 {
			reason = NoneUnknown
		}
		for k := range r.items {
			switch {
			case thanked[r.items[k].s]:
				reason = NoneThanks
			case r.items[k].is(sThanks) && reason == NoneUnknown:
				reason = NoneChatter
			}
		}
		switch {
		case reason == NoneUnknown && r.plansAhead():
			reason = NonePlan
		case reason == NoneUnknown && r.chatter():
			reason = NoneChatter
		}
		got := r.just(None{Reason: reason})
		if reason == NoneUnknown || r.numbersLeft() {
			got.Left = r.left // of talk nothing is quoted
		}
		return got
	}
	r.instead(r.out)
	r.replaceDenied(r.out)
	r.replaceByOnly(r.out)
	r.replaceMixedUp(r.out)
	r.deniedThing(r.out)
	r.exceptWeighed()
	r.whatToDo()
	return Reading{Entries: append([]Entry(nil), r.out...), Left: r.left, Answers: r.answered}
}

// whatToDo drops the question what is to be done beside an alarm, whose answer says so.
func (r *reader) whatToDo() {
	alarm, asked := false, -1
	for n := range r.out {
		switch a := r.out[n].Act.(type) {
		case Fact:
			alarm = alarm || a.Kind() == "alarm"
		case Ask:
			if a.Topic == "today" && a.On == nil {
				asked = n
			}
		}
	}
	if alarm && asked >= 0 && saysAny(" "+strings.ToLower(strings.Trim(r.text[r.out[asked].From:r.out[asked].To], " .?!"))+" ", whatToDoWords) {
		r.out = slices.Delete(r.out, asked, asked+1)
	}
}

var whatToDoWords = phrasesOf("what do i do, what do we do, what should i do, what should we do, what shall i do, what can i do, what to do, what now, now what")

// thanked are the words of thanks among the small talk.
var thanked = setOfWords(split("thanks, thank you, thx, ty, cheers, merci, danke, good bot, good job, well done, love it"))

// chatter says that no word of the trade stands in the text.
func (r *reader) chatter() bool {
	for k := range r.items {
		it := &r.items[k]
		if it.kind != itWord || it.isAny(tradeSenses) {
			return false
		}
	}
	return true
}

var tradeSenses = setOf(sGirth, sLength, sTape, sWeigh, sFeed, sFeeder, sFill, sWater, sWatered, sBarrel, sWallow, sHose, sWorm, sTreat, sMove, sPen, sFence, sSick, sOut, sDown, sMixed, sRecipe, sIngredient, sButcher, sTarget, sChore)

// judgeDay refuses facts of a day that has not come, or from before the pigs
// came.
func (r *reader) judgeDay(e Entry) Entry {
	f, ok := e.Act.(Fact)
	if !ok {
		return e
	}
	if f.Check() != nil { // nobody means a pen of no size
		e.Act = None{Reason: NoneUnknown}
		return e
	}
	switch f.Fact.(type) {
	case model.Setting, model.Booked, model.AwayFrom, model.Expected, model.Remind, model.Note, model.Recipe:
		return e
	}
	if e.On > r.today {
		none := None{Reason: NoneFuture}
		if a, arrives := f.Fact.(model.Arrive); arrives {
			none.Coming = &model.Expected{Day: e.On, Count: a.Count}
		}
		e.Act = none
		e.On, e.Minute, e.Dated = r.today, nil, false
		return e
	}
	if _, arrives := f.Fact.(model.Arrive); arrives {
		return e
	}
	switch f.Fact.(type) {
	case model.Stock, model.Spend:
		return e
	}
	if _, alarm := f.Fact.(model.Alarm); alarm {
		return e
	}
	if first, ok := r.firstArrival(); ok && e.On < first {
		e.Act = None{Reason: NoneBefore}
		e.On, e.Minute, e.Dated = r.today, nil, false
	}
	return e
}

// ofNoPigs refuses what is told of pigs before any came.
func (r *reader) ofNoPigs() {
	if len(r.c.Herd.Animals) > 0 {
		return
	}
	for _, e := range r.out {
		if f, ok := e.Act.(Fact); ok && f.Intent() == "arrive" {
			return
		}
	}
	for k := range r.out {
		f, ok := r.out[k].Act.(Fact)
		if !ok {
			continue
		}
		switch f.Fact.(type) {
		case model.Weigh, model.Worm, model.Treat, model.Sick, model.Gone:
			r.out[k].Act = None{Reason: NoneNoPigs}
			r.out[k].On, r.out[k].Minute, r.out[k].Dated = r.today, nil, false
		}
	}
}

func (r *reader) firstArrival() (model.Day, bool) {
	h := r.c.Herd
	if len(h.Groups) == 0 {
		return 0, false
	}
	first := h.Groups[0].Arrived
	for _, g := range h.Groups {
		first = min(first, g.Arrived)
	}
	return first, true
}

// merged drops refusals that repeat themselves or stand beside facts, and
// chatter beside anything.
func (r *reader) merged(es []Entry) []Entry {
	facts, others := 0, 0 // others are no putting off
	for _, e := range es {
		if _, none := e.Act.(None); none {
			continue
		}
		facts++
		if _, later := e.Act.(Snooze); !later {
			others++
		}
	}
	es = withoutDoubleDrug(es)
	es = withoutDownsSigns(es)
	es = withoutSignsOfDeath(es)
	es = withoutDoubleWater(es)
	es = r.withPrices(es)
	es = r.filledByPour(es)
	es = membersApart(es)
	es = oneWeather(es)
	es = withoutGeneral(es)
	es = r.twoReadings(es)
	out := es[:0]
	seen := map[string]bool{}
	for _, e := range es {
		if _, later := e.Act.(Snooze); later && others > 0 && r.c.LastNudge == nil {
			continue // "did water. feed later maybe"
		}
		if _, ask := e.Act.(Ask); ask && facts > 1 && slices.Contains(r.soft, e.From) {
			continue // "got the weights back, dot was 182"
		}
		if _, help := e.Act.(Help); help && facts > 1 {
			continue // "PIGS OUT HELP"
		}
		if d, wish := e.Act.(Do); wish && facts > 2 && d.What != "forget me" {
			continue // "sitter report", and then what was done
		}
		if z, later := e.Act.(Snooze); later && z.Hours == 2 && z.Until == nil && len(z.About) == 0 && laterSaid(es) {
			continue // "not now. ask again in 3 hours"
		}
		if _, later := e.Act.(Snooze); later {
			if seen["snooze"] {
				continue // "later. ask again in 2 hours"
			}
			seen["snooze"] = true
		}
		if d, done := e.Act.(Done); done && facts > 1 && len(d.About) == 0 {
			continue // "round's done: ..."
		}
		if n, none := e.Act.(None); none {
			if facts > 0 && n.Reason != NoneBefore && n.Reason != NoneUnit && n.Reason != NoneNoPigs || seen[n.Reason] || facts == 0 && len(seen) > 0 {
				continue
			}
			seen[n.Reason] = true
		}
		out = append(out, e)
	}
	return out
}

// laterSaid says that one of the entries puts a nudge off by a span of time that
// was told.
func laterSaid(es []Entry) bool {
	for _, e := range es {
		if z, ok := e.Act.(Snooze); ok && (z.Until != nil || z.NextChore || z.Hours != 2 && z.Hours > 0) {
			return true
		}
	}
	return false
}

// leftOver gathers the runs of words that nothing was made of.
func (r *reader) leftOver() {
	flush := func(i, j int) {
		for i < j && r.items[i].isAny(leaveOut) && r.items[i].kind == itWord {
			i++
		}
		for j > i && r.items[j-1].isAny(leaveOut) && r.items[j-1].kind == itWord {
			j--
		}
		if i < j && r.worthQuoting(i, j) {
			r.left = append(r.left, r.quote(i, j))
		}
	}
	from := -1
	for k := range r.items {
		it := &r.items[k]
		open := !it.used && it.kind != itDay && it.kind != itClock
		if open && it.kind == itNum && it.v == float64(r.alive) && it.gap == gapNone && k > 0 && r.items[k-1].is(sAll) && r.items[k-1].used {
			open = false // "all 12"
		}
		if open && from < 0 {
			from = k
		}
		if from >= 0 && (!open || it.gap >= gapStop && k > from) {
			flush(from, k)
			from = -1
			if open {
				from = k
			}
		}
	}
	if from >= 0 {
		flush(from, len(r.items))
	}
}

var leaveOut = setOf(sFiller, sAnd, sThanks, sAbout, sIs, sYes)

// numbersLeft says that a number or a name stands in what was left.
func (r *reader) numbersLeft() bool {
	for k := range r.items {
		if it := &r.items[k]; !it.used && (it.number() && !it.soft || it.kind == itDim || it.kind == itName || it.kind == itThing) {
			return true
		}
	}
	return false
}

// worthQuoting says that words hold a number, a name, an unknown word or a word
// of the trade.
func (r *reader) worthQuoting(i, j int) bool {
	unknown := 0
	for k := i; k < j; k++ {
		it := &r.items[k]
		if it.number() && !it.soft || it.kind == itDim || it.kind == itName || it.kind == itThing || it.isAny(tradeSenses) {
			return true
		}
		if !it.known && len(it.s) > 1 {
			unknown++
			if k+1 < len(r.items) && r.items[k+1].number() && r.items[k+1].gap == gapNone {
				return true // a name that is not of this herd
			}
		}
	}
	if unknown > 1 || unknown > 0 && (j-i > 2 || len(r.out) == 0) { // a single word beside a fact is but talk
		return true
	}
	return j-i > 2 && len(r.out) == 0 // plain words beside a fact are but talk
}
