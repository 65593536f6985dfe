package reading

import "troughbell/model"

// A pig that went to somebody without a word of money may be sold, given or lent: whether it
// is gone is asked.

// givenAway gives the sense of a sale to "gave otis to the neighbors", "traded otis for a
// goat", "pepper went to live with my cousin"; askGivenAway asks about it.
func (r *reader) givenAway() {
	if r.alive == 0 {
		return
	}
	for k := range r.items {
		it := &r.items[k]
		if it.kind != itWord || it.quest || it.pig >= 0 {
			continue
		}
		end := r.clauseEnd(k)
		switch w := firstWord(it.s); {
		case w == "went" && k > 0 && r.pigGoes(k) && saysAny(r.said(span{0, k, end}), homeTakers) && !r.moreFigures(k):
		case givings[it.s] && k+2 < end && r.items[k+1].pig >= 0 && !r.items[k+1].near && r.items[k+1].gap == gapNone && r.givenTo(k+2, end):
		default:
			continue
		}
		if c := (span{0, r.sentenceStart(k), r.sentenceEnd(k)}); r.has(c, sButcher) || r.has(c, sNot) || r.has(c, sPlan) || r.has(c, sIf) || r.sentenceNames(c.i, c.j, keepsPig) {
			continue
		}
		it.sense, it.unit, it.known = setOf(sSold), 0, true
		for n := k + 1; n < end; n++ {
			if x := &r.items[n]; x.pig < 0 && x.kind != itDay && x.kind != itClock && !x.is(sAnd) && !x.qty(money) {
				r.blank(n)
			}
		}
	}
}

// givings are the verbs of giving a pig away.
var givings = setOfWords(split("gave, given, traded, swapped, donated, gifted, handed"))

// homeTakers are those whom no pig visits by itself.
var homeTakers = phrasesOf("folks, family, families, couple, cousin, cousins, uncle, aunt, buyer, dealer, trader, friend, friends, sister, brother, widow, teacher, coworker, to live with, to live at, home with")

// givenTo says that items from k to end tell who a pig was given to, or that it is away.
func (r *reader) givenTo(k, end int) bool {
	switch r.items[k].s {
	case "away":
		return k+1 == end || !r.items[k+1].number()
	case "to":
		return k+1 < end && (r.sentenceNames(k+1, end, pigTakers) || r.has(span{0, k, end}, sForeign))
	case "for":
		return r.items[k-2].s == "traded" || r.items[k-2].s == "swapped"
	}
	return false
}

// awayUntold says that a departure is but a pig gone to somebody without a price.
func (r *reader) awayUntold(s span, from int) bool {
	went := false
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		went = went || it.kind == itWord && it.is(sSold) && (givings[it.s] || it.s == "went")
	}
	if !went {
		return false
	}
	for _, e := range r.out[from:] {
		f, ok := e.Act.(Fact)
		if !ok {
			return false
		}
		if g, ok := f.Fact.(model.Gone); !ok || g.Amount != nil {
			return false
		}
	}
	return true
}
