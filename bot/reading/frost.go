package reading

import "troughbell/model"

// Frost, told by what it did to the water: "24 this morning, had to bust ice on both
// tanks". No barrel was filled, and the number is the night's.

// frostWords say that it froze.
var frostWords = setOfWords(split("ice, iced, icy, frost, frosty, frosted, froze, freezing, frozen, brr, brrr, brrrr, snow, snowed, sleet, slush"))

// frost takes the barrels that but had ice on them for none that was filled, and a bare
// number of the morning for how cold it was.
func (r *reader) frost() {
	froze := false
	for k := range r.items {
		it := &r.items[k]
		if it.pig >= 0 || !frostWords[firstWord(it.s)] {
			continue
		}
		froze = true
		if it.s != "ice" && it.s != "iced" && it.s != "slush" {
			continue
		}
		i, j := r.stretch(k)
		if s := (span{fWater, i, j}); r.has(s, sFull) || r.has(s, sFill) || r.firstQty(s, volume) >= 0 || r.has(s, sEmpty) || j < len(r.items) && r.has(span{fWater, j, r.stretchEnd(j)}, sFill) {
			continue // "broke the ice on the tanks and topped both off"
		}
		for n := i; n < j; n++ {
			if x := &r.items[n]; x.barrel >= 0 || x.isAny(setOf(sBarrel, sWater)) {
				r.blank(n)
			}
		}
	}
	for k := 0; froze && k < len(r.items); k++ {
		it := &r.items[k]
		if it.kind != itNum || it.soft || it.ord || it.rng || it.quest || !r.freezes(it.v) || k > 0 && it.gap < gapAnd && !r.items[k-1].isAny(setOf(sFiller, sIs)) || !r.atDawn(k) {
			continue
		}
		if i, j := r.stretch(k); r.amountless(i, k) && r.amountless(k+1, j) && !r.has(span{0, i, j}, sFeeder) && !r.has(span{0, i, j}, sPigs) {
			r.settled = append(r.settled, span{fWeather, k, min(k+2, len(r.items))})
		}
	}
}

// freezes says that a bare number is a temperature near which water freezes.
func (r *reader) freezes(v float64) bool {
	if r.units == model.Metric {
		return v <= 4
	}
	return v <= 40
}

// atDawn says that what is told at item k is told of the early morning.
func (r *reader) atDawn(k int) bool {
	if k+1 >= len(r.items) || r.items[k+1].gap >= gapComma {
		return false
	}
	for n := k + 1; n < r.clauseEnd(k) && n <= k+3; n++ {
		if it := &r.items[n]; it.kind == itDay {
			return it.day.form == dayOffset && it.day.a == 0 && it.day.part == partMorning
		}
	}
	return saysFirst(r.said(span{0, k + 1, r.clauseEnd(k)}), dawnWords...)
}

var dawnWords = split("at dawn, before dawn, at daybreak, at sunup, before sunup, at sunrise, before sunrise, first thing, when i got up, when i woke, when we got up, when i went out, overnight, this morning, by morning, at first light")

// coldMorning says that the temperature at item k, unlabelled, is the low of the night
// before: it is told of the early morning and near freezing.
func (r *reader) coldMorning(k int) bool {
	it := &r.items[k]
	v := it.v
	if it.minus {
		v = -v
	}
	switch it.unit {
	case unitF:
		if v > 40 {
			return false
		}
	case unitC:
		if v > 4 {
			return false
		}
	default:
		if !r.freezes(v) {
			return false
		}
	}
	if r.atDawn(k) {
		return true
	}
	for n := r.sentenceStart(k); n < r.sentenceEnd(k); n++ { // "24 degrees, chopped ice out of the tank"
		if r.items[n].s == "ice" || r.items[n].s == "froze" {
			return true
		}
	}
	return false
}
