package reading

import (
	"strings"
	"time"

	"troughbell/model"
)

// What was told to be empty is what is filled right after: "the back one was empty. anyway
// it's full now", and in a message of its own "he filled it".

// itFilled puts the barrel or the feeder that was told to be low in the place of the "it"
// that was filled.
func (r *reader) itFilled() {
	for i := 0; i < len(r.items); {
		j := r.sentenceEnd(i)
		if k := r.filledIt(i, j); k >= 0 {
			if barrel, feeder := r.lowBefore(i); barrel >= 0 || feeder >= 0 {
				it := &r.items[k]
				verb := it.is(sFill)
				it.kind, it.barrel, it.feeder, it.known = itThing, barrel, feeder, true
				it.sense = senses{}
				if verb { // "filled it" in one
					it.sense = setOf(sFill)
				}
			}
		}
		i = j
	}
}

// filledIt is the pronoun of a sentence that tells but that "it" was filled or is full, -1
// if it tells more.
func (r *reader) filledIt(i, j int) int {
	at, filled := -1, false
	for k := i; k < j; k++ {
		it := &r.items[k]
		switch w := it.s; {
		case it.quest, it.number() && !it.soft, it.pig >= 0, it.kind == itThing, it.isAny(setOf(sFeed, sWater, sFeeder, sBarrel, sWallow, sNot, sPlan, sIf)) && !it.isAny(setOf(sFiller, sFill, sFull)):
			return -1
		case w == "it" || w == "it's" || w == "its" || w == "it is" || w == "filled it" || w == "topped it" || w == "it was":
			if at >= 0 {
				return -1
			}
			at = k
			filled = filled || strings.HasPrefix(w, "filled") || strings.HasPrefix(w, "topped")
		case it.isAny(setOf(sFill, sFull, sWatered)):
			filled = true
		case it.kind == itWord && (it.isAny(setOf(sFiller, sPronoun, sForeign, sNow, sAnd, sYes, sThanks)) || filledTalk[w]), it.kind == itDay, it.kind == itClock:
		default:
			return -1
		}
	}
	if !filled {
		return -1
	}
	return at
}

var filledTalk = listed("anyway, anyways, up, back up, to the top, now, again, hon, tho, though, just")

// lowAgo is for how long what was told to be low is what "it" is in a message of its own.
// Common practice, no source.
const lowAgo = 3 * time.Hour

// lowBefore is the barrel or the feeder that was last told to be empty or low before item i
// or in the message before; -1 if none.
func (r *reader) lowBefore(i int) (barrel, feeder int8) {
	for k := i - 1; k >= 0; k-- {
		if it := &r.items[k]; it.kind == itThing && it.pig < 0 && (it.barrel >= 0) != (it.feeder >= 0) {
			return it.barrel, it.feeder
		}
	}
	if i > 0 || len(r.c.Before) == 0 || r.c.Now.Sub(r.c.Before[0].At) > lowAgo {
		return -1, -1
	}
	f, ok := r.recent(0)
	if !ok {
		return -1, -1
	}
	switch f := f.(type) {
	case model.Water:
		for n, b := range r.c.Herd.Barrels {
			if f.Seen && strings.EqualFold(b.Name, f.Barrel) {
				return int8(n), -1
			}
		}
	case model.FeedLevel:
		for n, x := range r.c.Herd.Feeders {
			if strings.EqualFold(x.Name, f.Feeder) {
				return -1, int8(n)
			}
		}
	}
	return -1, -1
}

// levelsApart parts what is seen in one barrel from the filling of another, and the pouring
// into two feeders from what was in them before: "filled shed and hill still has half", "big
// was a third and small near empty so i put four bags in big and three in small".
func (r *reader) levelsApart() {
	for k := 2; k+2 < len(r.items); k++ {
		it := &r.items[k]
		if it.gap == gapAnd && it.barrel >= 0 && it.pig < 0 && r.stillHolds(k) && r.filledAnother(k) {
			it.gap = gapStop
		}
	}
}

// stillHolds says that behind the barrel at item k stands how much is left in it.
func (r *reader) stillHolds(k int) bool {
	left, part := false, false
	for n := k + 1; n < r.clauseEnd(k) && n <= k+7; n++ {
		it := &r.items[n]
		left = left || it.s == "still" || it.s == "has" || it.s == "got" || it.s == "'s got" || it.is(sLeft) || it.s == "still has"
		part = part || it.kind == itFrac || it.isAny(setOf(sEmpty))
	}
	return left && part
}

// filledAnother says that the sentence tells before item k of a filling of another barrel.
func (r *reader) filledAnother(k int) bool {
	filled, other := false, false
	for n := r.sentenceStart(k); n < k; n++ {
		it := &r.items[n]
		if it.kind == itFrac || it.quest {
			return false
		}
		filled = filled || it.isAny(setOf(sFill, sWatered)) && it.pig < 0
		other = other || it.barrel >= 0 && it.barrel != r.items[k].barrel
	}
	return filled && other
}

// lures blanks the bucket of feed that pigs were brought home with: "we got him with a bucket
// of corn".
func (r *reader) lures() {
	for k := 2; k < len(r.items); k++ {
		it := &r.items[k]
		if !it.qty(vessel) && it.unit.dim() != vessel || it.gap != gapNone || it.v > 1 || r.items[k-1].s != "with" && lastWord(r.items[k-1].s) != "with" && !(r.items[k-1].s == "a" && r.items[k-2].s == "with") {
			continue
		}
		caught := false
		for n := r.sentenceStart(k); n < k; n++ {
			w := lastWord(r.items[n].s)
			caught = caught || luredWords[firstWord(r.items[n].s)] || gotWords[w] && n+1 < k && (r.items[n+1].pig >= 0 || herdPronouns[r.items[n+1].s])
		}
		if !caught {
			continue
		}
		end := k + 1
		if end < len(r.items) && r.items[end].s == "of" {
			end++
			if end < len(r.items) && r.items[end].isAny(setOf(sFeed, sIngredient)) {
				end++
			}
		}
		for n := k; n < end; n++ {
			r.blank(n)
		}
	}
}

var luredWords = listed("lured, caught, led, coaxed, tempted, bribed, baited, called, brought, walked, followed")

// treesDown blanks a tree that came down beside a fence that is told to hold: "a tree came
// down but the fence is still hot".
func (r *reader) treesDown() {
	for k := range r.items {
		if !fallenThings[lastWord(r.items[k].s)] || r.items[k].quest {
			continue
		}
		from, to := r.sentenceStart(k), r.sentenceEnd(k)
		for n := k + 1; n < to; n++ {
			it := &r.items[n]
			if !it.is(sFence) || it.pig >= 0 {
				continue
			}
			holds := n > k+1 && (firstWord(r.items[n-1].s) == "missed" || n > k+2 && firstWord(r.items[n-2].s) == "missed")
			for x := n + 1; x < to && x <= n+4; x++ {
				holds = holds || fenceHolds[lastWord(r.items[x].s)] && !r.items[x].number()
				if r.items[x].is(sNot) || r.items[x].is(sDown) {
					holds = false
					break
				}
			}
			if holds {
				for x := from; x < to; x++ {
					if y := &r.items[x]; y.pig < 0 && y.isAny(setOf(sFence, sDown)) || x == k {
						r.blank(x)
					}
				}
			}
			break
		}
	}
}

var (
	fallenThings = listed("tree, limb, branch, limbs, branches, trees, pole")
	fenceHolds   = listed("hot, fine, ok, okay, good, up, standing, held, holding, working, on, intact, live")
)
