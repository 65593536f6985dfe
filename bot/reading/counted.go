package reading

import "strings"

// countedThings takes numbers out of the reckoning that count things of no
// concern: "95 likes", "14 people", "3 hours of sleep".
func (r *reader) countedThings() {
	if r.todoHead() > 0 { // a list of things to do tells nothing that was done
		for k := range r.items {
			r.blank(k)
		}
		return
	}
	r.slashParts()
	r.placesNear()
	r.notThatMany()
	r.backThen()
	r.asTreat()
	for k := 1; k < len(r.items); k++ { // "all 12"
		if it := &r.items[k]; it.kind == itNum && it.v == float64(r.alive) && r.alive > 1 && it.gap == gapNone && r.items[k-1].is(sAll) && r.items[k-1].s != "both" && (r.drugBeside(k) && (k+1 == len(r.items) || r.items[k+1].gap >= gapAnd || r.items[k+1].isAny(setOf(sPigs, sOf))) || r.headCount(k)) {
			it.soft, it.used = true, true
		}
	}
	for k := range r.items {
		if r.countsLimbs(k) {
			r.blank(k)
		}
	}
	for k := 0; k+1 < len(r.items); k++ {
		it, n := &r.items[k], &r.items[k+1]
		if it.kind != itNum || it.soft || it.ord || n.gap != gapNone || n.kind != itWord || it.v != float64(int(it.v)) {
			continue
		}
		if !r.strangeNoun(n) {
			continue
		}
		if k > 0 && (r.items[k-1].pig >= 0 || r.items[k-1].feeder >= 0 || r.items[k-1].barrel >= 0 || r.items[k-1].isAny(setOf(sFence, sGirth, sWeigh, sFeeder, sBarrel, sPour, sFill, sMixed, sHose, sPay, sBuy))) {
			continue // "otis 190 hugs everybody"
		}
		it.soft, it.used, n.used = true, true, true
	}
}

// slashParts takes "1/2" for a half where as a day it would lie before the pigs
// came, or far back.
func (r *reader) slashParts() {
	for k := range r.items {
		it := &r.items[k]
		if it.kind != itDay || it.day.form != daySlash || it.day.c != 0 || it.v < 1 || it.v >= it.v2 {
			continue
		}
		switch it.v2 {
		case 2, 3, 4, 5, 8:
		default:
			continue
		}
		if n := k + 1; n < len(r.items) && r.items[n].qty(vessel) && r.items[n].s == "a" && r.items[n].gap == gapNone { // "1/2 a bag"
			r.items[n].v, r.items[n].soft = it.v/it.v2, false
			r.blank(k)
			continue
		}
		d, ok := it.day.on(r.today, lookBack, r.dayFirst)
		first, came := r.firstArrival()
		if ok && came && (d < first || d > r.today) {
			it.kind, it.v, it.v2, it.day = itFrac, it.v/it.v2, 0, dayExpr{}
		}
	}
}

// drugBeside says that the sentence of item k, or the one before it, tells of a
// drug, so that the number of all pigs is no number of days.
func (r *reader) drugBeside(k int) bool {
	for n := r.sentenceStart(max(r.sentenceStart(k)-1, 0)); n < r.sentenceEnd(k); n++ {
		if r.items[n].isAny(setOf(sWorm, sTreat, sProduct)) {
			return true
		}
	}
	return false
}

// placesNear takes the names of barrels, feeders and pens that are plain words for
// what they say where something was by them: "fence 3.8 by the creek".
func (r *reader) placesNear() {
	for k := 1; k < len(r.items); k++ {
		it := &r.items[k]
		if it.kind != itThing || !r.lex.plain[it.s] && !r.lex.plain[firstWord(it.s)] || k+1 < len(r.items) && r.items[k+1].gap == gapNone && (r.items[k+1].isAny(setOf(sBarrel, sFeeder, sPen, sFull, sEmpty)) || r.items[k+1].number()) {
			continue
		}
		n := k - 1
		if r.items[n].s == "the" || r.items[n].s == "our" {
			n--
		}
		if n < 0 || r.items[n+1].gap != gapNone {
			continue
		}
		switch r.items[n].s {
		case "by", "near", "behind", "beside", "under", "through", "along", "past", "around", "across", "outside", "above", "below", "next to":
			r.blank(k)
		}
	}
}

// countsLimbs says that the number at item k counts what pigs have several of: "24 ears",
// "48 muddy feet", "12 pigs 48 feet".
func (r *reader) countsLimbs(k int) bool {
	it := &r.items[k]
	if it.qty(length) && !it.rng {
		return lastWord(strings.ToLower(r.text[it.from:it.to])) == "feet" && r.alive > 1 && it.v == float64(4*r.alive)
	}
	if it.kind != itNum || it.soft || it.v < 2 || it.v != float64(int(it.v)) {
		return false
	}
	for n := k + 1; n < len(r.items) && n <= k+2 && r.items[n].gap == gapNone; n++ {
		x := &r.items[n]
		if limbs[x.s] {
			return true
		}
		if x.s == "feet" {
			return n == k+2
		}
		if x.kind != itWord || !x.sense.empty() || x.unit != 0 {
			return false
		}
	}
	return false
}

var limbs = setOfWords(split("ears, tails, legs, hooves, trotters, snouts, noses, mouths, eyes, teats, bellies"))

// strangeNoun says that a word is a thing in the plural that no lexicon knows.
func (r *reader) strangeNoun(n *item) bool {
	if n.s == "people" || n.s == "kids" || n.s == "guests" {
		return true
	}
	return n.sense.empty() && n.unit == 0 && !centWords[n.s] && !n.near && len(n.s) > 4 && strings.HasSuffix(n.s, "s") && !strings.HasSuffix(n.s, "ss") && !strings.HasSuffix(n.s, "'s")
}

// headCount says that the number of all pigs at item k tells that all are there:
// "all 12 present", "all 7 accounted for".
func (r *reader) headCount(k int) bool {
	if k+1 >= len(r.items) || r.items[k+1].gap != gapNone {
		return false
	}
	switch n := &r.items[k+1]; firstWord(n.s) {
	case "present", "there", "here", "accounted", "up", "fine", "ok", "okay", "good", "well", "happy", "healthy", "eating", "alive", "in", "are", "look", "looking", "came", "seem", "counted", "lined":
		return n.pig < 0
	}
	return false
}

// backThen takes the day of a "back tuesday" at the end of a text for when the
// person will be there again, not for the day of what was told before it.
func (r *reader) backThen() {
	for k := 0; k+1 < len(r.items); k++ {
		it, d := &r.items[k], &r.items[k+1]
		if !backWords[it.s] || d.kind != itDay && d.kind != itClock || it.gap < gapAnd || r.clauseEnd(k) != k+2 {
			continue
		}
		if r.has(span{0, r.sentenceStart(k), k}, sAway) {
			continue
		}
		r.blank(k)
		r.blank(k + 1)
	}
}

var backWords = map[string]bool{"back": true, "back on": true, "home": true, "home on": true, "see you": true, "see ya": true, "cu": true, "more": true, "will be back": true, "i'll be back": true, "ill be back": true}

// asTreat takes a treat that is something nice to eat for no treatment: "gave
// everybody apples as a treat".
func (r *reader) asTreat() {
	for k := 1; k < len(r.items); k++ {
		if it := &r.items[k]; (it.s == "treat" || it.s == "treats") && it.gap == gapNone && (r.items[k-1].s == "a" || r.items[k-1].s == "as a" || r.items[k-1].s == "as" || r.items[k-1].s == "some" || r.items[k-1].s == "little" || r.items[k-1].s == "special" || it.s == "treats" && k+1 == len(r.items)) && r.find(span{0, r.sentenceStart(k), r.sentenceEnd(k)}, sProduct) < 0 {
			r.blank(k)
		}
	}
}

// didThings are what is done on a round, by the words that name no vessel.
var didThings = map[string]bool{"waters": true, "water": true, "feed": true, "round": true, "rounds": true, "chores": true, "morning chores": true, "evening chores": true, "usual": true, "feeding": true, "watering": true, "weights": true, "weigh in": true, "same": true}

// didTheThing takes "did the big hopper" for what was done, where no question
// mark follows: nobody asks that without a subject.
func (r *reader) didTheThing() {
	for k := range r.items {
		it := &r.items[k]
		if it.s != "did" && it.s != "did the" && it.s != "did all" || it.quest || k > 0 && it.gap < gapComma && !r.fillersBefore(k) {
			continue
		}
		if r.didPigs(k) {
			continue
		}
		for n := k + 1; n < len(r.items) && n <= k+3; n++ {
			x := &r.items[n]
			if x.feeder >= 0 || x.barrel >= 0 || x.isAny(setOf(sFeeder, sBarrel, sWallow, sBoth, sAll, sWatered)) && !x.is(sPigs) || didThings[x.s] {
				it.sense.drop(sAsk)
				it.sense.drop(sAskSure)
				it.sense.add(sFiller)
				break
			}
			if !x.is(sFiller) || x.s == "i" || x.s == "we" || x.s == "you" || x.is(sPronoun) {
				break
			}
		}
	}
}

// didPigs reads "did the reds before dark. 93 the lot": the pigs weighed, and in the next
// sentence what they weigh.
func (r *reader) didPigs(k int) bool {
	end := r.sentenceEnd(k)
	if end >= len(r.items) || !r.bareWeight(end) || r.items[end].v < leastToldWeight {
		return false
	}
	pigs, last := 0, k
	for n := k + 1; n < end; n++ {
		it := &r.items[n]
		switch {
		case it.pig >= 0 || it.group >= 0:
			pigs, last = pigs+1, n
		case it.number() && !it.soft, it.kind == itThing, it.quest, it.kind == itWord && it.isAny(setOf(sPronoun, sSick, sFeed, sWater, sWorm, sMove)):
			return false
		}
	}
	if pigs == 0 || last > k+2*pigs+2 {
		return false
	}
	for n := k; n < end; n++ {
		if it := &r.items[n]; it.pig < 0 && it.group < 0 && it.kind == itWord && !it.is(sAnd) {
			r.blank(n)
		}
	}
	r.items[end].gap = gapNone
	for n := end + 1; n < len(r.items) && n <= end+4 && r.items[n].gap < gapStop; n++ {
		if it := &r.items[n]; it.kind == itWord && it.pig < 0 && it.isAny(setOf(sAll, sEach, sPartOf, sAbout, sFiller)) && !it.isAny(setOf(sSick, sBut)) {
			r.blank(n)
		}
	}
	return true
}

// clockWords drops the word "clock" beside a time of day in a herd whose zone is
// known: "butcher at 12.9., clock 6:30".
func (r *reader) clockWords() {
	if r.c.Herd.Zone == "" {
		return
	}
	for k := 0; k+1 < len(r.items); k++ {
		if it := &r.items[k]; it.s == "clock" && r.items[k+1].kind == itClock && r.items[k+1].gap == gapNone {
			if k > 0 {
				r.items[k+1].gap = it.gap
			}
			r.blank(k)
		}
	}
}
