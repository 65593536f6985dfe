package reading

import (
	"strings"

	"troughbell/model"
)

// filledThings are the words that a filling takes for the thing that needs no name.
var filledThings = setOfWords(split("it, er, 'er, her, him, them, em, 'em, that, this, everything"))

// filledItToo parts "filled er up and the water too": the thing without a name is
// another than the water named behind it.
func (r *reader) filledItToo() {
	for k := 0; k+2 < len(r.items); k++ {
		it, n := &r.items[k], k+1
		if it.kind != itWord || it.quest || !it.isAny(setOf(sFill, sFull)) || !fillsUp[firstWord(it.s)] {
			continue
		}
		if _, what, _ := strings.Cut(it.s, " "); !filledThings[firstWord(what)] {
			if !filledThings[r.items[n].s] || r.items[n].gap != gapNone {
				continue
			}
			n++
		}
		for ; n < len(r.items) && r.items[n].gap < gapAnd; n++ {
			if w := r.items[n].s; w != "up" && w != "off" && w != "all" && w != "full" && w != "right" {
				break
			}
		}
		if n >= len(r.items) || r.items[n].gap < gapAnd || r.items[n].gap >= gapStop {
			continue
		}
		if end := r.clauseEnd(n); r.onlyWaters(n, end) {
			r.items[n].gap = gapStop
			r.fullAlone(n, end)
		}
	}
}

// fillsUp are the verbs that fill a thing to its top.
var fillsUp = setOfWords(split("filled, fill, refilled, topped, top"))

// onlyWaters says that items[i:j] name barrels or the wallow and tell nothing else of them.
func (r *reader) onlyWaters(i, j int) bool {
	named := false
	for k := i; k < j; k++ {
		it := &r.items[k]
		switch {
		case named && r.twoForToo(k, j):
		case it.feeder >= 0, it.is(sFeeder) && it.barrel < 0, it.pig >= 0, it.kind != itWord && it.kind != itThing:
			return false
		case it.barrel >= 0, it.kind == itWord && it.isAny(setOf(sWater, sWatered, sBarrel, sWallow)):
			named = true
		case it.isAny(setOf(sFiller, sBoth, sAll, sAnd, sDo, sDone)), sameToo[it.s], firstWord(it.s) == "did", it.s == "well":
		default:
			return false
		}
	}
	return named
}

// fullAlone says of the barrels that items[i:j] name that they were filled, in place of
// the word for "too".
func (r *reader) fullAlone(i, j int) {
	last := j - 1
	for last > i && (sameToo[r.items[last].s] || r.twoForToo(last, j) || r.items[last].s == "well" || r.items[last].s == "as") {
		last--
	}
	if last+1 >= j {
		return
	}
	it := &r.items[last+1]
	r.blank(last + 1)
	it.s = "full"
	it.sense = setOf(sFull)
	for k := last + 2; k < j; k++ {
		r.blank(k)
	}
}

// twoForToo says that item k is a "2" that ends items[..j] in the place of "too".
func (r *reader) twoForToo(k, j int) bool {
	it := &r.items[k]
	return k == j-1 && it.kind == itNum && it.v == 2 && it.gap == gapNone && r.text[it.from:it.to] == "2"
}

// pouredFull marks what was poured into the barrels before the span as having filled them:
// "350 l into the tank, 120 l into the tub, both full now". They are all barrels there are,
// or two of them that "both" speaks of.
func (r *reader) pouredFull(s span) bool {
	var at []int
	for k := len(r.out) - 1; k >= 0; k-- {
		f, ok := r.out[k].Act.(Fact)
		if !ok {
			break
		}
		w, ok := f.Fact.(model.Water)
		if !ok || w.Barrel == "" || w.Litres == nil || w.Fraction != nil || w.Seen {
			break
		}
		at = append(at, k)
	}
	if len(at) < 2 || len(at) != len(r.c.Herd.Barrels) && !(len(at) == 2 && r.has(s, sBoth)) {
		return false
	}
	for _, k := range at {
		w := r.out[k].Act.(Fact).Fact.(model.Water)
		w.Full = true
		r.out[k].Act = Fact{w}
	}
	return true
}

// bothFullBehind parts a "both full" from the amounts of water before it, of which it tells
// no third.
func (r *reader) bothFullBehind() {
	for k := 2; k+1 < len(r.items); k++ {
		it := &r.items[k]
		if !it.isAny(setOf(sBoth, sAll)) || it.gap != gapComma || it.quest || it.number() {
			continue
		}
		end, full := r.clauseEnd(k), false
		for n := k + 1; n < end; n++ {
			x := &r.items[n]
			full = full || x.is(sFull)
			if !x.is(sFull) && !x.is(sFiller) || x.kind != itWord {
				end = 0
			}
		}
		poured := 0
		for n := r.sentenceStart(k); n < k; n++ {
			if r.items[n].qty(volume) {
				poured++
			}
		}
		if s := (span{0, r.sentenceStart(k), k}); end > 0 && full && poured >= 2 && r.hasBarrel(s) && !r.has(s, sFeeder) {
			it.gap = gapStop
			r.settled = append(r.settled, span{fWater, k, end})
		}
	}
}
