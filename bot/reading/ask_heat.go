package reading

import (
	"strings"

	"troughbell/model"
)

// Who asks whether a heat to come is dangerous names it first, or as somebody told it:
// "the weather man tells 34 for saturday, is this dangerous for pigs", "90 tomorrow
// should i worry". The heat is asked about, and no day's weather is recorded.

// heatAsked says that the items from i to j name a heat to come and ask whether it
// does harm.
func (r *reader) heatAsked(i, j int) bool {
	if !r.forecastIn(i, j) || !saysAny(r.saidAround(span{fAsk, i, j}), heatJudged) {
		return false
	}
	for k := i; k < j; k++ {
		it := &r.items[k]
		if it.quest || it.pig < 0 && (helpVerbs[firstWord(it.s)] || askWords[firstWord(it.s)] || it.is(sAskSure)) && (k == i || it.gap >= gapComma || it.isAny(setOf(sAsk, sAskSure))) {
			return true
		}
	}
	return strings.HasPrefix(strings.TrimSpace(r.text[r.items[j-1].to:]), "?")
}

// heatJudged are words that ask whether a heat does harm.
var heatJudged = phrasesOf("dangerous, danger, bad, worry, worried, worrying, problem, a problem, trouble, too hot, too much, too warm, safe, ok for, be ok, be okay, be alright, be all right, be fine, do something, do anything, what do i do, what should i do, what to do, harm, hurt, cope, stand it, handle, survive, risky, risk, suffer, make it, concerned, get ready, prepare, ok, okay, die, kill them, kill em")

// forecastIn says that the items from i to j name a heat and a day to come for it,
// and nothing that the number could be of else.
func (r *reader) forecastIn(i, j int) bool {
	heat, coming := false, false
	for k := i; k < j; k++ {
		it := &r.items[k]
		switch {
		case it.pig >= 0, it.kind == itThing, it.qty(mass), it.qty(volume), it.qty(money), it.kind == itDim, it.kind == itFrac, it.isAny(setOf(sWeigh, sGirth, sTape, sFill, sPour, sTarget)):
			return false
		case r.tellsHeat(it):
			heat = true
		case it.kind == itDay && !it.day.every:
			d, ok := it.day.on(r.today, lookForward, r.dayFirst)
			coming = coming || ok && d > r.today
		}
	}
	return heat && coming
}

// heatSupposed is the heat, in Celsius, that the items from i to j ask about; nil where
// they name none.
func (r *reader) heatSupposed(i, j int) *float64 {
	for k := i; k < j; k++ {
		it := &r.items[k]
		if !r.tellsHeat(it) || it.minus {
			continue
		}
		scale := it.unit
		switch {
		case scale == unitC || scale == unitF:
		case r.units == model.Metric:
			scale = unitC
		default:
			scale = unitF
		}
		return model.Float(scale.si(it.v))
	}
	return nil
}

// tellsHeat says that an item is a temperature, or a bare number as high as one in summer.
func (r *reader) tellsHeat(it *item) bool {
	return it.qty(temperature) || it.kind == itNum && !it.soft && !it.ord && r.summerHeat(it.v)
}

// heatAhead says that the items before n tell how hot it is now, and that a question
// whether that does harm begins at n: "its 99 out is that bad for them".
func (r *reader) heatAhead(from, n, to int) bool {
	if n+1 >= to || !helpVerbs[firstWord(r.items[n].s)] || !saysAny(r.saidAround(span{fAsk, n, to}), heatJudged) {
		return false
	}
	heat := false
	for k := from; k < n; k++ {
		it := &r.items[k]
		switch {
		case it.pig >= 0, it.kind == itThing, it.qty(mass), it.kind == itDim, it.kind == itFrac:
			return false
		case it.qty(temperature):
			heat = true
		case it.kind == itNum && r.summerHeat(it.v):
			heat = heat || r.tellsDegrees(k) || k+1 < n && r.items[k+1].isAny(setOf(sWeather, sHere))
		}
	}
	return heat
}
