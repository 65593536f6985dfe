package reading

import "strings"

// factual are the frames whose spans record something that was seen or done,
// so that a plan or hearsay in them records nothing.
var factual = map[frame]bool{
	fWeigh: true, fFeed: true, fWater: true, fWallow: true, fStock: true, fMixed: true, fDrug: true, fMove: true,
	fSick: true, fAlarm: true, fFence: true, fWeather: true, fArrive: true, fGone: true, fSpend: true, fSpill: true, fRain: true,
}

// mood says why a factual span records nothing, or "" if it does: it is denied,
// planned, supposed, hearsay, or about other animals.
func (r *reader) mood(s span) string {
	start := s.i
	for start > 0 && r.items[start].gap < gapStop && (r.idleAt(start-1) || r.items[start].gap == gapNone && r.looseAsk(start-1)) {
		start--
	}
	for k := s.i; k > 0 && k > s.i-3 && r.items[k].gap == gapNone && (s.frame == fWater || s.frame == fWallow); k-- { // "and the kid will do water"
		if p := &r.items[k-1]; p.is(sPlan) && p.pig < 0 && !p.isAny(setOf(sWell, sTook, sFull, sSick)) {
			return NonePlan
		}
	}
	if why := r.headMood(s); why != "" {
		return why
	}
	if r.notYet(s) || s.frame == fMove && r.movingThen(s) {
		return NonePlan
	}
	if r.toFetch(s) || s.frame == fStock && r.onOrder(s) {
		return NonePlan
	}
	if s.frame == fSick && r.ownAches(s) {
		return NoneForeign
	}
	news := r.newsOfOurs(s)
	if !news && r.tellsOfOthers(s) {
		return NoneForeign
	}
	ours, number := false, false
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		ours = ours || it.pig >= 0 && !it.near || it.feeder >= 0 || it.barrel >= 0
		number = number || it.number() && !it.soft
	}
	for k := start; k < s.j; k++ {
		it := &r.items[k]
		if k >= s.i && it.gap >= gapStop && k > s.i && s.frame != fArrive {
			// A later sentence of the span speaks for itself.
			ours = true
		}
		switch {
		case s.frame != fAlarm && r.noneOf(k, s):
			return NoneNegation
		case news && (it.is(sForeign) || it.is(sHearsay)):
		case it.is(sForeign) && s.frame == fAlarm && !r.beforeAlarm(k, s):
		case it.is(sForeign) && s.frame == fArrive && r.sourceBefore(k): // "from the auction"
		case it.is(sForeign) && s.frame == fAlarm && r.placeBefore(k): // "pigs at the neighbor's"
		case it.s == "no" && s.frame == fAlarm && k+1 < s.j && r.items[k+1].isAny(setOf(sPigs, sOut)) && !r.items[k+1].isAny(setOf(sNoWater, sNoFeed)) && r.has(s, sOut) && !(k > 0 && r.items[k-1].s == "oh") && !theySaid[firstWord(r.items[k+1].s)] && firstWord(r.items[k+1].s) != "the":
			return NoneNegation // "no pigs out"
		case (it.is(sForeign) || it.is(sHearsay)) && r.householdDid(k):
		case it.is(sForeign) && r.strangeFeed(k, s): // asked about, see strangeFeedIn
		case it.is(sForeign) && s.frame == fGone && r.has(s, sSold) && k > 0 && (r.items[k-1].s == "to" || k > 1 && r.items[k-2].s == "to" && r.items[k-1].is(sFiller)): // the buyer
		case it.is(sForeign) && k < s.i && ours && r.clauseEnd(k) <= s.i && s.frame != fAlarm: // "the kids helped: big hopper 158"
		case it.is(sForeign) && ours && r.spokenFor(k, s.j) && !r.quoteHas(s, "his", "her", "their", "theirs"): // "my neighbor came by and we weighed otis"
		case it.is(sForeign) && !(ours && k >= s.i) && s.frame != fSpend && s.frame != fStock && it.pig < 0 && !r.vetGave(s):
			return NoneForeign
		case it.is(sHearsay) && s.frame == fDrug && r.quoteHas(span{0, r.sentenceStart(s.i), s.j}, "vet", "the vet", "vet gave", "vet came", "per vet"):
		case it.is(sHearsay) && s.frame == fDrug && it.gap >= gapComma && k+1 < len(r.items) && r.items[k+1].qty(days): // "ivermectin, says 18 days": the label
		case it.is(sHearsay) && ours && r.oneOfUs(k), it.is(sHearsay) && s.frame == fWeather && r.instrumentBehind(k):
		case it.is(sHearsay) && s.frame != fArrive && it.pig < 0 && !r.fromVet(k) && !it.is(sWithdraw):
			return NoneHearsay
		case it.s == "if" && k > 0 && r.ifNot(k-1) && k < s.j-1 && !r.toldBefore(k, s):
			return NonePlan // "idk if i filled the small one"
		case it.s == "if" && k > 0 && r.ifNot(k-1):
		case it.is(sIf) && !it.is(sFiller) || it.s == "if":
			return NonePlan
		case it.is(sPlan) && s.frame == fFeed && r.firstQty(s, days) >= 0:
		case it.is(sPlan) && s.frame == fAlarm && !r.beforeAlarm(k, s): // "fence is down, will fix it"
			return ""
		case it.is(sPlan) && it.pig < 0 && !it.isAny(setOf(sWell, sTook, sFull)) && !(s.frame == fSick && it.s == "won't") && !r.doneAfter(k, s) && !it.is(sSick):
			return NonePlan
		case it.is(sNot) && !it.isAny(setOf(sSick, sDown, sNoWater, sNoFeed, sBut, sDied)) && k >= start && s.frame != fAlarm && !r.mildNot(k, s, number):
			return NoneNegation
		case it.s == "no" && s.frame != fAlarm && k+1 < s.j && r.items[k+1].isAny(setOf(sWorm, sFeed, sWater, sFill, sTreat, sMove, sWallow, sHose, sSick, sMixed, sButcher, sBuy, sWeigh, sTape)) && r.items[k+1].gap == gapNone:
			return NoneNegation
		case (it.s == "almost" || it.s == "nearly") && s.frame == fAlarm && k+1 < s.j && r.items[k+1].is(sOut) && r.items[k+1].gap == gapNone:
			return NoneNegation
		case (it.s == "almost" || it.s == "nearly") && (s.frame == fDrug || s.frame == fGone || s.frame == fMove) && k+1 < s.j && r.items[k+1].isAny(setOf(sGave, sWorm, sTreat, sSold, sMove, sSlaughtered, sDied, sLost)):
			return NoneNegation
		case it.kind == itDay && k >= s.i && it.day.form == dayOffset && it.day.a > 0:
			return NoneFuture
		case it.kind == itDay && k >= s.i && it.day.mod > 0:
			return NoneFuture
		}
	}
	return ""
}

// ifNot says that an "if" behind item k is a "whether": "no idea if that is good".
func (r *reader) ifNot(k int) bool {
	switch r.items[k].s {
	case "idk", "dunno", "know", "sure", "see", "clue", "remember", "notice", "checked", "look", "no clue", "matter", "care", "tell", "wonder", "idea", "wondering", "ask":
		return true
	}
	return false
}

// toldBefore says that a span states something before item k.
func (r *reader) toldBefore(k int, s span) bool {
	for n := s.i; n < k && n < s.j; n++ {
		if it := &r.items[n]; it.number() && !it.soft || it.kind == itDim || it.kind == itFrac || it.isAny(setOf(sFull, sEmpty, sFill, sWatered, sWorm, sMove, sSick)) {
			return true
		}
	}
	return false
}

// household are those who do the chores too.
var household = map[string]bool{
	"wife": true, "my wife": true, "husband": true, "my husband": true, "kids": true, "the kids": true, "kid": true, "my son": true, "my daughter": true,
	"son": true, "daughter": true, "mom": true, "mum": true, "dad": true, "mother": true, "father": true, "grandma": true, "hubby": true, "missus": true, "the wife": true, "the boys": true, "the girls": true,
	"the boy": true, "the girl": true, "sitter": true, "the sitter": true, "pig sitter": true, "hired hand": true, "the kid": true, "my boy": true, "my girl": true, "my mom": true, "my dad": true, "esposo": true, "esposa": true, "my partner": true, "partner": true,
}

// lookedWords tell that somebody saw for himself.
var lookedWords = setOfWords(split("looked, looked in, checked, checked on, peeked, went out, was out there, says, said, saw"))

// householdDid says that one of the house did what is told: "my wife topped off
// the wallow".
func (r *reader) householdDid(k int) bool {
	if !household[r.items[k].s] && (!relatives[r.items[k].s] || r.quoteHas(span{0, k, r.clauseEnd(k)}, "his", "her", "their")) {
		return false
	}
	if k > 0 && (r.items[k-1].s == "with" || r.items[k-1].s == "w") && r.items[k].gap == gapNone {
		return true // "mixed two batches with the kids"
	}
	for n := k + 1; n < len(r.items) && n <= k+2 && r.items[n].gap < gapStop; n++ {
		if r.items[n].isAny(setOf(sFill, sPour, sMove, sWorm, sTreat, sGave, sWatered, sHose, sTape, sMixed, sBuy, sTook)) || lookedWords[r.items[n].s] || r.items[n].s == "helped" {
			return true
		}
	}
	return false
}

// vetGave says that somebody not of the household did what is told, which is a
// fact all the same: the vet, a sitter.
func (r *reader) vetGave(s span) bool {
	for k := s.i; k < s.j; k++ {
		if r.items[k].is(sGave) && (r.items[k].s == "vet" || r.items[k].s == "vet gave") {
			return true
		}
	}
	return false
}

// tellers are those whose word is a fact: the vet, a label, what measures.
var tellers = map[string]bool{
	"vet": true, "label": true, "tag": true, "scale": true, "tape": true, "tester": true, "fence tester": true, "meter": true, "voltmeter": true,
	"gauge": true, "gage": true, "thermometer": true, "display": true, "readout": true, "receipt": true, "invoice": true, "bill": true, "charger": true, "energizer": true,
	"wife": true, "my wife": true, "husband": true, "my husband": true, "my son": true, "my daughter": true, "the kids": true, "kuya": true, "sitter": true, "the sitter": true, "our scale": true,
	"doctor": true, "the doctor": true, "doc": true, "the doc": true, "veterinarian": true, "the veterinarian": true, "leaflet": true, "package": true, "box": true, "bottle": true, "paper": true,
	"phone": true, "app": true, "slip": true, "ticket": true, "sheet": true, "hanging scale": true, "hanging scales": true, "hook scale": true,
}

func (r *reader) fromVet(k int) bool {
	from := min(k, r.clauseFrom(k))
	for n := from - 1; n >= r.sentenceStart(k); n-- { // "my son filled it, says it took 75"
		if household[r.items[n].s] && k == from {
			return true
		}
	}
	for n := from; n <= k; n++ {
		if tellers[r.items[n].s] {
			return true
		}
	}
	return false
}

// wormedSince tell that what was due was done.
var wormedSince = phrasesOf("i wormed, we wormed, so wormed, and wormed, i dewormed, we dewormed, i gave, we gave, so gave, got wormed, i treated, we treated, i did, we did")

// doneAfter says that a word of planning is followed by one of what was done:
// "needed to fill it, took 150".
func (r *reader) doneAfter(k int, s span) bool {
	if strings.HasPrefix(r.items[k].s, "due") && saysAny(r.said(span{0, k + 1, s.j}), wormedSince) {
		return true // "they were due for worming so i wormed them"
	}
	for n := k + 1; n < s.j; n++ {
		if r.items[n].is(sTook) && r.items[n].s != "to fill" && r.items[n].s != "to top" {
			return true
		}
	}
	return false
}

// onOrder says that goods were ordered and are still to come: "ordered 20 bags, should be
// here monday".
func (r *reader) onOrder(s span) bool {
	said := r.said(span{0, r.sentenceStart(s.i), r.sentenceEnd(s.j - 1)})
	return strings.Contains(said, " ordered ") && saysAny(said, stillToCome)
}

var stillToCome = phrasesOf("should be, will be, will come, will arrive, comes, coming, arrives, arriving, due, to be delivered, will deliver, delivers, delivering, expected")

// undecided says that what could set something is but thought of: "we might switch to
// thursdays, haven't decided".
func (r *reader) undecided(s span) bool {
	return saysAny(r.said(span{0, r.sentenceStart(s.i), r.sentenceEnd(s.j - 1)}), undecidedWords)
}

var undecidedWords = phrasesOf("wait and see, we think to, i think to, thinking to, think about, want to try, might, maybe, may switch, thinking of, thinking about, we're thinking, haven't decided, havent decided, not decided, undecided, not sure yet, considering, debating, toying with")

// mayGet says that a thing to set up is but thought of: "might get a 1000 liter tank off my
// cousin". What a newcomer wants or plans is set up all the same.
func (r *reader) mayGet(s span) bool {
	return saysAny(r.said(span{0, r.sentenceStart(s.i), s.j}), mayGetWords)
}

var mayGetWords = phrasesOf("might get, may get, could get, might buy, may buy, could buy, might build, may build, might borrow, may borrow, could borrow, might put in, might pick up, might find, might trade, thinking of getting, thinking about getting, thinking of buying, thinking about buying, thinking of building, thinking about building, wish i had, wish we had, would be nice to have")

// mildNot says that a "not" does not deny the fact: "not quite full, maybe
// 3/4", "not 38 but 37", "full not empty".
func (r *reader) mildNot(k int, s span, number bool) bool {
	it := &r.items[k]
	if it.used {
		return true
	}
	next := &item{}
	if k+1 < len(r.items) {
		next = &r.items[k+1]
	}
	switch next.s {
	case "quite", "bad", "sure", "much", "too", "long", "even", "only", "exactly", "fully", "completely", "all":
		return number
	}
	if next.is(sFull) || next.is(sAbout) {
		return number
	}
	if k > s.i && next.is(sFill) && (s.frame == fFeed || s.frame == fWater) && !r.amountless(s.i, k) { // "3 bags didn't fill it up"
		it.used, next.used = true, true
		return true
	}
	if r.butAfter(k, s) {
		return true
	}
	if k < s.i { // it stands in words before the fact
		return it.gap < gapStop && r.items[s.i].gap >= gapComma
	}
	// Behind a finished clause: "hazel 170, did not get clover"
	if number && k > s.i && it.gap >= gapComma {
		for n := s.i; n < k; n++ {
			if r.items[n].number() && !r.items[n].soft {
				return true
			}
		}
	}
	return false
}

// butAfter says that a "but" turns from what a "not" denied to what was found:
// "did not weigh them but juno looks about 95".
func (r *reader) butAfter(k int, s span) bool {
	for n := k + 1; n < s.j; n++ {
		it := &r.items[n]
		if it.s == "but" && it.gap < gapStop {
			for m := n + 1; m < s.j; m++ {
				if x := &r.items[m]; x.number() && !x.soft && !x.used || x.isAny(setOf(sFull, sEmpty)) {
					return true
				}
			}
			return false
		}
		if it.number() && !it.soft || it.gap >= gapStop {
			return false
		}
	}
	return false
}

// looseAsk says that item k stands in a span that was taken for a question by a
// word alone: "my intention to have the animals wormed".
func (r *reader) looseAsk(k int) bool {
	if r.force[k] != 0 || r.items[k].quest {
		return false
	}
	for _, sp := range r.spans {
		if k >= sp.i && k < sp.j {
			return sp.frame == fAsk
		}
	}
	return false
}

func (r *reader) idleAt(k int) bool {
	for _, sp := range r.spans {
		if k >= sp.i && k < sp.j {
			return sp.frame == fIdle
		}
	}
	return false
}

// beforeAlarm says that item k stands before the word of the alarm, so that it
// says whose animals are out: "the neighbor's cow is out".
func (r *reader) beforeAlarm(k int, s span) bool {
	for n := s.i; n < s.j; n++ {
		if r.items[n].isAny(setOf(sOut, sDown)) {
			return k < n
		}
	}
	return true
}
