package reading

// A pig that goes to somebody for money is sold, in whatever words it goes: "Pepper went to
// the folks down the road for 410 dollars", "508 left in a neighbor's trailer, 400 cash".

// leftForMoney gives the sense of a sale to such a going, and to a buyer's taking.
func (r *reader) leftForMoney() {
	if r.alive == 0 {
		return
	}
	for k := range r.items {
		it := &r.items[k]
		if it.kind != itWord || it.quest || it.pig >= 0 {
			continue
		}
		from := r.sentenceStart(k)
		switch w := firstWord(it.s); {
		case goings[w] && k > from && (r.pigGoes(k) || r.countGoes(k)):
			r.soldFor(k, k)
		case buyerTakes[it.s] && k+1 < len(r.items) && r.items[k+1].pig >= 0 && !r.items[k+1].near && r.items[k+1].gap == gapNone && r.buyerBefore(from, k):
			r.soldFor(k, from)
		case paidUs[it.s]:
			r.gotForPig(k)
		}
	}
}

// goings are the first words of a going.
var goings = setOfWords(split("went, left, leaves, rode, go, gone, headed, off"))

// buyerTakes are what one who buys a pig does.
var buyerTakes = setOfWords(split("took, takes, has taken, collected, picked up, came for, came and got, and got, got"))

// paidUs are the verbs of getting money.
var paidUs = setOfWords(split("got, received, made, took in, pocketed"))

// pigGoes says that a pig stands right before the going at item k.
func (r *reader) pigGoes(k int) bool {
	for n := k - 1; n >= 0 && n >= k-2 && r.items[n+1].gap < gapComma; n-- {
		it := &r.items[n]
		if it.pig >= 0 && !it.near {
			return true
		}
		if !it.isAny(setOf(sFiller, sIs)) {
			return false
		}
	}
	return false
}

// buyerBefore says that items from to k are somebody else.
func (r *reader) buyerBefore(from, k int) bool {
	for n := from; n < k; n++ {
		it := &r.items[n]
		switch {
		case it.pig >= 0, it.number() && !it.soft, it.s == "i", it.s == "we", it.isAny(setOf(sNot, sPlan, sIf, sButcher)):
			return false
		}
	}
	return k > from && (r.sentenceNames(from, k, pigTakers) || r.has(span{0, from, k}, sForeign))
}

// pigTakers are those who pigs go to.
var pigTakers = setOfWords(split(`folks, family, families, guy, man, lady, woman, couple, kid, kids, neighbor, neighbors, neighbour, neighbours, cousin, cousins, uncle, aunt, buyer, farmer, dealer, trader, friend, friends, brother, sister, fella, fellow, people, lad, gent, widow, teacher, coworker, 4-h`))

// soldFor makes a sale of the going at item k where its sentence names a price behind it.
// What stands between them is who bought; so is what stands from item head on.
func (r *reader) soldFor(k, head int) {
	to := r.sentenceEnd(k)
	s := span{0, r.sentenceStart(k), to}
	if r.items[k].isAny(setOf(sSlaughtered)) || r.has(s, sButcher) || r.has(s, sNot) && r.find(s, sNot) < k || r.has(s, sIf) || r.has(s, sPlan) || r.has(s, sTreat) || r.has(s, sProduct) || r.sentenceNames(s.i, to, keepsPig) {
		return
	}
	price := r.priceOfSale(k, to)
	if price < 0 || !r.takenAway(s.i, price) {
		return
	}
	for n := head; n <= price; n++ {
		it := &r.items[n]
		if n > head {
			it.gap = gapNone
		}
		if n != k && n != price && it.pig < 0 && it.kind != itDay && it.kind != itClock && !(n > k && n == price-1 && it.s == "for") {
			r.blank(n)
		}
	}
	r.items[k].sense, r.items[k].unit, r.items[k].known = setOf(sSold), 0, true
	r.asMoney(price)
}

// takenAway says that items from to price name who a pig went to, or where pigs are sold, or
// that the price is in hand; and nothing else that befell it.
func (r *reader) takenAway(from, price int) bool {
	away := r.cashBehind(price) || r.sentenceNames(from, price, pigTakers) || r.sentenceNames(from, price, pigMarkets)
	for n := from; n < price; n++ {
		it := &r.items[n]
		if it.is(sFence) || it.is(sBuy) && !soldAt[it.s] || it.isAny(setOf(sSick, sDown, sWeigh, sCrate)) && !it.is(sFiller) || it.pen >= 0 && it.pig < 0 || barriers[lastWord(it.s)] {
			return false
		}
		away = away || it.is(sForeign)
	}
	return away
}

// pigMarkets are where pigs are sold.
var pigMarkets = setOfWords(split("auction, market, sale, barn, sale barn, mart, home, new home, down the road, town"))

// keepsPig are who a pig goes to and comes back from, for money.
var keepsPig = setOfWords(split("vet, vets, fair, show, boar, hospital, clinic"))

// priceOfSale is the item of a sum behind item k that its clause ends with, -1 if there is
// none: money, or a bare number that is told as such.
func (r *reader) priceOfSale(k, to int) int {
	for n := k + 1; n < to; n++ {
		it := &r.items[n]
		switch {
		case it.qty(money):
			if n+1 < to && r.items[n+1].gap == gapNone && (r.items[n+1].is(sOf) || r.items[n+1].s == "for" && !(n+2 < to && r.items[n+2].is(sPronoun))) {
				return -1 // "$40 of straw"
			}
			return n
		case it.kind == itNum && !it.soft && !it.ord && it.v >= 20 && (soldAt[r.items[n-1].s] || r.cashBehind(n)):
			return n
		case it.pig >= 0 && it.gap >= gapComma, it.qty(mass), it.isAny(setOf(sWeigh, sFeeder, sBarrel, sHung)), it.is(sPackaged) && it.s != "home with":
			return -1
		}
	}
	return -1
}

// soldAt are the words right before a bare number that is what a pig brought.
var soldAt = setOfWords(split("for, paid, paid me, paid us, made, brought, fetched, got, got me, got us, gave me, gave us"))

// cashBehind says that a word for ready money stands behind the number at item n.
func (r *reader) cashBehind(n int) bool {
	if n+1 >= len(r.items) || r.items[n+1].gap != gapNone {
		return false
	}
	return cashWords[firstWord(r.items[n+1].s)] || saysAny(r.said(span{0, n + 1, min(n+4, len(r.items))}), inPocket)
}

var (
	cashWords = setOfWords(split("cash"))
	inPocket  = phrasesOf("in cash, in my pocket, in hand, in my hand, in our pocket, in pocket")
)

// asMoney makes money of the number at item k and blanks the words of cash behind it.
func (r *reader) asMoney(k int) {
	r.payBare(k)
	end := min(k+6, r.clauseEnd(k))
	for n := k + 1; n < end && r.items[n].gap == gapNone; n++ {
		if w := r.items[n].s; !cashWords[w] && w != "in" && w != "my" && w != "our" && w != "hand" && w != "pocket" && w != "pockets" && w != "money" && w != "in my" && !r.items[n].is(sFiller) {
			return
		}
		r.blank(n)
	}
}

// gotForPig reads money got for a pig as its sale: "got 410 dollars for pepper".
func (r *reader) gotForPig(k int) {
	price := k + 1
	if price+2 >= len(r.items) || r.items[price].gap != gapNone {
		return
	}
	it := &r.items[price]
	if !it.qty(money) && !(it.kind == itNum && !it.soft && it.v >= 100) || r.moreFigures(price) {
		return
	}
	n := price + 1
	for n < len(r.items) && cashWords[r.items[n].s] {
		n++
	}
	if n+1 >= len(r.items) || r.items[n].s != "for" || r.items[n].gap != gapNone || r.items[n+1].pig < 0 || r.items[n+1].near || r.has(span{0, r.sentenceStart(k), r.sentenceEnd(k)}, sButcher) {
		return
	}
	r.items[k].sense = setOf(sSold)
	r.asMoney(price)
}

// moreFigures says that another number stands behind item k in its sentence.
func (r *reader) moreFigures(k int) bool {
	for n := k + 1; n < r.sentenceEnd(k); n++ {
		if it := &r.items[n]; it.number() && !it.soft {
			return true
		}
	}
	return false
}
