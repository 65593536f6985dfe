package reading

import "strings"

// brokenFence gives the sense of a fence that is down to the words for what breaks
// one, "tree on the fence", "they knocked the wire down in 2 spots", unless it is
// told to be mended.
func (r *reader) brokenFence() {
	for k := range r.items {
		it := &r.items[k]
		if it.is(sOut) && lastWord(it.s) == "fence" && r.holeBefore(k) { // "hole under the fence"
			it.sense = setOf(sFence)
		}
		if !it.is(sFence) || it.pig >= 0 || it.quest {
			continue
		}
		from, to := r.clauseFrom(k), r.clauseEnd(k)
		if r.mended(from, r.sentenceEnd(k)) {
			continue
		}
		for n := max(from, k-breakReach); n < min(to, k+breakReach); n++ {
			x := &r.items[n]
			switch {
			case n == k:
			case holes[x.s] && r.holeIn(n, k):
				r.fenceDown(x)
			case breakers[x.s] && r.lieOn(n, k), n < k && crossers[x.s] && r.sentenceNames(from, n, beasts):
				r.fenceDown(x)
			case x.is(sDown) && n < k && x.pig < 0 && downWith[lastWord(x.s)]: // "the deer took down the fence"
				r.fenceDown(x)
			case breakVerbs[x.s] && n+1 < to && crossers[r.items[n+1].s] && n < k: // "they broke through the wire"
				x.sense = setOf(sOut)
			case breakVerbs[x.s] && (n > k || doneTo[lastWord(x.s)] && r.fenceIsDone(n, k)):
				r.fenceDown(x)
			case n > k && x.is(sNot) && n+1 < to && worksWords[r.items[n+1].s] && r.amountless(from, r.sentenceEnd(k)):
				x.sense.drop(sNot)
				r.fenceDown(x)
			case n > k && x.is(sDown) && n-k <= 2 && r.struckBefore(from, k):
				r.fenceDown(x)
			}
		}
	}
}

// holes are what pigs go through in a fence.
var holes = setOfWords(split(`hole, holes, a hole, gap, gaps, a gap, opening, an opening, breach, hole dug, break, a break, rip, tear, big hole`))

// holeIn says that the hole at item n is one in the fence at item k: "hole in the
// fence", "fence has a gap by the gate".
func (r *reader) holeIn(n, k int) bool {
	if n > k {
		for x := k + 1; x < n; x++ {
			switch w := lastWord(r.items[x].s); {
			case w == "has" || w == "got" || w == "with" || w == "a" || r.items[x].is(sGave) || r.items[x].is(sArrive):
			case !r.items[x].isAny(setOf(sFiller, sIs, sAbout)):
				return false
			}
		}
		return n > k+1
	}
	for x := n + 1; x < k; x++ {
		switch lastWord(r.items[x].s) {
		case "in", "under", "through", "of", "at", "into", "beneath":
			return true
		}
	}
	return n+1 == k && lastWord(r.items[k].s) == "fence" && r.items[k].s != "fence"
}

// holeBefore says that a hole is told of right before the words at item k, which say
// where in the fence it is.
func (r *reader) holeBefore(k int) bool {
	return k > 0 && r.items[k].gap == gapNone && (holes[r.items[k-1].s] || k > 1 && holes[r.items[k-2].s] && r.items[k-1].is(sFiller))
}

// breakReach is how far from the word for the fence what broke it may stand.
const breakReach = 6

// breakers lie on a fence that is down.
var breakers = setOfWords(split(`tree, trees, limb, limbs, branch, branches, a tree, a limb, a branch, log, snow, ice, lightning, pole`))

// beasts go through a fence.
var beasts = setOfWords(split(`deer, a deer, bear, a bear, cow, cows, dog, dogs, moose, elk, bull, car, truck, a car, a truck, tractor, horse, horses, coyote, coyotes`))

// crossers are the words for going through a fence.
var crossers = setOfWords(split(`through, thru, into, hit, over`))

// breakVerbs tell of a fence that something broke, or that does not work.
var breakVerbs = setOfWords(split(`broke, broken, is broke, busted, is busted, bust, snapped, flat, is flat, flattened, fell over, fell, collapsed, ripped, torn, tore, torn
	down, tore down, knocked down, got knocked down, pulled down, quit, quit working, stopped working, died, is dead, dead, shorted, shorting, shorting out, fried, is fried,
	laying, laying down, lying, down`))

// doneTo are those of them that something does to a fence.
var doneTo = setOfWords(split(`broke, busted, bust, snapped, flattened, ripped, tore, down`))

// worksWords behind a "not" say of a fence that it gives no shock.
var worksWords = setOfWords(split(`working, work, hot, functioning, pulsing, spark, sparking, on, shocking, zapping, ticking, clicking, charging`))

// downWith end a verb that takes a fence down.
var downWith = setOfWords(split(`down`))

// struck are the verbs that take a fence down with a "down" behind it.
var struck = setOfWords(split(`knocked, tore, took, pulled, pushed, broke, brought, knock, ripped, blew, ran, trampled`))

func (r *reader) struckBefore(from, k int) bool {
	return r.sentenceNames(from, k, struck)
}

func (r *reader) sentenceNames(from, to int, words map[string]bool) bool {
	for n := from; n < to; n++ {
		if words[r.items[n].s] || words[lastWord(r.items[n].s)] {
			return true
		}
	}
	return false
}

// lieOn says that what stands at item n lies on or struck the fence at item k.
func (r *reader) lieOn(n, k int) bool {
	if n > k {
		return false
	}
	for x := n + 1; x < k; x++ {
		switch lastWord(r.items[x].s) {
		case "on", "hit", "got", "onto", "across", "over", "out", "against", "struck", "took", "broke", "brought", "down":
			return true
		}
	}
	return false
}

// fenceIsDone says that the verb at item n has the fence at item k for what it was
// done to, by something else than a person: "pigs broke the fence".
func (r *reader) fenceIsDone(n, k int) bool {
	for x := n + 1; x < k; x++ {
		if it := &r.items[x]; !it.isAny(setOf(sFiller, sDown)) {
			return false
		}
	}
	return true
}

// mended says that the sentence tells of a fence put right, or of one to be.
func (r *reader) mended(i, j int) bool {
	for k := i; k < j; k++ {
		it := &r.items[k]
		if it.isAny(setOf(sPlan, sIf, sForeign, sAskSure)) && it.pig < 0 && !it.is(sFiller) && !beasts[it.s] {
			return true
		}
		switch lastWord(it.s) {
		case "fixed", "mended", "repaired", "replaced", "patched", "spliced", "fixing", "mending", "fix", "mend", "repair", "tightened", "restrung", "cleared", "back", "works", "old", "nobody", "no", "nothing", "never":
			return !(lastWord(it.s) == "no" && k+1 < j && r.items[k+1].is(sFence))
		}
	}
	return false
}

// fixedSince says that the words from item k on tell of the fence put right by now:
// "fence was down, fixed it". What is yet to be done, or was not, is no fix.
func (r *reader) fixedSince(k int) bool {
	for n := k; n < len(r.items) && n < k+fixReach; n++ {
		it := &r.items[n]
		if it.isAny(setOf(sNot, sPlan, sIf, sForeign, sSnooze, sAskSure)) && it.pig < 0 && !it.is(sFiller) || it.quest || it.s == "his" || it.s == "not" || it.s == "to" || strings.HasPrefix(it.s, "need") || it.s == "gotta" || it.s == "should" || it.s == "be" || it.s == "until" {
			return false
		}
		if fixWords[it.s] || fixWords[lastWord(it.s)] || (it.s == "back" || it.s == "all") && n+1 < len(r.items) && (r.items[n+1].s == "up" || r.items[n+1].s == "good" || r.items[n+1].s == "on") {
			return n+1 >= len(r.items) || r.items[n+1].gap >= gapStop || !r.items[n+1].isAny(setOf(sPlan, sNot))
		}
	}
	return false
}

// fixReach is how many words on a fence is still said to be put right.
const fixReach = 12

// fixWords tell of a fence put right.
var fixWords = setOfWords(split(`fixed, mended, repaired, patched, spliced, restrung, re-strung, refixed, rehung, retied`))

func (r *reader) fenceDown(it *item) {
	it.sense, it.unit = setOf(sDown), 0
}

// fenceTold forces a fence that something broke into an alarm.
func (r *reader) fenceTold(k int) bool {
	it := &r.items[k]
	if it.s == "through the fence" && r.sentenceNames(r.clauseFrom(k), k, beasts) { // "deer went through the fence"
		it.sense = setOf(sFence, sDown)
		r.forceRange(k, k+1, fAlarm)
		return true
	}
	if !it.is(sFence) || it.pig >= 0 || it.quest || r.force[k] != 0 {
		return false
	}
	from, to := r.clauseFrom(k), r.clauseEnd(k)
	for n := max(from, k-breakReach); n < min(to, k+breakReach); n++ {
		if x := &r.items[n]; n != k && x.sense == setOf(sDown) && (breakVerbs[x.s] || breakers[x.s] || holes[x.s] || crossers[x.s] || x.is(sDown) && r.struckBefore(from, k) || lastWord(x.s) == "not" || x.is(sDown) && !x.is(sNot) && !r.eachNamed(from, to)) {
			r.forceRange(min(n, k), max(n, k)+1, fAlarm)
			return true
		}
	}
	return false
}
