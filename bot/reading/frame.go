package reading

// frame is a kind of thing that a text can say.
type frame uint8

const (
	fIdle frame = iota // nothing of ours
	fWeigh
	fFeed
	fWater
	fWallow
	fStock
	fMixed
	fRecipe
	fSpend
	fDrug
	fMove
	fSick
	fAlarm
	fFence
	fWeather
	fArrive
	fGone
	fBooked
	fAway
	fNote
	fRemind
	fAsk
	fDone
	fSnooze
	fUndo
	fHelp
	fDo
	fTarget
	fChore
	fQuiet
	fZone
	fUnits
	fHerd
	fCurrency
	fSetFeeder
	fSetBarrel
	fSetPen
	fSetWallow
	fSize
	fMute
	numFrames
)

// feature is what an item shows to the frames: a sense, or one of these.
type feature int

const (
	kNum feature = feature(numSenses) + iota
	kSoft
	kFew // a number that can count pigs
	kMass
	kLength
	kVolume
	kArea
	kTemp
	kDays
	kHours
	kVolt
	kPct
	kVessel
	kMoney
	kHead
	kNipples
	kPair      // 38x42 in lengths or no unit, as a tape gives
	kSides     // 50x80 ft
	kDay       // any day
	kEvery     // a habit: saturdays
	kClock     // a time
	kSlash     // 94/71
	kFrac      // half
	kPig       // a pig by name
	kGroup     // a group of pigs by name
	kFeeder    // a feeder by name
	kBarrel    // a barrel by name
	kPen       // a pen by name
	kEither    // a word for a feeder or a water barrel
	kUnitWord  // a unit without a number
	kMoneyWord // a currency without a number
	kZoneName
	kOther // a known word without a sense
	kBlank // an unknown word
	numFeatures
)

// What a frame has of its parts.
const (
	bAnchor uint8 = 1 << iota // a word that is its own
	bAmount
	bWho
	bWhen
	bThing
	bLevel
)

// vote is what a feature says for a frame, before and after the frame's own
// word has been met, and which part it gives.
type vote struct {
	before, after float32
	part          uint8
	set           bool
}

// ballots are the votes of every feature for every frame.
type ballots struct {
	of   [numFrames][numFeatures]vote
	need [numFrames][]uint8 // of each of these, one bit must be had
}

var votes = castVotes()

func castVotes() *ballots {
	b := &ballots{}
	give := func(f frame, part uint8, w float32, xs ...feature) {
		for _, x := range xs {
			b.of[f][x] = vote{w, w, part, true}
		}
	}
	late := func(f frame, part uint8, before, after float32, xs ...feature) {
		for _, x := range xs {
			b.of[f][x] = vote{before, after, part, true}
		}
	}
	word := func(f frame, part uint8, w float32, xs ...sense) {
		for _, x := range xs {
			give(f, part, w, feature(x))
		}
	}
	lateWord := func(f frame, part uint8, before, after float32, xs ...sense) {
		for _, x := range xs {
			late(f, part, before, after, feature(x))
		}
	}
	need := func(f frame, groups ...uint8) { b.need[f] = groups }

	for f := fWeigh; f < numFrames; f++ {
		give(f, bWhen, 0.3, kDay)
		give(f, bWhen, 0.2, kClock)
		word(f, 0, 0.02, sAbout, sPronoun, sNow)
		word(f, 0, 0.05, sNot, sPlan, sHearsay, sForeign, sIf)
	}
	castWeighing(give, late, word, lateWord, need)
	castFeed(give, late, word, lateWord, need)
	castEvents(give, late, word, lateWord, need)
	castHerd(give, late, word, lateWord, need)
	castTalk(give, late, word, lateWord, need)
	castSetup(give, late, word, lateWord, need)
	return b
}

type giveFunc func(f frame, part uint8, w float32, xs ...feature)
type lateFunc func(f frame, part uint8, before, after float32, xs ...feature)
type wordFunc func(f frame, part uint8, w float32, xs ...sense)
type lateWordFunc func(f frame, part uint8, before, after float32, xs ...sense)
type needFunc func(f frame, groups ...uint8)

func castWeighing(give giveFunc, late lateFunc, word wordFunc, lateWord lateWordFunc, need needFunc) {
	f := fWeigh
	word(f, bAnchor, 2.2, sGirth, sTape)
	word(f, bAnchor, 1.8, sLength)
	word(f, bAnchor, 2.0, sWeigh)
	word(f, bAnchor, 1.6, sCrate, sEmptyCrate)
	word(f, bAnchor, 0.8, sGain)
	word(f, 0, 0.2, sIs, sEach, sAt)
	give(f, bWho, 1.2, kPig)
	give(f, bWho, 0.9, kGroup)
	word(f, bWho, 0.9, sBarrow, sGilt, sBoar, sSow, sYoung, sOld, sPigs)
	word(f, bWho, 0.7, sAll, sBoth, sRest)
	word(f, bWho, 0.3, sPronoun, sBut)
	give(f, bAmount, 0.8, kNum)
	late(f, bAmount, 0.9, 1.2, kMass)
	give(f, bAmount, 1.6, kLength)
	give(f, bAmount, 2.2, kPair)
	give(f, bAmount, 0.9, kSlash)
	word(f, bAmount, -2.0, sSick)
	need(f, bAmount, bWho|bAnchor)
}

func castFeed(give giveFunc, late lateFunc, word wordFunc, lateWord lateWordFunc, need needFunc) {
	f := fFeed
	word(f, bAnchor|bLevel, 1.6, sFill)
	word(f, bAnchor, 1.3, sPour)
	word(f, bAnchor, 1.7, sFeed, sFeeder)
	lateWord(f, bLevel, 0.1, 1.4, sDone)
	word(f, bLevel, 1.6, sFull)
	word(f, bLevel, 1.0, sEmpty, sLeft)
	word(f, bAnchor, 0.9, sTook)
	word(f, 0, 0.8, sOpenBag, sPartOf)
	lateWord(f, 0, 0.2, 0.9, sLast)
	word(f, 0, 0.7, sBoth, sEach, sAll)
	give(f, bThing, 1.2, kEither)
	word(f, 0, 0.2, sLook, sIs, sMore)
	late(f, bAmount, 0.8, 0.9, kNum)
	give(f, bAmount, 1.3, kMass)
	give(f, bAmount|bAnchor, 1.6, kVessel)
	give(f, bLevel|bAmount, 1.4, kFrac, kPct)
	late(f, bAmount, 0.2, 0.7, kDays)
	give(f, bAnchor|bThing, 1.8, kFeeder)
	give(f, bAmount, 0.3, kSlash)
	word(f, 0, 0.3, sPigs)
	word(f, 0, 0.1, sIngredient)
	need(f, bAnchor|bLevel, bAmount|bLevel)

	f = fWater
	word(f, bAnchor, 3.0, sWatered, sWater)
	lateWord(f, bThing|bAnchor, 1.9, 1.2, sBarrel)
	give(f, bAnchor|bThing, 2.4, kBarrel)
	lateWord(f, bLevel, 0.5, 1.9, sFull)
	lateWord(f, bLevel, 0.5, 1.9, sEmpty)
	lateWord(f, bLevel, 0.1, 1.4, sDone)
	lateWord(f, bLevel, 0.3, 1.0, sLeft)
	lateWord(f, bLevel, 0, 1.2, sOut)
	lateWord(f, 0, 1.0, 1.7, sFill)
	lateWord(f, 0, 0.5, 0.9, sPour, sTook)
	word(f, 0, 0.9, sBoth, sAll)
	word(f, 0, 0.2, sLook, sIs, sEach, sMore)
	late(f, bAmount, 0.2, 0.7, kNum)
	give(f, bAmount, 2.0, kVolume)
	late(f, bLevel|bAmount, 0.5, 1.4, kFrac, kPct)
	late(f, bAmount, 0.2, 0.5, kVessel)
	late(f, 0, 0.2, 0.6, kDays)
	lateWord(f, 0, 0.1, 0.5, sLast)
	need(f, bAnchor)

	f = fWallow
	word(f, bAnchor, 3.2, sWallow)
	word(f, bAnchor, 2.4, sHose)
	word(f, 0, 0.8, sFill, sPour, sFull)
	lateWord(f, 0, 0.1, 0.9, sEmpty, sLook)
	lateWord(f, 0, 0, 1.4, sDone)
	word(f, 0, 0.4, sWater, sTook)
	give(f, bAmount, 1.7, kVolume)
	late(f, bAmount, 0.1, 0.8, kNum, kHours)
	need(f, bAnchor)

	f = fStock
	word(f, bAnchor, 2.2, sBuy)
	word(f, bAnchor, 2.0, sShed)
	word(f, bThing, 1.5, sIngredient)
	word(f, bThing, 1.1, sFeed)
	late(f, bAmount, 0.8, 1.3, kMass, kVessel)
	late(f, bAmount, 0.3, 0.5, kNum)
	late(f, 0, 0.9, 1.9, kMoney)
	lateWord(f, 0, 0.1, 0.4, sMore, sLeft, sEach, sOf, sPay)
	word(f, bWho, -0.5, sPigs)
	need(f, bAnchor|bThing, bAmount)

	f = fMixed
	word(f, bAnchor, 2.4, sMixed)
	late(f, bAmount, 0.2, 1.2, kNum)
	late(f, bAmount, 0.6, 1.4, kMass, kVessel)
	word(f, 0, 0.8, sFeed, sMore)
	need(f, bAnchor, bAmount)

	f = fRecipe
	word(f, bAnchor, 2.4, sRecipe)
	word(f, bThing, 1.6, sIngredient)
	late(f, bAmount, 0.2, 1.0, kNum)
	late(f, bAmount, 0.8, 1.4, kMass, kPct)
	word(f, 0, 0.2, sIs, sOf, sPer)
	need(f, bThing, bAmount, bAnchor)
}

func castEvents(give giveFunc, late lateFunc, word wordFunc, lateWord lateWordFunc, need needFunc) {
	f := fDrug
	word(f, bAnchor, 3.0, sWorm)
	word(f, bAnchor, 2.6, sProduct)
	word(f, bAnchor, 2.2, sTreat)
	word(f, bAnchor, 1.8, sWithdraw)
	lateWord(f, 0, 0, 0.9, sDone)
	lateWord(f, 0, 0.5, 0.9, sGave)
	give(f, bWho, 1.0, kPig)
	give(f, bWho, 0.8, kGroup)
	word(f, bWho, 0.8, sAll, sBoth, sRest, sBarrow, sGilt, sBoar, sSow, sPigs, sYoung, sOld, sBut)
	late(f, bAmount, 0.2, 0.8, kNum)
	late(f, bAmount, 0.3, 1.4, kDays)
	late(f, 0, 0.2, 0.5, kVolume)
	need(f, bAnchor)

	f = fMove
	word(f, bAnchor, 1.8, sMove)
	word(f, bThing, 1.4, sPen)
	give(f, bThing, 1.8, kPen)
	give(f, bWho, 0.7, kPig)
	give(f, bWho, 0.7, kGroup)
	word(f, bWho, 0.6, sAll, sBoth, sRest, sBarrow, sGilt, sPigs, sYoung, sOld, sBut, sPronoun)
	word(f, 0, 0.3, sTo, sNow, sInUse)
	late(f, 0, -0.2, 0.2, kNum)
	late(f, 0, -0.2, 0.1, kBlank)
	need(f, bAnchor|bThing, bThing|bAnchor)

	f = fSick
	word(f, bAnchor, 2.0, sSick)
	word(f, bAnchor, 1.9, sWell)
	give(f, bWho, 1.1, kPig)
	give(f, bWho, 0.9, kGroup)
	word(f, bWho, 0.7, sAll, sBoth, sRest, sBarrow, sGilt, sPigs, sYoung, sOld, sBut, sPronoun)
	late(f, 0, 0, 0.15, kBlank, kOther)
	late(f, 0, -0.1, 0.1, kNum, kFrac)
	need(f, bAnchor, bWho|bAnchor)

	f = fAlarm
	word(f, bAnchor, 3.6, sNoWater, sNoFeed)
	word(f, bLevel, 1.5, sOut, sDown, sBackIn)
	give(f, bWho, 1.0, kPig)
	word(f, bWho, 1.2, sPigs, sBarrow, sGilt, sAll, sBoth, sYoung, sOld)
	word(f, 0, 0.2, sPronoun)
	word(f, bThing, 1.0, sFence)
	give(f, bWho, 0.4, kFew, kSoft)
	need(f, bAnchor|bLevel, bAnchor|bWho|bThing)

	f = fFence
	word(f, bAnchor, 2.4, sFence)
	give(f, bAmount|bAnchor, 3.0, kVolt)
	late(f, bAmount, 0.1, 1.2, kNum)
	lateWord(f, bLevel, 0.2, 1.2, sDead)
	lateWord(f, 0, 0, 0.7, sWeather, sDown, sOut)
	word(f, 0, 0.2, sIs)
	need(f, bAnchor, bAmount|bLevel)

	f = fWeather
	give(f, bAmount|bAnchor, 2.6, kTemp)
	give(f, bAmount|bAnchor, 1.0, kSlash)
	word(f, bAnchor, 1.3, sWeather)
	word(f, bAnchor, 1.2, sHigh, sLow)
	word(f, bAnchor, 2.0, sHumid)
	give(f, bAmount, 0.5, kNum)
	give(f, bAmount, 0.8, kPct)
	word(f, bThing, 0.5, sHere)
	give(f, bWhen, 0.5, kDay)
	need(f, bAmount, bAnchor|bWhen|bThing)
}

func castHerd(give giveFunc, late lateFunc, word wordFunc, lateWord lateWordFunc, need needFunc) {
	f := fArrive
	word(f, bAnchor, 1.9, sArrive)
	word(f, bWho, 1.3, sPigs)
	give(f, bWho|bAmount, 1.6, kHead)
	word(f, bWho, 1.0, sBarrow, sGilt, sBoar, sSow)
	word(f, bWho, 0.5, sYoung, sOld)
	lateWord(f, bThing|bAmount, 0.9, 1.6, sNamed)
	word(f, bAnchor, 1.2, sBorn, sAge)
	give(f, bAmount, 0.8, kNum)
	late(f, 0, 0.9, 1.4, kMass)
	late(f, 0, 0.2, 0.9, kDays)
	late(f, 0, 0.0, 0.35, kBlank)
	late(f, 0, -0.1, 0.25, kOther)
	give(f, bWho, 0.3, kPig)
	word(f, 0, 0.4, sEach)
	word(f, 0, 0.2, sAll, sIs, sAbout)
	need(f, bWho|bThing, bAmount, bAnchor|bAmount)

	f = fGone
	word(f, bAnchor, 2.6, sDied, sSold, sLost)
	word(f, bAnchor, 1.9, sSlaughtered)
	word(f, bAnchor, 2.4, sHung)
	word(f, bAnchor, 1.5, sPackaged)
	late(f, bWho, 1.0, 1.4, kPig)
	give(f, bWho, 0.8, kGroup)
	word(f, bWho, 0.8, sAll, sBoth, sRest, sBarrow, sGilt, sPigs, sYoung, sOld, sBut)
	give(f, bWho, 0.5, kSoft)
	word(f, 0, 0.6, sTook)
	late(f, bAmount, 0.4, 0.9, kNum)
	give(f, bAmount, 0.9, kMass)
	give(f, 0, 0.7, kMoney)
	word(f, 0, 0.4, sTotal, sButcher)
	need(f, bAnchor)

	f = fBooked
	word(f, bAnchor, 2.4, sButcher)
	word(f, bAnchor, 1.4, sBook)
	word(f, bAnchor|bThing, 1.2, sCancel)
	give(f, bWhen, 1.2, kDay)
	give(f, 0, 0.5, kClock)
	give(f, 0, 0.7, kNum, kHead)
	word(f, 0, 0.9, sPigs, sAll)
	give(f, 0, 0.3, kPig)
	need(f, bAnchor, bWhen|bThing)

	f = fAway
	word(f, bAnchor, 2.0, sAway)
	give(f, bWhen, 1.2, kDay)
	late(f, bWhen, 0.1, 0.8, kDays)
	lateWord(f, 0, 0.1, 0.4, sFrom, sTo)
	late(f, 0, 0, 0.3, kNum)
	need(f, bAnchor, bWhen)

	f = fSpend
	give(f, bAmount|bAnchor, 1.9, kMoney)
	word(f, bAnchor, 2.8, sPay)
	word(f, bAnchor, 2.0, sReceived)
	give(f, bAmount, 0.7, kNum)
	late(f, 0, 0.05, 0.2, kBlank, kOther, kVessel)
	lateWord(f, 0, 0.1, 0.4, sIngredient, sFeed, sButcher, sFence, sWorm, sTreat, sWater, sFeeder, sOf, sPigs, sSnooze, sPackaged, sTape, sMove, sPen, sBook, sRecipe, sSick, sWeather)
	need(f, bAnchor, bAmount)
}

func castTalk(give giveFunc, late lateFunc, word wordFunc, lateWord lateWordFunc, need needFunc) {
	word(fRemind, bAnchor, 4, sRemind)
	late(fRemind, 0, 0, 0.5, kBlank, kOther, kNum, kPig, kPen, kFeeder, kBarrel)
	need(fRemind, bAnchor)
	word(fNote, bAnchor, 3, sNote)
	late(fNote, 0, 0, 0.5, kBlank, kOther, kNum, kPig, kPen, kFeeder, kBarrel)
	need(fNote, bAnchor)
	word(fAsk, bAnchor, 1.4, sTopic)
	word(fAsk, bAnchor, 2.5, sAskSure)
	word(fAsk, 0, 0.6, sAsk)
	give(fAsk, 0, 0.5, kPig)
	word(fAsk, 0, 0.4, sPigs, sAll, sLeft, sLast, sFeed, sWater, sButcher, sTarget, sWeigh, sPen, sFeeder, sBarrel, sWallow, sNow)
	give(fAsk, 0, 0.3, kFeeder, kBarrel, kPen)
	late(fAsk, 0, -0.6, 0.3, kNum, kMass)
	need(fAsk, bAnchor)
	word(fDone, bAnchor, 2.2, sDone)
	need(fDone, bAnchor)
	word(fSnooze, bAnchor, 1.6, sSnooze)
	word(fSnooze, bAnchor, 1.8, sStop)
	late(fSnooze, 0, 0, 0.8, kHours, kDay)
	need(fSnooze, bAnchor)
	word(fUndo, bAnchor, 3.5, sUndo)
	late(fUndo, 0, -0.1, 0.3, kBlank, kOther)
	need(fUndo, bAnchor)
	word(fHelp, bAnchor, 2.6, sHelp)
	need(fHelp, bAnchor)
	word(fDo, bAnchor, 2.4, sDo)
	need(fDo, bAnchor)
	word(fIdle, 0, 0.6, sThanks)
}

func castSetup(give giveFunc, late lateFunc, word wordFunc, lateWord lateWordFunc, need needFunc) {
	f := fTarget
	word(f, bAnchor, 2.6, sTarget)
	give(f, bAmount, 1.2, kMass)
	give(f, bAmount, 0.9, kNum)
	word(f, 0, 0.4, sButcher, sWeigh, sIs, sTo)
	need(f, bAnchor, bAmount)

	f = fChore
	word(f, bAnchor, 2.6, sChore)
	word(f, bAnchor, 1.6, sTell)
	give(f, bWhen, 0.8, kDay)
	give(f, bWhen|bAnchor, 1.2, kEvery)
	give(f, bWhen|bThing, 0.9, kClock)
	late(f, bWhen, 0.05, 0.5, kNum)
	word(f, 0, 0.3, sOn, sAt)
	need(f, bAnchor|bThing, bWhen)

	f = fQuiet
	word(f, bAnchor, 3, sQuiet)
	give(f, bWhen, 1.0, kClock)
	late(f, bWhen, 0, 0.6, kNum)
	lateWord(f, 0, 0, 0.4, sFrom, sTo, sHigh, sLow, sNightly)
	need(f, bAnchor, bWhen)

	f = fZone
	word(f, bAnchor, 1.3, sZone)
	give(f, bAnchor|bThing, 1.8, kZoneName)
	give(f, bThing, 0.6, kClock)
	word(f, bAnchor, 1.0, sHere)
	need(f, bAnchor, bThing)

	f = fUnits
	word(f, bAnchor, 1.5, sUS, sMetric)
	word(f, bThing, 1.2, sUnits)
	give(f, bAnchor, 0.6, kUnitWord)
	need(f, bAnchor)

	f = fHerd
	word(f, bAnchor, 1.8, sHerd)
	word(f, bThing, 0.8, sNamed)
	late(f, bThing, 0, 0.4, kBlank, kOther)
	need(f, bAnchor, bThing)

	f = fCurrency
	word(f, bThing, 2.4, sCurrency)
	give(f, bAnchor, 0.9, kMoneyWord)
	need(f, bAnchor)

	f = fSetFeeder
	word(f, bAnchor, 1.9, sFeeder)
	give(f, bAnchor, 1.6, kFeeder)
	word(f, 0, 1.2, sHolds)
	lateWord(f, 0, 0.5, 1.4, sNamed)
	late(f, bAmount, 0.6, 1.3, kMass)
	late(f, bAmount, 0.4, 0.8, kVolume)
	give(f, bAmount, 0.4, kNum)
	word(f, bThing, 0.5, sBarrel, sFeed)
	word(f, 0, 0.5, sEach)
	word(f, 0, 0.05, sBoth)
	late(f, 0, 0, 0.2, kBlank, kOther)
	need(f, bAnchor, bAmount)

	f = fSetBarrel
	word(f, bAnchor, 1.9, sBarrel)
	word(f, bAnchor, 1.9, sWater)
	give(f, bAnchor, 1.6, kBarrel)
	word(f, 0, 1.2, sHolds)
	lateWord(f, 0, 0.5, 1.4, sNamed)
	late(f, bAmount, 1.0, 1.4, kVolume)
	give(f, bAmount, 3, kNipples)
	give(f, bAmount, 0.4, kNum)
	word(f, 0, 0.5, sEach)
	word(f, 0, 0.05, sBoth)
	late(f, 0, 0, 0.2, kBlank, kOther)
	need(f, bAnchor, bAmount)

	f = fSetPen
	word(f, bAnchor, 2.0, sPen)
	give(f, bAnchor, 1.6, kPen)
	give(f, bAmount, 2.2, kSides, kArea)
	lateWord(f, 0, 0.5, 1.2, sNamed)
	word(f, bAmount, 1.4, sInUse)
	give(f, 0, 0.4, kNum)
	late(f, bThing, 0.05, 0.2, kBlank, kOther)
	word(f, 0, 0.4, sEach)
	need(f, bAnchor|bThing, bAmount)

	f = fSetWallow
	word(f, bAnchor, 2.8, sWallow)
	give(f, bAmount, 2.0, kSides, kArea)
	word(f, 0, 1.2, sDeep)
	late(f, 0, 0.1, 0.7, kLength)
	need(f, bAnchor, bAmount)

	f = fSize
	give(f, bAnchor, 1.6, kVessel)
	give(f, bAmount, 1.3, kMass)
	word(f, 0, 1.6, sHolds)
	lateWord(f, 0, 0.2, 0.8, sIs)
	late(f, bAmount, 0.2, 0.6, kNum)
	word(f, 0, 0.6, sFeed, sIngredient, sFull)
	need(f, bAnchor, bAmount)

	f = fMute
	word(f, bAnchor, 3, sMute)
	late(f, 0, 0, 0.4, kBlank, kOther)
	lateWord(f, 0, 0, 3.2, sWorm, sWater, sFeed, sFill, sMove, sPen, sButcher, sTape, sWeigh, sWallow, sWeather, sRecipe, sRemind, sTell)
	need(f, bAnchor)
}
