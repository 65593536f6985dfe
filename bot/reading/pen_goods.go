package reading

import "strings"

// pensAsGoods takes a pen away from a word that is but the fruit or the cutting it is
// called after: "passed the apples to otis", "gave her a pear", "cut bamboo for the pigs".
func (r *reader) pensAsGoods() {
	for k := range r.items {
		if it := &r.items[k]; it.pen >= 0 && it.pig < 0 && it.kind != itNum && r.fruitOf(k) {
			r.blank(k)
			it.sense = senses{} // a thing all the same: "otis ate 3 apples"
		}
	}
}

// fruitOf says that the pen at item k is told of as things: as several where the pen is
// one, by the piece or the bucket, or as what was handed to pigs.
func (r *reader) fruitOf(k int) bool {
	it := &r.items[k]
	word := lastWord(strings.ToLower(r.text[it.from:it.to]))
	if n := k + 1; n < len(r.items) && r.items[n].gap == gapNone && r.items[n].is(sPen) {
		return false // "the pear pen"
	}
	if r.placedBefore(k) {
		return false
	}
	if name := lastWord(strings.ToLower(r.c.Herd.Pens[it.pen].Name)); word == name+"s" || word == name+"es" {
		return true
	}
	if k > 0 && it.gap == gapNone {
		switch r.items[k-1].s {
		case "a", "an", "some", "more", "few", "a few", "fresh", "ripe", "rotten", "fallen", "whole", "half a", "any":
			return true
		}
	}
	return r.handed(k) && r.toPigs(k)
}

// placedBefore says that a word of place leads up to item k, through small words alone.
func (r *reader) placedBefore(k int) bool {
	for n := k - 1; n >= 0 && n >= k-3 && r.items[n+1].gap == gapNone; n-- {
		switch lastWord(r.items[n].s) {
		case "to", "into", "in", "from", "at", "by", "through", "onto", "inside", "outside", "near", "towards", "toward", "behind", "off":
			return true
		}
		if !r.items[n].isAny(setOf(sFiller, sPronoun)) {
			return false
		}
	}
	return false
}

// handed says that the thing at item k is what somebody gave or brought.
func (r *reader) handed(k int) bool {
	for n := k - 1; n >= r.clauseFrom(k) && n >= k-2; n-- {
		if handing[lastWord(r.items[n].s)] {
			return true
		}
		if !r.items[n].is(sFiller) {
			return false
		}
	}
	return false
}

// handing are the verbs of giving pigs something.
var handing = setOfWords(split(`gave, give, giving, fed, feed, feeding, handed, handing, passed, tossed, threw, throw, throwing, cut, cutting, chopped, picked, brought, bring, carried, dropped, dumped, chucked, slung, hauled, raked`))

// toPigs says that pigs are who the thing at item k goes to: "over to hazel", "for them".
func (r *reader) toPigs(k int) bool {
	to := false
	for n := k + 1; n < len(r.items) && n <= k+4 && r.items[n].gap == gapNone; n++ {
		it := &r.items[n]
		switch lastWord(it.s) {
		case "to", "for":
			to = true
			continue
		}
		if it.pig >= 0 || it.group >= 0 || it.isAny(whoWords) || it.s == "them" || it.s == "em" {
			return to
		}
		if !it.is(sFiller) && !it.is(sMove) {
			return false
		}
	}
	return false
}
