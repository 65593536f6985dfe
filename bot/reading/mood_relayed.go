package reading

import "strings"

// What one of the household, or what measures, says of the herd's own animals and
// things is told, as if the person had said it: "mom says tell you fence 4.3",
// "it says 39 around". So is what they did: "my daughter took 45 lb to the hopper".

// relatives are the household by the names that only it uses.
var relatives = map[string]bool{
	"nana": true, "gran": true, "granny": true, "grandma": true, "gramma": true, "nan": true, "oma": true, "opa": true, "lola": true, "lolo": true, "ate": true, "tatay": true, "nanay": true,
	"papa": true, "mama": true, "mommy": true, "daddy": true, "hubby": true, "grandson": true, "my grandson": true, "granddaughter": true, "my granddaughter": true, "hired man": true, "the hired man": true, "boss": true, "helper": true, "the helper": true,
	"brother": true, "my brother": true, "sister": true, "my sister": true, "kuya": true, "my mum": true, "my mother": true, "my father": true, "my grandma": true, "my gran": true, "boy": true, "daughter's": false, "roommate": true, "my roommate": true, "the boss": true, "my helper": true, "sitter": true,
	"grandpa": true, "grandad": true, "granddad": true, "gramps": true, "grandfather": true, "my grandpa": true, "pops": true, "mother in law": true, "my mother in law": true, "father in law": true, "toddler": true, "the toddler": true, "my nephew": true, "my niece": true, "child": true,
}

func ofHouse(s string) bool { return household[s] || relatives[s] }

// sayWords are the verbs that relay.
var sayWords = map[string]bool{"says": true, "said": true, "told me": true, "tells me": true, "he says": true, "she says": true, "reports": true, "texted": true, "reads": true, "say": true, "called": true}

// relayed takes the words out that only say who told it.
func (r *reader) relayed() {
	for k := range r.items {
		it := &r.items[k]
		if it.kind != itWord || it.pig >= 0 || it.quest {
			continue
		}
		switch {
		case strings.HasPrefix(it.s, "i read") && r.measuresNext(k+1):
			it.sense.drop(sHearsay) // "I read the scale wrong"
		case it.s == "according to" && r.measuresNext(k+1):
			it.sense = setOf(sFiller) // "180 according to the tape"
		case (it.s == "vet says" || it.s == "the vet says" || it.s == "vet said" || it.s == "the vet said") && r.vetWeighs(k):
			r.blank(k) // "vet says hazel is 180"
		case (it.s == "says" || it.s == "said") && k > 0 && (r.items[k-1].s == "it" || r.items[k-1].s == "which") && r.amountNext(k+1):
			it.sense.drop(sHearsay) // "it says 39 around"
		case (it.s == "says" || it.s == "say" || it.s == "reads") && k > r.clauseFrom(k) && r.items[k-1].isAny(setOf(sFence, sTape)) && r.items[k-1].kind == itWord && r.amountNext(k+1):
			it.sense.drop(sHearsay) // "fence says 7"
		case sayWords[it.s] && r.houseSays(k):
			r.relay(k)
		case it.is(sForeign) && household[it.s] && r.didOurs(k):
			it.sense.drop(sForeign)
		}
	}
}

// vetWeighs says that the sentence of item k tells what a pig weighs, and of no drug.
func (r *reader) vetWeighs(k int) bool {
	s := span{0, r.sentenceStart(k), r.sentenceEnd(k)}
	return r.eachNamed(s.i, s.j) && !r.has(s, sProduct) && !r.has(s, sWorm) && !r.has(s, sTreat) && r.firstQty(s, days) < 0 && r.amountIn(s.i, s.j)
}

// measuresNext says that what measures stands right behind.
func (r *reader) measuresNext(k int) bool {
	for n := k; n < len(r.items) && n < k+3 && r.items[n].gap == gapNone; n++ {
		if it := &r.items[n]; tellers[it.s] || it.is(sCrate) || it.is(sTape) || it.s == "it" {
			return true
		}
		if !r.items[n].is(sFiller) {
			return false
		}
	}
	return false
}

// amountNext says that a number stands at item k, or behind a word for about.
func (r *reader) amountNext(k int) bool {
	for n := k; n < len(r.items) && n < k+3 && r.items[n].gap == gapNone; n++ {
		if it := &r.items[n]; it.number() && !it.soft || it.kind == itDim || it.kind == itFrac {
			return true
		}
		if !r.items[n].isAny(setOf(sFiller, sAbout, sGirth)) {
			return false
		}
	}
	return false
}

// houseSays says that one of the household stands before the word for saying at
// item k and begins the clause.
func (r *reader) houseSays(k int) bool {
	for n := k - 1; n >= 0 && n >= k-4; n-- {
		it := &r.items[n]
		if ofHouse(it.s) {
			return true
		}
		if it.pig >= 0 || it.gap >= gapSemi || !it.isAny(setOf(sFiller, sPronoun)) && it.known {
			return false
		}
	}
	return false
}

// relay blanks who says it and that it is said, where what follows is of our own:
// "we put", a thing or a pig of the herd, a thing's word and an amount.
func (r *reader) relay(k int) {
	from, end := k, r.sentenceEnd(k)
	for from > 0 && r.items[from].gap < gapSemi && !ofHouse(r.items[from].s) {
		from--
	}
	body := k + 1
	for body < end && body < k+5 && r.sayTail(&r.items[body]) {
		body++
	}
	ours, told := body > k+1 && r.items[k+1].s != "that", false
	for n := body; n < end; n++ {
		it := &r.items[n]
		switch {
		case it.s == "his" || it.s == "theirs" || it.s == "hers" || it.s == "if" || it.is(sIf) && !it.is(sFiller):
			return
		case it.is(sPlan) && it.pig < 0 || it.is(sForeign) && !ofHouse(it.s):
			return
		}
		ours = ours || it.pig >= 0 || it.kind == itThing || it.isAny(setOf(sFeeder, sBarrel, sFence, sWallow)) || it.s == "i" || it.s == "we"
		told = told || it.number() && !it.soft || it.kind == itFrac || it.kind == itDim || it.isAny(setOf(sFull, sEmpty, sSick))
	}
	if !ours || !told {
		return
	}
	for n := from; n < body; n++ {
		if it := &r.items[n]; it.kind == itWord && it.pig < 0 {
			r.blank(n)
		}
	}
}

// sayTail says that a word only leads from the saying to what is said: "to tell
// you that".
func (r *reader) sayTail(it *item) bool {
	switch it.s {
	case "to", "tell", "u", "you", "to tell you", "to tell", "tell you", "that", "to let you know", "let you know", "to say", "me", "us", "the bot":
		return true
	}
	return false
}

// didOurs says that the one of the household at item k is told to have done a chore:
// a verb of it follows, and an amount or a thing of ours.
func (r *reader) didOurs(k int) bool {
	verb := false
	for n := k + 1; n < r.clauseEnd(k); n++ {
		it := &r.items[n]
		if it.isAny(setOf(sNot, sPlan, sHearsay)) || it.s == "his" || it.s == "their" || it.s == "has" || it.s == "have" {
			return false
		}
		if !verb {
			verb = it.isAny(setOf(sFill, sPour, sMove, sWorm, sTreat, sGave, sWatered, sHose, sTape, sMixed, sBuy, sTook))
			if n > k+2 {
				return false
			}
			continue
		}
		if it.pig >= 0 || it.kind == itThing || it.isAny(setOf(sFeeder, sBarrel, sWallow)) {
			return true
		}
	}
	return false
}
