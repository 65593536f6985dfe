package reading

import "slices"

// countGoes says that so many pigs stand right before the going at item k: "five of them
// went to a couple up the road", "five went to my uncle".
func (r *reader) countGoes(k int) bool {
	for n := k - 1; n >= 0 && n >= k-4 && r.items[n+1].gap < gapComma; n-- {
		it := &r.items[n]
		switch {
		case it.kind == itNum && !it.ord && (!it.soft || it.s == "one") && it.v >= 1 && it.v <= float64(r.alive) && it.v == float64(int(it.v)):
			return true
		case it.kind != itWord || !it.isAny(setOf(sFiller, sOf, sPronoun, sPigs, sPartOf, sGilt, sBarrow)):
			return false
		}
	}
	return false
}

// forTheLot takes what is told of a sum to be for all that went away off it, and makes it
// money: "five of them went to a couple up the road, 1750 for the lot".
func (r *reader) forTheLot() {
	for k := 1; k+1 < len(r.items); k++ {
		it := &r.items[k]
		if !it.qty(money) && !(it.kind == itNum && !it.soft && !it.ord && it.v >= 20) || r.items[k+1].gap != gapNone || it.quest {
			continue
		}
		n := k + 1
		if r.items[n].s == "for" {
			n++
		}
		if n >= len(r.items) || r.items[n].gap != gapNone || !lotWords[r.items[n].s] && !(n+1 < len(r.items) && r.items[n].s == "the" && lotWords[r.items[n+1].s]) {
			continue
		}
		went := false
		for m := r.sentenceStart(k); m < k; m++ {
			x := &r.items[m]
			went = went || goings[firstWord(x.s)] && (r.countGoes(m) || r.pigGoes(m))
		}
		if !went {
			continue
		}
		r.payBare(k)
		m := k + 1
		for ; m < len(r.items) && r.items[m].gap == gapNone && m <= n+2; m++ {
			r.blank(m)
			r.items[m].s = ""
		}
		if m < len(r.items) {
			r.items[m].gap = gapStop // "kid cried" is of something else
		}
	}
}

var lotWords = setOfWords(split("lot, the lot, all, both, pair, the pair, bunch, the bunch, the whole bunch, altogether, the whole lot, all of them, the five, them all, total, all told, all together"))

// centsBehind adds the cents that are told behind the dollars: "16 dollars and 40 cents".
func (r *reader) centsBehind() {
	for k := 0; k+2 < len(r.items); k++ {
		a, b, c := &r.items[k], &r.items[k+1], &r.items[k+2]
		if !a.qty(money) || a.v != float64(int(a.v)) || b.kind != itNum || b.gap > gapAnd || b.v < 1 || b.v >= 100 || c.gap != gapNone || !centWords[c.s] {
			continue
		}
		a.v, a.to = a.v+b.v/100, c.to
		r.items = slices.Delete(r.items, k+1, k+3)
	}
}

// instrumentBehind says that behind the word of saying at item k stands what measures: "39 C
// in the shade, says my phone".
func (r *reader) instrumentBehind(k int) bool {
	for n := k + 1; n < len(r.items) && n <= k+3 && r.items[n].gap == gapNone; n++ {
		if instruments[r.items[n].s] {
			return true
		}
	}
	return false
}

var instruments = setOfWords(split("phone, app, thermometer, gauge, radio, display, car, truck, dash, station, weather station, clock, sensor"))
