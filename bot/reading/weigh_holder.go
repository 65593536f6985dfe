package reading

// A pig weighed with a crate or in somebody's arms: "hazel 241 less 55 for the crate",
// "me and fern 255, i'm 168".

// takenOff says that the number at item k is what is to be taken off a weight told in
// the same span: that of the crate, or of the person who held the pig.
func (r *reader) takenOff(k int, s span, crate bool) bool {
	held := r.heldBy(s)
	if !crate && !held {
		return false
	}
	another := false
	for n := s.i; n < s.j; n++ {
		it := &r.items[n]
		another = another || n != k && (it.kind == itNum && !it.soft && !it.ord || it.qty(mass))
	}
	if !another {
		return false
	}
	if k > s.i && lessWords[r.items[k-1].s] {
		return true
	}
	if !held {
		return false
	}
	for n := k - 1; n >= s.i && n >= k-2; n-- {
		it := &r.items[n]
		if holders[it.s] {
			return n == s.i || r.items[n-1].gap > gapNone || it.gap > gapNone || it.s != "me" || !joinsHolder[r.items[n-1].s] && it.gap != gapAnd
		}
		if !it.isAny(setOf(sFiller, sIs, sWeigh, sAbout)) && it.s != "alone" {
			break
		}
	}
	return k+1 < s.j && r.items[k+1].s == "without"
}

// heldBy says that a span tells of a pig weighed together with who held it.
func (r *reader) heldBy(s span) bool {
	for k := r.clauseFrom(s.i); k < s.j; k++ {
		switch r.items[k].s {
		case "holding", "holding her", "holding him", "held", "with me", "together", "me", "without me":
			return true
		}
	}
	return false
}

// lessWords stand before what is taken off.
var lessWords = setOfWords(split("less, minus, less the, minus the"))

// holders are the words for who held the pig, before the own weight.
var holders = setOfWords(split("me, i'm, im, i am, i weigh, i, me alone, myself, just me, i was, mine"))

// joinsHolder are words before "me" that make the weight one of both.
var joinsHolder = setOfWords(split("and, with, plus, &"))
