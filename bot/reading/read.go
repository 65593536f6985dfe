package reading

import (
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
	r.spellOut()
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
	r.notOurs()
	r.settleContainers()
	r.slipsOfTongue()
	r.leadingClock()
	r.forceFrames()
	r.leanings()
	spans := r.verbsForward(r.waterItself(r.joinArrivals(r.cut())))
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
			r.vet(part, before)
			r.strayMoney(part)
			r.noteUnits(part.i, part.j)
			if len(r.out) > before && factual[s.frame] && s.frame != fArrive {
				r.keepDay(part)
			}
		}
	}
}

// knowsMore lets an emergency stand whatever the mood: alarms are never asked
// about.
func (r *reader) knowsMore(why string, s span) bool {
	return s.frame == fAlarm && why != NoneForeign && why != NoneHearsay && why != NonePlan && why != NoneFuture
}

// forceFrames settles what needs no weighing up: questions, notes and
// reminders take all that follows.
func (r *reader) forceFrames() {
	r.force = r.force[:0]
	for range r.items {
		r.force = append(r.force, 0)
	}
	if len(r.c.Herd.Animals) == 0 {
		r.forceArrivals()
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
		case it.s == "in" && k > 0 && it.gap >= gapComma && (r.sentenceEnd(k) == k+2 || r.clauseEnd(k) == k+2 || r.clauseEnd(k) == k+3 && r.items[k+2].kind == itNum) && k+1 < len(r.items) && r.find(span{0, 0, k}, sPen) >= 0 && (r.items[k+1].kind == itNum || r.nameLike(k+1) || r.items[k+1].pen >= 0):
			it.sense, it.unit = setOf(sInUse), 0
			r.forceRange(k, max(k+2, r.clauseEnd(k)), fSetPen)
		case it.is(sBarrel) && len(r.c.Herd.Barrels) == 0 && r.tellsBarrels(k):
			r.forceRange(r.sentenceStart(k), r.sentenceEnd(k), fSetBarrel)
		case it.s == "back" && r.openAlarm(model.AlarmOut) != nil && r.sentenceNamesPig(k):
			it.sense.add(sBackIn)
			r.forceRange(r.sentenceStart(k), r.sentenceEnd(k), fAlarm)
		case it.qty(mass) && (k == 0 || it.gap >= gapComma) && r.clauseEnd(k) == k+1 && len(r.c.Herd.Animals) > 0 && r.waterFullBeside(k):
			r.force[k] = uint8(fFeed)
			r.forceRange(k+1, r.clauseEnd(k+1), fWater)
		case it.kind == itDay && it.day.form == dayWeekday && it.day.mod == 0 && !r.c.Herd.Chore.Stated && k > 0 && k == r.sentenceStart(k) && r.sentenceEnd(k) == k+2 && r.items[k+1].kind == itNum && !r.items[k+1].soft && r.items[k+1].v < 24:
			r.forceRange(k, k+2, fChore) // "target 250. saturday 7."
		case it.qty(vessel) && it.v > 1 && r.pricedSacks(k):
			r.forceRange(r.sentenceStart(k), r.sentenceEnd(k), fStock)
		case it.is(sPay) && r.listOfSpending(k) > k:
			r.forceRange(k, r.listOfSpending(k), fSpend)
		case it.unit == unitBatch && (it.kind == itWord || it.kind == itQty && it.v == 1) && r.tellsBatch(k):
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

// tellsBarrels says that the sentence of item k sets up water barrels: it speaks
// of water, of volumes and of barrels or nipples, and not of feeding or filling.
func (r *reader) tellsBarrels(k int) bool {
	s := span{0, r.sentenceStart(k), r.sentenceEnd(k)}
	if !r.has(s, sWater) || r.firstQty(s, volume) < 0 || r.has(s, sFeeder) || r.has(s, sFeed) || r.firstQty(s, mass) >= 0 {
		return false
	}
	for n := s.i; n < s.j; n++ {
		it := &r.items[n]
		if it.isAny(setOf(sFill, sFull, sPour, sEmpty, sWatered, sTook, sPigs, sTarget, sChore, sWallow, sPen)) && !it.is(sLook) {
			return false
		}
	}
	return true
}

// forceArrivals settles, in a herd without pigs, the sentences about pigs that
// came, and those behind them that tell nothing but their weight, birth or sex.
func (r *reader) forceArrivals() {
	told := false
	for i := 0; i < len(r.items); {
		s := span{fArrive, i, r.sentenceEnd(i)}
		i = s.j
		pigs, count, came, details, other := false, false, false, false, r.items[s.i].quest
		only := true
		for k := s.i; k < s.j; k++ {
			it := &r.items[k]
			sexed := it.isAny(setOf(sBarrow, sGilt, sBoar, sSow))
			pigs = pigs || it.is(sPigs) || sexed
			count = count || it.kind == itNum && !it.ord && it.v >= 1 && it.v <= 60 && it.v == float64(int(it.v))
			came = came || it.is(sArrive)
			details = details || it.qty(mass) || it.isAny(setOf(sBorn, sAge)) || sexed
			other = other || it.canon != "" || it.kind == itClock || it.kind == itDim ||
				it.isAny(setOf(sFeeder, sBarrel, sPen, sButcher, sTarget, sPlan, sIf, sWhatIf, sForeign, sOut, sDown, sNoWater, sSick, sDied, sLost, sSold, sChore, sGirth, sHerd, sFull, sUS, sMetric, sUnits, sZone, sTell, sQuiet)) && it.kind == itWord && !it.capital
			only = only && (it.number() || it.kind == itDay || sexed || it.isAny(setOf(sBorn, sAge, sEach, sAbout, sFiller, sIs, sAnd, sPronoun, sWeigh, sAll, sBoth, sRest, sAt, sOn)))
		}
		switch {
		case other:
		case pigs && count && came && details, told && only && details, pigs && count && came && r.detailsFollow(s.j):
			r.forceRange(s.i, s.j, fArrive)
			told = true
		}
	}
}

// detailsFollow says that the sentence from item k on begins with a weight, a
// birth or an age.
func (r *reader) detailsFollow(k int) bool {
	for n := k; n < len(r.items) && n < k+3 && (n == k || r.items[n].gap < gapStop); n++ {
		if it := &r.items[n]; it.qty(mass) || it.isAny(setOf(sBorn, sAge)) {
			return true
		}
	}
	return false
}

// joinArrivals joins spans about pigs that came where the later ones only tell
// more of the same pigs.
func (r *reader) joinArrivals(spans []span) []span {
	out := spans[:0]
	for _, s := range spans {
		if n := len(out); n > 0 && s.frame == fArrive && out[n-1].frame == fArrive && out[n-1].j == s.i && !r.comesAgain(s) {
			out[n-1].j = s.j
			continue
		}
		out = append(out, s)
	}
	return out
}

func (r *reader) comesAgain(s span) bool {
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.is(sArrive) && !it.isAny(setOf(sBorn, sNamed)) || it.is(sPigs) {
			return true
		}
	}
	return false
}

func (r *reader) sentenceNamesPig(k int) bool {
	for n := r.sentenceStart(k); n < r.sentenceEnd(k); n++ {
		if r.items[n].pig >= 0 || r.items[n].is(sPigs) {
			return true
		}
	}
	return false
}

// waterFullBeside says that the next clause tells of water barrels filled, so
// that a bare weight before it was poured: "30,5 kg, tank full".
func (r *reader) waterFullBeside(k int) bool {
	s := span{0, k + 1, r.sentenceEnd(k)}
	if s.i < len(r.items) {
		s.j = r.clauseEnd(s.i)
	}
	for n := s.i; n < s.j; n++ {
		if it := &r.items[n]; (it.barrel >= 0 || it.is(sWater) || it.is(sWatered)) && (r.has(s, sFull) || r.has(s, sFill) || it.is(sWatered)) {
			return true
		}
	}
	return false
}

// pricedSacks says that the sentence of item k tells sacks of an ingredient and
// their price, so that they were bought: "12 bags corn 50 lb at 9.50 each".
func (r *reader) pricedSacks(k int) bool {
	s := span{0, r.sentenceStart(k), r.sentenceEnd(k)}
	if s.i < k && r.items[s.i].pig >= 0 || r.find(s, sIngredient) < 0 || r.firstQty(s, money) < 0 && !r.has(s, sEach) {
		return false
	}
	for n := s.i; n < s.j; n++ {
		if it := &r.items[n]; it.isAny(setOf(sFeeder, sFill, sFull, sMixed, sPour, sRecipe, sHolds)) && it.canon == "" && !it.isAny(setOf(sFiller, sAt)) {
			return false
		}
	}
	return r.firstQty(s, money) >= 0 || r.firstNum(s) >= 0
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
	if !r.reports(k + 1) {
		return false
	}
	for n := k - 1; n >= 0 && n >= k-2; n-- {
		if r.items[n].s == "kindly" || r.items[n].s == "please" {
			return true
		}
	}
	return r.items[k].s == "note that" && k+1 < len(r.items) && (r.items[k+1].s == "the" || r.items[k+1].pig >= 0)
}

// reports says that the sentence from item k on tells an amount, a level or an
// animal's state, as a report does.
func (r *reader) reports(k int) bool {
	for n := k; n < len(r.items) && (n == k || r.items[n].gap < gapStop); n++ {
		it := &r.items[n]
		if it.number() && !it.soft || it.kind == itDim || it.kind == itFrac || it.pig >= 0 || it.isAny(setOf(sFull, sEmpty, sFill, sWorm, sMove, sWatered, sSick, sDied, sSold, sPigs, sProduct)) {
			return true
		}
	}
	return false
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
		r.bias[fArrive]--
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
