package reading

import (
	"strings"

	"troughbell/model"
)

// A wrong record costs more than a question, and a question more than silence.
// What follows takes back what a span yielded where the words around it speak
// against it.

// vet looks once more at what a span yielded, r.out[from:].
func (r *reader) vet(s span, from int) {
	defer r.doubtCovered(s, from)
	if from >= len(r.out) || r.force[s.i] != 0 && s.frame != fSpend {
		return
	}
	switch s.frame {
	case fUnits:
		if len(r.c.Herd.Animals) > 0 && !r.has(s, sUnits) && !r.saysUnits(s) && (r.otherWords(s) > 0 || len(r.out) > 1) {
			r.takeBack(s, from) // "should save us some work"
		}
	case fSetPen:
		if len(r.c.Herd.Animals) > 0 && !r.has(s, sPen) && !r.hasThing(s) && (r.sizeless(s) || len(r.c.Herd.Pens) > 0 && !r.sentenceNames(r.clauseFrom(s.i), s.j, penNews) && !r.items[s.i].capital && !r.has(s, sInUse)) {
			r.takeBack(s, from) // "they're in the garden"
		}
	case fSetFeeder, fSetBarrel:
		known := len(r.c.Herd.Feeders)
		if s.frame == fSetBarrel {
			known = len(r.c.Herd.Barrels)
		}
		if known > 0 && (r.eachNamed(s.i, s.j) || !r.has(s, sHolds) && !r.quoteHas(s, "new", "another", "added", "add", "bought", "got", "extra", "second", "third") && r.otherWords(s) > 3) {
			r.takeBack(s, from)
		}
	case fArrive:
		if pen := r.penBehind(s); r.alive > 0 && pen > 0 && r.quoteHas(s, "moved in", "moved") { // "the pigs i moved in the pasture"
			r.out = r.out[:from]
			r.fillMove(span{fMove, s.i, pen + 1})
			return
		}
		if r.alive > 0 && (!r.cameOutright(s) || r.allOurs(from)) {
			r.takeBack(s, from)
		}
	case fBooked:
		if all := (span{s.frame, r.sentenceStart(s.i), r.sentenceEnd(s.j - 1)}); r.has(all, sChore) && !r.has(all, sButcher) { // "chore day changed to sunday"
			r.out = r.out[:from]
			r.fillChore(span{fChore, all.i, all.j})
			return
		}
		if r.onlyIdea(s) {
			r.takeBack(s, from)
			r.none(NonePlan, s)
			return
		}
		if _, asks := r.out[from].Act.(Clarify); !asks && r.offered(s) {
			r.confirm(s, from)
			return
		}
		if r.closedThen(s) {
			r.takeBack(s, from)
		}
	case fAway:
		if r.daysUntil(s) {
			r.takeBack(s, from)
		}
	case fCurrency:
		if len(r.c.Herd.Animals) > 0 && !r.has(s, sCurrency) && r.strangeWords(span{s.frame, r.clauseFrom(s.i), s.j}) > 0 || from == 0 && firstWord(r.items[0].s) == "found" {
			r.takeBack(s, from) // "found a dollar"
		}
	case fSpend:
		if r.strangersMoney(s) {
			r.takeBack(s, from)
			return
		}
		if r.goingRate(s) {
			r.takeBack(s, from)
			r.none(NoneHearsay, s)
		}
	case fWallow:
		if r.has(s, sMove) && !r.has(s, sFill) && !r.has(s, sHose) && r.amountless(s.i, s.j) {
			r.takeBack(s, from) // "moved the wallow"
			return
		}
		if r.inWallow(s) {
			r.takeBack(s, from) // "they're in the wallow"
		}
	case fStock:
		if r.headsBought(s) {
			r.out = r.out[:from]
			r.fillArrive(span{fArrive, r.sentenceStart(s.i), r.sentenceEnd(s.j - 1)})
			return
		}
		if r.countedHerd(s) {
			r.takeBack(s, from)
			return
		}
		if r.forOthers(s) {
			r.takeBack(s, from)
			r.none(NoneForeign, s)
			return
		}
		if g := r.goodsIn(r.clauseFrom(s.i), r.clauseEnd(s.j-1)); g.other && !g.buying && !g.shed && !g.money && !g.few { // "took an hour and a bucket of corn"
			r.takeBack(s, from)
			return
		}
		if r.bareGoods(s, from) || r.has(s, sShed) && r.firstQty(s, mass) < 0 && r.firstQty(s, vessel) < 0 && r.quoteHas(span{0, r.sentenceStart(s.i), r.sentenceEnd(s.j - 1)}, "temperature", "temp", "thermometer", "degrees") {
			r.takeBack(s, from)
		}
	case fSize:
		if k := r.firstMoney(s); (k >= 0 || r.has(s, sIngredient)) && len(r.c.Herd.Feeders) > 0 && !r.quoteHas(s, "is", "are", "=", "was", "holds", "hold", "weighs", "weigh") { // "a 50 lb bag of mineral, 38 bucks"
			r.out = r.out[:from]
			if k < 0 {
				for n := s.i; n < s.j; n++ {
					delete(r.setUp.sizes, r.items[n].unit.name())
				}
				r.fillStock(s) // "4 bags corn (60)"
				return
			}
			r.fillStock(span{fStock, s.i, k + 1})
			r.skip = k
		}
	case fSnooze, fDone:
		if s.frame == fSnooze && s.i > 0 && r.items[s.i].gap < gapAnd && r.items[s.i-1].kind == itNum { // "90 tomorrow" is a day to come, not a putting off
			r.takeBack(s, from)
			r.none(NoneFuture, s)
			return
		}
		if r.c.LastNudge == nil && (r.otherWords(s) > 2 || s.frame == fSnooze && (r.namesOurs(s) || r.tradeBeside(s))) || s.frame == fSnooze && r.has(s, sSnooze) && r.toldOther(s) {
			r.takeBack(s, from)
		}
	case fAsk:
		if r.noneOfIt(s) {
			r.takeBack(s, from) // "no weights this week"
			return
		}
		if r.force[s.i] == 0 && !r.items[s.i].quest && (r.otherWords(s) > 3 || r.supposed(s) || r.onlyNamed(s, from)) {
			r.takeBack(s, from)
		}
	case fWater:
		if r.habit(s) {
			r.takeBack(s, from)
		}
	case fFeed:
		if r.habit(s) {
			r.takeBack(s, from)
			return
		}
		if s.j == s.i+1 && r.items[s.i].is(sEmpty) && from > 0 && isSetting(r.out[from-1]) { // "pen 5 is 120x120 ft, empty"
			r.takeBack(s, from)
			return
		}
		if len(r.c.Herd.Animals) == 0 && len(r.c.Herd.Feeders) == 0 && len(r.setUp.pens) == 0 && !r.arrived() { // nobody feeds before the pigs came
			r.takeBack(s, from)
			return
		}
		if r.headsLeft(s) || r.quoteHas(s, "freezer", "in the freezer", "the freezer") || r.othersFeed(s) || r.handful(s, from) || r.otherGoods(s) || r.noFeedAtAll(s) {
			r.takeBack(s, from)
		}
	case fZone:
		if r.c.Herd.Zone != "" && !r.has(s, sZone) && r.otherWords(s) > 3 {
			r.takeBack(s, from) // "from now on"
			return
		}
	case fChore:
		if r.c.Herd.Chore.Stated && (r.choreHeading(s) || len(r.items) > 8 && !r.saysChange(s)) {
			r.takeBack(s, from)
			return
		}
	case fMove:
		if r.force[s.i] == 0 && r.saysOther(s) {
			r.takeBack(s, from)
			return
		}
		if r.force[s.i] == 0 && r.soTheyCan(s) {
			r.takeBack(s, from)
			r.none(NonePlan, s)
			return
		}
		if r.force[s.i] == 0 && r.mentioned(s) {
			r.takeBack(s, from)
			return
		}
		if r.penHeading(s) {
			r.takeBack(s, from)
			return
		}
		if r.force[s.i] == 0 && !r.has(s, sMove) && !r.has(s, sInUse) && (r.otherWords(s) > 4 || r.strangeWords(s) > 0 && !r.saysWho(s)) {
			r.takeBack(s, from)
		}
	case fWeather:
		if r.force[s.i] == 0 && r.strangeWords(s) > 1 && !r.has(s, sWeather) && !r.has(s, sHigh) && !r.has(s, sLow) && !r.has(s, sHumid) {
			r.takeBack(s, from) // "turned 62 today, knees feel like 80"
		}
	case fMute:
		if r.otherWords(s) > 4 && !r.has(s, sTell) && !r.has(s, sRemind) {
			r.takeBack(s, from) // "no more help with the chores"
		}
	case fDo, fHelp:
		if r.otherWords(s) > 3 && !r.asked(s) {
			r.takeBack(s, from) // "the truck wouldn't start so I was late"
		}
	case fGone:
		if r.nameOfPlant(s) {
			r.confirm(s, from)
		}
	case fSick:
		if r.nobodySick(s) {
			r.takeBack(s, from)
		}
	case fAlarm:
		if r.feedEnough(s) {
			r.takeBack(s, from)
			return
		}
		if r.noTrouble(s) {
			r.takeBack(s, from)
			r.none(NoneNegation, s)
			return
		}
		if r.nobodyOut(s) {
			r.takeBack(s, from)
			r.none(NoneNegation, s)
			return
		}
		if k := r.find(s, sBackIn); k >= 0 && (r.items[k].s == "caught" || r.items[k].s == "back in" || r.items[k].s == "is in") && r.openAlarm(model.AlarmOut) == nil {
			r.takeBack(s, from)
		}
	case fFence:
		if r.fenceAside(s, from) || r.misheard(s) {
			r.confirm(s, from)
		}
	}
}

// saysUnits says that a word of the span can mean nothing but a system of units.
func (r *reader) saysUnits(s span) bool {
	for k := s.i; k < s.j; k++ {
		if w := r.items[k].s; strings.Contains(w, "metric") || strings.Contains(w, "unit") || w == "imperial" {
			return true
		}
	}
	return false
}

// takeBack drops what a span yielded; its words are but talk.
func (r *reader) takeBack(s span, from int) {
	r.out = r.out[:from]
	r.useAll(s)
}

// confirm asks whether what a span yielded is meant.
func (r *reader) confirm(s span, from int) {
	es := append([]Entry(nil), r.out[from:]...)
	r.out = r.out[:from]
	r.clarify(doubtful(es), s)
}

// doubtful is the question whether a reading is right, what it would record as
// the first choice.
func doubtful(es []Entry) Clarify {
	return Clarify{
		About: es[0].Act.Intent(), Code: "doubtful", Draft: es,
		Choices: []Choice{{Entries: es}, {Code: "nothing"}},
	}
}
