package reading

import (
	"strings"

	"troughbell/model"
)

// Words that look like a filling, a level or a pen and are none.

// notThisOne silences clauses that but deny of a thing what was told of another: "barrels
// are topped, hoppers aren't".
func (r *reader) notThisOne() {
	for k := 1; k < len(r.items); k++ {
		it, p := &r.items[k], &r.items[k-1]
		if !deniesBare[it.s] || it.gap != gapNone || it.quest || k+1 < len(r.items) && r.items[k+1].gap < gapAnd && r.items[k+1].s != "yet" {
			continue
		}
		if p.feeder < 0 && p.barrel < 0 && !(p.kind == itWord && p.isAny(setOf(sFeeder, sBarrel, sWallow))) && !(p.s == "one" && k > 1 && r.items[k-2].kind == itThing) {
			continue
		}
		i := r.stretchOf(k)
		if i == 0 || !r.amountless(i, k) || r.has(span{0, i, k}, sFull) || r.has(span{0, i, k}, sFill) {
			continue
		}
		if r.poursNext(k + 1) { // "small isn't, only put a bag in"
			r.blank(k)
			r.items[k+1].gap = gapNone
			continue
		}
		for n := i; n <= k; n++ {
			r.blank(n)
			r.items[n].s = ""
		}
		r.items[i].gap = max(r.items[i].gap, gapSemi)
		if k+1 < len(r.items) {
			r.items[k+1].gap = max(r.items[k+1].gap, gapSemi)
		}
	}
}

// poursNext says that the clause from item k on goes on with what was poured and names no
// thing.
func (r *reader) poursNext(k int) bool {
	if k >= len(r.items) || r.items[k].gap >= gapStop {
		return false
	}
	s := span{0, k, r.clauseEnd(k)}
	for n := s.i; n < s.j; n++ {
		if it := &r.items[n]; it.feeder >= 0 || it.barrel >= 0 || it.isAny(setOf(sFeeder, sBarrel)) {
			return false
		}
	}
	return (r.has(s, sPour) || r.has(s, sTook)) && (r.firstQty(s, vessel) >= 0 || r.firstQty(s, mass) >= 0 || r.firstQty(s, volume) >= 0)
}

// deniesBare end a clause that denies without saying what.
var deniesBare = setOfWords(split("aren't, arent, isn't, isnt, wasn't, wasnt, weren't, werent, ain't, aint, didn't, didnt, not, is not, are not, was not, were not, did not"))

// countedNames takes the name of a pen in the plural behind a number for what it means
// elsewhere: "otis ate 3 apples".
func (r *reader) countedNames() {
	for k := 1; k < len(r.items); k++ {
		it, p := &r.items[k], &r.items[k-1]
		of := p.is(sOf) && k > 1 && r.items[k-2].qty(mass) && !r.has(span{0, r.sentenceStart(k), k}, sPlan)
		if it.pen < 0 || !of && (p.kind != itNum || p.soft) || it.gap != gapNone || !strings.HasSuffix(it.s, "s") || strings.EqualFold(it.s, r.c.Herd.Pens[it.pen].Name) {
			continue
		}
		r.blank(k)
		if it.sense = (senses{}); !of {
			r.blank(k - 1)
		}
	}
}

// anotherBag takes an "another" before the word for a measure for one of it.
func (r *reader) anotherBag() {
	for k := 0; k+1 < len(r.items); k++ {
		n := &r.items[k+1]
		if r.items[k].s == "another" && n.gap == gapNone && n.kind == itWord && n.unit != 0 && n.unit.dim() == vessel && !strings.HasSuffix(n.s, "s") {
			n.kind, n.v = itQty, 1
		}
	}
}

// tippedOver takes a barrel that was tipped over for an empty one, and what ran out of it
// for nothing that was poured: "tipped the blue barrel over, all 30 gallons gone".
func (r *reader) tippedOver() {
	for k := range r.items {
		it := &r.items[k]
		if it.s != "over" && it.s != "upended" && it.s != "upside down" || it.quest {
			continue
		}
		i, j := r.stretch(k)
		verb, barrel := it.s == "upended", false
		for n := i; n < k || n < j && it.s == "upended"; n++ {
			verb = verb || tips[firstWord(r.items[n].s)]
			barrel = barrel || r.items[n].barrel >= 0 || r.items[n].kind == itWord && r.items[n].is(sBarrel)
		}
		if s := (span{0, i, j}); !verb || !barrel || !r.amountless(i, j) || r.has(s, sNot) || r.has(s, sPlan) {
			continue
		}
		for n := i; n < j; n++ {
			if x := &r.items[n]; tips[firstWord(x.s)] || x.pig >= 0 {
				r.blank(n)
			}
		}
		it.s, it.sense = "empty", setOf(sEmpty)
		for n := j; n < r.sentenceEnd(k); n++ {
			if r.items[n].qty(volume) {
				for x := r.clauseFrom(n); x < r.clauseEnd(n); x++ {
					r.blank(x)
				}
			}
		}
	}
}

var tips = setOfWords(split("tipped, knocked, kicked, flipped, pushed, turned, rolled, shoved, blew, blown, tip, knocks, tips"))

// wentDown takes an amount that a barrel sank by for none that was poured: "shed went down
// 20 gallons since yesterday".
func (r *reader) wentDown() {
	for k := 1; k < len(r.items); k++ {
		if !r.items[k].qty(volume) || r.items[k].gap != gapNone {
			continue
		}
		n := k - 1
		for n > 0 && r.items[n].isAny(setOf(sAbout)) && r.items[n+1].gap == gapNone {
			n--
		}
		if i, j := r.stretch(k); sinks[r.items[n].s] && r.amountless(i, k) && !r.has(span{0, i, j}, sFill) && !r.has(span{0, i, j}, sPour) {
			for x := i; x < j; x++ {
				r.blank(x)
				r.items[x].s = ""
			}
		}
	}
}

var sinks = setOfWords(split("down, went down, dropped, fell, sank, lost, is down, went down by, down by, dropped by, loses, losing"))

// adjectiveBags joins a number to the measure that stands behind a word for what kind:
// "put 2 fresh bags in".
func (r *reader) adjectiveBags() {
	for k := 0; k+2 < len(r.items); k++ {
		it, a, u := &r.items[k], &r.items[k+1], &r.items[k+2]
		if it.kind == itNum && !it.ord && kindOfBag[a.s] && a.gap == gapNone && u.gap == gapNone && u.kind == itWord && u.unit != 0 && u.unit.dim() == vessel && a.feeder < 0 && a.barrel < 0 {
			it.kind, it.unit, it.soft = itQty, u.unit, false
			r.blank(k + 1)
			r.blank(k + 2)
		}
	}
}

var kindOfBag = setOfWords(split("fresh, full, whole, new, heavy, extra, good, heaping, heaped, level, more, other, entire, giant, little, unopened, fat"))

// shedBarrel takes "in shed" for the barrel of that name where the sentence tells of
// water in another, and of no goods: "12 in shed, 30 in hill".
func (r *reader) shedBarrel() {
	for k := range r.items {
		it := &r.items[k]
		if it.s != "in shed" && it.s != "in the shed" && it.s != "in the barn" || it.kind != itWord {
			continue
		}
		s := span{0, r.sentenceStart(k), r.sentenceEnd(k)}
		if !r.hasBarrel(s) || r.has(s, sFeed) || r.has(s, sIngredient) || r.firstQty(s, mass) >= 0 || r.firstQty(s, vessel) >= 0 {
			continue
		}
		for n, b := range r.c.Herd.Barrels {
			if strings.EqualFold(b.Name, lastWord(it.s)) {
				it.kind, it.barrel, it.sense = itThing, int8(n), senses{}
			}
		}
	}
}

// bucketsOfWater takes buckets of water for no feed; how much they held is asked.
func (r *reader) bucketsOfWater() {
	for k := 0; k+2 < len(r.items); k++ {
		if it := &r.items[k]; it.qty(vessel) && r.items[k+1].is(sOf) && r.items[k+2].s == "water" {
			r.blank(k)
			r.blank(k + 1)
		}
	}
}

// waterByBucket says that a span tells water by the bucket and fills nothing to the brim.
func (r *reader) waterByBucket(s span, from int) bool {
	if len(r.out) != from+1 || !saysAny(r.said(span{0, r.sentenceStart(s.i), r.sentenceEnd(s.j - 1)}), bucketfuls) || r.has(s, sFull) {
		return false
	}
	f, ok := r.out[from].Act.(Fact)
	if !ok {
		return false
	}
	w, ok := f.Fact.(model.Water)
	return ok && w.Full && w.Litres == nil
}

var bucketfuls = phrasesOf("buckets of water, bucket of water, pails of water, pail of water")

// turnsAge says that a number is what somebody turned.
func (r *reader) turnsAge(s span, _ int) bool {
	for k := max(s.i, 1); k < s.j; k++ {
		if it := &r.items[k]; it.kind == itNum && (r.items[k-1].s == "turned" || r.items[k-1].s == "turns" || r.items[k-1].s == "turning") {
			return true
		}
	}
	return false
}

// sizeOfPrice says that what a bag would hold is what it was sold for.
func (r *reader) sizeOfPrice(s span, _ int) bool {
	for k := s.i + 1; k < s.j; k++ {
		if r.items[k].kind == itNum && r.items[k-1].s == "for" {
			return true
		}
	}
	return false
}

// numberOfNothing says that goods in store are told by a bare number and no word for them,
// behind a temperature.
func (r *reader) numberOfNothing(s span, from int) bool {
	if from == 0 || r.firstQty(s, mass) >= 0 || r.firstQty(s, vessel) >= 0 || r.has(s, sFeed) || r.has(s, sIngredient) || r.has(s, sBuy) {
		return false
	}
	f, ok := r.out[from-1].Act.(Fact)
	return ok && f.Kind() == "weather" && r.items[s.i].gap < gapStop
}

// downBy says that the part at item k is by how much a level has sunk: "down by a third".
func (r *reader) downBy(k, i int) bool {
	for n := k - 1; n >= i && n >= k-3 && r.items[n+1].gap == gapNone; n-- {
		switch r.items[n].s {
		case "down", "down by", "dropped", "dropped by", "sunk by":
			return true
		case "by", "about", "like", "maybe", "around":
		default:
			return false
		}
	}
	return false
}
