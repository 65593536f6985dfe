package reading

import (
	"slices"
	"sort"
	"strings"

	"troughbell/model"
)

// Read reads one text. It never panics and never guesses: what is in doubt
// comes back as a Clarify, what is not understood in Left. There is always at
// least one entry.
func Read(c Context, text string) Reading {
	r := newReader(c, text)
	defer r.done()
	return r.run()
}

func (r *reader) run() Reading {
	if strings.TrimSpace(r.text) == "" {
		return r.just(None{Reason: NoneEmpty})
	}
	r.tokenize()
	r.rightSpelling()
	r.build()
	if len(r.items) == 0 {
		return r.just(None{Reason: NoneChatter})
	}
	if got, ok := r.answer(); ok {
		return got
	}
	if got, ok := r.correction(); ok {
		return got
	}
	r.readItems()
	return r.settle()
}

func (r *reader) just(act Act) Reading {
	e := Entry{Act: act, On: r.today, To: len(r.text)}
	return Reading{Entries: []Entry{e}}
}

// readItems finds the spans and fills them.
func (r *reader) readItems() {
	r.settleContainers()
	r.slipsOfTongue()
	r.leadingClock()
	r.forceFrames()
	r.leanings()
	spans := r.cut()
	for n := range spans {
		s := spans[n]
		if s.i >= s.j {
			continue
		}
		if s.frame == fIdle {
			r.keepDay(s)
		}
		if s.frame == fDrug && n+1 < len(spans) && spans[n+1].frame == fDrug && r.items[s.j].gap < gapStop && !r.eachNamed(s.i, s.j) && r.find(s, sAll) < 0 {
			spans[n+1].i = s.i // "worming done: all pigs, fenbendazole"
			continue
		}
		if factual[s.frame] {
			for x := s.i; n > 0 && spans[n-1].frame == fIdle && x > spans[n-1].i && r.items[x].gap < gapStop; {
				x--
				if r.items[x].kind == itDay {
					s.i = x // the day said right before
					break
				}
				if !r.items[x].is(sFiller) {
					break
				}
			}
			s = r.trimNegated(s)
			if why := r.mood(s); why != "" {
				if !r.knowsMore(why, s) {
					r.useAll(s)
					r.none(why, s)
					continue
				}
			}
		}
		if r.skip > 0 && r.skip >= s.i && r.skip < s.j {
			continue
		}
		parts := r.byDay(s)
		for _, part := range parts {
			if len(parts) > 1 && r.onlyDay(part) {
				r.keepDay(part)
				continue
			}
			before := len(r.out)
			r.fill(part)
			r.strayMoney(part)
			r.noteUnits(part.i, part.j)
			if len(r.out) > before && factual[s.frame] && s.frame != fArrive {
				r.keepDay(part)
			}
		}
	}
}

// byDay cuts a factual span at its days where it has several, so that each
// amount gets its own: "wed hosed 20, fri hosed 30".
func (r *reader) byDay(s span) []span {
	if !factual[s.frame] || s.frame == fArrive || s.frame == fStock {
		return []span{s}
	}
	var days []int
	firstAmount := -1
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if it.kind == itDay && !it.day.every && !(s.frame == fWeather && it.day.form == daySlash) {
			days = append(days, k)
		}
		if firstAmount < 0 && (it.number() && !it.soft || it.kind == itDim || it.is(sFull) || it.is(sEmpty) || it.kind == itFrac) {
			firstAmount = k
		}
	}
	if len(days) < 2 {
		return []span{s}
	}
	first := days[0] < firstAmount || firstAmount < 0
	var out []span
	from := s.i
	for n := 1; n < len(days); n++ {
		at := days[n] // where the next day's part begins
		if !first {
			at = days[n-1] + 1
		}
		for k := days[n]; k > days[n-1]; k-- {
			if r.items[k].gap >= gapComma {
				at = k
				break
			}
		}
		if at > from {
			out = append(out, span{s.frame, from, at})
			from = at
		}
	}
	return append(out, span{s.frame, from, s.j})
}

// onlyDay says that a span is a day and nothing else.
func (r *reader) onlyDay(s span) bool {
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if it.kind != itDay && it.kind != itClock && (it.kind != itWord || !it.isAny(setOf(sFiller, sAnd))) {
			return false
		}
	}
	return true
}

// trimNegated takes a closing clause that only says what was not done off a
// span: "shed and hill full, the blue one I skipped".
func (r *reader) trimNegated(s span) span {
	for k := s.i + 1; k < s.j; k++ {
		ahead := r.items[k].kind == itDay && r.items[k].day.form == dayOffset && r.items[k].day.a > 0
		plan := r.items[k].is(sPlan) && !r.items[k].isAny(setOf(sWell, sTook, sSick, sFull))
		if !r.items[k].is(sNot) && !plan && !ahead || r.items[k].pig >= 0 || r.items[k].isAny(setOf(sBut, sSick)) {
			continue
		}
		least := uint8(gapComma)
		if plan {
			least = gapAnd
		}
		from := k
		for from > s.i && r.items[from].gap < least {
			from--
		}
		if from <= s.i {
			return s
		}
		told := false
		for n := s.i; n < from; n++ {
			it := &r.items[n]
			told = told || it.number() && !it.soft || it.kind == itDim || it.isAny(setOf(sFull, sEmpty, sWorm, sProduct, sMove, sWatered, sSick))
			if it.is(sNot) {
				return s
			}
		}
		for n := from; n < s.j; n++ {
			told = told && (!r.items[n].number() || r.items[n].soft) && r.items[n].kind != itFrac
		}
		if told {
			for n := from; n < s.j; n++ {
				r.items[n].used = true
			}
			s.j = from
		}
		return s
	}
	return s
}

// knowsMore lets an emergency stand whatever the mood: alarms are never asked
// about.
func (r *reader) knowsMore(why string, s span) bool {
	return s.frame == fAlarm && why != NoneForeign && why != NoneHearsay && why != NonePlan && why != NoneFuture
}

func (r *reader) fill(s span) {
	switch s.frame {
	case fWeigh:
		r.fillWeigh(s)
	case fFeed:
		r.fillFeed(s)
	case fWater:
		r.fillWater(s)
	case fWallow:
		r.fillWallow(s)
	case fStock:
		r.fillStock(s)
	case fMixed:
		r.fillMixed(s)
	case fRecipe:
		r.fillRecipe(s)
	case fSpend:
		r.fillSpend(s)
	case fDrug:
		r.fillDrug(s)
	case fMove:
		r.fillMove(s)
	case fSick:
		r.fillSick(s)
	case fAlarm:
		r.fillAlarm(s)
	case fFence:
		r.fillFence(s)
	case fWeather:
		r.fillWeather(s)
	case fArrive:
		r.fillArrive(s)
	case fGone:
		r.fillGone(s)
	case fBooked:
		r.fillBooked(s)
	case fAway:
		r.fillAway(s)
	case fNote:
		r.fillNote(s)
	case fRemind:
		r.fillRemind(s)
	case fAsk:
		r.fillAsk(s)
	case fDone:
		r.fillDone(s)
	case fSnooze:
		r.fillSnooze(s)
	case fUndo:
		r.fillUndo(s)
	case fHelp:
		r.fillHelp(s)
	case fDo:
		r.fillDo(s)
	case fTarget:
		r.fillTarget(s)
	case fChore:
		r.fillChore(s)
	case fQuiet:
		r.fillQuiet(s)
	case fZone:
		r.fillZone(s)
	case fUnits:
		r.fillUnits(s)
	case fHerd:
		r.fillHerd(s)
	case fCurrency:
		r.fillCurrency(s)
	case fSetFeeder:
		r.fillSetFeeder(s)
	case fSetBarrel:
		r.fillSetBarrel(s)
	case fSetPen:
		r.fillSetPen(s)
	case fSetWallow:
		r.fillSetWallow(s)
	case fSize:
		r.fillSize(s)
	case fMute:
		r.fillMute(s)
	default:
		r.idleSpan(s)
	}
}

// idleSpan leaves the words of a span to be quoted back.
func (r *reader) idleSpan(s span) {
	for k := s.i; k < s.j; k++ {
		r.items[k].used = false
	}
}

// leadingClock reads "810" at the head of a text as ten past eight, where a
// record follows it.
func (r *reader) leadingClock() {
	if len(r.items) < 2 {
		return
	}
	it := &r.items[0]
	if it.kind != itNum || it.v != float64(int(it.v)) || len(it.s) < 3 || len(it.s) > 4 || it.ord || it.soft {
		return
	}
	h, m := int(it.v)/100, int(it.v)%100
	if h > 23 || m > 59 {
		return
	}
	next := &r.items[1]
	if next.gap > gapComma || !(next.isAny(setOf(sFill, sPour, sWatered, sWorm, sTreat, sMove, sHose, sMixed, sGave)) || it.s[0] == '0' || next.pig >= 0 && len(it.s) == 4) || next.is(sFull) && !next.is(sFill) {
		return
	}
	if len(it.s) == 3 && len(r.items) < 3 {
		return
	}
	it.kind, it.clock = itClock, h*60+m
	it.ampm = it.s[0] == '0' || h > 12
}

// forceFrames settles what needs no weighing up: questions, notes and
// reminders take all that follows.
func (r *reader) forceFrames() {
	r.force = r.force[:0]
	for range r.items {
		r.force = append(r.force, 0)
	}
	for k := 0; k < len(r.items); k++ {
		it := &r.items[k]
		if r.force[k] != 0 {
			continue
		}
		switch {
		case it.is(sRemind) && (it.gap >= gapAnd || k == 0 || r.fillersBefore(k)) && !r.isQuestion(k):
			end := r.sentenceEnd(k)
			r.forceRange(k, end, fRemind)
		case it.is(sBackIn) && it.pig < 0 && (len(r.items) == 1 || r.openAlarm(model.AlarmOut) != nil && k == r.sentenceStart(k)):
			r.force[k] = uint8(fAlarm)
		case it.kind == itClock && r.wallClock(k):
			r.forceRange(r.clauseFrom(k), r.clauseEnd(k), fZone)
		case it.is(sUndo) && r.amountless(k+1, r.clauseEnd(k)) && (it.gap >= gapComma || k == 0 || r.fillersBefore(k)):
			r.forceRange(k, r.clauseEnd(k), fUndo)
		case it.is(sPay) && r.listOfSpending(k) > k:
			r.forceRange(k, r.listOfSpending(k), fSpend)
		case it.unit == unitBatch && it.kind == itWord && r.tellsBatch(k):
			r.forceRange(r.sentenceStart(k), r.sentenceEnd(k), fRecipe)
		case it.is(sNote) && r.noteFormal(k):
			it.sense.drop(sNote)
			it.used = true
		case it.is(sNote) && (it.gap >= gapComma || k == 0 || r.fillersBefore(k)) && it.pig < 0:
			r.forceRange(k, r.lineEnd(k), fNote)
		case r.questionStart(k) && r.reminderAhead(k) >= 0:
			r.forceRange(r.reminderAhead(k), r.sentenceEnd(k), fRemind)
		case r.questionStart(k):
			end := r.sentenceEnd(k)
			r.forceRange(k, end, fAsk)
		}
	}
}

// amountless says that items[i:j] hold no amount.
func (r *reader) amountless(i, j int) bool {
	for k := i; k < j; k++ {
		if it := &r.items[k]; it.number() && !it.soft || it.kind == itDim || it.kind == itFrac {
			return false
		}
	}
	return true
}

// clauseFrom is the item that begins the clause of item k.
func (r *reader) clauseFrom(k int) int {
	for k > 0 && r.items[k].gap < gapComma {
		k--
	}
	return k
}

// clauseEnd is the item that begins the next clause.
func (r *reader) clauseEnd(k int) int {
	n := k + 1
	for n < len(r.items) && r.items[n].gap < gapComma {
		n++
	}
	return n
}

// wallClock says that the time at k is what the clock on the wall shows: "it is
// 7:40 am here".
func (r *reader) wallClock(k int) bool {
	begin := r.clauseFrom(k)
	if k == begin || k-begin > 4 {
		return false
	}
	told := false
	for n := begin; n < k; n++ {
		switch r.items[n].s {
		case "it is", "it's", "its", "it is now", "it's now", "clock", "time", "time is", "the time is", "now", "it":
			told = true
		default:
			if !r.items[n].isAny(setOf(sFiller, sIs, sHere, sNow, sZone)) {
				return false
			}
		}
	}
	for n := begin; n < r.clauseEnd(k); n++ {
		if n != k && r.items[n].is(sHere) {
			return told
		}
	}
	return told && r.c.Herd.Zone == "" && r.clauseEnd(k) == k+1
}

// listOfSpending is the end of a list of amounts behind a word for paying,
// "spent 190 pigs, 510 feed, 96 straw"; k where none begins there.
func (r *reader) listOfSpending(k int) int {
	it := &r.items[k]
	if it.s != "spent" && it.s != "spend" && it.s != "paid" || it.gap < gapComma && k > 0 || k+1 >= len(r.items) {
		return k
	}
	end := k
	for from := k + 1; from < len(r.items); {
		if x := &r.items[from]; (x.kind != itNum || x.soft || x.ord) && !x.qty(money) {
			break
		}
		to := r.clauseEnd(from)
		for n := from; n < to; n++ {
			if x := &r.items[n]; x.kind == itQty && x.unit.dim() != money || n > from && x.number() || x.isAny(setOf(sFull, sGirth, sEmpty)) || x.kind == itThing || x.kind == itName {
				return end
			}
		}
		end, from = to, to
		if to < len(r.items) && r.items[to].gap >= gapSemi {
			break
		}
	}
	return end
}

// tellsBatch says that the sentence of item k gives amounts of several
// ingredients and no word of buying or mixing: what a batch holds.
func (r *reader) tellsBatch(k int) bool {
	parts := 0
	for n := r.sentenceStart(k); n < r.sentenceEnd(k); n++ {
		it := &r.items[n]
		if it.isAny(setOf(sBuy, sPay, sMixed, sPour, sFill, sFull)) && !it.is(sIngredient) || it.qty(money) {
			return false
		}
		if it.is(sIngredient) && (n > 0 && r.items[n-1].number() || n+1 < len(r.items) && r.items[n+1].number()) {
			parts++
		}
	}
	return parts > 1
}

// noteFormal says that "note that" is but a formal way to begin a report.
func (r *reader) noteFormal(k int) bool {
	for n := k - 1; n >= 0 && n >= k-2; n-- {
		if r.items[n].s == "kindly" || r.items[n].s == "please" {
			return true
		}
	}
	return r.items[k].s == "note that" && k+1 < len(r.items) && (r.items[k+1].s == "the" || r.items[k+1].pig >= 0)
}

func (r *reader) forceRange(i, j int, f frame) {
	for k := i; k < j; k++ {
		r.force[k] = uint8(f)
	}
}

// sentenceEnd is the item that begins the next sentence.
func (r *reader) sentenceEnd(k int) int {
	n := k + 1
	for n < len(r.items) && r.items[n].gap < gapStop {
		n++
	}
	return n
}

func (r *reader) lineEnd(k int) int {
	n := k + 1
	for n < len(r.items) && !strings.Contains(r.text[r.items[n-1].to:r.items[n].from], "\n") {
		n++
	}
	return n
}

func (r *reader) fillersBefore(k int) bool {
	for n := k - 1; n >= 0; n-- {
		if k-n > openingWords {
			return false
		}
		if !r.items[n].isAny(setOf(sFiller, sThanks, sYes)) {
			return false
		}
		if r.items[n+1].gap >= gapStop {
			break
		}
	}
	return true
}

// openingWords is how many small words may stand before what a sentence is
// about.
const openingWords = 10

func (r *reader) isQuestion(k int) bool { return r.items[k].quest && r.questionStart(k) }

// questionStart says that a question begins at item k.
func (r *reader) questionStart(k int) bool {
	it := &r.items[k]
	clause := k == 0 || it.gap >= gapComma || r.fillersBefore(k) || it.gap == gapAnd && it.is(sAskSure)
	switch {
	case it.pig >= 0 || it.feeder >= 0 || it.barrel >= 0:
		return it.quest && clause && it.gap >= gapStop && !r.measured(k) || it.quest && k == 0 && !r.measured(k)
	case it.is(sWhatIf) && clause && (it.s == "what if" || it.quest && it.s != "with" || it.s == "how about if" || it.s == "suppose" || it.s == "say we" || it.s == "say i"):
		return true
	case firstWord(it.s) == "if" && clause && r.asksLater(k):
		return true
	case it.is(sAskSure) && clause && !r.relative(k) && !r.afterSubject(k):
		return true
	case it.is(sAskSure) && strings.Contains(it.s, " ") && !r.relative(k) && r.strongAsk(it.s):
		return true
	case it.is(sAsk) && clause && it.quest:
		return true
	case it.is(sAsk) && k == 0 && r.inverted(k):
		return true
	case it.quest && k == r.sentenceStart(k) && !r.measured(k):
		return true
	case it.s == "plan" && clause && k+1 < len(r.items) && (r.items[k+1].kind == itNum || r.items[k+1].s == "for"):
		return true
	}
	return false
}

// strongAsk are phrases that ask wherever they stand.
func (r *reader) strongAsk(s string) bool {
	switch firstWord(s) {
	case "how", "when", "what":
		return s != "what was" && s != "what is" && s != "what are" && s != "how are" && s != "what about" && s != "how about" && s != "when was" && s != "what did"
	}
	return s == "will it last" || s == "do i need" || s == "is it time" || s == "any idea" || s == "tell me when" || s == "tell me how" || s == "tell me what" || s == "want to know" || s == "need to know" || s == "i would like to know" || s == "i'd like to know"
}

// relative says that a question's word is no question here: "what was left in
// the open bag plus one", "the pig which coughs".
func (r *reader) relative(k int) bool {
	it := &r.items[k]
	if it.quest {
		return false
	}
	switch it.s {
	case "what was", "which", "who", "where", "what is", "whats", "how", "what", "where is":
		for n := k + 1; n < r.sentenceEnd(k); n++ {
			if x := &r.items[n]; x.number() && !x.soft && x.kind != itClock && !r.askedNumber(n) {
				return true
			}
		}
		return it.s == "who" && k > 0 || it.s == "which" && k > 0 && it.gap < gapStop
	}
	return false
}

func (r *reader) askedNumber(n int) bool {
	it := &r.items[n]
	return it.v >= 100 || it.qty(mass) || n+1 < len(r.items) && (r.items[n+1].is(sPigs) || r.items[n+1].is(sMore))
}

// inverted says that the first words are in a question's order: "is it", "do
// the", "will they".
func (r *reader) inverted(k int) bool {
	if k+1 >= len(r.items) {
		return false
	}
	n := &r.items[k+1]
	switch r.items[k].s {
	case "show", "list", "tell", "give", "explain", "calculate", "estimate", "forecast", "predict", "compute":
		return !r.measured(k)
	case "is", "are", "do", "does", "will", "can", "should", "am", "shall", "would", "could", "did":
		return n.is(sPronoun) || n.is(sPigs) || n.pig >= 0 || n.s == "the" || n.s == "i" || n.s == "we" || n.s == "my" || n.s == "there" || n.feeder >= 0 || n.barrel >= 0
	}
	return false
}

// measured says that the sentence of item k states amounts, as a fact does.
func (r *reader) measured(k int) bool {
	for n := r.sentenceStart(k); n < r.sentenceEnd(k); n++ {
		if it := &r.items[n]; (it.kind == itNum && !it.soft && !(n > 0 && r.items[n-1].kind == itDay) || it.kind == itDim || it.kind == itQty && it.unit.dim() != days) && !r.has(span{0, r.sentenceStart(k), r.sentenceEnd(k)}, sTopic) {
			return true
		}
	}
	return false
}

func (r *reader) sentenceStart(k int) int {
	for k > 0 && r.items[k].gap < gapStop {
		k--
	}
	return k
}

// leanings are what the herd's state makes likelier from the start: a herd not
// set up yet is being set up.
func (r *reader) leanings() {
	h := r.c.Herd
	if len(h.Animals) == 0 {
		r.bias[fArrive] += 0.9
		r.bias[fWeigh] -= 2.5
		r.bias[fGone] -= 1
		r.bias[fSick] -= 0.5
		r.bias[fWeather]--
		r.bias[fMove] -= 0.5
	} else {
		r.bias[fArrive] -= 1.5
	}
	if len(h.Feeders) == 0 {
		r.bias[fSetFeeder] += 1
		r.bias[fFeed] -= 0.7
	} else {
		r.bias[fSetFeeder] -= 0.9
	}
	if len(h.Barrels) == 0 {
		r.bias[fSetBarrel] += 1.3
		r.bias[fWater] -= 1.2
	} else {
		r.bias[fSetBarrel] -= 0.9
	}
	if len(h.Pens) == 0 {
		r.bias[fSetPen] += 0.5
	}
	if h.Chore.Stated {
		r.bias[fChore] -= 1.5
	}
	if len(r.items) < 6 {
		r.bias[fUnits] += 0.5
	}
	if r.c.LastNudge == nil {
		r.bias[fSnooze] -= 0.4
	}
	r.bias[fSize] -= 0.2
}

// settle puts the entries in the order of the text, judges their days, and
// gathers what was not understood.
func (r *reader) settle() Reading {
	for k := range r.out {
		r.out[k] = r.judgeDay(r.out[k])
	}
	r.out = r.merged(r.out)
	sort.SliceStable(r.out, func(a, b int) bool { return r.out[a].From < r.out[b].From })
	if r.noise() {
		return r.just(None{Reason: NoneUnknown})
	}
	if !r.answered {
		r.leftOver()
	}
	if len(r.out) == 0 && len(r.c.Herd.Animals) == 0 {
		r.bareArrival()
	}
	if len(r.out) == 0 && len(r.items) == 1 && r.items[0].isAny(setOf(sOut, sDown)) && !r.items[0].is(sPigs) {
		r.askAlarm(r.items[0].is(sDown) && !r.items[0].is(sOut))
	}
	if len(r.out) == 0 {
		reason := NoneChatter
		if len(r.left) > 0 {
			reason = NoneUnknown
		}
		for k := range r.items {
			if r.items[k].is(sThanks) {
				reason = NoneChatter
			}
		}
		if reason == NoneUnknown && r.chatter() {
			reason = NoneChatter
		}
		got := r.just(None{Reason: reason})
		got.Left = r.left
		return got
	}
	return Reading{Entries: r.out, Left: r.left, Answers: r.answered}
}

// noise says that a long text is no message: most of it means nothing, and what
// seems to mean something stands in scraps between.
func (r *reader) noise() bool {
	if len(r.items) < noiseWords {
		return false
	}
	said, taken, scraps := 0, 0, 0
	for k := range r.items {
		it := &r.items[k]
		if it.kind == itWord && it.isAny(setOf(sFiller, sAnd)) {
			continue
		}
		said++
		if it.used {
			taken++
		}
	}
	for _, e := range r.out {
		switch a := e.Act.(type) {
		case Fact:
			if a.Kind() == "alarm" {
				return false
			}
			scraps++
		case None:
		default:
			scraps++
		}
	}
	return scraps > 3 && 2*taken < said
}

// noiseWords is how long a text must be to be taken for noise.
const noiseWords = 60

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
	case model.Setting, model.Booked, model.AwayFrom, model.Remind, model.Note, model.Recipe:
		return e
	}
	if e.On > r.today {
		e.Act = None{Reason: NoneFuture}
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
	facts := 0
	for _, e := range es {
		if _, none := e.Act.(None); !none {
			facts++
		}
	}
	es = withoutDoubleDrug(es)
	es = withoutDoubleWater(es)
	out := es[:0]
	seen := map[string]bool{}
	for _, e := range es {
		if _, later := e.Act.(Snooze); later && facts > 1 && r.c.LastNudge == nil {
			continue // "did water. feed later maybe"
		}
		if _, ask := e.Act.(Ask); ask && facts > 1 && slices.Contains(r.soft, e.From) {
			continue // "got the weights back, dot was 182"
		}
		if _, help := e.Act.(Help); help && facts > 1 {
			continue // "PIGS OUT HELP"
		}
		if d, done := e.Act.(Done); done && facts > 1 && len(d.About) == 0 {
			continue // "round's done: ..."
		}
		if n, none := e.Act.(None); none {
			if facts > 0 && n.Reason != NoneBefore && n.Reason != NoneUnit || seen[n.Reason] || facts == 0 && len(seen) > 0 {
				continue
			}
			seen[n.Reason] = true
		}
		out = append(out, e)
	}
	return out
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

// worthQuoting says that words hold a number, a name, an unknown word or a word
// of the trade.
func (r *reader) worthQuoting(i, j int) bool {
	for k := i; k < j; k++ {
		it := &r.items[k]
		if it.number() && !it.soft || it.kind == itDim || it.kind == itName || it.kind == itThing || !it.known && len(it.s) > 1 || it.isAny(tradeSenses) {
			return true
		}
	}
	return j-i > 2 && len(r.out) == 0 // plain words beside a fact are but talk
}

// slipsOfTongue drops a number that the person takes back in the same breath:
// "moss 150 no 153".
func (r *reader) slipsOfTongue() {
	for k := 1; k+1 < len(r.items); k++ {
		it := &r.items[k]
		if !it.is(sNo) || it.pig >= 0 || it.s == "n" || it.s == "fix" || it.s == "not right" || it.s == "edit" {
			continue
		}
		n := k + 1
		for n < len(r.items) && n < k+3 && r.items[n].kind == itWord && r.items[n].isAny(setOf(sNo, sFiller)) {
			n++
		}
		if n >= len(r.items) {
			return
		}
		old, now := &r.items[k-1], &r.items[n]
		if old.number() && now.number() && !old.soft && (old.kind == now.kind || now.kind == itNum) || old.kind == itDim && now.kind == itDim {
			if now.kind == itNum && old.kind == itQty {
				now.kind, now.unit = itQty, old.unit
			}
			old.kind, old.used = itWord, true
			old.sense = setOf(sFiller)
			for x := k; x < n; x++ {
				r.items[x].sense, r.items[x].used = setOf(sFiller), true
			}
		}
	}
}

// afterSubject says that a verb at k follows its subject, as in a statement:
// "we are the ...", "they have ...".
func (r *reader) afterSubject(k int) bool {
	if k == 0 || r.items[k].gap >= gapComma {
		return false
	}
	switch firstWord(r.items[k].s) {
	case "is", "are", "am", "do", "does", "did", "will", "can", "have", "has", "should", "could", "would":
	default:
		return false
	}
	p := &r.items[k-1]
	return p.is(sPronoun) || p.s == "we" || p.s == "i" || p.s == "there" || p.s == "that" || p.s == "this"
}

// asksLater says that the sentence of an "if" goes on to ask: "if I skip a week
// will the feed last".
func (r *reader) asksLater(k int) bool {
	for n := k + 1; n < r.sentenceEnd(k); n++ {
		it := &r.items[n]
		if it.quest || it.is(sAskSure) && !it.is(sFiller) || it.s == "will the" || it.s == "how much" || it.s == "when will" {
			return true
		}
	}
	return false
}

// reminderAhead finds the word for a reminder right behind a polite opening:
// "could you remind me ..."; -1 if there is none.
func (r *reader) reminderAhead(k int) int {
	for n := k + 1; n < len(r.items) && n <= k+3 && r.items[n].gap < gapComma; n++ {
		if r.items[n].is(sRemind) {
			return n
		}
	}
	return -1
}
