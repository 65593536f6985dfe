package reading

import (
	"strings"
	"time"
)

// What a filling is of, where the word beside it does not name a feeder or a barrel.

// wallowFilled is where the words end that tell of the filling of the wallow named at
// item k: "wallow was low, topped it up". It is k where none do.
func (r *reader) wallowFilled(k int) int {
	n := r.clauseEnd(k)
	if i, j := r.stretch(k); j < n && j > i {
		n = j
	}
	if n >= len(r.items) {
		return k
	}
	end := n
	for end < len(r.items) && (end == n || r.items[end].gap < gapComma && !(r.items[end].gap == gapAnd && r.items[end].kind != itQty)) {
		end++
	}
	fills, it := false, false
	for x := n; x < end; x++ {
		w := &r.items[x]
		switch {
		case w.quest, w.pig >= 0, w.feeder >= 0, w.barrel >= 0, w.pen >= 0, w.qty(mass), w.qty(vessel), w.isAny(setOf(sFeeder, sBarrel, sFeed, sNot, sPlan, sIf)) && !w.is(sFiller):
			return k
		case w.is(sFill), w.is(sHose) && !w.is(sFiller):
			fills = true
			it = it || strings.HasSuffix(w.s, " it") || strings.Contains(w.s, " it ")
		case w.is(sPronoun) && w.s == "it":
			it = true
		}
	}
	if !fills || !it {
		return k
	}
	return end
}

// heardWallow takes words that sound like the wallow for it, behind a word of filling
// and where nothing is called so: "topped the willow".
func (r *reader) heardWallow() {
	for k := 1; k < len(r.items); k++ {
		it := &r.items[k]
		if it.kind != itWord || !it.sense.empty() || it.pig >= 0 || it.pen >= 0 || !likeWallow[it.s] {
			continue
		}
		for n := k - 1; n >= 0 && n >= k-3 && r.items[n+1].gap == gapNone; n-- {
			if r.items[n].isAny(setOf(sFill, sHose)) && r.items[n].kind == itWord {
				it.sense, it.known = setOf(sWallow), true
			}
		}
	}
}

var likeWallow = setOfWords(split("willow, willows, wallo, hallow, swallow, mallow, fallow, shallow, wallet, hollow, wallows"))

// fillsStranger says that what a span tells to have been filled is no thing of the herd:
// "filled the lawnmower".
func (r *reader) fillsStranger(s span) bool {
	strange := false
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if it.isAny(setOf(sFeed, sFeeder, sBarrel, sWater)) && !it.is(sFill) || it.feeder >= 0 || it.barrel >= 0 {
			return false
		}
		if k+2 < len(r.items) && it.is(sFill) && it.kind == itWord && r.items[k+1].gap == gapNone && r.items[k+2].gap == gapNone && ownerWords[r.items[k+1].s] {
			x := &r.items[k+2]
			strange = strange || x.kind == itWord && x.unit == 0 && x.sense.empty() && !placeWords[x.s] && x.pig < 0
		}
	}
	return strange
}

// filledUntold says that a text tells nothing but that something was filled, where a
// feeder and a barrel could be, and nothing was spoken of right before: "topped it off".
func (r *reader) filledUntold(s span, from int) bool {
	h := r.c.Herd
	if from > 0 || len(r.out) != 1 || len(h.Feeders) != 1 || len(h.Barrels) == 0 || r.c.LastNudge != nil || r.c.Pending != nil || len(r.c.Before) > 0 && r.c.Now.Sub(r.c.Before[0].At) < untoldReach {
		return false
	}
	if f, ok := refillOf(r.out[0]); !ok || f.FeedKg != nil || f.Fraction != nil {
		return false
	}
	filled := false
	for k := range r.items {
		it := &r.items[k]
		filled = filled || it.is(sFill)
		if it.kind == itWord && it.isAny(setOf(sFeeder, sFeed, sBarrel, sWater)) || it.kind != itWord && it.kind != itDay && it.kind != itClock || fedWords[it.s] || !it.isAny(setOf(sFill, sFull, sFiller, sPronoun)) && it.kind == itWord {
			return false
		}
	}
	return filled
}

// untoldReach is how long what was told last may be what an "it" means.
const untoldReach = 12 * time.Hour

// askFeedOrWater asks whether it was a feeder that was filled, or the water.
func askFeedOrWater(r *reader, s span, from int) {
	act := r.out[from].Act
	r.takeBack(s, from)
	r.useAll(s)
	r.feedOrWater(s, act, contents{full: true})
}

var ownerWords = setOfWords(split("the, my, our, a, his, her, their"))

// fedAlone says that a span tells that the pigs were fed, and not how much nor that a
// feeder was filled: "fed em yesterday".
func (r *reader) fedAlone(s span) bool {
	fed := false
	for k := s.i; k < s.j; k++ {
		switch it := &r.items[k]; {
		case fedWords[it.s]:
			fed = true
		case it.isAny(setOf(sFill, sFull, sTook, sDone, sPour)) && it.kind == itWord && !it.is(sFiller):
			return false
		}
	}
	return fed
}

var fedWords = setOfWords(split("fed, fed them, fed em, i fed, we fed, just fed, fed the pigs, fed pigs, fed all, feeding"))

// leftOverGoods settles amounts that were left over from a filling for what is in
// store: "topped off the small hopper and there is half a bag left over".
func (r *reader) leftOverGoods() {
	for k := 1; k < len(r.items); k++ {
		it := &r.items[k]
		if r.force[k] != 0 || it.gap != gapNone || r.items[k-1].kind != itQty || !overBehind[it.s] && !(it.s == "left" && k+1 < len(r.items) && r.items[k+1].s == "over" && r.items[k+1].gap == gapNone) {
			continue
		}
		if p := &r.items[k-1]; !p.qty(vessel) && !p.qty(mass) || p.unit == unitBale {
			continue
		}
		i, j := r.stretch(k)
		if i == 0 && r.items[k-1].qty(mass) || r.items[k].quest {
			continue
		}
		things := false
		for n := i; n < j; n++ {
			x := &r.items[n]
			things = things || x.feeder >= 0 || x.barrel >= 0 || x.isAny(setOf(sFeeder, sBarrel, sFill, sPlan, sNot)) && !x.is(sFiller)
		}
		if !things {
			r.forceRange(i, j, fStock)
		}
	}
}

// pouredOnes settles what was poured of the bags told before it: "bought 6 sacks, poured
// one".
func (r *reader) pouredOnes() {
	for k := 1; k < len(r.items); k++ {
		it, p := &r.items[k], &r.items[k-1]
		if !it.soft || it.kind != itNum || it.gap != gapNone || r.force[k] != 0 || !p.is(sPour) || p.kind != itWord || p.s == "put" || p.s == "plus" || !r.oneOfThem(k) || it.quest {
			continue
		}
		i, j := r.stretch(k)
		s := span{fFeed, i, j}
		if r.firstQty(s, vessel) >= 0 || r.has(s, sPlan) || r.has(s, sNot) || k+1 < j && !r.items[k+1].isAny(setOf(sFiller, sFeeder, sPronoun, sOf)) && !strings.HasPrefix(r.items[k+1].s, "of ") && r.items[k+1].kind != itDay && r.items[k+1].feeder < 0 {
			continue
		}
		from := r.sentenceStart(k)
		before := span{fStock, from, i}
		if i == from || r.firstQty(before, vessel) < 0 || !r.has(before, sBuy) && !r.quoteHas(before, "delivered", "delivery", "delivery came", "came", "arrived") || r.find(before, sFeeder) >= 0 {
			continue
		}
		r.forceRange(from, i, fStock)
		r.forceRange(i, j, fFeed)
	}
}

var overBehind = setOfWords(split("left over, leftover, to spare, over, remaining"))

// waterRun makes a hosing of water that was run for a span of time, where no barrel is
// named: "ran water in it half an hour".
func (r *reader) waterRun() {
	if r.c.Herd.Wallow == nil {
		return
	}
	for k := range r.items {
		it := &r.items[k]
		if it.s != "ran water" && !(it.s == "ran" && k+1 < len(r.items) && r.items[k+1].s == "water") {
			continue
		}
		lasted := false
		for n := k + 1; n < r.clauseEnd(k); n++ {
			x := &r.items[n]
			if x.barrel >= 0 || x.is(sBarrel) || x.qty(volume) || x.is(sNot) {
				return
			}
			lasted = lasted || x.qty(hours) || x.kind == itFrac
		}
		if !lasted {
			continue
		}
		it.sense = setOf(sHose)
		if n := k + 1; it.s == "ran" {
			r.blank(n)
		}
	}
}
