package reading

import (
	"strings"

	"troughbell/model"
)

// Pigs came without names, and a text speaks of one by a name: "Pickle's girth is 38",
// "wormed spot with ivermectin". That is no fact of all of them.

// byNameUntold says that what a span yielded of pigs without names is told of one by a
// word that is none of ours.
func (r *reader) byNameUntold(s span, from int) bool {
	if r.alive < 2 || r.anyNamed() {
		return false
	}
	for _, e := range r.out[from:] {
		f, ok := e.Act.(Fact)
		if !ok {
			return false
		}
		if a := AnimalsOf(f.Fact); len(a) > 0 && (len(a) != 1 || a[0] != model.All) {
			return false
		}
	}
	return r.nameUntold(s) >= 0
}

// nameUntold is the item of a span's sentence that can only be the name of a pig, -1 if
// there is none: an unknown word that begins it and of which something of a pig is said
// at once, or that stands right behind what is done to a pig.
func (r *reader) nameUntold(s span) int {
	from, to := r.sentenceStart(s.i), r.sentenceEnd(s.j-1)
	for k := from; k < to; k++ {
		it := &r.items[k]
		if it.kind != itWord || it.known && !r.written(k) || len(it.s) < 3 || !isLetters(strings.TrimSuffix(it.s, "'s")) {
			continue
		}
		next := &item{}
		if k+1 < to && r.items[k+1].gap == gapNone {
			next = &r.items[k+1]
		}
		switch {
		case k > from && it.gap == gapNone && (r.items[k-1].isAny(setOf(sWorm, sTreat, sSold, sWeigh, sGirth)) || measuring[r.items[k-1].s]):
			return k
		case k > from && it.gap < gapComma && !r.items[k-1].is(sAnd):
		case next.isAny(setOf(sGirth, sSick, sDied)), next.kind == itDim,
			next.is(sIs) && k+2 < to && (r.items[k+2].isAny(setOf(sSick, sWell, sDown)) || r.items[k+2].number()),
			next.number() && !next.soft && s.frame == fWeigh, strings.HasSuffix(it.s, "'s"):
			return k
		}
	}
	return -1
}

var measuring = setOfWords(split("taped, measured, weighed, scaled, checked"))

// written says that a known word is written as a name: with a capital inside of a
// sentence that has small letters.
func (r *reader) written(k int) bool {
	it := &r.items[k]
	return k > 0 && it.capital && it.gap < gapStop && r.cased() && !it.isAny(tradeSenses)
}

// askNames asks what the pigs are called; one that is unwell is one of them all the same.
func askNames(r *reader, s span, from int) {
	k := r.nameUntold(s)
	if s.frame == fSick {
		for n := range r.out[from:] {
			e := &r.out[from+n]
			sick := e.Act.(Fact).Fact.(model.Sick)
			sick.Count = 1
			e.Act = Fact{sick}
		}
		return
	}
	es := append([]Entry(nil), r.out[from:]...)
	r.out = r.out[:from]
	r.clarify(Clarify{
		About: es[0].Act.Intent(), Code: "no_names", Names: []string{capitalize(strings.TrimSuffix(r.items[k].s, "'s"))}, Draft: es,
		Choices: []Choice{{Code: "all_pigs", Entries: es}, {Code: "nothing"}},
	}, s)
}
