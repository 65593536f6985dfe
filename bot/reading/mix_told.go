package reading

import "strings"

// forceMixTold settles lists of several ingredients, each with its amount, that say
// what a batch holds and not what was bought: "switched to 70 corn 25 soy 5 mineral",
// "made a batch, 80 corn 18 soy".
func (r *reader) forceMixTold() {
	for k := 0; k < len(r.items); {
		end := r.sentenceEnd(k)
		if from := r.mixListed(k, end); from >= 0 {
			r.forceRange(from, end, fRecipe)
			for n := k; n < from; n++ {
				if it := &r.items[n]; mixCues[it.s] || strings.Contains(it.s, "mixing") {
					it.used = true
				}
				if it := &r.items[n]; it.is(sMixed) && n+1 < from && r.batchAt(n+1, from) {
					r.forceRange(n, from, fMixed)
					break
				}
			}
		}
		k = end
	}
}

// mixListed is where the list of what a batch holds begins in the sentence items[i:j],
// -1 where there is none.
func (r *reader) mixListed(i, j int) int {
	cue, first, ingredients, amounts := false, -1, 0, 0
	for k := i; k < j; k++ {
		it := &r.items[k]
		switch {
		case r.force[k] != 0, it.quest, it.pig >= 0, it.feeder >= 0, it.qty(money), it.unit == unitBag, it.isAny(setOf(sBuy, sShed, sPay, sNot, sPlan, sAskSure, sWhatIf, sFeeder, sPour, sRecipe, sLeft)) && !it.is(sFiller) && it.kind == itWord:
			return -1
		case it.is(sIngredient) && it.canon != "":
			ingredients++
			if first < 0 {
				first = k
			}
		case it.kind == itNum && !it.soft && !it.ord && (ingredients > 0 || k+1 < j && r.items[k+1].is(sIngredient)), it.qty(mass):
			amounts++
			if first < 0 {
				first = k
			}
		case it.number() && !it.soft && it.unit != unitBatch && !(k > i && r.items[k-1].is(sMixed)):
			return -1
		}
		if first < 0 || first == k {
			cue = cue || it.is(sMixed) && (strings.Contains(it.s, "mixing") || r.batchAt(k+1, min(k+4, j))) || mixCues[it.s] || it.is(sFeed) && k == i && k+1 < j && r.items[k+1].is(sIs)
		}
	}
	if first > i {
		cue = cue || strings.Contains(strings.ToLower(r.text[r.items[i].from:r.items[first].from]), "from now on")
	}
	if !cue || ingredients < 2 || ingredients != amounts {
		return -1
	}
	return first
}

// mixCues are words before a list of ingredients that say that it is what is fed from
// now on.
var mixCues = setOfWords(split("switched to, switched, changed to, changed, from now on, now feeding, feeding, went to, now using, using"))

// batchAt says that items[i:j] tell a batch or so many of them.
func (r *reader) batchAt(i, j int) bool {
	for k := i; k < j; k++ {
		if r.items[k].unit == unitBatch {
			return true
		}
	}
	return false
}

// fullBatches takes the "full" of "two full batches" for how big they were.
func (r *reader) fullBatches() {
	for k := 1; k+1 < len(r.items); k++ {
		if it, next := &r.items[k], &r.items[k+1]; it.s == "full" && it.is(sFull) && next.unit == unitBatch && next.gap == gapNone && r.items[k-1].kind == itNum {
			it.sense, it.unit = setOf(sFiller), 0
		}
	}
}
