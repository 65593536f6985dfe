package reading

import "strings"

// What ails a pig is often told without a word of sickness: "walks not good",
// "hasn't been eating", "breathing funny".

// bodyVerbs are what a well animal does; the ones marked are missed when they are
// not done at all.
var bodyVerbs = map[string]bool{
	"eat": true, "eats": true, "eating": true, "eaten": true, "drink": true, "drinks": true, "drinking": true, "poop": true, "pooping": true,
	"walk": false, "walks": false, "walking": false, "breathe": false, "breathes": false, "breathing": false, "breath": false, "act": false, "acts": false, "acting": false,
	"look": false, "looks": false, "looking": false, "seem": false, "seems": false, "feels": false, "feeling": false, "moving": false, "moves": false, "sounds": false, "sounding": false,
	"stand": false, "stands": false, "standing": false, "grunting": false, "touching": true, "touch": true, "touched": true,
}

// illWords behind such a verb say that it is done badly.
var illWords = map[string]bool{
	"bad": true, "badly": true, "funny": true, "weird": true, "strange": true, "strangely": true, "odd": true, "oddly": true, "poorly": true, "crooked": true,
	"wobbly": true, "hardly": true, "barely": true, "tired": true, "sad": true, "miserable": true, "depressed": true, "down": false, "terrible": true, "awful": true, "rough": true,
	"unsteady": true, "shaky": true, "gimpy": true, "ragged": true, "pale": true, "dull": true, "sickly": true, "crappy": true, "puny": true, "wrong": true, "lame": true, "stiff": true,
	"hunched": true, "sideways": true, "heavily": true, "worse": true,
}

// wellWords behind a "not" say that it is not done as it should be.
var wellWords = map[string]bool{
	"good": true, "well": true, "right": true, "much": true, "normal": true, "normally": true, "enough": true, "properly": true, "proper": true, "anything": true,
	"correct": true, "correctly": true, "great": true, "himself": true, "herself": true, "straight": true, "happy": true, "healthy": true, "as usual": true, "so good": true,
	"too good": true, "so hot": true, "too hot": true, "very well": true, "fine": true, "her": true, "his": true, "their": true, "its": true, "food": true, "feed": true, "the": true,
}

// unwell gives the sense of sickness to what is told of a pig that does a thing of
// the body badly or not at all.
func (r *reader) unwell() {
	r.reasonsOfDrugs()
	r.nobodyAils()
	for k := range r.items {
		it := &r.items[k]
		missed, verb := bodyVerbs[it.s]
		if !verb || it.pig >= 0 || it.quest || it.is(sSick) || !r.pigDoes(k) {
			continue
		}
		if n := r.doneBadly(k, missed); n >= 0 {
			for x := min(n, k); x <= max(n, k); x++ {
				r.items[x].sense.drop(sNot)
			}
			it.sense = setOf(sSick)
			r.items[n].used = true
		}
	}
}

// doneBadly is the item that says the verb at k is done badly or not at all, -1 if
// none does.
func (r *reader) doneBadly(k int, missed bool) int {
	for n := k + 1; n < len(r.items) && n <= k+3 && r.items[n].gap < gapAnd; n++ {
		it := &r.items[n]
		switch {
		case it.kind != itWord && !it.soft:
			return -1
		case illWords[it.s]:
			return n
		case it.is(sNot) && n+1 < len(r.items) && r.items[n+1].gap < gapAnd && r.items[n+1].kind == itWord:
			for m := n + 1; m < len(r.items) && m <= n+2; m++ {
				if wellWords[r.items[m].s] {
					return n
				}
			}
			return -1
		}
	}
	for n := k - 1; n >= 0 && n >= k-3 && r.items[n+1].gap < gapAnd; n-- {
		it := &r.items[n]
		if it.s == "hardly" || it.s == "barely" || it.s == "scarcely" {
			return n
		}
		if !it.is(sNot) || it.is(sPlan) && !missed {
			if it.kind == itWord && it.is(sFiller) && !it.is(sPlan) && it.pig < 0 {
				continue
			}
			return -1
		}
		if missed && it.s != "forgot" && it.s != "forgot to" {
			return n
		}
		for m := k + 1; m < len(r.items) && m <= k+2 && r.items[m].gap < gapAnd; m++ {
			if w := r.items[m].s; wellWords[w] && w != "the" && w != "her" && w != "his" && w != "their" && w != "its" && w != "enough" {
				return n
			}
		}
		return -1
	}
	return -1
}

// pigDoes says that a pig is spoken of before the verb at k in its clause, or is
// meant there since its sentence spoke of one.
func (r *reader) pigDoes(k int) bool {
	for n := k - 1; n >= 0 && n >= k-8; n-- {
		it := &r.items[n]
		if it.pig >= 0 || it.group >= 0 || heOrShe[it.s] || it.isAny(whoWords) || it.s == "they" || it.soft && it.kind == itNum {
			return true
		}
		if it.s == "i" || it.s == "we" || it.s == "my" && n == k-1 || it.number() && !it.soft || r.items[n+1].gap >= gapStop {
			return false
		}
	}
	return false
}

// reasonsOfDrugs takes the sense of sickness from what a drug was given for: "gave
// hazel meloxicam for her leg" tells of the treatment.
func (r *reader) reasonsOfDrugs() {
	for k := range r.items {
		it := &r.items[k]
		if it.is(sGave) && (strings.HasPrefix(it.s, "vet ") || strings.HasPrefix(it.s, "the vet ")) {
			it.s = "vet came" // whatever the visit was called
		}
		if !it.is(sSick) || it.is(sTreat) || it.is(sWorm) || k == 0 {
			continue
		}
		from := -1
		for n := k - 1; n >= 0 && n >= k-3 && r.items[n+1].gap == gapNone; n-- {
			if r.items[n].s == "for" {
				from = n
				break
			}
			if !r.items[n].isAny(setOf(sFiller, sPronoun)) && r.items[n].s != "bad" && r.items[n].s != "sore" {
				break
			}
		}
		for n := from - 1; n >= 0 && n >= r.sentenceStart(k); n-- {
			if r.items[n].isAny(setOf(sProduct, sTreat, sWorm)) {
				it.sense.drop(sSick)
				it.sense.add(sFiller)
				break
			}
		}
	}
}

// weighVerbs takes the other meanings from verbs that stand between a pig and what
// it weighs: "moss only made 151", "plum is a bit ahead at 162".
func (r *reader) weighVerbs() {
	for k := 1; k+1 < len(r.items); k++ {
		it := &r.items[k]
		switch it.s {
		case "made", "did", "hit", "came to", "managed", "reached", "got to", "ahead", "behind", "a bit ahead", "a bit behind", "made it to", "up at", "still at", "clocked", "registered":
		default:
			continue
		}
		n := &r.items[k+1]
		if n.s == "at" && k+2 < len(r.items) && n.gap == gapNone {
			n = &r.items[k+2]
		}
		if n.gap > gapNone || n.kind != itNum && !n.qty(mass) || n.soft || n.v < 14 || it.pig >= 0 {
			continue
		}
		for p := k - 1; p >= 0 && p >= k-4 && r.items[p+1].gap < gapComma; p-- {
			if x := &r.items[p]; x.pig >= 0 && int(x.pig) < r.alive {
				it.sense = setOf(sFiller)
				break
			} else if !x.is(sFiller) && !x.is(sIs) && !strings.HasPrefix(x.s, "is ") && x.s != "only" && x.s != "just" {
				break
			}
		}
	}
}

// boughtFromUs turns the buying of a pig of ours by others into its sale: "my
// brother-in-law bought brick off us for 275".
func (r *reader) boughtFromUs() {
	for k := range r.items {
		it := &r.items[k]
		if it.s != "bought" && it.s != "took" && it.s != "got" {
			continue
		}
		pig, off := false, -1
		buyer := it.s == "bought" && k > 0 && r.items[r.sentenceStart(k)].is(sForeign) && !household[r.items[r.sentenceStart(k)].s]
		for n := k + 1; n < len(r.items) && n <= k+7 && r.items[n].gap < gapStop; n++ {
			x := &r.items[n]
			if buyer && x.pig >= 0 && !x.near && int(x.pig) < r.alive {
				off = n // "neighbor bought otis, 300 bucks"
			}
			pig = pig || x.pig >= 0 && int(x.pig) < r.alive || x.isAny(setOf(sPigs, sBarrow, sGilt))
			if x.s == "off us" || x.s == "from us" || x.s == "off me" || x.s == "from me" || x.s == "off of us" || x.s == "off of me" {
				off = n
			}
		}
		if !pig || off < 0 || it.s != "bought" && r.firstQty(span{fGone, k, r.sentenceEnd(k)}, money) < 0 {
			continue
		}
		it.sense = setOf(sSold)
		for n := r.sentenceStart(k); n < k; n++ {
			r.items[n].sense.drop(sForeign) // the buyer
		}
	}
}

// putThere gives verbs of bringing the meaning of a move where pigs and a pen of
// the herd follow: "I have put the three pigs to Hill".
func (r *reader) putThere() {
	for k := range r.items {
		it := &r.items[k]
		if r.pigsPut(k) {
			it.sense = setOf(sMove)
			if r.items[k-1].is(sArrive) {
				r.items[k-1].sense = setOf(sFiller)
			}
			continue
		}
		switch it.s {
		case "put", "brought", "took", "led", "drove", "herded", "chased", "walked", "got", "let", "sent", "ran", "lured",
			"stuck", "popped", "penned", "shut", "plopped", "separated", "isolated", "quarantined", "parked", "locked", "kicked", "shooed", "pushed", "turned", "dragged", "coaxed", "loaded":
		default:
			continue
		}
		pigs := false
		for n := k + 1; n < len(r.items) && n <= k+8 && r.items[n].gap < gapComma; n++ {
			x := &r.items[n]
			if x.pen >= 0 && x.pig < 0 && x.feeder < 0 && x.barrel < 0 && pigs {
				switch r.items[n-1].s {
				case "to", "in", "into", "onto", "on", "the", "over to", "over in", "pen", "paddock", "back to", "back in", "out to", "up in", "out into":
					it.sense = setOf(sMove)
					if k > 0 && r.items[k-1].is(sArrive) {
						r.items[k-1].sense = setOf(sFiller) // "I have | put"
					}
				}
				break
			}
			if x.number() && !x.soft && (n+1 >= len(r.items) || !r.items[n+1].isAny(whoWords)) {
				break
			}
			pigs = pigs || x.pig >= 0 || x.group >= 0 || x.isAny(whoWords) || x.s == "them" || x.s == "em" || (x.s == "her" || x.s == "him") && r.pigNamedBefore(k)
		}
	}
}

// pigsPut says that the word at item k tells that the pigs named before it were put into a
// pen: "the pigs I have put in the Fern Gully".
func (r *reader) pigsPut(k int) bool {
	switch r.items[k].s {
	case "put", "put in", "put into", "brought", "brought to", "led", "led to", "taken", "taken to", "driven":
	default:
		return false
	}
	if k < 2 || r.items[k].gap != gapNone {
		return false
	}
	switch r.items[k-1].s {
	case "i", "we", "i have", "we have", "i've", "we've", "have", "ive", "weve":
	default:
		return false
	}
	pigs, pen := false, false
	for n := r.clauseFrom(k); n < k; n++ {
		pigs = pigs || r.items[n].pig >= 0 || r.items[n].group >= 0 || r.items[n].isAny(setOf(sPigs, sAll))
	}
	for n := k + 1; n < r.clauseEnd(k) && n <= k+4; n++ {
		if it := &r.items[n]; it.number() && !it.soft || it.feeder >= 0 || it.barrel >= 0 {
			return false
		}
		pen = pen || r.items[n].pen >= 0
	}
	return pigs && pen
}

// pigNamedBefore says that one pig is named before item k in its sentence, so that a
// "her" is that one.
func (r *reader) pigNamedBefore(k int) bool {
	named := int16(-1)
	for n := r.sentenceStart(k); n < k; n++ {
		if p := r.items[n].pig; p >= 0 && int(p) < r.alive {
			if named >= 0 && p != named {
				return false
			}
			named = p
		}
	}
	return named >= 0
}

// ownBody says that the sentence of item k tells of the person's own body: "otis
// stepped on my foot and it hurts".
func (r *reader) ownBody(k int) bool {
	for n := r.clauseFrom(k); n+1 < r.clauseEnd(k); n++ {
		if r.items[n].s != "my" {
			continue
		}
		switch r.items[n+1].s {
		case "foot", "feet", "leg", "legs", "back", "hand", "hands", "knee", "knees", "finger", "fingers", "arm", "arms", "toe", "toes", "shoulder", "thumb", "head", "eye", "eyes", "boot", "ear", "bad back", "bad knee":
			return true
		}
	}
	return false
}

// offWhat are words behind an "off" that say off what, so that nothing ails.
var offWhat = map[string]bool{"my": true, "the": true, "me": true, "us": true, "of": true, "to": true, "a": true, "her": true, "his": true, "him": true, "our": true, "this": true, "that": true, "in": true, "on": true}

// nobodyAils takes the sense of sickness from words that are denied of everyone,
// "nobody limping", "no coughing", and from a "bit" that is but a little.
func (r *reader) nobodyAils() {
	for k := 1; k < len(r.items); k++ {
		it := &r.items[k]
		if !it.is(sSick) || it.gap >= gapComma {
			continue
		}
		p := &r.items[k-1]
		if strings.HasPrefix(it.s, "by ") && r.has(span{0, r.clauseFrom(k), k}, sMove) {
			it.sense = setOf(sFiller) // "moved otis by himself"
			continue
		}
		if r.ownBody(k) || r.ownIll(k) {
			it.sense.drop(sSick)
			it.sense.add(sFiller)
			continue
		}
		if it.s == "off" && r.sentenceNames(r.clauseFrom(k), k, dropWords) {
			it.sense = setOf(sFiller) // "dropped otis off at the butcher"
			continue
		}
		if it.s == "off" && k+1 < len(r.items) && r.items[k+1].gap == gapNone && offWhat[r.items[k+1].s] {
			it.sense = setOf(sFiller) // "push him off my boot"
			continue
		}
		if it.s == "bit" && (p.s == "a" || strings.HasSuffix(p.s, " a") || p.s == "little") {
			it.sense = setOf(sFiller)
			continue
		}
		for n := k - 1; n >= 0 && n >= k-4 && r.items[n+1].gap < gapComma; n-- {
			x := &r.items[n]
			if x.s == "nobody" || x.s == "no one" || x.s == "none" || x.s == "none of them" || x.s == "no" || x.s == "nobody's" || x.s == "noone" || x.s == "nothing" {
				it.sense = setOf(sFiller)
				break
			}
			if x.pig >= 0 || !x.isAny(setOf(sFiller, sPronoun, sIs, sOf, sPartOf)) {
				break
			}
		}
	}
}

// passiveGot takes buying and coming from a "got" before what was done to pigs:
// "the other ten got moved to pen 4".
func (r *reader) passiveGot() {
	for k := 0; k+1 < len(r.items); k++ {
		it, n := &r.items[k], &r.items[k+1]
		if it.s != "got" && it.s != "get" && it.s != "gets" || n.gap > gapNone {
			continue
		}
		if r.gotFed(k) {
			if gave := r.lex.of["gave"]; gave != nil {
				it.s, it.sense = "gave", gave.sense
			}
			continue
		}
		if strings.HasSuffix(n.s, "ed") || n.s == "sold" || n.s == "fed" || n.s == "put" || n.s == "taken" || n.s == "hurt" || n.s == "bitten" {
			it.sense = setOf(sFiller)
		}
	}
}

// gotFed says that pigs got what is told behind the "got" at item k, so that it was
// fed and not bought: "little ones got 1 bag".
func (r *reader) gotFed(k int) bool {
	if k == 0 || r.items[k].gap != gapNone || r.items[k].s != "got" {
		return false
	}
	who := &r.items[k-1]
	last := r.lex.of[lastWord(who.s)] // of "the pigs"
	pigs := who.s == "ones" || last != nil && last.sense.any(setOf(sPigs, sBarrow, sGilt, sYoung))
	if who.pig < 0 && who.group < 0 && !(who.kind == itWord && pigs) || who.is(sForeign) {
		return false
	}
	if r.firstQty(span{0, r.sentenceStart(k), r.sentenceEnd(k)}, money) >= 0 {
		return false
	}
	n := &r.items[k+1]
	if n.is(sAbout) && k+2 < len(r.items) && r.items[k+2].gap == gapNone {
		n = &r.items[k+2]
	}
	return n.qty(mass) || n.qty(vessel)
}

// compared takes what only compares off the weighings: the day that a gain is told
// from, "up 9 from last week", and losing, which is of weight where an amount of it
// follows a pig.
func (r *reader) compared() {
	gain := -1
	for k := range r.items {
		it := &r.items[k]
		switch {
		case it.is(sGain) && k+1 < len(r.items) && r.items[k+1].number() && !r.items[k+1].soft:
			gain = k
		case it.kind == itDay && gain >= 0 && k-gain <= 6 && r.items[k-1].gap == gapNone:
			switch r.items[k-1].s {
			case "from", "since", "than", "over", "the", "in":
				it.kind, it.sense, it.day = itWord, setOf(sFiller), dayExpr{}
			}
		case it.s == "down" || it.s == "lost" || it.s == "dropped" || it.s == "off":
			if k == 0 || k+1 >= len(r.items) || r.items[k+1].gap > gapNone || !r.items[k+1].qty(mass) && !(r.items[k+1].kind == itNum && k+2 < len(r.items) && r.items[k+2].s == "from") {
				continue
			}
			for p := k - 1; p >= 0 && p >= k-3; p-- {
				if x := &r.items[p]; x.pig >= 0 && int(x.pig) < r.alive {
					it.sense = setOf(sGain)
					gain = k
				} else if !x.isAny(setOf(sFiller, sIs)) {
					break
				}
			}
		}
	}
}

// dropWords take an "off" behind them: "dropped otis off at the butcher".
var dropWords = setOfWords(split(`dropped, dropping, drop, dropped him, dropped her`))
