package reading

import "strconv"

// What a pig put on or lost is told beside what it weighs: "3 lost 5 lb, down to 220",
// "206 up 22 to 206". The weight is what stands behind; the gain is no weight.

// gainWords say that the amount behind them was put on or lost, where it follows a pig.
var gainWords = setOfWords(split(`up, down, gained, lost, dropped, shed, put on, fell, slipped, gone up, gone down, went up, went down, up by, down by, off, gaining, losing, packed on, dropped by, gained about, came up, done`))

// moreOrLess say how the amount before them stands to another weight: 1 more, -1 less.
var moreOrLess = map[string]float64{
	"heavier": 1, "more": 1, "lighter": -1, "less": -1, "over": 1, "under": -1, "bigger": 1, "smaller": -1, "up": 1, "down": -1, "behind": -1, "ahead": 1, "short": -1, "fewer": -1,
}

// backToWeight are the small words between a gain and the weight it led to.
var backToWeight = setOfWords(split(`to, now, at, and, is, down to, up to, so, makes, that makes, making, which is, which makes, tae, be, he's, she's, it's, its, he is, she is, it is, he, she, it, just, about, around, of, the, a, in, =, weighs, weighing, reads, him, her, today, that's, thats, that is, putting, for, currently, then, still, hes, shes, only, even, reach, hit, with, weight`))

// leastToldWeight is a number that counts no coughs and no days.
const leastToldWeight = 30

// gains takes gains and losses off the weights beside them, and writes out a weight that
// is told by another one: "moss is eleven less".
func (r *reader) gains() {
	for k := 0; k < len(r.items); k++ {
		it := &r.items[k]
		switch {
		case it.kind != itWord || it.pig >= 0:
		case it.is(sNot) && k+1 < len(r.items) && r.items[k+1].is(sGain):
			r.noGain(k)
		case gainWords[it.s]:
			r.gainAt(k)
		case it.s == "from":
			r.fromOldWeight(k)
		case it.is(sSick) && it.gap == gapNone && k > 1 && r.bareWeight(k-1) && r.pigBefore(k-1) >= 0 && r.items[k-1].v > leastToldWeight:
			it.gap = gapComma // "hazel 150 not eating"
		}
		if it.number() && !it.soft && k+1 < len(r.items) && r.items[k+1].gap == gapNone && moreOrLess[r.items[k+1].s] != 0 {
			r.besideWeight(k)
		}
		if it.pig >= 0 && it.gap == gapNone && (k+1 == len(r.items) || r.items[k+1].gap >= gapComma) {
			r.tagRepeated(k)
		}
	}
}

// pigBefore is the item of the living pig right before item k, over small words; -1 none.
func (r *reader) pigBefore(k int) int {
	for p := k - 1; p >= 0 && p >= k-4; p-- {
		it := &r.items[p]
		switch {
		case it.pig >= 0 && int(it.pig) < r.alive:
			return p
		case it.kind == itNum && !it.soft && (p == 0 || it.gap >= gapComma) && p == k-1:
			if pig := r.pigTagged(it.v); pig >= 0 {
				it.kind, it.pig, it.tag = itName, pig, true
				return p
			}
			return -1
		case it.kind != itWord || it.gap >= gapStop || !it.isAny(setOf(sFiller, sIs, sPronoun, sHolds)) || it.is(sNot):
			return -1
		}
		if it.gap >= gapStop {
			return -1
		}
	}
	return -1
}

// gainAt blanks the gain that the word at item k tells where the weight stands behind, or
// what the pig weighed before where it stands ahead.
func (r *reader) gainAt(k int) {
	n := k + 1
	if n+1 < len(r.items) && r.items[n].s == "from" && r.bareWeight(n+1) && k > 1 && r.bareWeight(k-1) && r.pigBefore(k-1) >= 0 { // "fern 73, up from 64"
		r.blank(k)
		r.blank(n)
		r.blank(n + 1)
		return
	}
	for n < len(r.items) && n <= k+2 && r.items[n].gap == gapNone && r.items[n].isAny(setOf(sAbout, sBy)) && !r.items[n].number() {
		n++
	}
	if n >= len(r.items) || !r.bareWeight(n) || r.items[n].gap > gapNone || r.pigBefore(k) < 0 {
		return
	}
	if m := r.weightBehind(n+1, r.items[n].v); m > 0 {
		if gain := &r.items[n]; gain.kind == itQty && r.items[m].kind == itNum {
			r.items[m].kind, r.items[m].unit = itQty, gain.unit // "up 8 kg to 70.5"
		}
		r.blankTo(k, m)
	}
}

// noGain blanks what says at item k that nothing was put on, where the weight stands
// behind: "did not gain a thing, still 190".
func (r *reader) noGain(k int) {
	for n := k + 2; n < len(r.items) && n < k+8 && r.items[n].gap < gapStop; n++ {
		it := &r.items[n]
		if r.bareWeight(n) {
			if r.pigBefore(k) >= 0 {
				r.blankTo(k, n)
			}
			return
		}
		if it.kind != itWord && !it.soft || it.pig >= 0 || !backToWeight[it.s] && !it.isAny(setOf(sFiller, sPronoun)) && it.s != "anything" && it.s != "thing" {
			return
		}
	}
}

// bareWeight says that item k is a number that could be of weight.
func (r *reader) bareWeight(k int) bool {
	it := &r.items[k]
	return it.kind == itNum && !it.soft && !it.ord && !it.rng || it.qty(mass)
}

// weightBehind is the item of the weight that follows from item k on over small words, a
// pig's number among them taken for one; -1 where none does. It is more than the gain.
func (r *reader) weightBehind(k int, gain float64) int {
	for n := k; n < len(r.items) && n <= k+5 && r.items[n].gap < gapStop; n++ {
		it := &r.items[n]
		switch {
		case r.bareWeight(n):
			if it.v <= gain {
				return -1
			}
			return n
		case it.pig >= 0 && n > k && r.items[n-1].kind == itWord && (n+1 == len(r.items) || r.items[n+1].gap >= gapAnd || r.items[n+1].kind == itWord && !gainWords[r.items[n+1].s]):
			v, err := strconv.ParseFloat(r.pigs[it.pig].Name, 64)
			if err != nil || v <= gain {
				return -1
			}
			r.asNumber(n, v)
			return n
		case it.kind != itWord && !it.soft || it.pig >= 0 || !backToWeight[it.s] && !it.is(sPronoun):
			return -1
		}
	}
	return -1
}

// asNumber takes the pig's number at item k for a bare number.
func (r *reader) asNumber(k int, v float64) {
	it := &r.items[k]
	it.kind, it.v, it.pig, it.tag, it.near = itNum, v, -1, false, false
}

// blankTo blanks items[k:m] and lets item m stand right behind.
func (r *reader) blankTo(k, m int) {
	for n := k; n < m; n++ {
		r.blank(n)
	}
	r.items[m].gap, r.items[m].plus, r.items[m].minus = gapNone, false, false
}

// fromOldWeight blanks the weight that a pig came from: "fern went from 64 to 73".
func (r *reader) fromOldWeight(k int) {
	if k+3 >= len(r.items) || !r.bareWeight(k+1) || !r.bareWeight(k+3) || r.items[k+2].s != "to" && r.items[k+2].s != "up to" && r.items[k+2].s != "down to" || r.pigBefore(k) < 0 {
		return
	}
	was, now := r.items[k+1].v, r.items[k+3].v
	if was < now/2 || was > now*2 || was < 15 || k+4 < len(r.items) && r.items[k+4].gap == gapNone && !r.items[k+4].is(sFiller) && r.items[k+4].kind != itDay {
		return
	}
	r.blankTo(k, k+3)
}

// besideWeight reads the amount at item k that tells how a weight stands to another: to the
// pig's own earlier one, "150, that's 3 more than last time", which is no weight, or to
// that of the pig weighed right before, "plum 168, moss is eleven less".
func (r *reader) besideWeight(k int) {
	n := k + 2
	own := false
	if n < len(r.items) && r.items[n].gap == gapNone {
		switch r.items[n].s {
		case "than", "from", "since", "on", "over":
			own = n+1 < len(r.items) && (r.items[n+1].kind == itDay || r.items[n+1].s == "last" || r.items[n+1].s == "last time" || r.items[n+1].s == "before" || r.items[n+1].s == "the last" || r.items[n+1].s == "last week")
			if !own {
				return
			}
		case "that", "her", "him", "it":
			n++
		default:
			return
		}
	}
	p := r.pigBefore(k)
	if p < 0 {
		if own || r.thatIs(k) || k > 1 && r.bareWeight(k-1) && r.pigBefore(k-1) >= 0 && r.items[k-1].v > 3*r.items[k].v { // "fern 73 (9 up)"
			for n := k; n < len(r.items) && n < k+5 && r.items[n].gap < gapAnd; n++ {
				r.blank(n)
			}
		}
		return
	}
	if !own && r.items[k+1].is(sGain) && r.items[k+1].s != "up" || own {
		if m := r.weightBehind(k+2, r.items[k].v); m > 0 { // "pepper 3 lb heavier, 150"
			r.blankTo(k, m)
			return
		}
	}
	if own {
		return
	}
	m := p - 1
	for m >= 0 && m >= p-5 && (r.items[m].pig >= 0 || r.items[m].kind == itWord && r.items[m].isAny(setOf(sFiller, sAnd, sDitto))) {
		m--
	}
	if m < 1 || !r.bareWeight(m) || r.pigBefore(m) < 0 || r.items[m].v < 3*r.items[k].v || r.items[k].qty(mass) && r.items[m].qty(mass) && r.items[k].unit != r.items[m].unit {
		return
	}
	it := &r.items[k]
	it.v = r.items[m].v + moreOrLess[r.items[k+1].s]*it.v
	if r.items[m].kind == itQty {
		it.kind, it.unit = itQty, r.items[m].unit
	}
	it.plus, it.minus = false, false
	for x := k + 1; x < max(n, k+2); x++ {
		r.blank(x)
	}
}

// thatIs says that a word for what was said stands right before item k.
func (r *reader) thatIs(k int) bool {
	if k == 0 || r.items[k].gap > gapNone {
		return false
	}
	switch r.items[k-1].s {
	case "that's", "thats", "that is", "which is", "which makes", "so":
		return true
	case "is":
		return k > 1 && (r.items[k-2].s == "that" || r.items[k-2].s == "which")
	}
	return false
}

// tagRepeated takes the pig's number that ends a clause for a weight where the clause has
// none and named that pig before: "206-209 about 208".
func (r *reader) tagRepeated(k int) {
	from, named := r.clauseFrom(k), false
	for n := from; n < k; n++ {
		it := &r.items[n]
		switch {
		case it.number() && !it.soft:
			return
		case it.pig == r.items[k].pig:
			named = true
		case it.pig >= 0, it.kind == itWord && it.isAny(setOf(sAll, sEach, sAbout, sAnd, sIs, sFiller)) && !it.is(sNot):
		default:
			return
		}
	}
	if !named || k == from {
		return
	}
	if v, err := strconv.ParseFloat(r.pigs[r.items[k].pig].Name, 64); err == nil {
		r.asNumber(k, v)
	}
}
