package reading

import "troughbell/model"

// A pig told of by what it is like, which no name says: "the limpy one is 231", "the
// runt won't eat".

// describedOnes takes such words for one pig that is not named, and settles a weight
// told of it, so that it is asked which one that is.
func (r *reader) describedOnes() {
	if r.alive < 2 || !r.anyNamed() {
		return
	}
	for k := range r.items {
		it := &r.items[k]
		if it.quest || it.pig >= 0 {
			continue
		}
		switch {
		case runts[it.s] && it.kind == itWord && !(k == r.clauseFrom(k) || r.fillersBefore(k)):
			if r.has(span{0, r.clauseFrom(k), k}, sLost) || r.has(span{0, r.clauseFrom(k), k}, sSold) || r.has(span{0, r.clauseFrom(k), k}, sDied) {
				it.sense = setOf(sPigs) // "lost the runt"
			}
			continue
		case runts[it.s] && it.kind == itWord:
			r.blank(k)
			it.s, it.kind, it.soft, it.v = "one", itNum, true, 1
		case it.s != "one" || it.kind != itNum || !it.soft || it.v != 1 || it.gap != gapNone && k > 0:
			continue
		case k > 0 && r.describes(k-1):
			r.blank(k - 1)
		case k > 0 && !r.fillersBefore(k):
			continue
		}
		if n := r.weightOfOne(k); n > 0 {
			it.s = "one of" // several, and not which
			r.settled = append(r.settled, span{fWeigh, k, n + 1})
		}
	}
}

// runts are words for a pig that only one of a herd is.
var runts = setOfWords(split("runt, runty, runtling"))

// describes says that item k says what the "one" behind it is like.
func (r *reader) describes(k int) bool {
	it := &r.items[k]
	return it.kind == itWord && it.pig < 0 && it.gap < gapComma && len(it.s) > 2 && !it.isAny(whoWords) && !it.isAny(setOf(sFiller, sIs, sPronoun, sGave, sAbout, sPour, sFill, sWeigh, sTook, sArrive, sBuy, sMore, sNot, sFeeder, sBarrel, sPen, sWater, sFeed, sUndo, sNo, sDone, sDo, sAskSure, sRemind, sNote))
}

// weightOfOne is the item of the weight that is told of the one pig at item k, and of
// nothing else in its clause: "one is 231"; 0 if none is.
func (r *reader) weightOfOne(k int) int {
	for n := k + 1; n < len(r.items) && n <= k+4 && r.items[n].gap == gapNone; n++ {
		it := &r.items[n]
		if it.kind == itNum && !it.soft && !it.ord && !it.rng || it.qty(mass) {
			if !r.closes(n) && !(n+1 < len(r.items) && r.items[n+1].is(sNow) && r.closes(n+1)) || !r.somePigWeighs(it) {
				return 0
			}
			return n
		}
		if it.kind != itWord || it.pig >= 0 || !it.isAny(setOf(sFiller, sIs, sNow, sWeigh, sAbout, sPartOf, sGain)) && !reachWords[it.s] {
			return 0
		}
	}
	return 0
}

// somePigWeighs says that a pig of the herd may weigh what item it says.
func (r *reader) somePigWeighs(it *item) bool {
	kg := r.massUnit().si(it.v)
	if it.kind == itQty {
		kg = it.si()
	}
	for p := range r.alive {
		if z, ok := r.deviation(model.Weigh{WeightKg: kg}, selection{pigs: []int16{int16(p)}}, r.today); ok && z < nearEnough && z > -nearEnough {
			return true
		}
	}
	return false
}

// nearEnough is within how many standard deviations a bare number may be what a pig
// weighs. Common practice, no source.
const nearEnough = 4
