package reading

import "troughbell/model"

// Bounds of what a thermometer shows in a pig, from badly chilled to a fever that
// kills, in degrees Fahrenheit and Celsius. A healthy pig shows some 102 °F,
// 39 °C. From memory.
const (
	chilledF, feverishF = 97.0, 110.0
	chilledC, feverishC = 36.0, 43.5
)

// bodyHeat finds the items that tell the temperature of a pig, "otis has a temp
// of 105", "105.2 rectal on moss", which is
// a sign of sickness and neither the weather nor a weight. Item k is the number.
func (r *reader) bodyHeat(k int) (from, to int) {
	it := &r.items[k]
	if it.kind != itNum && !it.qty(temperature) || it.soft || it.ord || it.rng || it.plus || it.minus || !r.bodyRange(it) {
		return 0, 0
	}
	word, outright := r.heatWord(k)
	if word < 0 || k+1 < len(r.items) && r.items[k+1].gap == gapNone && (r.items[k+1].is(sWeather) && r.items[k+1].s != "temp" && !heatWords[r.items[k+1].s] || r.items[k+1].s == "out") {
		return 0, 0
	}
	pig := r.pigBeside(min(word, k), max(word, k)+1)
	if pig < 0 && !(outright && r.alive > 0) || r.saidFine(k) {
		return 0, 0
	}
	from, to = min(word, k), max(word, k)+1
	if pig >= 0 {
		from, to = min(from, pig), max(to, pig+1)
	}
	if !r.alonePigFact(from, to, k) {
		if pig < 0 || pig >= word || !r.alonePigFact(min(word, k), to, k) {
			return 0, 0
		}
		from = min(word, k) // "otis 165, temp 105"
	}
	return from, to
}

// tellsBodyHeat says that the number at k is the temperature of a pig, and gives
// it the sense of sickness.
func (r *reader) tellsBodyHeat(k int) bool {
	from, to := r.bodyHeat(k)
	if to > from {
		word, _ := r.heatWord(k)
		r.items[min(word, k)].sense.add(sSick)
		r.items[k].used = true
	}
	return to > from
}

// saidFine says that the sentence of the number at k, or the one behind it, calls
// what the thermometer shows healthy, and that nothing else ails the animal.
func (r *reader) saidFine(k int) bool {
	fine := false
	for n := r.sentenceStart(k); n < r.sentenceEnd(k); n++ {
		switch it := &r.items[n]; {
		case it.s == "fine", it.s == "normal", it.s == "ok", it.s == "okay", it.s == "good", it.s == "nothing to worry":
			fine = true
		case it.is(sSick) || it.is(sWell):
			return false
		}
	}
	return fine
}

func (r *reader) bodyRange(it *item) bool {
	switch {
	case it.unit == unitF:
		return it.v >= chilledF && it.v <= feverishF
	case it.unit == unitC:
		return it.v >= chilledC && it.v <= feverishC
	case r.units == model.Metric:
		return it.v >= chilledC && it.v <= feverishC
	}
	return it.v >= chilledF && it.v <= feverishF || it.v >= chilledC && it.v <= feverishC && it.v != float64(int(it.v))
}

// feverWords speak of a body's temperature and of no other; heatWords of either.
var (
	feverWords = map[string]bool{"fever": true, "feverish": true, "rectal": true, "rectally": true, "rectal temp": true, "fieber": true, "body temp": true, "body temperature": true}
	heatWords  = map[string]bool{"temp": true, "temps": true, "temperature": true, "thermometer": true, "degrees": true, "temped": true, "hot": true, "burning up": true}
)

// heatWord is the nearest word of a temperature within reach of the number at k,
// or the number itself where its unit is one of degrees; -1 if there is none.
func (r *reader) heatWord(k int) (at int, outright bool) {
	at = -1
	for d := 1; d <= 5; d++ {
		for _, n := range [2]int{k - d, k + d} {
			if n < 0 || n >= len(r.items) || !r.sameClause(n, k) {
				continue
			}
			w := r.items[n].s
			if feverWords[w] {
				return n, true
			}
			if at < 0 && heatWords[w] {
				at = n
			}
		}
	}
	if at < 0 && r.items[k].qty(temperature) {
		at = k
	}
	return at, false
}

// sameClause says that no end of a sentence and no other number stands between
// two items.
func (r *reader) sameClause(a, b int) bool {
	if a > b {
		a, b = b, a
	}
	for n := a + 1; n <= b; n++ {
		if r.items[n].gap >= gapSemi || n < b && r.items[n].number() && !r.items[n].soft {
			return false
		}
	}
	return true
}

// pigBeside is the pig that items[i:j] speak of: named before them in their
// clause, in them or right behind them, or a "he" or "she" of a pig spoken of; -1
// if there is none.
func (r *reader) pigBeside(i, j int) int {
	isPig := func(n int) bool {
		it := &r.items[n]
		return it.pig >= 0 && int(it.pig) < r.alive || it.group >= 0 || it.isAny(setOf(sBarrow, sGilt)) || heOrShe[it.s]
	}
	for n := j - 1; n >= 0 && n >= i-6; n-- {
		if n+1 < j && n < i && r.items[n+1].gap >= gapComma && !(isPig(n) && r.items[n+1].gap < gapStop) {
			break
		}
		if isPig(n) {
			return n
		}
	}
	for n := j; n < len(r.items) && n < j+3 && r.items[n].gap < gapSemi && (n == j || r.items[n].gap == gapNone); n++ {
		if isPig(n) {
			if n+1 < len(r.items) && r.items[n].gap == gapComma && r.items[n+1].gap == gapNone {
				return -1 // "98 degrees, moss was panting"
			}
			return n
		}
		if !r.items[n].is(sFiller) || r.items[n].gap > gapNone {
			break
		}
	}
	return -1
}

// heOrShe are the words for one animal spoken of.
var heOrShe = map[string]bool{"he": true, "she": true, "he's": true, "she's": true, "hes": true, "shes": true, "him": true, "her": true, "his": true}

// alonePigFact says that nothing in items[i:j] beside the number at k speaks of
// the weather or of another amount.
func (r *reader) alonePigFact(i, j, k int) bool {
	for n := i; n < j; n++ {
		it := &r.items[n]
		if n != k && it.number() && !it.soft || it.s == "outside" || it.s == "out" || n == i && (it.s == "it" || it.s == "it's") || it.kind == itDay && n < k || it.isAny(setOf(sHumid, sHigh, sBarrel, sFeeder, sWater, sGirth, sTape, sWallow)) {
			return false
		}
	}
	return true
}
