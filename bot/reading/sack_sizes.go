package reading

import "strings"

// Bags and buckets told with what each holds: "3 50 lb bags", "4 x 25 kg", "20 bags
// of 50", "eight 5 gal buckets".

// Between these a bare number behind a count of bags is what one of them weighs, in
// kilograms. Common practice, no source.
const leastOfBag, mostOfBag = 8.0, 60.0

// mostBags is the highest count that such a number is looked for behind.
const mostBags = 60

// sackSizes gives a count of bags or buckets what each of them holds, where the text
// says so: bags keep it beside their count, buckets of water become their volume.
func (r *reader) sackSizes() {
	for k := 0; k+1 < len(r.items); k++ {
		it := &r.items[k]
		if it.quest || !it.number() && it.kind != itDim || it.soft || it.ord || it.rng || it.v < 1 || it.v > mostBags || it.v != float64(int(it.v)) {
			continue
		}
		next := &r.items[k+1]
		switch {
		case it.kind == itDim && it.unit.dim() != length && it.v3 == 0 && r.amongFeed(k):
			if kg := r.ofOneBag(it.v2, it.unit); kg > 0 { // "3x50", "4x25 kg corn"
				it.kind, it.unit, it.v2 = itQty, unitBag, kg
			}
		case it.kind == itNum && next.kind == itQty && next.gap == gapNone && !next.rng && k+2 < len(r.items) && r.items[k+2].gap == gapNone && r.vesselWord(k+2):
			r.countOf(k, next) // "3 50 lb bags"
			if next.used {
				r.blank(k + 2)
			}
		case it.kind == itNum && next.gap == gapNone && (next.is(sIngredient) && next.canon != "" || next.is(sFeed)) && k+2 < len(r.items) && r.items[k+2].gap == gapNone && r.vesselWord(k+2) && r.items[k+2].s[len(r.items[k+2].s)-1] == 's':
			it.kind, it.unit = itQty, r.items[k+2].unit // "4 corn bags"
			r.blank(k + 2)
		case it.kind == itNum && next.gap == gapNone && r.fifties(next) > 0 && r.amongFeed(k): // "20 50s in the feeder"
			it.kind, it.unit, it.v2 = itQty, unitBag, r.fifties(next)
			r.blank(k + 1)
		case it.kind == itNum && next.qty(mass) && next.gap == gapNone && !next.rng && strings.ContainsAny(r.text[it.to:next.from], "xX×*"):
			r.countOf(k, next) // "4 x 50 lb"
		case it.qty(vessel) && it.unit != unitBatch && it.unit != unitBale && next.kind == itWord && k+2 < len(r.items) && (next.s == "of" || next.s == "at" && r.pouredBeside(k)):
			n := &r.items[k+2]
			if kg := r.ofOneBag(n.v, n.unit); n.gap == gapNone && (n.kind == itNum && !n.soft || n.qty(mass)) && kg > 0 && !r.ingredientBehind(k+2) {
				it.v2 = kg // "20 bags of 50"
				n.used = true
				r.blank(k + 2)
				r.blank(k + 1)
			}
		}
	}
}

// countOf makes the number at item k a count of bags or buckets that hold what the
// amount says.
func (r *reader) countOf(k int, amount *item) {
	it := &r.items[k]
	at := k + 1
	switch {
	case amount.qty(mass):
		kg := amount.si()
		if kg > mostOfBag {
			return
		}
		it.kind, it.unit, it.v2 = itQty, unitBag, kg
	case amount.qty(volume):
		it.kind, it.unit, it.v = itQty, amount.unit, it.v*amount.v
	default:
		return
	}
	it.to = amount.to
	r.blank(at)
	r.items[at].used = true
}

// fifties is the weight of the bags that a number in the plural stands for, "50s"; 0
// where it stands for none.
func (r *reader) fifties(it *item) float64 {
	w := r.text[it.from:it.to]
	v, end := digits(w, 0)
	if end == 0 || end+1 != len(w) || w[end] != 's' {
		return 0
	}
	return r.ofOneBag(v, 0)
}

// ofOneBag is the weight of one bag that a number tells; 0 where it can be none.
func (r *reader) ofOneBag(v float64, u unitID) float64 {
	if u == 0 {
		u = r.massUnit()
	}
	if u.dim() != mass {
		return 0
	}
	if kg := u.si(v); kg >= leastOfBag && kg <= mostOfBag {
		return kg
	}
	return 0
}

// vesselWord says that item k is but the word for a bag or a bucket.
func (r *reader) vesselWord(k int) bool {
	it := &r.items[k]
	return it.kind == itWord && it.unit != 0 && it.unit.dim() == vessel && it.unit != unitBale && it.unit != unitBatch
}

// amongFeed says that the stretch of item k names a feeder, an ingredient or feed,
// and nothing that is measured by its sides.
func (r *reader) amongFeed(k int) bool {
	i, j := r.stretch(k)
	found := false
	for n := i; n < j; n++ {
		it := &r.items[n]
		if it.pig >= 0 || it.pen >= 0 || it.isAny(setOf(sGirth, sTape, sPen, sWallow, sWeigh)) {
			return false
		}
		found = found || it.feeder >= 0 || it.isAny(setOf(sFeeder, sFeed)) || it.is(sIngredient) && it.canon != ""
	}
	return found
}

// pouredBeside says that the stretch of item k names a feeder and no price.
func (r *reader) pouredBeside(k int) bool {
	i, j := r.stretch(k)
	s := span{fFeed, i, j}
	return r.firstQty(s, money) < 0 && !r.has(s, sBuy) && !r.has(s, sIngredient) && r.amongFeed(k)
}

// ingredientBehind says that the number at item k is that of an ingredient.
func (r *reader) ingredientBehind(k int) bool {
	return k+1 < len(r.items) && r.items[k+1].is(sIngredient) && r.items[k+1].gap == gapNone
}
