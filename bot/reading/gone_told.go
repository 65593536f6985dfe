package reading

import "troughbell/model"

// The smaller words of a departure: a price for each, an hour, a weight for each,
// the butcher who came for them.

// priceOfEach says that the money at item k was got for each pig: "275 dollars for
// each one", "300 apiece".
func (r *reader) priceOfEach(k int) bool {
	for n := max(k-2, r.sentenceStart(k)); n < len(r.items) && n <= k+3 && (n <= k || r.items[n].gap < gapStop); n++ {
		if it := &r.items[n]; it.is(sEach) || it.s == "each" || it.s == "for each" || it.s == "per pig" || it.s == "apiece" {
			return true
		}
	}
	return false
}

// soldEach makes the amount of a sale of several pigs what they brought together,
// where it was told for each.
func (r *reader) soldEach(s span, g *model.Gone, pigs int) {
	if g.Amount == nil || pigs < 2 {
		return
	}
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.number() && !it.soft && it.v == *g.Amount && r.priceOfEach(k) {
			*g.Amount *= float64(pigs)
			return
		}
	}
}

// priceBehind takes a bare price for each that stands right behind a sale: "sold dot
// and plum today, 290 each".
func (r *reader) priceBehind(s span, g *model.Gone) {
	if s.j >= len(r.items) || r.items[s.j].gap >= gapStop {
		return
	}
	if it := &r.items[s.j]; it.kind == itNum && !it.soft && !it.ord && it.v > 15 && s.j+1 < len(r.items) && r.items[s.j+1].is(sEach) {
		g.Amount = model.Float(it.v)
		it.used, r.items[s.j+1].used = true, true
		r.skip = s.j
	}
}

// hangingAll gives the pigs and weights of a sentence that ends or begins with a
// word for hanging to it as a whole: "got the weights back, hazel 188 and clover
// 191 hanging".
func (r *reader) hangingAll() {
	for k := range r.items {
		it := &r.items[k]
		if !it.is(sHung) || it.pig >= 0 || it.quest || r.force[k] != 0 {
			continue
		}
		from, to := r.sentenceStart(k), r.sentenceEnd(k)
		s := span{fGone, from, to}
		if r.has(s, sIf) || r.has(s, sPlan) || r.has(s, sAskSure) || r.has(s, sFeeder) || r.has(s, sFence) || r.has(s, sWater) || r.has(s, sTape) {
			continue
		}
		first, last, pairs := -1, -1, 0
		for n := from; n+1 < to; n++ {
			if x, v := &r.items[n], &r.items[n+1]; x.pig >= 0 && (v.kind == itNum && !v.soft && v.v >= 20 || v.qty(mass)) {
				if first < 0 {
					first = n
				}
				last = n + 1
				pairs++
			}
		}
		if pairs > 1 {
			r.forceRange(min(first, k), max(last, k)+1, fGone)
		}
	}
}

// haulWords are verbs that pigs go to the butcher by, and much else is done by.
var haulWords = map[string]bool{
	"hauled": true, "loaded": true, "delivered": true, "processed": true, "dropped off": true, "harvested": true, "hauled in": true, "hauled to": true, "killed": true, "dispatched": true,
}

// onlyHauled says that nothing but such a verb speaks for a departure: neither the
// butcher nor a pig is named in its sentence.
func (r *reader) onlyHauled(s span) bool {
	if saysAny(r.said(span{0, r.sentenceStart(s.i), r.sentenceEnd(s.j - 1)}), hauledIt) && !r.eachNamed(r.clauseFrom(s.i), s.j) && !r.has(span{0, r.sentenceStart(s.i), s.j}, sButcher) {
		return true // "the boy behind the counter loaded it"
	}
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.is(sSlaughtered) && !haulWords[it.s] {
			return false
		}
	}
	for k := r.sentenceStart(s.i); k < r.sentenceEnd(s.j-1); k++ {
		it := &r.items[k]
		if it.is(sButcher) || it.pig >= 0 || it.group >= 0 || k >= s.i && k < s.j && (it.isAny(setOf(sPigs, sBarrow, sGilt, sBoar, sSow, sYoung, sOld, sBoth, sRest)) || it.s == "em" || it.s == "them" || it.number() && !it.soft && it.unit == 0) {
			return false
		}
	}
	return true
}

// hauledIt tell of goods that were carried.
var hauledIt = phrasesOf("loaded it, loaded it all, loaded it up, hauled it, hauled it home, loaded the truck, loaded the car, loaded the trailer up, loaded my truck, loaded the bags, loaded the sacks, loaded the feed, loaded the corn")

// headsLeft says that what is "down to" a bare number is the herd, since its
// sentence tells of a departure: "down to 11, one died overnight".
func (r *reader) headsLeft(s span) bool {
	k := r.firstAny(s)
	if k < 1 || r.items[k].v > float64(r.alive) || r.has(s, sFeeder) || r.hasFeeder(s) || r.firstQty(s, mass) >= 0 {
		return false
	}
	whole := span{s.frame, r.sentenceStart(s.i), r.sentenceEnd(s.j - 1)}
	if all := (span{s.frame, 0, s.i}); r.firstQty(s, vessel) < 0 && !r.has(whole, sFeed) && (r.has(all, sDied) || r.has(all, sSold)) {
		return true // "one died. 11 left."
	}
	return r.has(whole, sSlaughtered) || r.has(whole, sDied) || r.has(whole, sSold) || r.has(whole, sLost) || r.has(whole, sPigs) && !r.has(whole, sFeed)
}

func (r *reader) hasFeeder(s span) bool {
	for k := s.i; k < s.j; k++ {
		if r.items[k].feeder >= 0 {
			return true
		}
	}
	return false
}

// othersFeed says that a word of feeding without an amount tells who does it while
// the person is away.
func (r *reader) othersFeed(s span) bool {
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.number() && !it.soft || it.kind == itFrac || it.isAny(setOf(sFull, sEmpty)) {
			return false
		}
	}
	for k := range r.items {
		if r.items[k].is(sAway) && r.items[k].pig < 0 {
			return true
		}
	}
	return false
}

// countedHerd says that what was counted is the herd: "counted 7 pigs".
func (r *reader) countedHerd(s span) bool {
	heads := r.has(s, sPigs)
	for k := s.i; k < s.j && !heads && r.quoteHas(s, "counted"); k++ { // "only counted 6"
		it := &r.items[k]
		heads = it.kind == itNum && !it.soft && it.v <= float64(r.alive) && it.v == float64(int(it.v))
	}
	return heads && !r.has(s, sFeed) && !r.has(s, sIngredient) && !r.has(s, sBuy) && r.firstQty(s, mass) < 0 && r.firstQty(s, vessel) < 0 && r.firstQty(s, money) < 0
}

// sellsPart says that a part of a pig was sold, which leaves with its meat and not
// by itself: "sold half of otis", "sold a half hog".
func (r *reader) sellsPart(s span) bool {
	for k := s.i; k < s.j; k++ {
		if r.items[k].kind == itFrac {
			return true
		}
	}
	return false
}

// sourceBefore says that the others at item k are where pigs were got: "from the
// auction".
func (r *reader) sourceBefore(k int) bool {
	for n := k - 1; n >= 0 && n >= k-3; n-- {
		switch r.items[n].s {
		case "from", "at", "off", "through", "from the", "at the":
			return true
		}
		if !r.items[n].is(sFiller) {
			break
		}
	}
	return false
}

// butcherThen takes the going from a place at the butcher's that a word of booking or
// a day to come stands beside: "reserved oct 2 at the butcher".
func (r *reader) butcherThen() {
	for k := range r.items {
		it := &r.items[k]
		switch it.s {
		case "at the butcher", "to the butcher", "dropped off", "at the locker", "to the locker":
		default:
			continue
		}
		from, to := r.sentenceStart(k), r.sentenceEnd(k)
		s := span{fBooked, from, to}
		if r.has(s, sBook) && !r.quoteHas(s, "took", "hauled", "went", "dropped", "dropped off", "brought", "loaded", "delivered") || it.s == "at the butcher" && r.dayAhead(from, to) && !r.quoteHas(s, "took", "hauled", "went", "dropped", "dropped off", "brought", "loaded", "delivered") {
			it.sense = setOf(sButcher)
		}
	}
}

// dayAhead says that a date of a day to come stands in items[i:j].
func (r *reader) dayAhead(i, j int) bool {
	for k := i; k < j; k++ {
		if it := &r.items[k]; it.kind == itDay && !it.day.every && it.day.form == dayDate {
			if d, ok := it.day.on(r.today, lookForward, r.dayFirst); ok && d > r.today && d < r.today+330 {
				return true
			}
		}
	}
	return false
}

// leastDressed is less than the share of their live weight that pigs can hang
// together; a smaller total is the weight of one. Common practice, no source.
const leastDressed = 0.4

// goneTogether is how many pigs a weight of all of them is about: those whose
// weight the butcher still owes, else those in the herd.
func (r *reader) goneTogether() float64 {
	n := 0
	for _, a := range r.c.Herd.Animals {
		if a.Gone != nil && a.Gone.F.How == model.Butchered && a.Gone.F.HangingKg == nil {
			n++
		}
	}
	if n == 0 {
		n = r.alive
	}
	return float64(max(1, n))
}

// onlyOneHangs says that a weight told of all pigs can only be that of each:
// together they would hang next to nothing.
func (r *reader) onlyOneHangs(s span, kg float64) bool {
	if r.awaitsWeight() {
		return false // what they weigh was not asked for while they lived
	}
	on, _, _ := r.when(s, lookBack)
	low, high := 0.0, 0.0
	for _, p := range r.pigs[:r.alive] {
		est, err := r.judge.weight(p, on, model.ByScale)
		if err != nil {
			return false // nothing is known of what the pig weighs
		}
		low, high = low+est.Interval().Low, max(high, est.Interval().High)
	}
	return kg < leastDressed*low && kg <= mostDressed*high
}

// wentToButcher takes a sentence that names the pigs of a butcher's day that has come for
// one of pigs that went, whatever its tense: "today five pig go to butcher: 501, 502".
func (r *reader) wentToButcher() {
	for k := 1; k < len(r.items); k++ {
		it := &r.items[k]
		if !it.is(sButcher) && it.s != "to the butcher" || it.kind != itWord || it.quest || it.s != "to the butcher" && r.items[k-1].s != "to" && r.items[k-1].s != "to the" && !(k > 1 && r.items[k-1].s == "the" && r.items[k-2].s == "to") {
			continue
		}
		i, j := r.sentenceStart(k), r.sentenceEnd(k)
		count, today, other := -1, false, false
		named := 0
		for n := i; n < j; n++ {
			x := &r.items[n]
			switch {
			case x.pig >= 0 && !x.near && n > k:
				named++
			case x.kind == itNum && !x.soft && n < k && count < 0:
				count = n
			case x.kind == itDay:
				d, ok := x.day.on(r.today, lookBack, r.dayFirst)
				today = ok && d == r.today && x.day.mod == 0
				other = other || !today
			case x.kind == itClock, x.pig < 0 && x.isAny(setOf(sPigs, sFiller, sAnd, sArrive, sMove)), n == k, x.s == "took", x.s == "haul", x.s == "hauled", x.s == "sent", x.s == "brought":
			default:
				other = true
			}
		}
		if other || !today || named < 2 || count >= 0 && r.items[count].v != float64(named) {
			continue
		}
		for n := i; n < k; n++ {
			if r.items[n].kind != itDay {
				r.blank(n)
			}
		}
		it.sense = setOf(sSlaughtered)
		r.settled = append(r.settled, span{fGone, i, j})
	}
}
