package reading

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
	word(f, 0, -1.5, sGave)
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
	word(f, 0, 0.4, sEach, sMore)
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
