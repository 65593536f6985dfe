package reading

import (
	"strings"

	"troughbell/model"
)

// spokenPrices joins two numbers said in words to one price: "at twenty one fifty
// each", "for twelve ninety nine".
func (r *reader) spokenPrices() {
	for k := 1; k < len(r.items); k++ {
		if it := &r.items[k]; r.saidInWords(k) && it.v >= 100 && it.v < 10000 && r.items[k-1].s == "at" && r.pricedBehind(k+1) && !r.saysHundred(it) {
			it.v /= 100 // "at nine fifty a bag"
		}
	}
	for k := 1; k+1 < len(r.items); k++ {
		r.unitBetween(k)
		a, b := &r.items[k], &r.items[k+1]
		if !r.saidInWords(k) || !r.saidInWords(k+1) || b.gap != gapNone || a.soft || b.soft || a.v >= 100 || b.v < 10 || b.v >= 100 || a.v != float64(int(a.v)) {
			continue
		}
		p := &r.items[k-1]
		if p.s != "at" && p.s != "for" && !p.is(sPay) && p.s != "each" && !r.pricedBehind(k+2) {
			continue
		}
		if p.pig >= 0 || p.isAny(setOf(sGirth, sWeigh, sFence)) {
			continue
		}
		a.v += b.v / 100
		r.blank(k + 1)
		b.gap = gapNone
	}
}

// saysHundred says that a number was said with its hundreds or thousands.
func (r *reader) saysHundred(it *item) bool {
	t := strings.ToLower(r.text[it.from:it.to])
	return strings.Contains(t, "hundred") || strings.Contains(t, "thousand")
}

// pricedBehind says that the item at k makes the number before it a price.
func (r *reader) pricedBehind(k int) bool {
	if k >= len(r.items) || r.items[k].gap != gapNone {
		return false
	}
	it := &r.items[k]
	return it.unit.dim() == money || it.s == "each" || it.s == "apiece" || it.qty(vessel) && it.v == 1
}

// unitBetween joins what stands on both sides of the word for the money: "paid 14 pound
// 20 for wire".
func (r *reader) unitBetween(k int) {
	a, b := &r.items[k], &r.items[k+1]
	pounds := a.qty(mass) && a.unit == unitLb && (r.currency() == "GBP" || r.units == model.Metric && r.paidBefore(k)) && strings.Contains(strings.ToLower(r.text[a.from:a.to]), "pound")
	if !pounds && !a.qty(money) || a.v != float64(int(a.v)) || b.kind != itNum || b.soft || b.gap != gapNone || b.v < 10 || b.v >= 100 || b.v != float64(int(b.v)) {
		return
	}
	if k+2 < len(r.items) && r.items[k+2].gap == gapNone && r.items[k+2].s != "for" && r.items[k+2].s != "on" {
		return
	}
	if pounds {
		a.unit = mustUnit("GBP")
	}
	a.v += b.v / 100
	r.blank(k + 1)
}

// paidBefore says that a word for paying stands before item k in its clause.
func (r *reader) paidBefore(k int) bool {
	for n := r.clauseFrom(k); n < k; n++ {
		if r.items[n].is(sPay) {
			return true
		}
	}
	return false
}
