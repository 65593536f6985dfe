package reading

import "strings"

// Words that look like a death, a pig that lies down or a filling, and are none where
// they stand: "dead lame", "i'm down with the flu", "write that down", "was dead by the
// east tank".

// misleadingWords takes from such words what they do not tell.
func (r *reader) misleadingWords() {
	for k := range r.items {
		it := &r.items[k]
		switch {
		case it.is(sDied) && (it.s == "dead" || isDead[it.s]) && r.onlyVery(k):
			r.blank(k)
		case it.is(sDown) && firstWord(it.s) == "down" && it.pig < 0 && r.writtenDown(k):
			r.blank(k)
		case it.s == "down" && it.pig < 0 && r.downTheRoad(k):
			if it.sense = setOf(sFiller); r.pigWalks(k) {
				it.sense = setOf(sOut)
			}
		case it.s == "everything" && it.is(sAll) && k > 0 && it.gap == gapNone && r.items[k-1].is(sSick): // "threw up everything"
			it.sense = setOf(sFiller)
		case (it.s == "butt" || it.s == "butts") && it.barrel < 0 && r.ofBody(k):
			it.sense = setOf(sFiller)
		case it.is(sDown) && firstWord(it.s) == "down" && r.personDown(k):
			for n, end := k, r.clauseEnd(k); n < end; n++ {
				r.blank(n)
			}
		case it.is(sOut) && lastWord(it.s) == "loose" && r.looseDung(k):
			it.sense = setOf(sSick)
		case it.is(sOut) && it.pig < 0 && r.visitorOut(k):
			it.sense = setOf(sFiller)
		case it.is(sDied) && it.pig < 0:
			r.lyingBeside(k)
		case it.s == "took" && it.is(sTook) && !r.tookAmount(k):
			it.sense.drop(sTook)
		}
	}
}

// tookAmount says that an amount stands behind the "took" at item k: not "took a peek",
// nor "took 6 days off the box".
func (r *reader) tookAmount(k int) bool {
	for n := k + 1; n < r.clauseEnd(k) && n <= k+4; n++ {
		switch it := &r.items[n]; {
		case it.kind == itQty:
			return it.unit.dim() == mass || it.unit.dim() == volume || it.unit.dim() == vessel || it.unit.dim() == percent
		case it.kind == itNum && (!it.soft || it.s == "one"), it.kind == itFrac, it.is(sAll):
			return true
		}
	}
	return false
}

// onlyVery says that the "dead" at item k does but strengthen the word behind it:
// "dead lame", "dead slow".
func (r *reader) onlyVery(k int) bool {
	if k+1 >= len(r.items) || r.items[k+1].gap != gapNone || r.items[k+1].pig >= 0 {
		return false
	}
	if r.items[k+1].s == "on" { // "dead on 210"
		return k+2 >= len(r.items) || r.items[k+2].number() && !r.items[k+2].soft || r.items[k+2].gap >= gapStop
	}
	return deadVery[firstWord(r.items[k+1].s)]
}

var isDead = setOfWords(split(`is dead, was dead, are dead, were dead`))

// deadVery are words that stand behind a "dead" that means "very".
var deadVery = setOfWords(split(`lame, slow, tired, sore, weak, keen, quiet, calm, lazy, easy, certain, serious, beat, hungry, thirsty, worn, even, equal, level, set, asleep, center, centre, centered, centred, sure, simple, broke, drunk, silent, cheap, common, ringer, ringers, accurate, exact, steady, square, bored`))

// writtenDown says that the "down" at item k belongs to a wish to write: "write that
// down", "jot it down".
func (r *reader) writtenDown(k int) bool {
	for n := k - 1; n >= r.clauseFrom(k) && n >= k-3 && r.items[n+1].gap == gapNone; n-- {
		switch firstWord(r.items[n].s) {
		case "write", "wrote", "writing", "jot", "jotted", "note", "noted", "mark", "marked", "scribble", "scribbled":
			return true
		}
		if r.items[n].pig >= 0 || r.items[n].number() || !r.items[n].isAny(setOf(sPronoun, sFiller)) || r.items[n].isAny(setOf(sPigs)) {
			return false
		}
	}
	return false
}

// looseDung says that the "loose" at item k tells of dung: "loose and yellow".
func (r *reader) looseDung(k int) bool {
	for n := k + 1; n < len(r.items) && n <= k+2 && r.items[n].gap < gapStop; n++ {
		if strings.HasPrefix(r.items[n].s, "water") {
			r.blank(n)
			return true
		}
		switch r.items[n].s {
		case "yellow", "runny", "brown", "gray", "grey", "green", "smelly", "bloody", "poop", "stool", "stools", "dung", "bowels", "manure", "yellowish", "stinky":
			return true
		case "and", "n":
		default:
			return false
		}
	}
	return false
}

// visitorOut says that who was out is a visitor of the place: "the farrier was out".
func (r *reader) visitorOut(k int) bool {
	for n := k - 1; n >= r.clauseFrom(k) && n >= k-4; n-- {
		it := &r.items[n]
		if visitors[lastWord(it.s)] || visitors[firstWord(it.s)] {
			return true
		}
		if it.pig >= 0 || it.kind != itWord || !it.isAny(setOf(sFiller, sIs)) {
			return false
		}
	}
	return false
}

// visitors come out to a place.
var visitors = setOfWords(split("vet, farrier, electrician, plumber, inspector, dentist, surveyor, preacher, pastor, doctor, fencer, fence guy, guy, man, lady, crew, mechanic, adjuster, agent, teacher, lineman, serviceman, contractor, builder, roofer, mailman, postman, sheriff, warden"))

// personDown says that a person is down with something: "im down with the flu", "my
// wife is down with a cold".
func (r *reader) personDown(k int) bool {
	if k+1 >= len(r.items) || firstWord(r.items[k+1].s) != "with" && r.items[k].s != "down with" {
		return false
	}
	for n := k + 1; n < r.clauseEnd(k); n++ { // "we are down with one pig"
		if it := &r.items[n]; it.pig >= 0 || it.number() || it.isAny(setOf(sPigs, sFeed, sFeeder, sBarrel, sOut)) {
			return false
		}
	}
	for n := k - 1; n >= r.clauseFrom(k) && n >= k-5; n-- {
		it := &r.items[n]
		if it.pig >= 0 || it.is(sPigs) || it.number() && !it.soft {
			return false
		}
		if persons[firstWord(it.s)] || persons[lastWord(it.s)] {
			return true
		}
	}
	return false
}

// persons are words for people who may fall ill beside the pigs.
var persons = setOfWords(split(`i, im, i'm, i've, ive, we, we're, were, i am, we are, me, us, wife, husband, hubby, kid, kids, son, daughter, mother, mom, mum, dad, father, sister, brother, family, boy's, neighbor, neighbour, grandson, granddaughter, partner`))

// lyingBeside takes the barrel, feeder or wallow that but says where a dead one lay:
// "one of em was dead by the east tank".
func (r *reader) lyingBeside(k int) {
	end := r.clauseEnd(k)
	at := -1
	for n := k + 1; n < end; n++ {
		it := &r.items[n]
		switch {
		case lyingWords[it.s] && at < 0:
			at = n
		case at >= 0 && (it.barrel >= 0 || it.feeder >= 0 || it.isAny(setOf(sBarrel, sFeeder, sWallow, sFence))):
		case it.number() && !it.soft, it.isAny(setOf(sFull, sEmpty, sFill, sPour)) && !it.isAny(setOf(sFiller, sBarrel, sFeeder)), it.kind == itFrac, it.pig >= 0:
			return
		}
	}
	for n := at; at >= 0 && n < end; n++ {
		if it := &r.items[n]; it.barrel >= 0 || it.feeder >= 0 || it.isAny(setOf(sBarrel, sFeeder, sWallow, sFence)) {
			r.blank(n)
		}
	}
}

// lyingWords lead up to where something lies.
var lyingWords = setOfWords(split(`by, near, beside, next to, behind, under, at, in, in front of, close to, against, by the, near the, beside the, next to the, behind the, under the, at the, in the, close to the`))

// wentFor takes "went for" and its like between a pig and money for a sale: "203 went
// for $410", "clover fetched 380 dollars".
func (r *reader) wentFor() {
	for k := 1; k+1 < len(r.items); k++ {
		it, p := &r.items[k], &r.items[k-1]
		if p.pig < 0 || it.gap != gapNone || it.quest {
			continue
		}
		n := k + 1
		switch it.s {
		case "went":
			if r.items[n].s != "for" || n+1 >= len(r.items) {
				continue
			}
			n++
		case "went for", "fetched", "brought", "brought in", "made", "sold at":
		default:
			continue
		}
		if r.items[n].qty(money) && r.items[n].gap == gapNone && (n+1 >= len(r.items) || r.items[n+1].s != "of") {
			it.sense, it.unit = setOf(sSold), 0
		}
	}
}

// sacksNamedAhead gives the counts of a sentence of nothing but counts and goods the
// measure that the sentence before it told as come: "the sacks came. 12 barley 6 wheat".
func (r *reader) sacksNamedAhead() {
	for k := 1; k < len(r.items); k++ {
		if r.items[k].gap < gapComma || r.items[k].kind != itNum {
			continue
		}
		var unit unitID
		came := false
		for n := r.sentenceStart(k - 1); n < k; n++ {
			it := &r.items[n]
			switch {
			case it.kind == itWord && it.unit.dim() == vessel && it.unit != unitBale:
				unit = it.unit
			case goodsCame[it.s], it.isAny(setOf(sBuy)):
				came = true
			case it.number() && !it.soft, it.isAny(setOf(sNot, sPlan)):
				unit = 0
			}
		}
		if unit == 0 || !came {
			continue
		}
		end := r.sentenceEnd(k)
		pairs := 0
		for n := k; n < end; {
			for n < end && r.items[n].kind == itWord && r.items[n].is(sFiller) && r.items[n].canon == "" {
				n++
			}
			if n+1 >= end || r.items[n].kind != itNum || r.items[n].soft || r.items[n].ord || r.items[n].v > mostSacks || !r.items[n+1].is(sIngredient) {
				pairs = 0
				break
			}
			pairs++
			n += 2
		}
		if pairs == 0 {
			continue
		}
		for n := k; n < end; n++ {
			if r.items[n].kind == itNum {
				r.items[n].kind, r.items[n].unit = itQty, unit
			}
		}
		for n := r.sentenceStart(k - 1); n < k; n++ {
			r.blank(n)
		}
	}
}

// mostSacks is the most that a bare count of sacks is taken for; more are a weight.
const mostSacks = 60

var goodsCame = setOfWords(split(`came, arrived, here, are here, got here, came in, delivered, were delivered, is here, have come, showed up`))

// othersWish says that somebody else than the person is told to want something before
// item k.
func (r *reader) othersWish(k int) bool {
	who := false
	for n := r.sentenceStart(k); n < k; n++ {
		it := &r.items[n]
		who = who || it.pig < 0 && (it.is(sForeign) || household[it.s] || strangers[lastWord(it.s)])
		if who && it.is(sPlan) && strings.HasPrefix(it.s, "wants") {
			return true
		}
	}
	return false
}

// relativeWhich takes a "which" behind a comma that goes on about what was told for no
// question: "nine bags went in, which did not fill it". So is a "when" that says at what
// time something is so: "moss squeals when i pick her up".
func (r *reader) relativeWhich() {
	for k := 1; k < len(r.items); k++ {
		if it := &r.items[k]; it.is(sNote) && lastWord(it.s) == "year" && (r.othersWish(k) || it.s == "next year" && r.supposedBefore(k)) {
			it.sense = setOf(sFiller) // "the kid wants to show otis next year"
		}
	}
	for k := 1; k+1 < len(r.items); k++ {
		it := &r.items[k]
		if it.s == "when" && !it.quest && r.whileWhen(k) && r.find(span{0, r.sentenceStart(k), k}, sTopic) < 0 {
			it.sense = setOf(sFiller)
			continue
		}
		if it.s != "which" || it.gap != gapComma || it.quest || !r.items[k+1].isAny(setOf(sNot, sFill, sTook, sPour, sIs)) {
			continue
		}
		if !r.amountless(r.sentenceStart(k), k) && !r.questionStart(r.sentenceStart(k)) {
			it.sense.drop(sAsk)
			it.sense.drop(sAskSure)
		}
	}
}

// downTheRoad says that the "down" at item k leads along a way: "strolling down the county
// road".
func (r *reader) downTheRoad(k int) bool {
	for n := k + 1; n < len(r.items) && n <= k+4 && r.items[n].gap == gapNone; n++ {
		it := &r.items[n]
		if ways[lastWord(it.s)] {
			return n > k+1
		}
		if it.kind != itWord || it.pig >= 0 {
			return false
		}
	}
	return false
}

// pigWalks says that a pig is who goes where the word at item k leads: "otis is strolling
// down the road".
func (r *reader) pigWalks(k int) bool {
	for n := k - 1; n >= r.clauseFrom(k); n-- {
		switch it := &r.items[n]; {
		case it.pig >= 0, it.isAny(setOf(sPigs)):
			return true
		case !strolling[lastWord(it.s)] && !it.isAny(setOf(sIs, sFiller)):
			return false
		}
	}
	return false
}

var strolling = setOfWords(split("strolling, trotting, walking, wandering, running, moseying, heading, going, ambling, headed, trotted, ran, strolled, walked, wandered, marching, marched, galloping, loping"))

// ways are what a loose pig walks along.
var ways = setOfWords(split("road, street, lane, highway, drive, driveway, track, path, alley, avenue, hill, hillside, blacktop, gravel, freeway, interstate, sidewalk"))

// ofBody says that the butt at item k is a pig's: "411 has a dirty butt".
func (r *reader) ofBody(k int) bool {
	for n := r.clauseFrom(k); n < k; n++ {
		if it := &r.items[n]; it.pig >= 0 || it.group >= 0 || it.isAny(setOf(sPigs, sSick)) || heOrShe[it.s] {
			return true
		}
	}
	return false
}
