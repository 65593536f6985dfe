package reading

import "strings"

// Read reads one text. It never panics and never guesses: what is in doubt
// comes back as a Clarify, what is not understood in Left. There is always at
// least one entry.
func Read(c Context, text string) Reading {
	r := newReader(c, text)
	defer r.done()
	got := r.run()
	if len(r.folded) > 0 { // a list written out, in which slips have no place of their own
		unfolded(got.Entries, r.folded)
		return got
	}
	return r.readAgain(got)
}

func (r *reader) run() Reading {
	if strings.TrimSpace(r.text) == "" {
		return r.just(None{Reason: NoneEmpty})
	}
	if got, ok := r.wholeText(); ok {
		return got
	}
	r.tokenize()
	if r.unfold() {
		if r.planned {
			return r.just(None{Reason: NonePlan})
		}
		r.tokenize()
	}
	r.cutEdges()
	r.shortWords()
	r.sharedWords()
	r.beforeFour()
	r.someOnes()
	r.headsCounted()
	r.joinNames()
	r.oneNewName()
	r.newNames()
	r.rightSpelling()
	r.timesBehind()
	r.spellOut()
	r.tagNames()
	r.build()
	r.vesselsOf()
	r.otherThings()
	if len(r.items) == 0 {
		return r.just(None{Reason: NoneChatter})
	}
	if got, ok := r.answer(); ok {
		return got
	}
	if got, ok := r.whichPigs(); ok {
		return got
	}
	if got, ok := r.namedUndo(); ok {
		return got
	}
	if got, ok := r.refusedLog(); ok {
		return got
	}
	if r.todoLine() > 0 {
		return r.just(None{Reason: NonePlan})
	}
	if got, ok := r.askedOn(); ok {
		return got
	}
	if got, ok := r.toldAgain(); ok {
		return got
	}
	if got, ok := r.namesLater(); ok {
		return got
	}
	if got, ok := r.bornLater(); ok {
		return got
	}
	if got, ok := r.onlyThose(); ok {
		return got
	}
	if got, ok := r.swap(); ok {
		return got
	}
	if got, ok := r.newcomersListed(); ok {
		return got
	}
	if got, ok := r.correctedAndTold(); ok {
		return got
	}
	r.readItems()
	return r.settle()
}

func (r *reader) just(act Act) Reading {
	e := Entry{Act: act, On: r.today, To: len(r.text)}
	return Reading{Entries: []Entry{e}}
}

// longestWhole is how many bytes a text may have that is read as a whole.
const longestWhole = 160

// wholeText reads the short texts that are one wish and nothing else.
func (r *reader) wholeText() (Reading, bool) {
	if len(r.text) > longestWhole {
		return Reading{}, false
	}
	for _, read := range [...]func(*reader) (Reading, bool){
		(*reader).wholeWish, (*reader).seasonAsked, (*reader).leaving, (*reader).eveningBefore, (*reader).choresDaily, (*reader).nudgesAgain, (*reader).shopHour, (*reader).levelMidweek,
		(*reader).pictured, (*reader).place, (*reader).loaded, (*reader).home, (*reader).postponed, (*reader).shifted,
	} {
		if got, ok := read(r); ok {
			return got, true
		}
	}
	return Reading{}, false
}

// readItems finds the spans and fills them.
func (r *reader) readItems() {
	r.afterUndo()
	r.wantedWeights()
	r.shockNotAsked()
	r.asksBehindAway()
	r.centsBehind()
	r.moneyTold()
	r.strangeBags()
	r.canWait()
	r.leftAndRight()
	r.vesselTimes()
	r.bagsOfSize()
	r.relativeWhich()
	r.askedClauses()
	r.notOurs()
	r.smallLeads()
	r.meatBack()
	r.penCalled()
	r.wagers()
	r.unitTold()
	r.crateTold()
	r.asides()
	r.pensAsGoods()
	r.relayed()
	r.nothingIn()
	r.leftAsIs()
	r.noneOfKind()
	r.lineDenied()
	r.apartSentences()
	r.doingThen()
	r.readingBefore()
	r.clearDates()
	r.hurtBy()
	r.allOfThem()
	r.handwriting()
	r.lures()
	r.treesDown()
	r.itFilled()
	r.levelsApart()
	r.helpersNotPigs()
	r.pigsPresent()
	r.notInThere()
	r.morePigs()
	r.moreCame()
	r.conditions()
	r.deadThings()
	r.likened()
	r.misleadingWords()
	r.weakSignsAlone()
	r.healedSigns()
	r.fullOfItsOwn()
	r.fullInPassing()
	r.hosedOrCleaned()
	r.rattlingThings()
	r.testerDead()
	r.staysBehind()
	r.saleToCome()
	r.noSelling()
	r.tapedTwice()
	r.inThatOrder()
	r.heardWallow()
	r.wentFor()
	r.wentToWallow()
	r.eachFeeder()
	r.forTheLot()
	r.leftForMoney()
	r.givenAway()
	r.halfThePigs()
	r.bagsGotIn()
	r.waterRun()
	r.sacksNamedAhead()
	r.goodsToPigs()
	r.goneThings()
	r.cannotRaise()
	r.outOfWhat()
	r.gains()
	r.gotStuck()
	r.outByName()
	r.strays()
	r.brokenFence()
	r.backAgain()
	r.passiveGot()
	r.heldPigs()
	r.unheardDrug()
	r.drugInto()
	r.basinForCrate()
	r.cratesApart()
	r.compared()
	r.tapedHer()
	r.exceptionsAhead()
	r.weighVerbs()
	r.putAt()
	r.guessedByOthers()
	r.describedOnes()
	r.headedWeights()
	r.boughtFromUs()
	r.putThere()
	r.unwell()
	r.ageWords()
	r.bentNames()
	r.butcherTook()
	r.butcherThen()
	r.wentToButcher()
	r.newOnes()
	r.newcomerOnes()
	r.childOfAge()
	r.countedNames()
	r.anotherBag()
	r.ordinalBags()
	r.adjectiveBags()
	r.notThisOne()
	r.wentDown()
	r.bucketsOfWater()
	r.shedBarrel()
	r.tippedOver()
	r.dumpedBarrels()
	r.sitterDid()
	r.broughtHome()
	r.carriedIn()
	r.settleContainers()
	r.waterSources()
	r.frost()
	r.hoseForBarrel()
	r.pondNames()
	r.callIt()
	r.frontAndBack()
	r.settleHerdName()
	r.introductions()
	r.slipsOfTongue()
	r.besideMoney()
	r.moneyDropped()
	r.spokenPrices()
	r.feedOutOf()
	r.fillForFull()
	r.showsFull()
	r.overflowed()
	r.filledItToo()
	r.bothFullBehind()
	r.fullToo()
	r.nearlyForgotten()
	r.sackSizes()
	r.capacityInBags()
	r.mixParts()
	r.arrivalRanges()
	r.pigPrices()
	r.laterPrices()
	r.eatenThings()
	r.sellers()
	r.countedThings()
	r.didTheThing()
	r.clockWords()
	r.questionTails()
	r.questionHeads()
	r.leadingClock()
	r.barePours()
	r.houseGoods()
	r.blockPrices()
	r.oddments()
	r.fares()
	r.batchesMade()
	r.boughtBeside()
	r.chargedBeside()
	r.boughtShared()
	r.forceFrames()
	r.leanings()
	spans := r.namesAhead(r.sameAgain(r.verbsForward(r.waterItself(r.joinArrivals(r.weightBack(r.cut()))))))
	for n := range spans {
		s := spans[n]
		if s.i >= s.j {
			continue
		}
		if s.frame == fIdle {
			r.keepDay(s)
		}
		if s.frame == fDrug && n+1 < len(spans) && spans[n+1].frame == fDrug && (r.items[s.j].gap < gapStop || r.drugLine(s.j)) && !r.eachNamed(s.i, s.j) && (r.find(s, sAll) < 0 || r.drugLine(s.j)) {
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
				if !r.items[x].isAny(setOf(sFiller, sPronoun, sGave)) {
					break
				}
			}
			s = r.trimNegated(r.scoped(s))
			if why := r.mood(s); why != "" {
				if why == NoneForeign && r.neighborDid(s) {
					before := len(r.out)
					r.fill(s)
					r.confirm(s, before)
					continue
				}
				if why == NonePlan && r.guessedNow(s) {
					before := len(r.out)
					r.fill(s)
					r.confirm(s, before)
					continue
				}
				if !r.knowsMore(why, s) {
					r.useAll(s)
					r.none(why, s)
					continue
				}
			}
		}
		if (s.frame >= fTarget && s.frame <= fCurrency || s.frame == fRecipe) && r.undecided(s) || s.frame >= fSetFeeder && s.frame <= fSetWallow && r.mayGet(s) {
			r.useAll(s)
			r.none(NoneChatter, s) // no plan: there is nothing to be reminded of
			continue
		}
		if r.skip > 0 && r.skip >= s.i && r.skip < s.j {
			continue
		}
		r.lent = r.lendDay(spans, n)
		if first, last, a, b, ok := r.dayRange(s); ok {
			r.fillEachDay(s, first, last, a, b)
			continue
		}
		if factual[s.frame] && r.eitherDay(s) {
			before := len(r.out)
			r.fill(s)
			r.confirmDay(s, before)
			continue
		}
		parts := r.byDay(s)
		for p, part := range parts {
			if len(parts) > 1 && r.onlyDay(part) {
				if p == 0 || !r.givenAgain(part) {
					r.keepDay(part)
				}
				continue
			}
			before := len(r.out)
			if p > 0 && r.lastIsWeather() && r.dayAndNumber(part) {
				part.frame = fWeather
			}
			r.unitsAhead(part.i, part.j)
			r.fill(part)
			r.emptyFilled(before)
			r.vet(part, before)
			r.eitherPig(part, before)
			r.sharedWeights(part, before)
			r.eitherDeed(part, before)
			r.nearDear(part, before)
			r.strayMoney(part)
			r.noteUnits(part.i, part.j)
			if len(r.out) > before && factual[s.frame] && s.frame != fArrive || len(r.out) == before {
				r.keepDay(part)
			}
		}
	}
}

// knowsMore lets an emergency stand whatever the mood: alarms are never asked
// about.
func (r *reader) knowsMore(why string, s span) bool {
	return s.frame == fAlarm && why != NoneNegation && why != NoneForeign && why != NoneHearsay && why != NonePlan && why != NoneFuture
}
