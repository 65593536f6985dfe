package reading

import "troughbell/model"

// What the pigs cost is told by some only after they came: "paid the man 65 apiece plus 20
// for the crate". By the head, it was paid as often as pigs came.

// laterPrices makes a sum of money of such a price, for the pigs that came last.
func (r *reader) laterPrices() {
	n := r.cameLately()
	if n == 0 {
		return
	}
	r.priceOfLot(n)
	for k := 1; k < len(r.items); k++ {
		it := &r.items[k]
		bare := it.kind == itNum && !it.soft && !it.ord && !it.rng
		if !bare && !it.qty(money) || it.quest {
			continue
		}
		if end := r.byTheHead(k); end > 0 && r.onlyPigsPaid(k, end) {
			it.v *= float64(n)
			for m := k + 1; m < end; m++ {
				r.blank(m)
			}
			r.payBare(k)
			for m := end; m+2 < len(r.items) && m < end+2; m++ { // "plus 20 for the crate"
				x := &r.items[m]
				if x.kind == itNum && !x.soft && (r.items[m+1].s == "for" || r.items[m+1].is(sMore)) {
					r.payBare(m)
					r.items[m].gap = max(r.items[m].gap, gapComma)
				}
			}
		}
		if k+2 < len(r.items) && r.items[k+1].s == "for" && r.items[k+2].is(sAll) { // "paid 195 for all three"
			if x := k + 3; x < len(r.items) && r.items[x].kind == itNum && int(r.items[x].v) == r.alive && r.onlyPigsPaid(k, x+1) {
				r.blank(x)
				r.payBare(k)
			}
		}
	}
}

// priceOfLot takes a text that is but a number "for the lot", or "for all four", for what
// the pigs that just came cost.
func (r *reader) priceOfLot(came int) {
	if len(r.items) < 3 || r.items[0].kind != itNum || r.items[0].soft || r.items[1].s != "for" || !r.items[2].is(sAll) {
		return
	}
	end := 3
	if end < len(r.items) && r.items[end].kind == itNum && int(r.items[end].v) == came {
		end++
	}
	if end < len(r.items) && r.items[end].gap < gapComma {
		return
	}
	r.payBare(0)
	for m := 2; m < end; m++ {
		r.blank(m)
	}
	r.items[2].s, r.items[2].sense = "pigs", setOf(sPigs)
}

// payBare makes money of the number at item k, where it is bare.
func (r *reader) payBare(k int) {
	if u := unitNamed(r.currency()); r.items[k].kind == itNum && u != 0 {
		r.items[k].kind, r.items[k].unit = itQty, u
	}
}

// lately is for how many days after pigs came their price may be told without a word for
// them. Common practice, no source.
const lately = 3

// cameLately is how many pigs came with the latest arrival of these days.
func (r *reader) cameLately() int {
	if r.alive == 0 {
		return 0
	}
	for rec, a := range r.arrivalsBefore() {
		if r.today-rec.Entry.On > model.Day(lately) {
			return 0
		}
		return a.Count
	}
	return 0
}

// onlyPigsPaid says that what was paid, up to item end, was paid for the pigs: a word of
// paying stands before the price at item k, and nothing else that is bought around it.
func (r *reader) onlyPigsPaid(k, end int) bool {
	paid := false
	for m := r.clauseFrom(k); m < min(r.clauseEnd(k), end+3); m++ {
		it := &r.items[m]
		switch {
		case m >= k && m < end:
		case m < k && (it.is(sPay) || gavePrice[it.s]):
			paid = true
		case m >= end && (it.kind == itNum || it.qty(money)):
			return paid
		case it.kind == itNum && !it.soft, it.kind == itQty, it.canon != "", it.feeder >= 0, it.barrel >= 0:
			return false
		case it.isAny(setOf(sFiller, sPigs, sYoung, sAll, sBoth, sForeign, sPronoun, sAnd, sIs, sMore)), it.kind == itDay, sellerWords[lastWord(it.s)], m > end && it.s == "for":
		default:
			if m < end+1 {
				return false
			}
		}
	}
	return paid
}

var (
	gavePrice   = listed("gave, we gave, i gave, cost, they cost, cost us, cost me, they were, were, ran us, ran me, set us back, paid")
	sellerWords = listed("man, guy, lady, woman, farmer, breeder, seller, fella, old, young, cash, about")
)

// eatenThings takes the worth of what a pig ate or broke for no spending: "gus ate my hat,
// thats like 20 bucks".
func (r *reader) eatenThings() {
	for k := range r.items {
		if !r.items[k].qty(money) || r.items[k].quest {
			continue
		}
		who, ruined := false, false
		for n := r.sentenceStart(k); n < r.sentenceEnd(k); n++ {
			it := &r.items[n]
			if it.pig < 0 && (it.isAny(setOf(sPay, sBuy, sSold)) || boughtWords[it.s]) {
				who = false
				break
			}
			who = who || n < k && (it.pig >= 0 || it.isAny(setOf(sPigs)) || it.is(sPronoun) && it.s != "it")
			ruined = ruined || who && n < k && it.pig < 0 && (ruinDeeds[lastWord(it.s)] || ruinDeeds[firstWord(it.s)])
		}
		if who && ruined {
			for n := r.sentenceStart(k); n < r.sentenceEnd(k); n++ {
				r.blank(n)
				r.items[n].s = "so"
			}
		}
	}
}

var (
	ruinDeeds   = listed("ate, eaten, eats, chewed, broke, broken, wrecked, destroyed, swallowed, stole, smashed, ruined, trampled, shredded, busted, tore, demolished, munched, cracked")
	boughtWords = listed("new, bought, replaced, replacement, cost, fix, repair, fixed, repaired, bill, vet, charged, owe")
)
