package reading

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
	late(f, bAmount, 0.1, 0.7, kVessel)
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
	late(f, bAmount, 0.1, 0.7, kLength)
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
