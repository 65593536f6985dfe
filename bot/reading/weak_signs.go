package reading

// Words that are a sign of sickness beside a pig only: "off" is one in "moss is off", and
// none in "rode off at dawn"; "bit" is one in "got bit", and none in "bit the strap".

// weakSigns are such words; true are those of what is done, which a pig may do as well.
var weakSigns = map[string]bool{
	"off": false, "thin": false, "poor": false, "slow": false, "rough": false, "dull": false, "weak": false, "picky": false, "stiff": false,
	"by itself": false, "by himself": false, "by herself": false, "by themselves": false,
	"cut": true, "bit": true, "torn": true, "scratching": true, "dragging": true,
}

// weakSignsAlone takes the sense of sickness from such words where no pig is said to be
// so.
func (r *reader) weakSignsAlone() {
	for k := range r.items {
		it := &r.items[k]
		deed, weak := weakSigns[it.s]
		if !weak || !it.is(sSick) || it.pig >= 0 || r.otherSign(k) || k > 0 && r.items[k-1].unit.dim() == nippleCount {
			continue
		}
		if !r.saidOfPig(k) || deed && r.doneTo(k) {
			it.sense.drop(sSick)
			it.sense.add(sFiller)
		}
	}
}

// otherSign says that the clause of item k has a sign that is none of the weak ones.
func (r *reader) otherSign(k int) bool {
	for n := r.clauseFrom(k); n < r.clauseEnd(k); n++ {
		if _, weak := weakSigns[r.items[n].s]; !weak && r.items[n].isAny(setOf(sSick, sDown)) {
			return true
		}
	}
	return false
}

// saidOfPig says that nothing but a verb of being and small words stands between the word
// at item k and a pig, or what a body is said to have: "moss seems a bit off", "got cut".
func (r *reader) saidOfPig(k int) bool {
	for n := k - 1; n >= 0 && r.items[n+1].gap < gapStop; n-- {
		it := &r.items[n]
		switch {
		case it.pig >= 0, it.group >= 0, it.isAny(whoWords), heOrShe[it.s], it.s == "they", it.s == "they're", it.s == "one", it.s == "it", it.s == "number", it.soft && it.kind == itNum, it.stray:
			return true
		case beingWords[lastWord(it.s)], bodyParts[lastWord(it.s)], it.is(sIs), it.is(sFiller) && it.kind == itWord && !it.is(sAt), it.is(sNot):
			continue
		}
		return false
	}
	return true // it begins what is said: "off today, 503"
}

// beingWords are verbs that say how somebody is, beside those of being.
var beingWords = setOfWords(split("look, looks, looking, looked, seem, seems, seemed, seeming, act, acts, acting, acted, feel, feels, feeling, has, have, had, got, gotten, gets, getting, been, went, goes, going, turned, walks, walking, eats, eating, moves, moving, breathing, his, her, its, their, badly, pretty, real, really, kinda, super, awful, awfully, proper, right, still, a, bit, little, mite, tad, touch, today, lately, all"))

// doneTo says that the deed at item k is done to a thing that is no part of a body: "bit
// the strap", "cut her food".
func (r *reader) doneTo(k int) bool {
	if k+1 >= len(r.items) || r.items[k+1].gap != gapNone || k > 0 && passive[lastWord(r.items[k-1].s)] {
		return false
	}
	n := k + 1
	for n < len(r.items) && r.items[n].gap == gapNone && ofThings[r.items[n].s] {
		n++
	}
	return n > k+1 && n < len(r.items) && r.items[n].gap == gapNone && !r.items[n].is(sSick) && !bodyParts[lastWord(r.items[n].s)]
}

var (
	passive   = setOfWords(split("got, gotten, was, is, been, were, are, getting, being"))
	ofThings  = setOfWords(split("the, a, an, my, our, his, her, its, their, that, this"))
	bodyParts = setOfWords(split("tongue, lip, lips, ear, ears, tail, leg, legs, foot, feet, side, nose, snout, shoulder, back, belly, eye, face, cheek, neck, teat, hoof, knee, hock, flank, ham, rump, head, hide, skin"))
)
