package reading

import "strings"

// awayThere reads a place and a span of days, "we shall be in Ohio from the 17th
// until the 19th", as days away: nobody sets a time zone for three days.
func (r *reader) awayThere(k int) bool {
	it := &r.items[k]
	zone := it.canon == zoneCanon
	if !zone && !(lastWord(it.s) == "in" && k+1 < len(r.items) && r.items[k+1].gap == gapNone && r.placeLike(k+1)) && !(r.goesTo(k) && k+1 < len(r.items) && r.items[k+1].gap == gapNone && r.unheardPlace(k+1)) && !r.awayPlace(k) || it.pig >= 0 {
		return false
	}
	from, to := r.sentenceStart(k), r.sentenceEnd(k)
	days, span := 0, false
	for n := from; n < to; n++ {
		x := &r.items[n]
		switch {
		case x.kind == itNum && x.dayOfMonthLike() && n+2 < to && r.items[n+1].isAny(setOf(sTo)) && r.items[n+2].kind == itDay && r.items[n+2].day.form == dayDate,
			x.kind == itNum && x.dayOfMonthLike() && days == 1 && r.items[n-1].isAny(setOf(sTo)) && n > 1 && r.items[n-2].kind == itDay && r.items[n-2].day.form == dayDate:
			days++ // "12 to 15 may", "on may 20 until 23"
		case x.kind == itDay && !x.day.every:
			days++
		case days == 1 && x.isAny(setOf(sTo)):
			span = true
		case x.number() && !x.soft && !x.used, x.isAny(setOf(sPigs, sArrive)) && !x.is(sFiller) && !x.is(sIs), x.is(sUnits), x.s == "time", x.pig >= 0 && n != k, x.feeder >= 0, x.barrel >= 0:
			return false
		}
	}
	if days < 2 || !span || len(r.c.Herd.Animals) == 0 {
		return false
	}
	it.canon, it.kind, it.sense = "", itWord, setOf(sAway)
	r.forceRange(from, to, fAway)
	return true
}

// asksBehindAway parts the question from an absence that it follows without a stop:
// "we're away from the 25th to the 28th will the feed last".
func (r *reader) asksBehindAway() {
	away := false
	for k := range r.items {
		it := &r.items[k]
		if it.gap >= gapStop {
			away = false
		}
		away = away || it.is(sAway)
		if away && k > 1 && it.gap == gapNone && it.is(sAskSure) && r.items[k-1].kind == itDay && strings.Contains(it.s, " ") {
			it.gap = gapStop
		}
	}
}

// goingWords lead to a place with a "to" behind them.
var goingWords = setOfWords(split(`go, going, off, heading, headed, travel, travelling, traveling, flying, fly, drive, driving, down, up, over, trip, away, we go, i go, visit`))

// goesTo says that the "to" at item k leads to where a person goes.
func (r *reader) goesTo(k int) bool {
	it := &r.items[k]
	if it.s == "to" {
		return k > 0 && it.gap == gapNone && goingWords[lastWord(r.items[k-1].s)]
	}
	return lastWord(it.s) == "to" && (goingWords[firstWord(it.s)] || goingWords[secondWord(it.s)])
}

// dayOfMonthLike says that a number may be a day of the month.
func (it *item) dayOfMonthLike() bool {
	return !it.soft && !it.rng && it.v >= 1 && it.v <= 31 && it.v == float64(int(it.v))
}

// unheardPlace says that item k may be where a person goes: a word that names nothing of
// the herd or the trade, "province".
func (r *reader) unheardPlace(k int) bool {
	it := &r.items[k]
	return r.placeLike(k) || it.kind == itWord && it.pig < 0 && it.pen < 0 && it.feeder < 0 && it.barrel < 0 && it.sense.empty() && it.unit == 0
}

// placeLike says that item k may be the name of a place that is not of the herd.
func (r *reader) placeLike(k int) bool {
	it := &r.items[k]
	return it.kind == itWord && it.pig < 0 && it.pen < 0 && it.feeder < 0 && it.barrel < 0 && (it.canon == zoneCanon || !it.known && it.capital)
}
