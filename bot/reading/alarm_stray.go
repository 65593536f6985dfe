package reading

import "strings"

// Pigs that are where no pig should be are told by the place as often as by a word
// for getting out: "pigs in the road", "they're in the neighbor's beans".

// strayPlaces are where no pig of a herd should be, unless it is the name of a pen.
var strayPlaces = setOfWords(split(`road, roads, street, highway, driveway, drive, garden, yard, corn, cornfield, corn field, beans, bean field, soybeans,
	hayfield, lawn, flowers, flower bed, flowerbed, woods, ditch, neighbors, neighbor's, neighbour's, neighbours, neighbors', field, orchard, crops,
	porch, barnyard, gravel, cemetery, park, parking lot, tomatoes, potatoes, pumpkins, sweet corn, lane, maize, sweetcorn, verge, beet, beets, sugar beet, veg patch, vegetable patch, veg, veg garden,
	flowerbeds, flower beds, roses, tulips, cabbages, cabbage, lettuces, strawberries, allotment, allotments, hedgerow, main street, high street, car park, bypass, pavement, sidewalk, footpath, churchyard, graveyard, barley field, wheat field,
	rice field, rice paddy, paddy, bananas, cane, sugarcane, cornfields, vineyard, playground, school yard, schoolyard, petunias, begonias, dahlias, crop, back garden, front garden, front yard, backyard, back yard, motorway, freeway`))

// strayVerbs tell of a way out without naming a place.
var strayVerbs = setOfWords(split(`dug under, dug out, broke out, busted out, busted loose, got loose, got out, escaped, loose, jumped the fence, went under, got through,
	jumped out, pushed out, slipped out, climbed out, running loose, broke loose, tunneled out, tunnelled out`))

// wornWords take an "out" that is no way out of a pen.
var wornWords = setOfWords(split(`wore, wear, wears, wearing, tired, freaked, creeped, stressed, weirded, worn`))

// wearsOut are those of them that have those who are worn behind them.
var wearsOut = setOfWords(split(`wore, wear, wears, wearing, freaked, creeped, stressed, weirded, freaks, creeps`))

// strays gives the sense of being out to the words of a place where no pig should
// be, and to a few that tell of it only about pigs.
func (r *reader) strays() {
	if r.alive == 0 {
		return
	}
	for k := range r.items {
		it := &r.items[k]
		if it.is(sOut) && !it.is(sPigs) && r.sentenceNames(r.clauseFrom(k), k, wornWords) {
			it.sense = setOf(sFiller) // "wore me out"
			continue
		}
		if it.isAny(setOf(sOut)) && it.is(sPigs) && k > 0 && wearsOut[r.items[k-1].s] && it.gap == gapNone {
			it.sense = setOf(sFiller) // "wore everybody out"
			continue
		}
		if it.is(sOut) && (r.notTheirs(k) || r.outInto(k)) {
			it.sense = setOf(sFiller)
			continue
		}
		if it.s == "down the road" && r.straySubject(k) >= 0 {
			it.sense = setOf(sOut)
			continue
		}
		if strayVerbs[it.s] && it.pig < 0 && r.straySubject(k) >= 0 {
			it.sense.add(sOut)
		}
		if it.pig >= 0 || it.number() && !it.soft || it.kind == itDay || it.is(sDown) {
			continue
		}
		switch last := lastWord(it.s); last {
		case "in", "on", "at", "down", "around", "into", "inside", "through", "under", "over", "across", "up", "to":
			if n := r.strayPlace(k); n > 0 && (r.pigsSaid(k) || r.straySubject(k) >= 0) {
				r.markStray(k, n)
			}
		case "outside", "gone", "missing":
			if it.isAny(setOf(sForeign, sWell, sSick, sNoFeed, sNoWater)) || !r.closes(k) && !r.outsidePen(k) {
				continue
			}
			if n := r.straySubject(k); n >= 0 && r.items[n].pig >= 0 && last == "gone" {
				it.sense = setOf(sLost) // dead, or out: it is asked
			} else if n >= 0 && (last != "gone" || r.items[n].isAny(whoWords) || theySaid[firstWord(r.items[n].s)]) {
				it.sense = setOf(sOut)
			}
		case "find", "see":
			if k > 0 && r.items[k-1].is(sNot) && last == "find" && k+1 < len(r.items) && r.pigBehind(k) {
				r.items[k-1].sense.drop(sNot)
				it.sense = setOf(sOut)
			}
		}
	}
	r.escapees()
	r.notInPen()
}

// theySaid are words that speak of the herd where nothing else was spoken of.
var theySaid = setOfWords(split(`they, they're, theyre, they've, theyve, they'd, them, em`))

// pigsSaid says that the phrase at item k speaks of the pigs itself: "pigs in".
func (r *reader) pigsSaid(k int) bool {
	it := &r.items[k]
	return it.is(sPigs) || firstWord(it.s) == "pigs" || theySaid[firstWord(it.s)] && (k == r.clauseFrom(k) || r.fillersBefore(k) || r.toldByOther(k))
}

// strayPlace is the item of a place where no pig should be, right behind the
// preposition that ends item k, 0 if none is.
func (r *reader) strayPlace(k int) int {
	for n := k + 1; n < len(r.items) && n <= k+3 && r.items[n].gap == gapNone; n++ {
		it := &r.items[n]
		if it.pen >= 0 || it.feeder >= 0 || it.barrel >= 0 || it.pig >= 0 || it.number() && !it.soft {
			return 0
		}
		if it.is(sPen) && len(r.c.Herd.Pens) == 0 {
			return 0
		}
		if strayPlaces[it.s] || strayPlaces[lastWord(it.s)] {
			return n
		}
		if it.is(sForeign) && n+1 < len(r.items) && strayPlaces[r.items[n+1].s] {
			continue
		}
		if !it.is(sFiller) && !it.is(sPronoun) && !it.is(sForeign) && !r.owner(n) {
			return 0
		}
	}
	return 0
}

// markStray gives items k to n the sense of being out.
func (r *reader) markStray(k, n int) {
	own := r.pigsSaid(k) // before the item changes
	for x := k; x <= n; x++ {
		it := &r.items[x]
		it.kind, it.unit, it.canon, it.sense, it.used = itWord, 0, "", setOf(sFiller), true
	}
	r.items[k].sense = setOf(sOut)
	if own {
		r.items[k].sense.add(sPigs)
	}
}

// straySubject is the item that says which pigs are told to be somewhere at item
// k, with nothing between but small words; -1 if none does.
func (r *reader) straySubject(k int) int {
	for n := k - 1; n >= 0 && n >= k-6 && r.items[n+1].gap < gapComma; n-- {
		it := &r.items[n]
		switch {
		case it.is(sNot), it.is(sForeign), it.s == "i", it.s == "we", it.s == "you", it.s == "i'm", it.s == "we're":
			return -1
		case it.pig >= 0 && !it.near, it.group >= 0, it.pig < 0 && it.isAny(whoWords):
			return n
		case theySaid[firstWord(it.s)]:
			if n == r.clauseFrom(n) || r.fillersBefore(n) || r.toldByOther(n) || n > 0 && (r.items[n-1].is(sOf) || r.items[n-1].kind == itFrac || fewWords[r.items[n-1].s]) {
				return n
			}
			return -1
		case r.oneSaid(n):
			return n
		case it.soft, it.kind == itNum && it.v <= float64(r.alive), it.kind == itFrac, fewWords[it.s]:
			return n
		case it.kind == itWord && (it.isAny(setOf(sFiller, sIs, sAnd, sGave, sArrive, sPartOf)) || it.s == "running" || it.s == "again" || it.s == "walking" || it.s == "standing"):
		default:
			return -1
		}
	}
	return -1
}

// oneSaid says that item n is a "she" that begins its clause, for a pig that the sentence
// named before it: "hazel slipped past me, she's in the lane".
func (r *reader) oneSaid(n int) bool {
	switch firstWord(r.items[n].s) {
	case "she", "he", "she's", "he's", "shes", "hes":
	default:
		return false
	}
	from := r.clauseFrom(n)
	if n != from && !r.fillersBefore(n) || from == 0 {
		return false
	}
	for k := r.sentenceStart(n); k < from; k++ {
		if r.items[k].pig >= 0 && !r.items[k].near {
			return true
		}
	}
	return false
}

// fewWords are words for an unknown number of pigs.
var fewWords = setOfWords(split(`some, several, few, couple, most, half, bunch, some of, a few, a couple, a couple of, whole bunch, most of`))

// pigBehind says that pigs are named right behind item k.
func (r *reader) pigBehind(k int) bool {
	for n := k + 1; n < len(r.items) && n <= k+3 && r.items[n].gap == gapNone; n++ {
		it := &r.items[n]
		if it.pig >= 0 || it.group >= 0 || it.isAny(whoWords) || theySaid[it.s] {
			return true
		}
		if !it.is(sFiller) {
			return false
		}
	}
	return false
}

// closes says that item k ends its clause but for small words.
func (r *reader) closes(k int) bool {
	for n := k + 1; n < r.clauseEnd(k); n++ {
		if it := &r.items[n]; it.kind != itDay && it.kind != itClock && it.s != "again" && !it.is(sThanks) {
			return false
		}
	}
	return true
}

// outsidePen says that what follows item k is the pen or its fence: "outside the
// fence".
func (r *reader) outsidePen(k int) bool {
	for n := k + 1; n < len(r.items) && n <= k+3 && r.items[n].gap == gapNone; n++ {
		it := &r.items[n]
		if it.isAny(setOf(sPen, sFence)) {
			it.sense, it.used = setOf(sFiller), true
			return true
		}
		if !it.isAny(setOf(sFiller, sOf, sPronoun)) {
			return false
		}
	}
	return false
}

// notInPen reads "not in the pen" and "nobody in the pen" as being out.
func (r *reader) notInPen() {
	for k := 1; k < len(r.items); k++ {
		it := &r.items[k]
		if !it.is(sPen) || it.pen >= 0 || it.pig >= 0 {
			continue
		}
		in := k - 1
		for in > 0 && r.items[in].isAny(setOf(sFiller, sPronoun)) && lastWord(r.items[in].s) != "in" {
			in--
		}
		if lastWord(r.items[in].s) == "in" && in > 0 && r.items[in].gap == gapNone {
			no := &r.items[in-1]
			if no.is(sNot) && (no.s == "nobody" || no.s == "no one" || r.straySubject(in-1) >= 0) && !no.is(sPlan) {
				no.sense.drop(sNot)
				no.sense.add(sOut)
				no.sense.add(sPigs)
				it.sense = setOf(sFiller)
				continue
			}
		}
		if k+2 == len(r.items) || k+3 <= len(r.items) && r.items[min(k+2, len(r.items)-1)].gap >= gapComma { // "the pen is empty"
			e := &r.items[min(k+1, len(r.items)-1)]
			if e.is(sEmpty) && (e.s == "is empty" || e.s == "empty") && r.fillersBefore(k) {
				e.sense = setOf(sOut, sPigs)
				it.sense = setOf(sFiller)
			}
		}
	}
}

// toldByOther says that what begins at item k is what somebody told of our pigs:
// "neighbor called, pigs are out".
func (r *reader) toldByOther(k int) bool {
	who, told := false, false
	for n := r.sentenceStart(k); n < k; n++ {
		it := &r.items[n]
		who = who || it.is(sForeign) || household[it.s] || it.s == "someone" || it.s == "somebody" || it.s == "they"
		told = told || callWords[it.s] || callWords[lastWord(it.s)]
	}
	return who && told
}

// newsOfOurs says that an alarm about the person's own pigs was brought by others:
// "neighbor says my pigs are out", not "neighbor says his pigs are out".
func (r *reader) newsOfOurs(s span) bool {
	if s.frame != fAlarm {
		return false
	}
	for k := r.sentenceStart(s.i); k < s.j; k++ {
		switch it := &r.items[k]; {
		case it.s == "his pigs", it.s == "her pigs", it.s == "their pigs", it.is(sPigs) && r.ownerBefore(k):
			return false
		case it.isAny(setOf(sPigs, sOut, sDown, sNoWater, sNoFeed)) && r.toldByOther(k):
			return !r.items[max(k-1, 0)].is(sForeign) && it.s != "at the neighbors"
		}
	}
	return false
}

// callWords are the verbs that bring news.
var callWords = setOfWords(split(`called, says, said, texted, phoned, rang, told me, told us, hollered, yelled, messaged, calls, calling, knocked, stopped by, came by, came over, reports, reported, just called`))

// outTold forces the words of pigs that are out into an alarm, where they and
// what befell them stand together.
func (r *reader) outTold(k int) bool {
	it := &r.items[k]
	if !it.is(sOut) || it.pig >= 0 || it.isAny(setOf(sBackIn)) || r.isQuestion(k) {
		return false
	}
	if it.is(sPigs) && (r.closes(k) || r.outsidePen(k) || it.s == "nobody" || it.s == "no one") {
		r.forceRange(k, k+1, fAlarm)
		return true
	}
	n := r.straySubject(k)
	if n < 0 {
		return false
	}
	for x := k + 1; x < r.clauseEnd(k); x++ {
		if r.items[x].pen >= 0 && r.items[x].pig < 0 {
			return false // "pigs out of oak into creek"
		}
	}
	if b := r.sentenceBefore(n); b != nil && (b.isAny(setOf(sMove, sPour, sTook, sFill, sSold, sWeigh, sTape)) || b.s == "let" || b.s == "turned" || b.s == "let out") {
		return false
	}
	r.forceRange(n, k+1, fAlarm)
	return true
}

// sentenceBefore is the item before k in its clause, nil if it begins one.
func (r *reader) sentenceBefore(k int) *item {
	if k == 0 || r.items[k].gap >= gapComma {
		return nil
	}
	return &r.items[k-1]
}

// outOfWhat parts "out of" something from being out: of feed and water there is
// none left, out of the pen is out, and out of anything else is no affair of ours.
func (r *reader) outOfWhat() {
	for k := 0; k+1 < len(r.items); k++ {
		it := &r.items[k]
		of := k + 1
		switch {
		case !it.isAny(setOf(sOut, sEmpty, sNoFeed, sNoWater)) && it.s != "out of":
			continue
		case it.s == "out of" || strings.HasSuffix(it.s, " out of"):
			of = k
		case lastWord(it.s) == "out" && (r.items[of].s == "of feed" || r.items[of].s == "of water") && r.items[of].gap == gapNone && it.pig < 0:
			if of+1 < len(r.items) && r.items[of+1].is(sShed) { // of the store, not of the pen
				it.sense = setOf(sFiller)
				continue
			}
			it.sense = setOf(map[string]sense{"of feed": sNoFeed, "of water": sNoWater}[r.items[of].s])
			r.items[of].sense, r.items[of].used = setOf(sFiller), true
			continue
		case lastWord(it.s) != "out" || r.items[of].s != "of" || r.items[of].gap != gapNone || it.pig >= 0:
			continue
		}
		if of+1 >= len(r.items) || r.items[of+1].gap != gapNone {
			continue
		}
		n := of + 1
		for n+1 < len(r.items) && n < of+3 && r.items[n].is(sFiller) && r.items[n].kind == itWord && r.items[n+1].gap == gapNone && r.items[n].s != "here" && r.items[n].s != "town" {
			n++
		}
		x := &r.items[n]
		var is sense
		switch {
		case x.is(sWater) && !x.is(sBarrel) && x.barrel < 0:
			is = sNoWater
		case x.is(sFeed) && !x.is(sFeeder) && x.feeder < 0:
			is = sNoFeed
		case x.isAny(setOf(sPen, sFence, sIngredient, sShed, sFeeder, sBarrel, sWorm, sProduct, sAway)), x.pen >= 0, x.feeder >= 0, x.barrel >= 0, x.pig >= 0, x.number(), x.kind == itQty, x.kind == itFrac, x.is(sPronoun), x.s == "it", x.s == "there", x.s == "here":
			continue
		default:
			if r.knownPhrase(it) {
				continue
			}
			is = sFiller
		}
		it.sense = setOf(is)
		for m := k + 1; m <= n; m++ {
			r.items[m].sense, r.items[m].kind, r.items[m].used = setOf(sFiller), itWord, true
		}
	}
}

// knownPhrase says that a phrase names what it is out of by itself.
func (r *reader) knownPhrase(it *item) bool {
	return it.isAny(setOf(sNoWater, sNoFeed, sAway, sWaste))
}

// lastWord is the last word of a phrase.
func lastWord(s string) string {
	return s[strings.LastIndexByte(s, ' ')+1:]
}
