package reading

// What tells that a number is money, before anything is made of it.

// moneyTold takes numbers for money where a price before
// them or their own cents show it, and parts what was bought from what else is told.
func (r *reader) moneyTold() {
	for k := range r.items {
		it := &r.items[k]
		switch {
		case it.quest:
		case it.kind == itNum && !it.soft && k > 0 && k+2 < len(r.items) && r.items[k+1].is(sPartOf) && toward[r.items[k+2].s] && r.currency() != "": // "put 80 of that toward a gate"
			it.kind, it.unit = itQty, mustUnit(r.currency())
			r.items[k-1].sense = setOf(sPay)
			r.blank(k + 1)
		case it.qty(money):
			r.pricesBehind(k)
		case it.kind == itNum && !it.soft && it.decimals2() && r.pricedGoods(k):
			it.kind, it.unit = itQty, mustUnit(r.currency())
			r.pricesBehind(k)
		}
	}
	for k := range r.items {
		if it := &r.items[k]; it.is(sPay) && it.kind == itWord && it.gap >= gapAnd && !it.quest && r.soldBefore(k) {
			it.gap = gapStop
			r.ofItBehind(k)
		}
	}
}

// pricesBehind takes a number that goes for something behind a sum that did for money as
// well, and the fence that either went for for no reading: "94 bucks for fence wire and
// 12.75 for a gate latch".
func (r *reader) pricesBehind(k int) {
	end := r.sentenceEnd(k)
	if k+1 >= end || !goesFor[r.items[k+1].s] || r.items[k+1].gap != gapNone {
		return
	}
	r.fenceGoods(k + 2)
	for n := k + 2; n+2 < end; n++ {
		it := &r.items[n]
		if it.kind != itNum || it.soft || it.pig >= 0 || it.gap < gapAnd || !goesFor[r.items[n+1].s] || r.items[n+1].gap != gapNone || r.items[n+2].pig >= 0 || r.items[n+2].kind != itWord {
			continue
		}
		it.kind, it.unit = itQty, r.items[k].unit
		r.fenceGoods(n + 2)
	}
}

// toward are said of money where it is put.
var toward = setOfWords(split("toward, towards"))

// goesFor stand between a sum and what it went for.
var goesFor = setOfWords(split("for, on, to, toward, towards"))

// fenceGoods takes the fence at item k for goods that money went for.
func (r *reader) fenceGoods(k int) {
	for n := k; n < len(r.items) && n < k+3 && (n == k || r.items[n].gap == gapNone); n++ {
		if it := &r.items[n]; it.kind == itWord && it.is(sFence) && it.unit == 0 {
			it.sense.drop(sFence)
		}
	}
}

// pricedGoods says that the number at item k, which has cents, is the price of goods that
// are told right before it: "mineral block 14.99".
func (r *reader) pricedGoods(k int) bool {
	if r.currency() == "" || r.items[k].gap > gapComma {
		return false
	}
	s := span{0, r.clauseFrom(k), k}
	if r.items[k].gap == gapComma {
		s.i = r.clauseFrom(max(k-1, 0))
	}
	if k+1 < len(r.items) && r.items[k+1].gap == gapNone && r.items[k+1].unit != 0 {
		return false
	}
	block := false
	for n := s.i; n < k; n++ {
		it := &r.items[n]
		if it.pig >= 0 || it.number() && !it.soft || it.isAny(setOf(sWeigh, sGirth, sTape, sPour, sFill, sMixed, sRecipe)) && !it.is(sFiller) {
			return false
		}
		if n > s.i && blockWords[it.s] && it.gap == gapNone && r.items[n-1].isAny(setOf(sIngredient, sFeed)) {
			block = true
			r.items[n-1].sense, r.items[n-1].canon, it.feeder = senses{}, "", -1
			it.sense.drop(sFeeder)
		}
	}
	return block || r.find(s, sIngredient) >= 0 && !r.has(span{0, s.i, r.sentenceEnd(k)}, sRecipe)
}

// blockWords are goods named by the stuff they are of or for.
var blockWords = setOfWords(split("block, blocks, lick, licks, tub, brick, feeder, scoop, bucket, bin"))

// soldBefore says that the sentence of item k tells before it what something was sold for.
func (r *reader) soldBefore(k int) bool {
	s := span{0, r.sentenceStart(k), k}
	return r.has(s, sSold) && r.firstQty(s, money) >= 0
}

// ofItBehind drops the "of it" behind the sum that the word of paying at item k names.
func (r *reader) ofItBehind(k int) {
	for n := k + 1; n < len(r.items) && n <= k+3; n++ {
		if r.items[n].is(sPartOf) && r.items[n-1].number() {
			r.blank(n)
		}
	}
}
