package reading

import "strings"

// boughtBeside parts a thing bought for its price from the feed that came along: "bought
// a heat lamp for 29.99 and 6 bags of feed".
func (r *reader) boughtBeside() {
	for k := range r.items {
		it := &r.items[k]
		if !it.qty(vessel) || it.unit == unitBale || it.unit == unitBatch || it.gap < gapAnd || it.gap >= gapStop || it.quest {
			continue
		}
		from, to := r.sentenceStart(k), r.clauseEnd(k)
		p := k - 1
		price := &r.items[p]
		if p < from+2 || !price.qty(money) && (price.kind != itNum || price.soft) || r.items[p-1].s != "for" {
			continue
		}
		thing, goods := span{0, from, p}, span{0, k, to}
		if !r.has(thing, sBuy) || !r.amountless(from, p) || r.has(thing, sFeed) || r.find(thing, sIngredient) >= 0 || r.has(thing, sPlan) || r.has(thing, sNot) || r.has(goods, sPour) || r.has(goods, sFeeder) || !r.amountless(k+1, to) {
			continue
		}
		if !price.qty(money) {
			if r.currency() == "" {
				continue
			}
			price.kind, price.unit = itQty, mustUnit(r.currency())
		}
		it.gap = gapStop
		r.settled = append(r.settled, span{fSpend, from, p + 1}, span{fStock, k, to})
		return
	}
}

// chargedBeside parts what was paid on top of goods from their price: "20 bags for 296,
// plus 40 for delivery".
func (r *reader) chargedBeside() {
	for k := 1; k+1 < len(r.items); k++ {
		it, n := &r.items[k], &r.items[k+1]
		if it.kind != itNum && !it.qty(money) || it.soft || it.pig >= 0 || it.gap < gapAnd || it.gap >= gapStop || it.quest || n.gap != gapNone || n.s != "for" && n.s != "to have" && !carriage[firstWord(n.s)] || r.currency() == "" {
			continue
		}
		if n.s == "for" && !strings.Contains(r.text[r.items[k-1].to:it.from], "plus") && !r.namesCarriage(k+2) {
			continue
		}
		s := span{0, r.sentenceStart(k), k}
		goods := r.firstQty(s, vessel)
		if goods < 0 || r.amountless(goods+1, k) {
			continue
		}
		it.kind, it.gap = itQty, gapStop
		if it.unit == 0 {
			it.unit = mustUnit(r.currency())
		}
		r.settled = append(r.settled, span{fSpend, k, r.clauseEnd(k)})
		return
	}
}

// carriage is what is paid for beside goods.
var carriage = setOfWords(split("delivery, deliver, delivered, delivering, shipping, freight, hauling, haulage, tax, gas, diesel, unloading, grinding"))

func (r *reader) namesCarriage(k int) bool {
	for n := k; n < len(r.items) && n < k+4 && (n == k || r.items[n].gap < gapAnd); n++ {
		if carriage[firstWord(r.items[n].s)] {
			return true
		}
	}
	return false
}

// strangeStuff is what comes in bags or by weight and no pig is fed.
var strangeStuff = setOfWords(split(`ice, shavings, concrete, cement, mulch, lime, gravel, chips, charcoal, leaves, sawdust, topsoil, potting, compost, fertilizer, fertiliser, groceries, trash, garbage,
	birdseed, litter, sausage, sausages, bacon, ham, brats, ribs, burger, pretzels, popcorn, marshmallows, candy, coffee, flour, sugar, sand, dirt, insulation, mortar, pellets stove`))

// strangeBags leaves an amount of such stuff out: "2 bags ice", "5 lb of bacon".
func (r *reader) strangeBags() {
	for k := 0; k+1 < len(r.items); k++ {
		it := &r.items[k]
		if !it.qty(vessel) && !it.qty(mass) || it.unit == unitBatch || it.pig >= 0 {
			continue
		}
		n := k + 1
		for n+1 < len(r.items) && r.items[n].gap == gapNone && (r.items[n].is(sOf) || r.items[n].s == "wood" || r.items[n].s == "pine") {
			n++
		}
		if x := &r.items[n]; x.gap == gapNone && x.kind == itWord && x.pig < 0 && strangeStuff[x.s] && !r.has(span{0, r.clauseFrom(k), r.clauseEnd(k)}, sMixed) {
			r.blank(k)
			r.blank(n)
		}
	}
}
