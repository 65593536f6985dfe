package reading

import (
	"slices"
	"strings"

	"troughbell/model"
)

// What is told not to have been done, or to be left as it was, records nothing:
// "none of them wormed yet", "tank: nothing yet", "left upper alone", "gilts stay in
// the barn", "too dear, I did not buy".

// leftAsIs takes the parts of a text out that say but that a thing was left as it was.
func (r *reader) leftAsIs() {
	for k := 0; k < len(r.items); {
		i, j := r.stretch(k)
		if r.asIs(i, j) {
			r.silenceAsIs(i, j)
		}
		k = j
	}
}

// asIs says that the items from i to j name a thing of the herd, or nothing, and say
// that nothing was done with it.
func (r *reader) asIs(i, j int) bool {
	said := r.said(span{0, i, j})
	phrase := false
	switch {
	case saysAny(said, asIsWords):
		phrase = true
	case strings.Contains(said, " left ") && (strings.HasSuffix(said, " alone ") || strings.HasSuffix(said, " as is ") || strings.HasSuffix(said, " be ")):
		phrase = true
	case r.nothingDone(i, j):
		phrase = true
	}
	if !phrase || saysAny(said, asIsNot) {
		return false
	}
	for k := i; k < j; k++ {
		it := &r.items[k]
		if it.quest || it.pig >= 0 || it.isAny(setOf(sPigs, sSick, sDied, sSold, sOut)) && it.kind == itWord && !it.is(sFiller) || it.number() && !it.soft || it.kind == itFrac || it.kind == itDay && it.day.form == daySlash || it.isAny(setOf(sFull, sEmpty)) && !it.is(sFill) {
			return false // a level told beside it was seen
		}
	}
	return true
}

var (
	asIsWords = phrasesOf("left alone, left it alone, left them alone, left that alone, left that one alone, leave alone, leaving alone, untouched, not touched, wasn't touched, wasnt touched, didn't touch, didnt touch, did not touch, haven't touched, havent touched, left as is, left as it was, left it be, left it as is, left it as it was")
	asIsNot   = phrasesOf("but, then, except, so they, last time, yesterday's")
)

// nothingDone says that the items from i to j are the name of a thing and that nothing
// was done: "tank: nothing yet", "upper none today".
func (r *reader) nothingDone(i, j int) bool {
	thing, nothing := false, false
	for k := i; k < j; k++ {
		it := &r.items[k]
		switch {
		case it.s == "nothing" || it.s == "none" || it.s == "nothing yet" || it.s == "none yet" || it.s == "nada":
			nothing = true
		case it.kind == itThing && it.pen < 0, it.isAny(setOf(sBarrel, sFeeder, sWallow)) && it.kind == itWord:
			if nothing {
				return false // "nothing in the tank"
			}
			thing = true
		case it.kind == itDay && it.day.mod <= 0, it.isAny(setOf(sFiller, sUndone, sNow)) && !it.isAny(setOf(sFull, sEmpty)) && it.s != "left" && it.s != "in":
		default:
			return false
		}
	}
	return thing && nothing
}

// silenceAsIs takes the meaning from such a part.
func (r *reader) silenceAsIs(i, j int) {
	for k := i; k < j; k++ {
		r.blank(k)
	}
	r.items[i].gap = max(r.items[i].gap, gapSemi)
	if j < len(r.items) {
		r.items[j].gap = max(r.items[j].gap, gapSemi)
	}
}

// deedSenses are what is done with the herd.
var deedSenses = setOf(sWorm, sTreat, sMove, sWeigh, sSold, sSlaughtered, sFill, sPour, sWatered, sGave, sTape, sLost, sDied, sSick)

// noneOf says that item k denies what is told behind it of a number of pigs or
// things: "none of them wormed", "no pigs sold yet", "not one of the barrels filled".
func (r *reader) noneOf(k int, s span) bool {
	it := &r.items[k]
	who := -1
	switch firstWord(it.s) {
	case "none", "neither", "nobody":
		who = k
	case "no", "zero":
		if it.pig < 0 && (it.is(sPigs) || k+1 < s.j && r.items[k+1].gap == gapNone && r.items[k+1].pig < 0 && r.items[k+1].isAny(setOf(sPigs, sBarrow, sGilt, sBarrel, sFeeder, sBoar, sSow))) {
			who = k
		}
	case "not":
		if k+1 < s.j && (r.items[k+1].s == "one" || r.items[k+1].s == "a" && k+2 < s.j && r.items[k+2].s == "single") {
			who = k
		}
	}
	if who < 0 {
		return false
	}
	for n := k; n < s.j && n < k+8; n++ {
		x := &r.items[n]
		if n > k && x.gap >= gapComma || x.s == "but" || x.s == "except" {
			return false
		}
		if x.number() && !x.soft && x.v != 1 {
			return false
		}
		if x.pig < 0 && x.isAny(deedSenses) && !x.is(sFull) && (pastTense(lastWord(x.s)) || x.isAny(setOf(sSold, sDied, sSick))) {
			return true
		}
	}
	return false
}

// staysThere says that the pigs that a span tells to stay in a pen are there already.
func (r *reader) staysThere(s span, m model.Move) bool {
	stays := false
	for k := s.i; k < s.j; k++ {
		if r.items[k].is(sMove) && pastTense(r.items[k].s) {
			return false
		}
		stays = stays || stayWords[firstWord(r.items[k].s)]
	}
	if !stays {
		return false
	}
	for _, a := range r.c.Herd.Animals {
		if len(m.Animals) > 0 && !slices.Contains(m.Animals, a.Name) {
			continue
		}
		if p := r.c.Herd.CurrentPen(a); p == nil || !strings.EqualFold(p.Name, m.Pen) {
			return false
		}
	}
	return true
}

var stayWords = setOfWords(split("stay, stays, stayed, staying, stayin, staing, stayng, stya, styaing, remain, remains, remained, remaining, keep, keeps, keeping, kept, still, leave, leaving, left"))

// invertedIf says that the sentence of a span opens with a supposed past: "had we moved
// them", "should they need it", "were he 240".
func (r *reader) invertedIf(s span) bool {
	k := r.sentenceStart(s.i)
	if k+2 >= len(r.items) || r.items[k].quest || r.askedBehind(s) {
		return false
	}
	said := r.said(span{0, k, min(k+3, len(r.items))})
	return invertedHeads.begin(said) && saysAny(r.said(span{0, k, r.sentenceEnd(s.j - 1)}), unrealTails)
}

func (r *reader) askedBehind(s span) bool {
	end := r.sentenceEnd(s.j - 1)
	return end <= len(r.items) && strings.HasPrefix(strings.TrimSpace(r.text[r.items[end-1].to:]), "?")
}

var (
	invertedHeads = phrasesOf("had we, had i, had they, had he, had she, had it, were it, were he, were she, were they, should they, should it, should he, should she")
	unrealTails   = phrasesOf("would, would've, would have, wouldn't, wouldnt, could've, could have, might have, they'd, theyd, we'd, i'd, he'd, she'd, it'd")
)

// supposedDone says that what is called done would be if something else held: "if 503
// was 280 we'd be done already".
func (r *reader) supposedDone(s span, _ int) bool {
	said := r.said(span{0, r.sentenceStart(s.i), r.sentenceEnd(s.j - 1)})
	return strings.Contains(said, " if ") && saysAny(said, unrealTails) || saysAny(said, wishHeads)
}

var wishHeads = phrasesOf("wish we were, wish i was, wish i were, wish we was, would be done, wed be done, we'd be done, i'd be done, id be done, almost done, nearly done, not done, isn't done, aren't done, half done, not done yet, never done, should be done, will be done, can be done, be done by, be done when, be done in")

// refused says that goods were priced and not bought: "corn is 1400, too much, I did
// not buy".
func (r *reader) refused(s span) bool {
	from, to := r.sentenceStart(s.i), r.sentenceEnd(s.j-1)
	if to < len(r.items) && to-from < refuseReach { // the refusal may be a sentence of its own
		to = r.sentenceEnd(to)
	}
	said := r.said(span{0, from, to})
	if !saysAny(said, refusing) {
		return false
	}
	for _, p := range refusals {
		said = strings.ReplaceAll(said, " "+p+" ", " ")
	}
	return !saysAny(said, boughtAfterAll)
}

// refuseReach is how long a sentence may be that the next one still belongs to.
const refuseReach = 16

var (
	refusals = split(`not buy, not buying, not bought, not buy it, didn't buy, didnt buy, don't buy, dont buy, did not buy, haven't bought, didn't get any, didnt get any, did not get any, didn't get it, didnt get it, did not get it,
		didn't take it, didnt take it, did not take it, didn't take any, passed on it, passed on that, passed on them, i passed, we passed, walked away, walked off, skipped it, skipped them, no thanks, no thank you, no thank u, no way, forget it, look for another, looking for another,
		did not call, didn't call, didnt call, left it there, left it in the store, left it at the store, left it in the shop, left it on the shelf, left them there, put it back, put them back, going elsewhere, turned him down, turned her down, turned them down, turned it down, not worth it, we wait, i wait, will wait, i'll wait, we'll wait, came home without, came back without, without buying, bought nothing, bought none, decided against, held off, holding off`)
	refusing       = phrasesOf(strings.Join(refusals, ","))
	boughtAfterAll = phrasesOf("bought, purchased, picked up, spent, paid, payed, ordered, got, grabbed, took it, cost me, cost us, came to, fetched")
)

// asksMoney says that somebody is told what something goes for with him, each time:
// "the butcher charges 80 per pig".
func (r *reader) asksMoney(s span) bool {
	from, to := r.sentenceStart(s.i), r.sentenceEnd(s.j-1)
	said := r.said(span{0, from, to})
	return saysAny(said, askingVerbs) && !saysAny(said, boughtAfterAll)
}

var askingVerbs = phrasesOf("charges, wants, is asking, are asking, asks, they want, he want, she want, guy wanted, wanted to charge, would charge, takes per, they charge, asking price, lists at, is listed at, goes for, going rate")

// readingBefore takes the number out that tells what a reading of the fence was before:
// "fence 6.1, up from 4".
func (r *reader) readingBefore() {
	for k := 1; k < len(r.items); k++ {
		it, p := &r.items[k], &r.items[k-1]
		if it.kind != itNum && !it.qty(voltage) || it.gap != gapNone || p.s != "up from" && p.s != "down from" && (p.s != "from" || k < 2 || r.items[k-2].s != "up" && r.items[k-2].s != "down") {
			continue
		}
		if s := (span{0, r.sentenceStart(k), r.sentenceEnd(k)}); r.find(s, sFence) >= 0 && r.otherVolts(k) {
			r.blank(k)
		}
	}
}
