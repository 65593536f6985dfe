package reading

import "strings"

// What was mixed at home: "ran two batches", "batch and a half mixed", "first batch
// is done". Where it went is told behind, see shares.go.

// makesBatches are words that say that batches were mixed where they stand beside a
// number of them.
var makesBatches = setOfWords(split("ran, did, done, knocked, whipped, whipped up, cooked, cooked up, cranked, make, makes, mix"))

// batchesMade settles the stretch that tells how many batches were mixed, and what is
// told behind it of where they went.
func (r *reader) batchesMade() {
	for k := range r.items {
		it := &r.items[k]
		if it.s == "made" && it.is(sMixed) && k+1 < len(r.items) && r.items[k+1].s == "it" && r.items[k+1].gap == gapNone && !r.speaksOfMix(k) {
			it.sense.drop(sMixed) // "made it 25 for birch"
		}
		bare := it.kind == itNum && it.v <= mostVessels && !it.ord && it.gap == gapNone && k > 0 && r.items[k-1].is(sMixed) && r.items[k-1].kind == itWord
		named := it.unit == unitBatch || it.kind == itWord && namesBatch[it.s]
		if !named && !bare || it.quest {
			continue
		}
		i, j := r.stretch(k)
		if r.batchOfOther(k, j) {
			for n := i; n <= k; n++ {
				if n == k || r.items[n].is(sMixed) {
					r.blank(n) // "made a batch of soap"
				}
			}
			return
		}
		verb, ok := r.makingVerb(k, i, j)
		if !ok {
			continue
		}
		count := r.batchCount(k)
		shares := r.sharesFrom(j, sharedOut{count, unitBatch})
		if count <= 0 || len(shares) == 0 && (bare || verb < 0 || !namesBatch[it.s] && r.items[verb].is(sMixed)) {
			continue // told in words that speak for themselves
		}
		it.kind, it.v, it.unit, it.soft, it.sense = itQty, count, unitBatch, false, senses{}
		from, to := k, k+1
		if verb >= 0 {
			r.items[verb].sense, r.items[verb].unit = setOf(sMixed), 0
			from, to = min(verb, k), max(verb, k)+1
		}
		r.settled = append(r.settled, span{fMixed, from, to})
		for n := to; n < j; n++ { // "through the mixer"
			if r.items[n].is(sMixed) {
				r.blank(n)
			}
		}
		r.giveShares(shares)
		return
	}
}

// speaksOfMix says that the sentence of item k names feed, a batch or what goes into one.
func (r *reader) speaksOfMix(k int) bool {
	for n := r.sentenceStart(k); n < r.sentenceEnd(k); n++ {
		if it := &r.items[n]; it.unit == unitBatch || it.pig < 0 && it.isAny(setOf(sFeed, sRecipe, sIngredient)) {
			return true
		}
	}
	return false
}

// batchOfOther says that the batch at item k is one of something that no pig is fed.
func (r *reader) batchOfOther(k, j int) bool {
	n := k + 1
	if n >= j || !r.items[n].is(sOf) {
		return false
	}
	for n++; n < j && r.items[n].is(sFiller); n++ {
	}
	if n >= j {
		return false
	}
	it := &r.items[n]
	return it.kind == itWord && it.sense.empty() && it.unit == 0 && !it.capital && !sameStuff[it.s]
}

// sameStuff are words that stand for the feed itself.
var sameStuff = setOfWords(split("stuff, same, usual, new, old, regular, normal, number, slop"))

// makingVerb is the word in the stretch items[i:j] that says that the batches at item
// k were mixed; -1 where they but head a list of where they went, "2 batches: ...".
func (r *reader) makingVerb(k, i, j int) (verb int, ok bool) {
	verb = -1
	for n := i; n < j; n++ {
		it := &r.items[n]
		switch {
		case n == k:
		case it.feeder >= 0, it.pig >= 0, it.qty(mass), it.kind == itDay && (it.day.every || it.day.mod > 0), it.is(sIngredient), it.is(sRecipe) && !makesBatches[it.s] && n < k, it.isAny(setOf(sPlan, sNot, sIf, sAskSure, sShed, sFeeder, sPigs)) && !it.is(sFiller):
			return 0, false
		case (it.is(sMixed) || makesBatches[it.s]) && verb < 0:
			verb = n
		}
	}
	if verb < 0 {
		return verb, r.items[k].label && k == i
	}
	if w := r.items[verb].s; (w == "make" || w == "makes" || w == "mix") && !(verb > i && presentMakers[r.items[verb-1].s]) {
		return 0, false
	}
	return verb, verb < k+4 && k < verb+4
}

// namesBatch are phrases that speak of a batch and may mean another thing elsewhere.
var namesBatch = setOfWords(split("first batch, batch is"))

// presentMakers are the words before "make" that tell what was done: "I make two batch
// today", "the kids helped me mix one".
var presentMakers = setOfWords(split("i, we, me, us, helped"))

// batchCount is how many batches item k tells: one for a bare "batch", "first batch".
func (r *reader) batchCount(k int) float64 {
	if r.items[k].kind != itWord {
		return r.items[k].v
	}
	if strings.HasSuffix(r.items[k].s, "batches") {
		return 0 // nobody said how many
	}
	return 1
}
