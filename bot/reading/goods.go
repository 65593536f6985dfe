package reading

import "strings"

// What is bought, or stands in the shed. A clause is of goods by what it tells
// together: an ingredient or feed, an amount, and a price, a word of buying or
// one of the shed.

// goodsTold is what a clause tells of goods.
type goodsTold struct {
	ingredient, feed  bool
	sacks, weight     bool
	money, piece      bool // money, a price by the piece
	buying, shed, few bool // few: said to be left, or gone
	numbers           int  // bare ones
	cents             bool // one of them is written as prices are
	other             bool // something that is no trade in goods
}

// forceGoods settles the clauses that tell of goods bought or counted.
func (r *reader) forceGoods() {
	r.labelledSacks()
	for i := 0; i < len(r.items); {
		j := r.goodsEnd(i)
		r.shedItself(i, j)
		if r.force[i] != 0 || r.items[i].quest || !r.tellsGoods(i, j) {
			i = j
			continue
		}
		for j < len(r.items) && r.items[j].gap < gapStop && r.force[j] == 0 && r.goesOnWithGoods(j, r.goodsEnd(j)) {
			j = r.goodsEnd(j)
		}
		if n := r.paidLine(j); n > j {
			j = n
		}
		r.forceRange(i, j, fStock)
		for j < len(r.items) && r.items[j].gap < gapStop && r.force[j] == 0 { // "and a new float valve 19.99"
			n := r.clauseEnd(j)
			if !r.thingAndPrice(j, n) || r.inTrade(j, n) || !r.goodsIn(j, n).cents && !r.goodsIn(j, n).money {
				break
			}
			r.forceRange(j, n, fSpend)
			j = n
		}
		i = j
	}
}

// labelledSacks gives the number of a list's line its measure, where that is the
// line's label: "bags bought: 20".
func (r *reader) labelledSacks() {
	for k := 0; k+1 < len(r.items); k++ {
		it := &r.items[k]
		if it.kind != itWord || it.unit.dim() != vessel || it.unit == unitBatch || k != r.sentenceStart(k) {
			continue
		}
		n := k + 1
		for n < len(r.items) && r.items[n].is(sBuy) && !r.items[n-1].label {
			n++
		}
		if n < len(r.items) && r.items[n-1].label && r.items[n].kind == itNum && r.sentenceEnd(k) == n+1 {
			r.items[n].kind, r.items[n].unit = itQty, it.unit
		}
	}
}

// paidLine is the end of a line at item k that tells but what was paid, "paid:
// 310"; k where none begins there.
func (r *reader) paidLine(k int) int {
	if k >= len(r.items) || !r.items[k].is(sPay) || k != r.sentenceStart(k) {
		return k
	}
	end := r.sentenceEnd(k)
	for n := k + 1; n < end; n++ {
		if it := &r.items[n]; it.kind != itNum && !it.qty(money) && !it.isAny(setOf(sFiller, sIs, sPay, sTotal)) {
			return k
		}
	}
	return end
}

// goodsEnd is where the clause of item i ends, or before where an "and" begins
// another deed: "bought 3 bags and filled the feeder".
func (r *reader) goodsEnd(i int) int {
	n := i + 1
	for n < len(r.items) && r.items[n].gap < gapComma {
		if it := &r.items[n]; it.gap == gapAnd && it.isAny(setOf(sFill, sPour, sMixed, sMove, sWatered, sWorm, sTreat, sHose, sWeigh, sTape, sBuy, sPay)) {
			break
		}
		n++
	}
	return n
}

// shedItself takes the name of a barrel that is the word for the shed for the shed
// where a list of goods stands behind it: "shed: 9 corn, 4 soy".
func (r *reader) shedItself(i, j int) {
	it := &r.items[i]
	if it.s != "shed" && it.s != "barn" || it.barrel < 0 || !it.label && !(i+1 < j && r.items[i+1].s == "has") {
		return
	}
	for k := i + 1; k < r.sentenceEnd(i); k++ {
		if r.items[k].is(sIngredient) {
			it.barrel, it.kind, it.sense = -1, itWord, setOf(sShed)
			return
		}
	}
}

// tellsGoods says that the clause items[i:j] tells of a purchase or a count.
func (r *reader) tellsGoods(i, j int) bool {
	g := r.goodsIn(i, j)
	if g.other || r.tellsMix(i) {
		return false
	}
	amount := g.sacks || g.weight
	next := goodsTold{}
	if j < len(r.items) && r.items[j].gap < gapStop {
		next = r.goodsIn(j, r.goodsEnd(j))
	}
	priced := g.money || g.piece || g.cents || !next.other && !next.ingredient && !next.feed && !next.sacks && !next.weight && (next.money || next.piece)
	switch {
	case g.ingredient && g.shed && (amount || g.numbers > 0):
		return true
	case g.ingredient && g.few && !g.money:
		return amount || r.allGone(i, j)
	case (g.ingredient || g.feed && g.sacks) && amount && (priced || g.buying):
		return true
	case g.ingredient && g.numbers > 0 && g.money && r.fewBefore(i, j):
		return true // "4 corn $60"
	case g.ingredient && g.sacks && g.numbers > 0:
		return true // "2 bags mineral 56"
	case g.sacks && (g.money || g.piece || g.buying && priced):
		return true // "12 bags at 11.25"
	case g.buying && !amount && g.numbers == 0 && r.items[j-1].label && next.ingredient && next.numbers > 1 && !next.other:
		return true // "bought: 10 corn 115, 4 soy 92"
	case g.buying && !amount && next.sacks && !next.other:
		return g.feed || g.ingredient // "picked up feed, 6 bags, 84.30"
	}
	return false
}

// fewBefore says that a small number stands right before an ingredient, or behind it,
// as a count of bags does.
func (r *reader) fewBefore(i, j int) bool {
	for k := i; k+1 < j; k++ {
		a, b := &r.items[k], &r.items[k+1]
		if b.gap == gapNone && (a.kind == itNum && !a.soft && a.v <= mostFew && b.is(sIngredient) || b.kind == itNum && !b.soft && b.v <= mostFew && a.is(sIngredient)) {
			return true
		}
	}
	return false
}

// goesOnWithGoods says that the clause items[i:j] goes on with what was bought:
// another thing with its amount, or but a price or an amount.
func (r *reader) goesOnWithGoods(i, j int) bool {
	g := r.goodsIn(i, j)
	if g.other {
		return false
	}
	if g.ingredient {
		return g.numbers > 0 || g.sacks || g.weight
	}
	if !g.money && !g.piece && !g.sacks && !g.weight && g.numbers == 0 {
		return false
	}
	for k := i; k < j; k++ {
		it := &r.items[k]
		if it.kind == itWord && !it.isAny(setOf(sFiller, sEach, sPay, sTotal, sFeed, sIs, sAbout, sPronoun, sOf, sPer, sAt)) && it.unit == 0 {
			return false
		}
	}
	return true
}

// notGoods are words of facts that feed, amounts and money are told of too.
var notGoods = setOf(sFeeder, sMixed, sPour, sFill, sTook, sFull, sWorm, sTreat, sProduct, sRecipe, sHolds, sPigs, sNot, sAskSure, sWhatIf, sTarget, sWeigh, sGirth, sFence, sBarrel, sWaste, sForeign, sRemind, sSold)

// goodsIn gathers what the clause items[i:j] tells.
func (r *reader) goodsIn(i, j int) goodsTold {
	g := goodsTold{}
	for k := i; k < j; k++ {
		it := &r.items[k]
		switch {
		case it.pig >= 0, it.feeder >= 0, it.quest, it.unit == unitBatch, it.unit == unitBale:
			g.other = true
		case it.barrel >= 0 && !(it.s == "shed" || it.s == "barn"):
			g.other = true
		case it.is(sIngredient) && it.canon != "":
			g.ingredient = true
		case it.qty(vessel):
			g.sacks = true
		case it.qty(mass):
			g.weight = true
		case it.qty(money):
			g.money = true
			_, per := r.byPiece(k, j)
			g.piece = g.piece || per
		case it.kind == itNum && !it.soft && !it.ord:
			g.numbers++
			g.cents = g.cents || it.decimals2()
			_, per := r.byPiece(k, j)
			g.piece = g.piece || per || k > i && (r.saidAt(k) || r.items[k-1].s == "for")
		case it.kind == itQty || it.kind == itDim || it.kind == itSlash:
			g.other = true
		case it.is(sShed) || it.barrel >= 0:
			g.shed = true
		case it.is(sBuy):
			g.buying = true
		case it.isAny(setOf(sLeft, sLow)) && !it.is(sFiller), it.isAny(setOf(sEmpty, sNoFeed)), goneWords[it.s]:
			g.few = true
		case it.is(sFeed):
			g.feed = true
		case it.isAny(notGoods) && !it.isAny(setOf(sFiller, sIs, sEach, sOf, sAt, sPay)):
			g.other = true
		}
	}
	return g
}

// tellsMix says that the sentence of item k speaks of the mix, whose parts are
// told as goods are.
func (r *reader) tellsMix(k int) bool {
	for n := r.sentenceStart(k); n < r.sentenceEnd(k); n++ {
		if it := &r.items[n]; it.is(sRecipe) && !it.is(sFeed) && it.s != "mix" || it.unit == unitBatch || it.is(sRecipe) && it.label {
			return true
		}
	}
	return false
}

// goneWords say that there is none any more.
var goneWords = map[string]bool{"gone": true, "no more": true, "all gone": true, "out of": true, "out": true, "is gone": true, "are gone": true, "finished": true, "are out": true, "is out": true, "we're out": true, "we're out of": true, "used up": true, "none": true, "ran out": true}

// allGone says that the clause items[i:j] tells nothing but that an ingredient
// is used up: "the meal is gone", "we are out of soy".
func (r *reader) allGone(i, j int) bool {
	gone := false
	for k := i; k < j; k++ {
		it := &r.items[k]
		switch {
		case it.isAny(setOf(sEmpty, sNoFeed)), goneWords[it.s], it.s == "no" && k+1 < j && r.items[k+1].is(sIngredient):
			gone = true
		case it.is(sLeft) && gone, it.is(sIngredient) && it.canon != "":
		case it.kind == itDay, it.isAny(setOf(sFiller, sIs, sAll, sNow, sOf, sShed, sPronoun)):
			if it.s == "almost" || it.s == "nearly" || it.s == "about" || it.s == "soon" {
				return false
			}
		default:
			return false
		}
	}
	return gone
}

// saidAt says that a price by the piece is told right before item k: "at 12.50".
func (r *reader) saidAt(k int) bool {
	if k == 0 {
		return false
	}
	p := &r.items[k-1]
	return p.s == "at" || strings.Contains(r.text[p.to:r.items[k].from], "@")
}

// byPiece says that the number at k is a price for a measure, and for which:
// "9.75 a bag", "210 a ton", "0.12/lb"; the unit is 0 for "each".
func (r *reader) byPiece(k, j int) (unitID, bool) {
	n := k + 1
	if n < j && centWords[r.items[n].s] {
		n++
	}
	if n >= j || r.items[n].gap > gapAnd {
		return 0, false
	}
	it := &r.items[n]
	switch {
	case it.is(sEach) && !it.is(sHolds), it.s == "each", it.s == "apiece", it.s == "a piece", it.s == "the piece", it.s == "per piece":
		if n+1 < j && r.items[n+1].unit.dim() == vessel && r.items[n+1].gap == gapNone && r.items[n+1].kind == itWord {
			return r.items[n+1].unit, true
		}
		return 0, true
	case (it.qty(vessel) || it.qty(mass)) && it.v == 1 && it.from < len(r.text) && (r.text[it.from] == 'a' || r.text[it.from] == 'A'):
		return it.unit, true
	case (it.s == "a" || it.s == "an" || it.is(sPer)) && n+1 < j && (r.items[n+1].unit.dim() == vessel || r.items[n+1].unit.dim() == mass):
		return r.items[n+1].unit, true
	case it.kind == itWord && it.gap == gapAnd && (it.unit.dim() == vessel || it.unit.dim() == mass):
		return it.unit, true
	}
	return 0, false
}

// centWords are the hundredth parts of the currencies that prices are told in.
var centWords = map[string]bool{"cents": true, "cent": true, "ct": true, "cts": true, "pence": true, "¢": true}
