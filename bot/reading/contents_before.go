package reading

import "strings"

// What a feeder or a barrel held before anything went in.

// holdsNow says that the words before item k, in items[i:k] or right before them,
// tell what a thing has in it and not what went into it: "big has 100 lb in it",
// "still 100 in big".
func (r *reader) holdsNow(i, k int) bool {
	for i > r.clauseFrom(k) && (r.items[i-1].is(sFiller) || r.items[i-1].s == "still") {
		i--
	}
	for n := i; n < k; n++ {
		it := &r.items[n]
		switch {
		case it.isAny(setOf(sFill, sPour, sTook, sWatered)) && it.kind == itWord:
			return false
		case it.s == "has" && n+1 < k && (r.items[n+1].s == "been" || r.items[n+1].s == "had" || r.items[n+1].s == "got"):
			return false
		case it.s == "has" || it.s == "have" || strings.HasPrefix(it.s, "still"), strings.HasPrefix(it.s, "has about"), strings.HasSuffix(it.s, " still"):
			return n == i || it.s != "have"
		}
	}
	return false
}

// goneBehind are words behind a part that say that it is the part missing.
var goneBehind = setOfWords(split("empty, gone, down, dry, used, used up, eaten, low, drained, out"))

// fractionLeft says that the level in items[i:j] is what is left, though a word of
// filling may stand beside it: "has got a third left in it", "down to a quarter".
func (r *reader) fractionLeft(i, j int) bool {
	at, left := -1, false
	for k := i; k < j; k++ {
		it := &r.items[k]
		if at >= 0 && it.gap >= gapAnd && r.fillsOther(k) {
			break
		}
		if it.isAny(setOf(sFill, sPour, sTook)) && it.kind == itWord && it.pig < 0 && it.s != "got" && it.s != "in it" && it.s != "'s got" && it.s != "has got" && !it.is(sFull) {
			return false
		}
		if it.kind == itFrac || it.qty(percent) {
			at = k
			left = strings.HasSuffix(it.s, " left")
		}
		left = left || at >= 0 && k <= at+3 && (it.is(sLeft) || it.s == "left in it" || it.s == "left")
	}
	if at < 0 {
		return false
	}
	for n := at - 1; n >= i && n >= at-4; n-- {
		switch it := &r.items[n]; {
		case it.s == "down to", it.s == "dropped to", it.s == "fell to", it.s == "sank to", it.s == "went to", it.s == "is down to", it.s == "to" && n > i && (r.items[n-1].s == "down" || r.items[n-1].s == "dropped" || r.items[n-1].s == "fell"):
			return true
		case !it.isAny(setOf(sFiller, sAbout)):
			return left
		}
	}
	return left
}

// fillsOther says that the clause of item k fills a thing that it names.
func (r *reader) fillsOther(k int) bool {
	verb := false
	for n := k; n < r.clauseEnd(k); n++ {
		it := &r.items[n]
		if verb && (it.barrel >= 0 || it.feeder >= 0) {
			return true
		}
		verb = verb || it.isAny(setOf(sFill, sPour)) && it.kind == itWord
	}
	return false
}

// levelBefore says that a level is told as it was before the pouring.
func (r *reader) levelBefore(i, j int) bool {
	was, level := false, false
	for k := i; k < j; k++ {
		it := &r.items[k]
		switch {
		case it.s == "was" || it.s == "were" || it.s == "had" || it.s == "was at" || it.s == "were at":
			was = was || !level
		case level && was && it.number() && !it.soft && r.thenBetween(i, k): // "was at a third, then 1 sack in"
			return true
		case it.kind == itFrac:
			level = was || r.poursAfter(k, j)
		case it.is(sPour) && it.kind == itWord:
			return level
		}
	}
	return false
}

// thenBetween says that another clause, or a "then", begins between the level told in
// the items from i and item k.
func (r *reader) thenBetween(i, k int) bool {
	for n := k; n > i && r.items[n].kind != itFrac; n-- {
		if r.items[n].gap >= gapComma || r.items[n].s == "then" || r.items[n].s == "so" {
			return true
		}
	}
	return false
}

// poursAfter says that a clause behind the level at item k tells what was poured:
// "nearly empty, put in a bag and a half".
func (r *reader) poursAfter(k, j int) bool {
	cut := false
	for n := k + 1; n < j; n++ {
		it := &r.items[n]
		cut = cut || it.gap >= gapComma || it.s == "so"
		if cut && it.is(sPour) && it.s != "in it" && n+1 < j && !r.amountless(n, j) {
			return true
		}
	}
	return false
}

// levelThenFill says that a level is told in a clause of its own before a verb of
// filling: it is what was there before.
func (r *reader) levelThenFill(i, j int) bool {
	at := -1
	for k := i; k < j; k++ {
		it := &r.items[k]
		if it.kind == itFrac || it.qty(percent) {
			at = k
		}
		if at >= 0 && it.is(sFill) && it.kind == itWord {
			for n := at + 1; n <= k; n++ {
				if r.items[n].gap >= gapAnd || firstWord(r.items[n].s) == "so" {
					return true
				}
			}
			return false
		}
	}
	return false
}

// fillThenLevelBefore says that behind a verb of filling stands the level that was
// there before: "filled shed, it was at half".
func (r *reader) fillThenLevelBefore(i, j int) bool {
	verb, was := false, false
	for k := i; k < j; k++ {
		it := &r.items[k]
		switch {
		case it.is(sFill) && it.kind == itWord:
			verb = true
		case verb && (it.s == "was" || it.s == "were" || it.s == "it was" || it.s == "they were" || it.s == "had been" || it.s == "was at" || it.s == "were at"):
			was = true
		case it.kind == itFrac || it.qty(percent):
			return verb && was
		}
	}
	return false
}

// leftBeforeVerb says that what was left is told before the filling.
func (r *reader) leftBeforeVerb(i, j int) bool {
	left, verb := -1, -1
	for k := i; k < j; k++ {
		if r.items[k].is(sLeft) && left < 0 {
			left = k
		}
		if r.items[k].isAny(setOf(sFill, sWatered)) {
			verb = k
		}
	}
	return left >= 0 && verb > left
}
