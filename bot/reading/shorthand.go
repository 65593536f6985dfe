package reading

import "strings"

// The letters of a list: what they stand for is told by what stands beside them.

// afterBefore are what people do things before: "b4 bed".
var afterBefore = setOfWords(split("bed, bedtime, noon, dark, work, lunch, supper, dinner, breakfast, church, school, dawn, sunrise, sunset, i, we, the, it"))

// spellOut writes the letters of a list out as words: "160 F", "W ok", "f 5.6".
// An F behind a number is degrees where the piece of the list names no feeder or
// barrel and the number can be a temperature.
func (r *reader) spellOut() {
	for i := 0; i+1 < len(r.toks); i++ {
		if t := &r.toks[i]; t.s == "sat" && (r.toks[i+1].s == "down" || r.toks[i+1].s == "around" || r.toks[i+1].s == "there") {
			t.s = "stayed" // no saturday
		}
	}
	for i := 1; i+1 < len(r.toks); i++ { // "where we're they"
		if r.toks[i].s == "we're" && wereAfter[r.toks[i-1].s] && wereBefore[r.toks[i+1].s] {
			r.toks[i].s = "were"
		}
	}
	for i := 1; i+1 < len(r.toks); i++ { // "the last bag"
		if r.toks[i].s == "last" && r.unitAt(i+1).dim() == vessel && r.toks[i+1].s[len(r.toks[i+1].s)-1] != 's' && (r.toks[i-1].s == "the" || r.toks[i-1].s == "my" || r.toks[i-1].s == "our") {
			r.toks[i].s = "one"
		}
	}
	for i := 0; i+2 < len(r.toks); i++ { // "a pair of 55 gallon barrels"
		if r.toks[i].s == "pair" && r.toks[i+1].s == "of" && r.toks[i+2].s != "them" && r.toks[i+2].s != "em" {
			from := i
			if i > 0 && r.toks[i-1].s == "a" {
				from--
			}
			r.toks[from].s, r.toks[from].to = "two", r.toks[i+1].to
			r.toks = append(r.toks[:from+1], r.toks[i+2:]...)
		}
	}
	for i := 0; i+1 < len(r.toks); i++ { // "too bags", as a machine hears two of them
		t := &r.toks[i]
		if w, ok := soundsLike[t.s]; ok && r.unitAt(i+1).dim() == vessel && r.unitAt(i+1) != unitBale && !r.toks[i+1].capital && strings.HasSuffix(r.toks[i+1].s, "s") && (i == 0 || r.toks[i-1].kind != tokNum) {
			t.s = w
		}
	}
	for i := 1; i+2 < len(r.toks); i++ { // "30 in. round", "39 in., length 43", a shortened word and no end of a sentence
		if stop := &r.toks[i+1]; shortUnits[r.toks[i].s] && r.toks[i-1].kind == tokNum && stop.kind == tokMark && stop.s == "." && (goesOn[r.toks[i+2].s] || r.toks[i+2].s == ",") {
			r.toks = append(r.toks[:i+1], r.toks[i+2:]...)
		}
	}
	for i := 0; i+1 < len(r.toks); i++ { // "gr8"
		t, n := &r.toks[i], &r.toks[i+1]
		if t.s == "gr" && n.s == "8" && !n.spaced {
			t.s, t.to = "great", n.to
			r.toks = append(r.toks[:i+1], r.toks[i+2:]...)
		}
	}
	for i := 0; i+1 < len(r.toks); i++ { // "2 hot 4 them"
		t, n := &r.toks[i], &r.toks[i+1]
		switch {
		case t.s == "2" && tooWhat[n.s] && n.spaced && i > 0 && beforeToo[r.toks[i-1].s]:
			t.kind, t.s = tokWord, "too"
		case t.s == "4" && n.spaced && (n.s == "them" || n.s == "em" || n.s == "me" || n.s == "us"):
			t.kind, t.s = tokWord, "for"
		}
	}
	for i := range r.toks {
		t := &r.toks[i]
		if t.kind != tokWord || len(t.s) != 1 || t.s != "f" && t.s != "w" {
			continue
		}
		first := r.beginsPiece(i)
		next := &token{kind: tokBreak}
		if i+1 < len(r.toks) {
			next = &r.toks[i+1]
		}
		switch {
		case t.s == "w" && first && (next.kind == tokWord || next.kind == tokBreak && i > 0):
			t.s = "water"
		case t.s == "f" && first && next.kind == tokNum && next.v <= highestFence && next.spaced:
			t.s = "fence"
		case t.s == "f" && !first && next.kind != tokNum && r.fullHere(i):
			t.s = "full"
		}
	}
}

// beforeFour writes "b4 noon" out, where nothing is called B4.
func (r *reader) beforeFour() {
	for i := 0; i+1 < len(r.toks); i++ {
		t, n := &r.toks[i], &r.toks[i+1]
		if t.s != "b" || n.s != "4" || n.spaced {
			continue
		}
		if _, count := r.nameAt(i); count > 1 && !(i+2 < len(r.toks) && afterBefore[r.toks[i+2].s]) {
			continue
		}
		t.s, t.to = "before", n.to
		r.toks = append(r.toks[:i+1], r.toks[i+2:]...)
	}
}

// wereAfter and wereBefore are the words around a "were" that a machine made "we're" of.
var (
	wereAfter  = setOfWords(split("where, what, how, who, when, they, pigs, there"))
	wereBefore = setOfWords(split("they, the, my, our, all, those, these"))
)

// tooWhat are the words before which a 2 is "too".
var tooWhat = setOfWords([]string{"hot", "cold", "warm", "heavy", "big", "small", "fat", "thin", "much", "many", "late", "early", "wet", "dry"})

// beforeToo are the words behind which such a 2 stands, so that it numbers nothing.
var beforeToo = setOfWords([]string{"is", "it", "its", "it's", "are", "r", "they", "they're", "theyre", "he", "she", "hes", "shes", "way", "getting", "not", "them", "em"})

// shortUnits are units that people write with a full stop.
var shortUnits = setOfWords([]string{"in", "lb", "lbs", "gal", "gals", "ft", "min", "mins", "hr", "hrs", "oz"})

// goesOn are words behind such a full stop with which the sentence goes on.
var goesOn = setOfWords([]string{"of", "round", "around", "long", "girth", "by", "x", "wide", "deep", "tall", "high", "each", "apiece"})

// soundsLike are words that a number of bags is heard as.
var soundsLike = map[string]string{"to": "two", "too": "two", "for": "four", "fore": "four", "won": "one", "tree": "three", "ate": "eight", "sex": "six"}

// highestFence is the most kilovolts that a bare number beside an F is taken for.
// Common practice, no source.
const highestFence = 12

// Between these a number before an F can be a temperature in degrees Fahrenheit.
const coldestF, hottestF = -40, 125

// beginsPiece says that nothing but a mark stands before token i in its line.
func (r *reader) beginsPiece(i int) bool {
	return i == 0 || r.toks[i-1].kind == tokBreak || r.toks[i-1].kind == tokMark && r.toks[i-1].s != "°" && r.toks[i-1].s != "'"
}

// fullHere says that the F at token i is "full": something to fill stands in its
// piece of the list, or a number that is no temperature.
func (r *reader) fullHere(i int) bool {
	p := &r.toks[i-1]
	if p.kind == tokMark {
		return false
	}
	if p.kind == tokSlash && (p.v > hottestF || p.v2 > hottestF) || p.kind == tokNum && (p.v > hottestF || p.v < coldestF) {
		return true
	}
	for k := i - 1; k >= 0 && r.toks[k].kind != tokBreak; k-- {
		t := &r.toks[k]
		if t.kind == tokMark {
			return false
		}
		if h, n := r.nameAt(k); n > 0 && (h.feeder >= 0 || h.barrel >= 0) {
			return true
		}
		if m := r.lex.of[t.s]; t.kind == tokWord && m != nil && m.sense.any(setOf(sFeeder, sBarrel, sFeed, sWater, sWatered)) {
			return true
		}
	}
	return false
}

// enumerator says that the number at token i only counts the lines of a list:
// "2) filled the small hopper".
func (r *reader) enumerator(i int) bool {
	t := &r.toks[i]
	if t.kind != tokNum || t.decimals > 0 || t.v < 1 || t.v > 30 || i > 0 && r.toks[i-1].kind != tokBreak || i+2 >= len(r.toks) {
		return false
	}
	return r.toks[i+1].kind == tokMark && r.toks[i+1].s == ")" && !r.toks[i+1].spaced
}
