package reading

import (
	"strings"

	"troughbell/model"
)

// fillStock reads feed or ingredients bought, or counted in the shed: one entry
// an ingredient.
func (r *reader) fillStock(s span) {
	parts := r.byIngredient(s)
	counted := r.countedGoods(s)
	for n, p := range parts {
		st := model.Stock{Ingredient: p.name, Counted: counted}
		pr := r.priceIn(p)
		var rest []int
		priced := false
		for k := p.i; k < p.j; k++ {
			it := &r.items[k]
			if pr.holds(k) {
				it.used = true
				continue
			}
			switch {
			case it.qty(mass):
				if k > p.i && r.items[k-1].qty(vessel) && r.items[k-1].used && st.FeedKg == nil || k+1 < p.j && r.items[k+1].qty(vessel) && r.items[k+1].gap == gapNone && !pr.holds(k+1) {
					// "2 sacks 25 kg each", "10 50 lb bags"
					if st.Count == nil && k+1 < p.j && r.items[k+1].qty(vessel) {
						st.Count = model.Float(r.items[k+1].v)
						r.items[k+1].used = true
					}
					if st.Count != nil {
						st.FeedKg = model.Float(it.si() * *st.Count)
					}
				} else if st.FeedKg == nil && st.Count != nil && it.si() < leastSack**st.Count {
					st.FeedKg = model.Float(it.si() * *st.Count) // "12 bags corn 50 lb": of each
				} else if st.FeedKg == nil {
					st.FeedKg = model.Float(it.si())
				} else if st.Count != nil && !sameAmount(*st.FeedKg, it.si()) && it.si() < *st.FeedKg {
					st.FeedKg = model.Float(it.si() * *st.Count)
				}
			case it.qty(vessel) && it.unit != unitBale:
				if st.Count != nil {
					continue
				}
				r.sacks(&st, it.v, it.unit)
				if it.v2 > 0 && !it.rng {
					st.FeedKg = model.Float(it.v * it.v2)
				}
			case it.kind == itNum && !it.soft && !it.ord:
				if k > p.i && (r.items[k-1].s == "for" || r.items[k-1].is(sPay)) {
					priced = true
				}
				rest = append(rest, k)
				continue
			case it.is(sFeed) && it.kind == itWord: // what the bags were of
			default:
				continue
			}
			it.used = true
		}
		rest = r.fewAreBags(p, &st, rest, counted, pr)
		rest = r.sacksCarried(s, &st, rest, counted, pr)
		if pr.at >= 0 {
			pr.pay(&st, r)
		}
		r.bareStock(&st, rest, priced, n)
		if st.FeedKg == nil && st.Count == nil && p.name != "" && st.Amount == nil && r.allGone(p.i, p.j) {
			st.FeedKg, st.Counted = model.Float(0), true
			r.useAll(span{s.frame, p.i, p.j})
		}
		if st.FeedKg == nil && st.Count == nil {
			if st.Amount != nil { // "spent 40 mineral"
				if st.Currency == "" {
					st.Currency = r.currency()
				}
				r.emit(Fact{model.Spend{Amount: *st.Amount, Currency: st.Currency, What: p.name}}, s)
			}
			continue
		}
		if st.Currency == "" && st.Amount != nil {
			st.Currency = r.c.Herd.Currency
		}
		r.emit(Fact{st}, span{s.frame, p.i, p.j})
		r.noteUnits(p.i, p.j)
	}
}

// countedGoods says that a span tells what stands in the shed, not what was
// bought.
func (r *reader) countedGoods(s span) bool {
	if r.hasBuying(s) {
		return false
	}
	g := r.goodsIn(s.i, s.j)
	return r.has(s, sShed) || g.shed || g.few && !g.money
}

// sacks adds a count of bags of a known or unknown size.
func (r *reader) sacks(st *model.Stock, count float64, u unitID) {
	st.Count = model.Float(count)
	if size, ok := r.sizeOf(u); ok && st.FeedKg == nil {
		st.FeedKg = model.Float(size * count)
	}
}

// sacksCarried takes the first bare number of a part for a count of the bags told
// of the part before, "7 bags corn and 3 soy", and gives the numbers left over.
func (r *reader) sacksCarried(s span, st *model.Stock, rest []int, counted bool, pr price) []int {
	u := r.carry[vessel]
	if k := r.firstQty(s, vessel); u == 0 && k >= 0 {
		u = r.items[k].unit // "10 corn 115, mineral 1 bag 40"
	}
	if u == 0 || u == unitBale || st.Count != nil || st.FeedKg != nil || len(rest) == 0 {
		return rest
	}
	it := &r.items[rest[0]]
	if it.v > mostVessels || it.v != float64(int(it.v)) || !counted && len(rest) < 2 && pr.at < 0 && r.priceFirst {
		return rest
	}
	r.sacks(st, it.v, u)
	it.used = true
	return rest[1:]
}

// fewAreBags takes a small whole number told of an ingredient before its price for a
// count of bags, where as a weight it would cost more than feed ever does: "10 corn
// 115, 4 soybean meal 92".
func (r *reader) fewAreBags(p ingredientPart, st *model.Stock, rest []int, counted bool, pr price) []int {
	if p.name == "" || counted || st.Count != nil || st.FeedKg != nil || len(rest) == 0 || r.carry[vessel] != 0 || r.priceFirst {
		return rest
	}
	it := &r.items[rest[0]]
	if it.v > mostFew || it.v != float64(int(it.v)) || rest[0] > p.i && (r.items[rest[0]-1].s == "for" || r.items[rest[0]-1].is(sPay)) {
		return rest
	}
	cost := 0.0
	switch {
	case pr.at >= 0 && !pr.piece:
		cost = pr.v
	case pr.at >= 0 && pr.unit == 0:
		cost = pr.v * it.v
	case len(rest) > 1:
		cost = r.items[rest[1]].v
	default:
		for k := p.i; k < p.j; k++ {
			if r.items[k].qty(money) {
				cost = r.items[k].v
			}
		}
	}
	handful := cost == 0 && it.v < leastBuy && r.hasBuying(span{fStock, r.sentenceStart(p.i), p.j}) // "bought 2 mineral"
	if cost < dearestKg*r.massUnit().si(it.v) && !handful {
		return rest
	}
	r.sacks(st, it.v, unitBag)
	it.used = true
	return rest[1:]
}

// A bare number up to mostFew before a price of more than dearestKg for each kilogram
// of it counts bags. Common practice, no source.
const (
	mostFew   = 60
	dearestKg = 5.0
)

// leastSack is the least that a sack of feed holds, in kilograms. Common
// practice, no source.
const leastSack = 8.0

func (r *reader) hasBuying(s span) bool {
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.is(sBuy) && it.s != "got" {
			return true
		}
	}
	return false
}

// bareStock gives the numbers without a unit their meaning: "1000 corn 110" is
// a weight and a price, "corn 62.50 for 500" the price first.
func (r *reader) bareStock(st *model.Stock, rest []int, priced bool, n int) {
	for x, k := range rest {
		it := &r.items[k]
		asPrice := k > 0 && (r.items[k-1].s == "for" || r.items[k-1].is(sPay)) && st.Amount == nil
		if n > 0 && priced && len(rest) == 2 && r.priceFirst {
			asPrice = x == 0 // as the first of the list: "96 for 250"
		}
		if len(rest) == 2 && x == 0 && priced && it.decimals2() {
			asPrice = true // "62.50 for 500"
			r.priceFirst = true
		}
		if len(rest) == 2 && x == 1 && priced && r.items[rest[0]].decimals2() {
			asPrice = false
		}
		switch {
		case asPrice || st.FeedKg != nil && st.Amount == nil || st.Count != nil && st.Amount == nil:
			st.Amount = model.Float(it.v)
		case st.FeedKg == nil:
			st.FeedKg = model.Float(r.massUnit().si(it.v))
		default:
			continue
		}
		it.used = true
	}
}

// decimals2 says that a number is written as prices are: 62.50.
func (it *item) decimals2() bool {
	d := strings.LastIndexAny(it.s, ".,")
	return d >= 0 && len(it.s)-d == 3
}

// ingredientPart is a stretch of a span about one ingredient.
type ingredientPart struct {
	name string
	i, j int
}

// byIngredient cuts a span at its ingredients. Numbers come before the names if
// the first number does.
func (r *reader) byIngredient(s span) []ingredientPart {
	var at []int
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if it.is(sIngredient) && it.canon != "" && it.pig < 0 {
			if n := len(at); n > 0 && r.items[at[n-1]].canon == it.canon && at[n-1] >= k-1 {
				continue
			}
			it.used = true
			at = append(at, k)
		}
	}
	if len(at) == 0 {
		return []ingredientPart{{"", s.i, s.j}}
	}
	if len(at) == 1 {
		return []ingredientPart{{r.items[at[0]].canon, s.i, s.j}}
	}
	first := -1
	for k := s.i; k < s.j; k++ {
		if r.items[k].number() && !r.items[k].soft {
			first = k
			break
		}
	}
	var parts []ingredientPart
	for n, k := range at {
		p := ingredientPart{r.items[k].canon, s.i, s.j}
		if first >= 0 && first < at[0] { // numbers first, names last
			if n > 0 {
				p.i = r.partStart(at[n-1]+1, k)
			}
			if n+1 < len(at) {
				p.j = r.partStart(k+1, at[n+1])
			}
		} else {
			if n > 0 {
				p.i = r.nameFrom(at[n-1], k)
			}
			if n+1 < len(at) {
				p.j = r.nameFrom(k, at[n+1])
			}
		}
		parts = append(parts, p)
	}
	return parts
}

// nameFrom is where the part of the ingredient at item b begins, behind that of
// item a: at its name, or at the "and" or comma before its own amount, "corn, 800
// lb, and six bags of soy".
func (r *reader) nameFrom(a, b int) int {
	for k := b - 1; k > a; k-- {
		if r.items[k].gap >= gapAnd && !r.amountless(k, b) && !r.amountless(a, k) {
			return k
		}
	}
	return b
}

// partStart finds where the next part begins between two ingredients: at the
// first boundary behind the earlier one, else right there.
func (r *reader) partStart(i, j int) int {
	for k := i; k < j; k++ {
		if r.items[k].gap >= gapAnd {
			return k
		}
	}
	return i
}
