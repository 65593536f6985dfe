package reading

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
	case fSpill:
		r.fillSpill(s)
	case fRain:
		r.fillRain(s)
	case fProtein:
		r.fillProtein(s)
	case fSoil:
		r.fillSoil(s)
	case fExpect:
		r.fillExpect(s)
	case fDitto:
		r.fillDitto(s)
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
