package reading

import (
	"strings"

	"troughbell/model"
)

// veto is one reason to take back what a frame yielded: what it keeps out, when it
// holds, and what follows. The first that holds of a frame is carried out.
type veto struct {
	name  string // what it keeps out, as it might be said
	holds func(r *reader, s span, from int) bool
	then  func(r *reader, s span, from int)
}

// drop takes back what a span yielded without a word.
func drop(r *reader, s span, from int) { r.takeBack(s, from) }

// dropAs takes back what a span yielded and says why.
func dropAs(reason string) func(*reader, span, int) {
	return func(r *reader, s span, from int) {
		r.takeBack(s, from)
		r.none(reason, s)
	}
}

// askWhether asks whether what a span yielded is meant.
func askWhether(r *reader, s span, from int) { r.confirm(s, from) }

// vetoes are the reasons of each frame, in their order.
var vetoes = [numFrames][]veto{
	fUnits: {
		{"should save us some work", (*reader).unitsInPassing, drop},
	},
	fSetPen: {
		{"they're in it", (*reader).penOfNoName, dropPenOfNoName},
		{"they're in the garden", (*reader).penInPassing, drop},
	},
	fSetFeeder: {
		{"hazel in the feeder again", (*reader).feederInPassing, drop},
	},
	fSetBarrel: {
		{"the barrel by the gate looks good today", (*reader).barrelInPassing, drop},
		{"replaced 2 nipples on blue", (*reader).partsMended, drop},
	},
	fArrive: {
		{"the pigs i moved in the pasture", (*reader).movedIntoPen, moveInstead},
		{"they came running", (*reader).nobodyCame, drop},
	},
	fBooked: {
		{"chore day changed to sunday", (*reader).choresNotButcher, choresInstead},
		{"thinking of calling the butcher for october", func(r *reader, s span, _ int) bool { return r.onlyIdea(s) }, dropAs(NonePlan)},
		{"reminder to call the butcher sept 7", (*reader).toCall, dropAs(NonePlan)},
		{"butcher could take them oct 4", (*reader).dateOffered, askWhether},
		{"butcher is closed that week", func(r *reader, s span, _ int) bool { return r.closedThen(s) }, drop},
	},
	fAway: {
		{"3 days until the fair", func(r *reader, s span, _ int) bool { return r.daysUntil(s) }, drop},
		{"we might go camping Aug 3-6", (*reader).awaySupposed, dropAs(NonePlan)},
	},
	fCurrency: {
		{"found a dollar", (*reader).moneyFound, drop},
	},
	fSpend: {
		{"the neighbor paid 40 for straw", func(r *reader, s span, _ int) bool { return r.strangersMoney(s) }, drop},
		{"made 12 loaves", (*reader).madeThings, drop},
		{"the younger pigs received their fenbendazole", (*reader).drugReceived, drop},
		{"corn is 1400, too much, I did not buy", func(r *reader, s span, _ int) bool { return r.refused(s) }, dropAs(NoneNegation)},
		{"the butcher charges 80 per pig", func(r *reader, s span, _ int) bool { return r.asksMoney(s) }, dropAs(NoneHearsay)},
		{"straw goes for 8 a bale these days", func(r *reader, s span, _ int) bool { return r.goingRate(s) }, dropAs(NoneHearsay)},
	},
	fWallow: {
		{"moved the wallow", (*reader).wallowMoved, drop},
		{"they're in the wallow", func(r *reader, s span, _ int) bool { return r.inWallow(s) }, drop},
	},
	fStock: {
		{"bought 2 more pigs at the auction", func(r *reader, s span, _ int) bool { return r.headsBought(s) }, arriveInstead},
		{"12 pigs left", func(r *reader, s span, _ int) bool { return r.countedHerd(s) }, drop},
		{"bought chicken feed", func(r *reader, s span, _ int) bool { return r.forOthers(s) }, dropAs(NoneForeign)},
		{"corn is 1400, too much, I did not buy", func(r *reader, s span, _ int) bool { return r.refused(s) }, dropAs(NoneNegation)},
		{"took an hour and a bucket of corn", (*reader).goodsInPassing, drop},
		{"the corn looks good", (*reader).goodsWithoutAmount, drop},
		{"93 here, 85 in the barn", (*reader).numberOfNothing, drop},
	},
	fWeigh: {
		{"Pickle girth 38, of pigs without names", (*reader).byNameUntold, askNames},
		{"gave Brick and the gang 60 pounds", (*reader).fedNotWeighed, askWhether},
	},
	fSize: {
		{"a 50 lb bag of mineral, 38 bucks", (*reader).pricedBag, boughtInstead},
		{"sold two bags to my cousin for 30", (*reader).sizeOfPrice, drop},
	},
	fSnooze: {
		{"90 tomorrow", (*reader).valueToCome, dropAs(NoneFuture)},
		{"tomorrow comes the vet for emil", (*reader).laterInPassing, drop},
	},
	fDone: {
		{"we were done with the hay by noon", (*reader).doneInPassing, drop},
		{"if 503 was 280 we'd be done already", (*reader).supposedDone, drop},
	},
	fAsk: {
		{"no weights this week", func(r *reader, s span, _ int) bool { return r.noneOfIt(s) }, drop},
		{"got the weights back from my friend", (*reader).topicInPassing, drop},
	},
	fWater: {
		{"carried 4 buckets of water to blue", (*reader).waterByBucket, askWhether},
		{"they drink 20 gallons a day", func(r *reader, s span, _ int) bool { return r.habit(s) }, drop},
		{"10 or 15 gallons in the tank", func(r *reader, s span, _ int) bool { return r.eitherAmount(s) }, askWhether},
		{"the barrel is full of leaves", (*reader).fullOfOther, drop},
		{"one of em chewed the nipple off, losing water", (*reader).waterLost, noteInstead},
	},
	fFeed: {
		{"a bag of chicken pellets in the pig feeder", (*reader).strangeFeedIn, askWhether},
		{"they eat 30 lb a day", func(r *reader, s span, _ int) bool { return r.habit(s) }, drop},
		{"pen 5 is 120x120 ft, empty", (*reader).emptySetting, drop},
		{"fed the chickens, before any pig came", (*reader).nobodyToFeed, drop},
		{"freezer is full", (*reader).otherFeed, drop},
		{"2 bags still sitting in the truck", (*reader).lyingElsewhere, drop},
		{"the hopper is full of wasps", (*reader).fullOfOther, drop},
		{"topped it off", (*reader).filledUntold, askFeedOrWater},
		{"3 or 4 bags", (*reader).soManyOr, askSoManyOr},
		{"poured 100 or 150 lb in the feeder", func(r *reader, s span, _ int) bool { return r.eitherAmount(s) }, askWhether},
		{"moss is 161 and the hopper is half", func(r *reader, s span, _ int) bool { return r.weightOfNamed(s) >= 0 }, weighApart},
		{"Brick stood on the platform, 91 pounds", (*reader).onThePlatform, weighInstead},
	},
	fZone: {
		{"from now on", func(r *reader, s span, _ int) bool {
			return r.c.Herd.Zone != "" && !r.has(s, sZone) && r.otherWords(s) > 3
		}, drop},
	},
	fHerd: {
		{"all eat good", (*reader).herdUnnamed, drop},
	},
	fTarget: {
		{"target 200 for the lot", (*reader).pricedTarget, drop},
		{"if I raise the target to 270", (*reader).targetSupposed, drop},
	},
	fChore: {
		{"4 more bags. 9pm last night", (*reader).hourPast, drop},
		{"my wife will do chores next weekend", (*reader).choresOnce, drop},
		{"Saturday chores: ...", func(r *reader, s span, _ int) bool {
			return r.c.Herd.Chore.Stated && (r.choreHeading(s) || len(r.items) > 8 && !r.saysChange(s))
		}, drop},
	},
	fMove: {
		{"moved the trailer to the hill", func(r *reader, s span, _ int) bool { return r.force[s.i] == 0 && r.saysOther(s) }, drop},
		{"opened the gate so they can go to the hill", func(r *reader, s span, _ int) bool { return r.force[s.i] == 0 && r.soTheyCan(s) }, dropAs(NonePlan)},
		{"mowed by the hill pen", func(r *reader, s span, _ int) bool { return r.force[s.i] == 0 && r.mentioned(s) }, drop},
		{"Pear pen: ...", func(r *reader, s span, _ int) bool { return r.penHeading(s) }, drop},
		{"found a snake by the hill", (*reader).penOnlyNamed, drop},
		{"garden on friday maybe", (*reader).weekdayAhead, dropAs(NonePlan)},
		{"garden friday", (*reader).dayUntold, askWhether},
	},
	fWeather: {
		{"93 forecast", func(r *reader, s span, _ int) bool {
			return r.quoteHas(span{0, r.clauseFrom(s.i), r.clauseEnd(s.j - 1)}, "forecast", "forecasted", "predicted", "expected")
		}, dropAs(NoneFuture)},
		{"turned 62 today, knees feel like 80", (*reader).numbersOfOurs, drop},
		{"turned 41 today", (*reader).turnsAge, drop},
		{"100 percent done with this heat", (*reader).percentOfNothing, drop},
	},
	fMute: {
		{"no more help with the chores", func(r *reader, s span, _ int) bool {
			return r.otherWords(s) > 4 && !r.has(s, sTell) && !r.has(s, sRemind)
		}, drop},
	},
	fDo:   {{"the truck wouldn't start so I was late", (*reader).wishInPassing, drop}},
	fHelp: {{"could use some help with the hay", (*reader).wishInPassing, drop}},
	fGone: {
		{"the clover died in the drought", func(r *reader, s span, _ int) bool { return r.nameOfPlant(s) }, askWhether},
		{"gave pepper to the neighbors", (*reader).awayUntold, askWhether},
	},
	fSick: {
		{"pickle is limping, of pigs without names", (*reader).byNameUntold, askNames},
		{"nobody is sick", func(r *reader, s span, _ int) bool { return r.nobodySick(s) }, drop},
	},
	fAlarm: {
		{"not out of feed yet", func(r *reader, s span, _ int) bool { return r.feedEnough(s) }, drop},
		{"no trouble with the gate", func(r *reader, s span, _ int) bool { return r.noTrouble(s) }, dropAs(NoneNegation)},
		{"no pigs out", func(r *reader, s span, _ int) bool { return r.nobodyOut(s) }, dropAs(NoneNegation)},
		{"caught a rat", (*reader).nothingWasOut, drop},
	},
	fDrug: {{"wormed pickle, of pigs without names", (*reader).byNameUntold, askNames}},
	fFence: {
		{"the fence guy said 5", func(r *reader, s span, from int) bool { return r.fenceAside(s, from) || r.misheard(s) }, askWhether},
	},
}

// herdUnnamed says that no word of naming stands beside what would be the new name of
// a herd that lives already.
func (r *reader) herdUnnamed(s span, _ int) bool {
	if len(r.c.Herd.Animals) == 0 {
		return false
	}
	return !saysAny(r.said(span{0, r.sentenceStart(s.i), r.sentenceEnd(s.j - 1)}), namingWords)
}

var namingWords = phrasesOf("called, call, calling, named, name, names, rename, renamed, herd, herd's, farm, farm's, outfit")

// targetSupposed says that a target is but asked about or supposed.
func (r *reader) targetSupposed(s span, _ int) bool {
	said := r.said(span{0, r.sentenceStart(s.i), r.sentenceEnd(s.j - 1)})
	return strings.Contains(said, " if ") && saysAny(said, asksThen) || r.asked(s) && saysAny(said, asksThen)
}

// pricedTarget says that the number is what the pigs cost, by the words right behind it.
func (r *reader) pricedTarget(s span, _ int) bool {
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.kind == itNum && !it.soft && k+1 < len(r.items) && r.items[k+1].gap == gapNone {
			return saysAny(r.said(span{0, k + 1, min(k+4, r.clauseEnd(k))}), pricedWords)
		}
	}
	return false
}

var asksThen = phrasesOf("does that, does it, will that, will they, would that, would it, would they, how much, how long, when, what, how many, is that, do they, do we, do i")

// hourPast says that the hour of a setting is that of something done: no word of a
// nudge or a chore day stands in its sentence, and a day gone by does.
func (r *reader) hourPast(s span, _ int) bool {
	from, to := r.sentenceStart(s.i), r.sentenceEnd(s.j-1)
	if r.has(span{0, from, to}, sChore) || r.has(span{0, from, to}, sRemind) || r.has(span{0, from, to}, sTell) {
		return false
	}
	return saysAny(r.said(span{0, from, to}), pastDays)
}

var pastDays = phrasesOf("last night, yesterday, this morning, last evening, the other day, earlier, ago, just now")

// penOfNoName says that a small word was taken for the name of a pen.
func (r *reader) penOfNoName(_ span, from int) bool {
	for _, e := range r.out[from:] {
		if smallPen(e) {
			return true
		}
	}
	return false
}

func smallPen(e Entry) bool {
	f, ok := e.Act.(Fact)
	if !ok {
		return false
	}
	set, ok := f.Fact.(model.Setting)
	return ok && set.Key == model.SetPen && set.Thing != nil && noPenName[strings.ToLower(set.Thing.Name)]
}

func dropPenOfNoName(r *reader, _ span, from int) {
	kept := r.out[:from]
	for _, e := range r.out[from:] {
		if !smallPen(e) {
			kept = append(kept, e)
		}
	}
	r.out = kept
}

var noPenName = setOfWords(split("it, now, there, here, them, they, that, this, one, btw, too, also, again, so, and, yet, today, is, with, for"))

// madeThings says that but a "made" and a bare number speak for money: "made plum jam,
// eleven jars".
func (r *reader) madeThings(s span, _ int) bool {
	return r.quoteHas(s, "made") && r.firstQty(s, money) < 0 && !r.has(s, sPay) && !r.has(s, sSold)
}

// toCall says that the butcher is still to be called, so that a day is when to do so.
func (r *reader) toCall(s span, _ int) bool {
	said := r.said(span{0, r.sentenceStart(s.i), r.sentenceEnd(s.j - 1)})
	return saysAny(said, toCallWords) && !saysAny(said, callDone)
}

var callDone = phrasesOf("booked, appointment, confirmed, is set, date is, scheduled, reserved, said, has us, got us, gave us")

var toCallWords = phrasesOf("call the butcher, call butcher, phone the butcher, ring the butcher, text the butcher, email the butcher, ask the butcher, contact the butcher, talk to the butcher, call the locker, call the slaughterhouse, call the abattoir, ring up the butcher")

func (r *reader) unitsInPassing(s span, _ int) bool {
	return len(r.c.Herd.Animals) > 0 && !r.has(s, sUnits) && !r.saysUnits(s) && (r.otherWords(s) > 0 || len(r.out) > 1)
}

func (r *reader) penInPassing(s span, _ int) bool {
	return len(r.c.Herd.Animals) > 0 && !r.has(s, sPen) && !r.hasThing(s) &&
		(r.sizeless(s) || len(r.c.Herd.Pens) > 0 && !r.sentenceNames(r.clauseFrom(s.i), s.j, penNews) && !r.items[s.i].capital && !r.has(s, sInUse))
}

func (r *reader) feederInPassing(s span, _ int) bool {
	return len(r.c.Herd.Feeders) > 0 && r.thingInPassing(s)
}

func (r *reader) barrelInPassing(s span, _ int) bool {
	return len(r.c.Herd.Barrels) > 0 && r.thingInPassing(s)
}

// thingInPassing says that a span neither sizes a thing nor calls it new, or
// tells of each thing by its name.
func (r *reader) thingInPassing(s span) bool {
	return r.eachNamed(s.i, s.j) || !r.has(s, sHolds) && !r.quoteHas(s, "new", "another", "added", "add", "bought", "got", "extra", "second", "third") && r.otherWords(s) > 3
}

func (r *reader) movedIntoPen(s span, _ int) bool {
	return r.alive > 0 && r.penBehind(s) > 0 && r.quoteHas(s, "moved in", "moved")
}

func moveInstead(r *reader, s span, from int) {
	r.out = r.out[:from]
	r.fillMove(span{fMove, s.i, r.penBehind(s) + 1})
}

func (r *reader) nobodyCame(s span, from int) bool {
	return r.alive > 0 && (!r.cameOutright(s) || r.allOurs(from))
}

func (r *reader) wallowMoved(s span, _ int) bool {
	return r.has(s, sMove) && !r.has(s, sFill) && !r.has(s, sHose) && r.amountless(s.i, s.j)
}

// goodsInPassing says that the clause of a span measures something else with the
// goods: no buying, no shed, no money.
func (r *reader) goodsInPassing(s span, _ int) bool {
	g := r.goodsIn(r.clauseFrom(s.i), r.clauseEnd(s.j-1))
	return g.other && !g.buying && !g.shed && !g.money && !g.few
}

// goodsWithoutAmount says that goods were only named, or that a shed was and the
// sentence tells of the heat in it.
func (r *reader) goodsWithoutAmount(s span, from int) bool {
	return r.bareGoods(s, from) || r.has(s, sShed) && r.firstQty(s, mass) < 0 && r.firstQty(s, vessel) < 0 && r.quoteHas(span{0, r.sentenceStart(s.i), r.sentenceEnd(s.j - 1)}, "temperature", "temp", "thermometer", "degrees")
}

func (r *reader) pricedBag(s span, _ int) bool {
	return (r.firstMoney(s) >= 0 || r.has(s, sIngredient)) && len(r.c.Herd.Feeders) > 0 && !r.quoteHas(s, "is", "are", "=", "was", "holds", "hold", "weighs", "weigh")
}

func boughtInstead(r *reader, s span, from int) {
	k := r.firstMoney(s)
	r.out = r.out[:from]
	if k < 0 { // "4 bags corn (60)"
		for n := s.i; n < s.j; n++ {
			delete(r.setUp.sizes, r.items[n].unit.name())
		}
		r.fillStock(s)
		return
	}
	r.fillStock(span{fStock, s.i, k + 1})
	r.skip = k
}

// valueToCome says that a number stands right before the word of putting off, so
// that it is what a day to come will bring.
func (r *reader) valueToCome(s span, _ int) bool {
	return s.i > 0 && r.items[s.i].gap < gapAnd && r.items[s.i-1].kind == itNum
}

// laterInPassing says that a word of putting off answers no nudge.
func (r *reader) laterInPassing(s span, _ int) bool {
	if r.tellAgainIn(s) {
		return false
	}
	return r.c.LastNudge == nil && (r.otherWords(s) > 2 || r.namesOurs(s) || r.tradeBeside(s)) || r.has(s, sSnooze) && r.toldOther(s)
}

func (r *reader) doneInPassing(s span, _ int) bool {
	return r.c.LastNudge == nil && r.otherWords(s) > 2
}

// topicInPassing says that a topic of questions stands in a longer sentence that
// is none.
func (r *reader) topicInPassing(s span, from int) bool {
	return r.force[s.i] == 0 && !r.items[s.i].quest && (r.otherWords(s) > 3 || r.supposed(s) || r.onlyNamed(s, from))
}

func (r *reader) emptySetting(s span, from int) bool {
	return s.j == s.i+1 && r.items[s.i].is(sEmpty) && from > 0 && isSetting(r.out[from-1])
}

func (r *reader) nobodyToFeed(span, int) bool {
	return len(r.c.Herd.Animals) == 0 && len(r.c.Herd.Feeders) == 0 && len(r.setUp.pens) == 0 && !r.arrived()
}

// otherFeed says that what a span fills is no feeder of the pigs, or that it was
// no feeding.
func (r *reader) otherFeed(s span, from int) bool {
	return r.headsLeft(s) || r.quoteHas(s, "freezer", "in the freezer", "the freezer") || r.othersFeed(s) || r.handful(s, from) || r.otherGoods(s) || r.noFeedAtAll(s)
}

// penOnlyNamed says that no word tells of a move and much else stands beside the
// pen.
func (r *reader) penOnlyNamed(s span, _ int) bool {
	return r.force[s.i] == 0 && !r.has(s, sMove) && !r.has(s, sInUse) && (r.otherWords(s) > 4 || r.strangeWords(s) > 0 && !r.saysWho(s))
}

func (r *reader) numbersOfOurs(s span, _ int) bool {
	return r.force[s.i] == 0 && r.strangeWords(s) > 1 && !r.has(s, sWeather) && !r.has(s, sHigh) && !r.has(s, sLow) && !r.has(s, sHumid)
}

func (r *reader) wishInPassing(s span, _ int) bool { return r.otherWords(s) > 3 && !r.asked(s) }

// nothingWasOut says that a word for being back in answers no alarm.
func (r *reader) nothingWasOut(s span, _ int) bool {
	k := r.find(s, sBackIn)
	return k >= 0 && (r.items[k].s == "pigs in" && r.has(span{s.frame, s.i, r.sentenceEnd(s.j - 1)}, sSick) || r.items[k].s == "caught" || r.items[k].s == "back in" || r.items[k].s == "is in") && r.openAlarm(model.AlarmOut) == nil
}

// choresNotButcher says that the sentence of a span speaks of chores and of no
// butcher.
func (r *reader) choresNotButcher(s span, _ int) bool {
	all := span{s.frame, r.sentenceStart(s.i), r.sentenceEnd(s.j - 1)}
	return r.has(all, sChore) && !r.has(all, sButcher)
}

func choresInstead(r *reader, s span, from int) {
	r.out = r.out[:from]
	r.fillChore(span{fChore, r.sentenceStart(s.i), r.sentenceEnd(s.j - 1)})
}

func (r *reader) dateOffered(s span, from int) bool {
	_, asks := r.out[from].Act.(Clarify)
	return !asks && r.offered(s)
}

func (r *reader) moneyFound(s span, from int) bool {
	return len(r.c.Herd.Animals) > 0 && !r.has(s, sCurrency) && r.strangeWords(span{s.frame, r.clauseFrom(s.i), s.j}) > 0 || from == 0 && firstWord(r.items[0].s) == "found"
}

func arriveInstead(r *reader, s span, from int) {
	r.out = r.out[:from]
	r.fillArrive(span{fArrive, r.sentenceStart(s.i), r.sentenceEnd(s.j - 1)})
}
