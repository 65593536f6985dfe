package reading

import (
	"strings"

	"troughbell/model"
)

// dumpedBarrels takes a barrel that was dumped for an empty one where nothing was filled:
// "dumped the shed barrel, it stank", "the barrel had algae so i dumped it".
func (r *reader) dumpedBarrels() {
	for k := range r.items {
		it := &r.items[k]
		if it.kind != itWord || it.quest || !it.is(sPour) || firstWord(it.s) != "dumped" || it.s == "dumped in" {
			continue
		}
		from, to := r.sentenceStart(k), r.sentenceEnd(k)
		s := span{0, from, to}
		if !r.dumpsBarrel(k, from, to) || !r.amountless(from, to) || r.has(s, sFill) || r.has(s, sFull) || r.has(s, sFeed) || r.has(s, sPlan) || r.has(s, sNot) || r.find(s, sIngredient) >= 0 {
			continue
		}
		it.s, it.sense = "emptied", setOf(sEmpty)
	}
}

// dumpsBarrel says that what was dumped at item k is a barrel: named right behind it, or
// the "it" of one named before.
func (r *reader) dumpsBarrel(k, from, to int) bool {
	for n := k + 1; n < to && r.items[n].gap == gapNone; n++ {
		switch it := &r.items[n]; {
		case it.barrel >= 0, it.kind == itWord && it.is(sBarrel):
			return true
		case it.s == "it":
			return n+1 >= to || r.items[n+1].gap >= gapAnd || r.items[n+1].s == "out" && r.barrelBefore(from, k)
		case it.s != "the" && it.s != "whole" && it.s != "entire" && it.s != "all" && it.s != "out" && it.s != "my" && it.s != "that":
			return false
		}
	}
	return false
}

// barrelBefore says that the items from i to k name a barrel and no feeder.
func (r *reader) barrelBefore(i, k int) bool {
	s := span{0, i, k}
	return r.hasBarrel(s) && !r.has(s, sFeeder)
}

// outOfThing says that a level of nothing rests on an "it" that may be what was found in
// the thing: "found a dead rat in the big hopper, dumped it out".
func (r *reader) outOfThing(s span, from int) bool {
	if !emptyAlone(r.out[from:]) {
		return false
	}
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if it.kind == itWord && it.is(sEmpty) && (saysAny(" "+it.s+" ", outIts) || k+1 < len(r.items) && saysAny(" "+r.items[k+1].s+" ", outIts)) {
			return r.strangeWithin(r.sentenceStart(max(r.sentenceStart(k)-1, 0)), k)
		}
		if it.s == "out" && k > 0 && filledThings[r.items[k-1].s] { // "knocked it out"
			return r.strangeWithin(r.sentenceStart(k), k)
		}
	}
	return false
}

// outIts are what is got out of a thing where its name is not told.
var outIts = phrasesOf("it, it out, him, him out, them, them out, her, that")

// emptyAlone says that the entries are one feeder or barrel seen empty.
func emptyAlone(es []Entry) bool {
	if len(es) != 1 {
		return false
	}
	f, ok := es[0].Act.(Fact)
	if !ok {
		return false
	}
	switch l := f.Fact.(type) {
	case model.FeedLevel:
		return l.Fraction != nil && *l.Fraction == 0
	case model.Water:
		return l.Seen && l.Fraction != nil && *l.Fraction == 0
	}
	return false
}

// strangeWithin says that the items from i to j tell of something that is in a feeder or a
// barrel and is no feed or water.
func (r *reader) strangeWithin(i, j int) bool {
	for k := i + 1; k < j; k++ {
		if w := r.items[k].s; w != "in" && w != "inside" && w != "stuck in" {
			continue
		}
		thing := false
		for n := k + 1; n < j && n <= k+3; n++ {
			thing = thing || r.items[n].feeder >= 0 || r.items[n].barrel >= 0 || r.items[n].kind == itWord && r.items[n].isAny(setOf(sFeeder, sBarrel))
		}
		for n := k - 1; thing && n >= i && n >= k-3; n-- {
			w := strings.Fields(r.items[n].s)
			if len(w) > 0 && (w[0] == "a" || w[0] == "an" || w[0] == "dead" || w[0] == "some") && !r.items[n].number() {
				return true
			}
		}
	}
	return false
}
