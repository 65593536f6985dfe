package reading

import (
	"strings"

	"troughbell/model"
)

// forceFrames settles what needs no weighing up: questions, notes and
// reminders take all that follows.
func (r *reader) forceFrames() {
	r.force = r.force[:0]
	for range r.items {
		r.force = append(r.force, 0)
	}
	r.forceAsked()
	if len(r.c.Herd.Animals) == 0 {
		r.forceArrivals()
	}
	r.forceHours()
	r.forceAdded()
	r.backOn()
	r.bagTold()
	r.bothOfKind()
	r.forceSetUp()
	r.lackOfWater()
	r.nothingComes()
	r.fullBatches()
	r.forceGivenAll()
	r.forcePutOff()
	r.amountsBehind()
	r.numberedPens()
	for _, s := range r.settled {
		r.forceRange(s.i, s.j, s.frame)
	}
	r.forceMixTold()
	r.forceMixChange()
	r.forceGoods()
	r.leftOverGoods()
	r.pouredOnes()
	r.hangingAll()
	r.forceMixed()
	r.forceSundries()
	r.forceTellings()
	r.forceDittos()
	for k := 0; k < len(r.items); k++ {
		it := &r.items[k]
		if r.force[k] != 0 {
			continue
		}
		switch {
		case r.remindsFirst(k), r.tellsToDo(k), r.tellsLater(k), r.awayThere(k), r.worksThen(k), r.choreTold(k), r.dugWallow(k), r.bareInBarrel(k):
		case r.outTold(k), r.fenceTold(k), r.inAgain(k):
		case it.is(sRemind) && (it.gap >= gapAnd || k == 0 || r.fillersBefore(k) || r.remindsHere(k)) && !r.isQuestion(k):
			end := r.reminderEnd(k)
			if k > 0 && it.gap < gapAnd && r.remindsHere(k) {
				it.gap = gapStop
			}
			r.forceRange(k, end, fRemind)
		case (k == 0 || it.gap >= gapComma) && r.mutes(k):
			r.forceRange(k, r.sentenceEnd(k), fMute)
		case it.kind == itSlash && r.pairOfPours(k):
			r.forceRange(r.sentenceStart(k), r.sentenceEnd(k), fFeed)
		case it.is(sWallow) && it.pig < 0 && r.wallowFilled(k) > k:
			r.forceRange(r.stretchOf(k), r.wallowFilled(k), fWallow)
		case it.is(sWallow) && it.pig < 0 && r.wallowLevel(k):
			i, j := r.stretch(k)
			r.forceRange(i, j, fWallow)
		case it.is(sWallow) && it.pig < 0 && r.wallowDeed(k):
			i, j := r.stretch(k)
			r.forceRange(i, j, fWallow)
		case (it.s == "hose" || it.s == "the hose") && r.hoseDeed(k):
			i, j := r.stretch(k)
			r.forceRange(i, j, fWallow)
		case (it.is(sLeft) || it.s == "feed left") && r.leftForDays(k):
			r.forceRange(r.clauseFrom(k), r.clauseEnd(k), fFeed)
		case it.is(sHumid) && it.kind == itWord && k > 1 && k+1 < len(r.items) && r.items[k+1].kind == itNum && r.items[k+1].gap == gapNone && r.items[k-1].kind == itNum && r.items[k-2].isAny(setOf(sLow, sHigh)):
			r.forceRange(r.stretchOf(k), k+2, fWeather) // "hi 97 lo 74 rh 65"
		case it.qty(percent) && r.humidityAlone(k):
			r.forceRange(r.clauseFrom(k), r.clauseEnd(k), fWeather)
		case it.label && r.mixLines(k) > k:
			r.forceRange(r.sentenceStart(k), r.mixLines(k), fRecipe)
		case it.is(sBackIn) && it.pig < 0 && (len(r.items) == 1 || r.openAlarm(model.AlarmOut) != nil && k == r.sentenceStart(k)):
			r.force[k] = uint8(fAlarm)
		case it.pig >= 0 && r.nameAndNumber(k):
			r.forceRange(k, k+2, fWeigh)
		case it.pig >= 0 && k == r.sentenceStart(k) && r.nounAsked(k):
			r.forceRange(k, r.sentenceEnd(k), fAsk)
		case it.is(sHelp) && strings.HasPrefix(it.s, "how ") && (k == 0 || it.gap >= gapComma || r.fillersBefore(k)):
			r.forceRange(k, r.sentenceEnd(k), fHelp)
		case it.number() && r.tellsBodyHeat(k):
			from, to := r.bodyHeat(k)
			r.forceRange(from, to, fSick)
		case it.kind == itNum && r.tellsDegrees(k):
			from, to := r.degreesToday(k)
			r.forceRange(from, to, fWeather)
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
		case it.is(sPay) && r.listOfSpending(k) > k:
			r.forceRange(k, r.listOfSpending(k), fSpend)
		case it.unit == unitBatch && (it.kind == itWord || it.kind == itQty && it.v == 1) && r.tellsBatch(k):
			r.forceRange(r.sentenceStart(k), r.sentenceEnd(k), fRecipe)
		case it.is(sNote) && (r.noteFormal(k) || r.notesFacts(k)):
			it.sense.drop(sNote)
			it.used = true
		case it.is(sNote) && (it.gap >= gapComma || k == 0 || r.fillersBefore(k)) && it.pig < 0:
			r.forceRange(k, r.noteEnd(k), fNote)
		case r.questionStart(k) && r.reminderAhead(k) >= 0:
			r.forceRange(r.reminderAhead(k), r.sentenceEnd(k), fRemind)
		case r.questionStart(k):
			end := r.sentenceEnd(k)
			r.forceRange(k, end, fAsk)
		}
	}
	r.forceAsked()
	r.askedOfMore()
}

// noteFormal says that "note that" is but a formal way to begin a report.
func (r *reader) noteFormal(k int) bool {
	if !strings.HasPrefix(r.items[k].s, "note") || !r.reports(k+1) {
		return false
	}
	for n := k - 1; n >= 0 && n >= k-2; n-- {
		if r.items[n].s == "kindly" || r.items[n].s == "please" {
			return true
		}
	}
	return r.items[k].s == "note that" && k+1 < len(r.items) && (r.items[k+1].s == "the" || r.items[k+1].pig >= 0)
}

func (r *reader) tellsDegrees(k int) bool {
	from, to := r.degreesToday(k)
	return to > from
}

// degreesToday says that the clause of item k tells how hot it is, by the day or
// a word of the weather right beside a bare number: "94 today", "hot 99", "they
// hit 90". It gives the items that tell it.
func (r *reader) degreesToday(k int) (from, to int) {
	it := &r.items[k]
	if it.soft || it.ord || it.rng || it.plus || k+1 < len(r.items) && r.items[k+1].unit != 0 && r.items[k+1].gap == gapNone && r.items[k+1].kind == itWord && r.items[k+1].unit.dim() != temperature {
		return 0, 0
	}
	low, high := 60.0, 118.0
	if r.units == model.Metric {
		low, high = 10, 45
	}
	if it.v < low || it.v > high {
		return 0, 0
	}
	lo, hi := r.stretch(k)
	for n := lo; n < hi; n++ {
		if x := &r.items[n]; x.pig >= 0 || x.kind == itThing || x.label || x.isAny(setOf(sFeeder, sFeed, sBarrel, sFill, sPour, sGirth, sTape, sWeigh, sWorm, sFence, sTarget, sPigs, sMixed, sPay)) {
			return 0, 0
		}
	}
	next := &item{gap: gapStop}
	if k+1 < len(r.items) {
		next = &r.items[k+1]
	}
	today := next.kind == itDay && next.gap == gapNone && next.day.form == dayOffset && next.day.a == 0
	switch {
	case today && (k == 0 || it.gap >= gapAnd) && (k+2 >= len(r.items) || r.items[k+2].gap >= gapAnd || r.items[k+2].isAny(setOf(sLow, sHigh, sHumid))):
		return k, hi
	case k > 0 && it.gap == gapNone && r.items[k-1].is(sWeather) && r.items[k-1].kind == itWord && r.items[k-1].s != "outside":
		return k - 1, k + 1
	case k > 1 && it.gap == gapNone && r.items[k-2].s == "hot" && r.items[k-1].gap == gapNone && r.items[k-1].is(sFiller):
		return k - 2, k + 1
	case next.gap == gapNone && (next.is(sWeather) && strings.HasPrefix(next.s, "in the ") || next.s == "outside" || next.s == "out there" || next.s == "out here" || next.s == "degrees out" || next.s == "out" && (k+2 >= len(r.items) || r.items[k+2].gap >= gapAnd || r.items[k+2].is(sHere))):
		return k, k + 2
	}
	return 0, 0
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
