package reading

import (
	"math"

	"troughbell/model"
)

// price is what was paid for goods: in all, or by the piece or the measure.
type price struct {
	at, end  int // the items that tell it; at is -1 where none do
	v        float64
	currency string
	piece    bool
	unit     unitID // of the measure it is for; 0 for each bag
}

// dearestBag is the most that a bag of feed costs, in dollars, euros or pounds: a
// number behind "at" that is more is what all of them cost. Common practice, no
// source.
const dearestBag = 100

// priceIn finds the price in a part of a purchase.
func (r *reader) priceIn(p ingredientPart) price {
	pr := price{at: -1}
	for k := p.i; k < p.j; k++ {
		it := &r.items[k]
		bare := it.kind == itNum && !it.soft && !it.ord
		if !bare && !it.qty(money) {
			continue
		}
		u, per := r.byPiece(k, p.j)
		per = per || r.oneCosts(k, p.i)
		per = per || k > p.i && r.items[k-1].is(sEach) && r.items[k-1].kind == itWord // "each 9,80"
		at := r.saidAt(k) && it.v <= dearestBag && r.firstQty(span{0, p.i, p.j}, vessel) >= 0 && !r.has(span{0, k, p.j}, sTotal)
		if bare && !per && !at {
			continue
		}
		pr = price{at: k, end: k + 1, v: it.v, piece: per || at, unit: u}
		if it.qty(money) {
			pr.currency = it.unit.name()
		}
		if pr.end < p.j && centWords[r.items[pr.end].s] {
			pr.v /= 100
			pr.end++
		}
		if per {
			for n := pr.end; n < p.j && n < pr.end+2; n++ {
				if x := &r.items[n]; x.unit.dim() == vessel || x.unit.dim() == mass || x.is(sEach) {
					pr.end = n + 1
					break
				}
			}
		}
		return pr
	}
	return pr
}

// oneCosts says that the words before the price at k tell it for one of many: "one
// sack cost 8 euro".
func (r *reader) oneCosts(k, i int) bool {
	for n := k - 1; n >= i && n >= k-labelReach && r.items[n+1].gap < gapComma; n-- {
		it := &r.items[n]
		if it.qty(vessel) && it.v == 1 {
			return true
		}
		if !it.isAny(setOf(sPay, sIs, sFiller)) {
			return false
		}
	}
	return false
}

// holds says that item k is part of the price.
func (p price) holds(k int) bool { return p.at >= 0 && k >= p.at && k < p.end }

// pay gives a purchase what it cost in all.
func (p price) pay(st *model.Stock, r *reader) {
	v := p.v
	switch {
	case !p.piece:
	case p.unit.dim() == mass && st.FeedKg != nil:
		v *= *st.FeedKg / p.unit.si(1)
	case p.unit.dim() != mass && st.Count != nil:
		v *= *st.Count
	case p.unit.dim() == vessel && st.FeedKg != nil:
		size, ok := r.sizeOf(p.unit)
		if !ok {
			return
		}
		v *= *st.FeedKg / size
	default:
		return // a price by what was not counted
	}
	st.Amount, st.Currency = model.Float(math.Round(v*100)/100), p.currency
}
