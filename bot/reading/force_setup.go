package reading

import "strings"

// What settles the words of a set-up that stand apart from what they belong to.

// forceSetUp settles sizes of bags, names behind "called" and the weight aimed at.
func (r *reader) forceSetUp() {
	for k := range r.items {
		it := &r.items[k]
		if r.force[k] != 0 || it.quest {
			continue
		}
		if it.s == "and back" && k+2 < len(r.items) && r.items[k+1].is(sPen) && r.items[k+2].kind == itDim { // "oak 60x80 and back lot 50x70"
			it.s, it.from, it.sense, it.gap, it.known = "back", it.to-len("back"), setOf(), gapAnd, false
		}
		switch {
		case sizeVerbs[it.s] && k == r.clauseFrom(k):
			if f := r.setsSize(k); f != fIdle {
				end := r.clauseEnd(k)
				r.items[k+1].gap = max(r.items[k+1].gap, gapComma) // the verb is no part of a name
				r.forceRange(k+1, end, f)
			}
		case it.unit.dim() == vessel && it.unit != unitBatch && it.unit != unitBale:
			if i, j := r.bagIs(k); j > i {
				r.forceRange(i, j, fSize)
			}
		case it.s == "bag is" || it.s == "bag weighs":
			if k+1 < len(r.items) && r.items[k+1].qty(mass) && (k == 0 || it.gap >= gapAnd || r.items[k-1].is(sFiller)) {
				r.forceRange(k, k+2, fSize)
			}
		case it.s == "in pen" && it.gap >= gapComma && k+1 < len(r.items) && r.items[k+1].kind == itNum && r.find(span{0, r.sentenceStart(k), k}, sPen) >= 0 && len(r.c.Herd.Pens) == 0:
			it.sense = setOf(sInUse)
			r.forceRange(k, k+2, fSetPen)
		case it.is(sNamed) && it.kind == itWord:
			if f, j := r.calledThings(k); j > k {
				r.forceRange(k, j, f)
			}
		case it.is(sPlan):
			if end := r.wantsWeight(k); end > k {
				r.forceRange(r.stretchOf(k), end, fTarget)
			}
		}
	}
}

// sizeVerbs give a thing another size.
var sizeVerbs = setOfWords(split(`set, set the, change, make, update, correct, resize, adjust, set my, set our`))

// setsSize says which kind of thing the clause of item k, one of these verbs, gives a
// size: "set big hopper to 400 lb". Nothing else may stand in it.
func (r *reader) setsSize(k int) frame {
	f, size := fIdle, false
	for n := k + 1; n < r.clauseEnd(k); n++ {
		switch it := &r.items[n]; {
		case it.feeder >= 0 && it.pig < 0 && f == fIdle:
			f = fSetFeeder
		case it.barrel >= 0 && it.pig < 0 && f == fIdle:
			f = fSetBarrel
		case !size && f == fSetFeeder && it.qty(mass), !size && f == fSetBarrel && it.qty(volume):
			size = true
		case it.kind == itWord && (it.is(sFiller) || it.isAny(setOf(sTo, sIs, sHolds, sNow, sFeeder, sBarrel, sWater)) || it.s == "capacity" || it.s == "size" || it.s == "at" || it.s == "from"):
		default:
			return fIdle
		}
	}
	if !size {
		return fIdle
	}
	return f
}

// bagIs are the items that tell what one bag or bucket holds, by item k: "a bag is
// 50 lb", "bags are 40 lb"; none if it tells none.
func (r *reader) bagIs(k int) (i, j int) {
	it := &r.items[k]
	if it.kind == itQty && it.v != 1 || it.kind != itQty && it.kind != itWord || k+2 >= len(r.items) {
		return 0, 0
	}
	n := k + 1
	for n < len(r.items) && n < k+4 && r.items[n].gap == gapNone && (r.items[n].isAny(setOf(sIs, sHolds, sWeigh, sEach, sAbout)) || r.items[n].is(sFiller)) && r.items[n].kind == itWord {
		n++
	}
	if n == k+1 || n >= len(r.items) || !r.items[n].qty(mass) || r.items[n].gap > gapNone || n+1 < len(r.items) && r.items[n+1].gap == gapNone && r.items[n+1].is(sIngredient) {
		return 0, 0
	}
	if k > 0 && r.items[k].gap < gapAnd && (r.items[k-1].number() || r.items[k-1].is(sPour)) {
		return 0, 0
	}
	return k, n + 1
}

// calledThings is the kind of things that the word for naming at item k gives
// names to, and the end of the names: "2 feeders, 300 lb each, called barn and
// field".
func (r *reader) calledThings(k int) (frame, int) {
	f := fIdle
	for n := k - 1; n >= r.sentenceStart(k) && f == fIdle; n-- {
		switch it := &r.items[n]; {
		case it.pig >= 0, it.isAny(setOf(sPigs, sBarrow, sGilt, sArrive)) && !it.is(sFiller):
			return fIdle, k
		case it.is(sFeeder):
			f = fSetFeeder
		case it.isAny(setOf(sBarrel, sWater)):
			f = fSetBarrel
		case it.is(sPen):
			f = fSetPen
		}
	}
	if f == fIdle {
		return f, k
	}
	j := k + 1
	for j < len(r.items) && (j == k+1 || r.items[j].gap == gapAnd || r.items[j].gap == gapComma) {
		if it := &r.items[j]; it.number() || it.kind != itWord && it.kind != itThing || !r.nameLike(j) && !placeWords[it.s] {
			break
		}
		j++
		if j < len(r.items) && r.items[j].gap == gapNone && !r.items[j].isAny(setOf(sFeeder, sBarrel, sPen)) {
			break
		}
	}
	if j < k+3 {
		return fIdle, k // one name is found without this
	}
	return f, j
}

// Between these a weight that somebody wants pigs to have is that of finished
// ones, in kilograms. Common practice, no source.
const (
	leastWanted = 60
	mostWanted  = 220
)

// wantsWeight is where the clause of item k, a word for wanting, ends if it tells the
// weight that pigs are to reach: "I want 270 lb", "want em at 270"; else -1.
func (r *reader) wantsWeight(k int) int {
	switch w := r.items[k].s; {
	case strings.HasPrefix(w, "want"), strings.HasSuffix(w, " want"), strings.HasSuffix(w, "like"), strings.HasPrefix(w, "hop"), w == "i'd", w == "we'd", w == "would":
	default:
		return -1
	}
	weight, end := false, r.clauseEnd(k)
	for n := k + 1; n < end; n++ {
		it := &r.items[n]
		if weight && it.gap >= gapComma {
			end = n // "want em about 270, sundays 1 pm"
			break
		}
		switch {
		case it.qty(mass) && it.si() >= leastWanted && it.si() <= mostWanted:
			weight = true
		case it.kind == itNum && !it.soft && r.massUnit().si(it.v) >= leastWanted && r.massUnit().si(it.v) <= mostWanted && !weight:
			weight = true
		case it.number() && !it.soft, it.kind == itDay, it.pig >= 0, it.isAny(setOf(sFeed, sFeeder, sIngredient, sBuy, sAsk, sAskSure, sMixed)) && !it.is(sFiller):
			return -1
		}
	}
	if !weight || len(r.c.Herd.Feeders) > 0 && r.c.Herd.TargetStated {
		return -1
	}
	return end
}

// stretchOf is the "and" or the clause that item k's words begin at.
func (r *reader) stretchOf(k int) int {
	i, _ := r.stretch(k)
	return i
}
