package reading

import (
	"maps"
	"slices"
	"strings"

	"troughbell/model"
)

// fillStock reads feed or ingredients bought, or counted in the shed: one entry
// an ingredient.
func (r *reader) fillStock(s span) {
	parts := r.byIngredient(s)
	counted := r.has(s, sShed) && !r.hasBuying(s)
	for n, p := range parts {
		st := model.Stock{Ingredient: p.name, Counted: counted}
		var rest []int
		priced := false
		for k := p.i; k < p.j; k++ {
			it := &r.items[k]
			switch {
			case it.qty(mass):
				if k > p.i && r.items[k-1].qty(vessel) && r.items[k-1].used && st.FeedKg == nil || k+1 < p.j && r.items[k+1].qty(vessel) && r.items[k+1].gap == gapNone {
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
				st.Count = model.Float(it.v)
				if size, ok := r.sizeOf(it.unit); ok && st.FeedKg == nil {
					st.FeedKg = model.Float(size * it.v)
				}
			case it.qty(money):
				if st.Amount == nil {
					st.Amount = model.Float(it.v)
					if r.has(span{s.frame, p.i, p.j}, sEach) && st.Count != nil {
						st.Amount = model.Float(it.v * *st.Count)
					}
					st.Currency = it.unit.name()
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
		r.bareStock(&st, rest, priced, n)
		if st.FeedKg == nil && st.Count == nil {
			if st.Amount != nil { // "spent 40 mineral"
				r.emit(Fact{model.Spend{Amount: *st.Amount, Currency: st.Currency, What: p.name}}, s)
			}
			continue
		}
		if st.Currency == "" && st.Amount != nil {
			st.Currency = r.c.Herd.Currency
		}
		r.emit(Fact{st}, span{s.frame, p.i, p.j})
	}
}

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
			if st.Count != nil && k+1 < len(r.items) && (r.items[k+1].is(sEach) || r.items[k+1].is(sPer) && r.items[k+1].s != "to") {
				st.Amount = model.Float(it.v * *st.Count) // "40 bags at 14.50 each"
			}
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
				p.i = k
			}
			if n+1 < len(at) {
				p.j = at[n+1]
			}
		}
		parts = append(parts, p)
	}
	return parts
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

// fillMixed reads feed mixed at home.
func (r *reader) fillMixed(s span) {
	m := model.Mixed{}
	from := s.i
	if k := r.find(s, sMixed); k >= 0 { // the amount stands behind the word, if any does
		for n := k + 1; n < s.j; n++ {
			if r.items[n].number() || r.items[n].kind == itFrac {
				from = k
			}
		}
	}
	for k := from; k < s.j; k++ {
		it := &r.items[k]
		switch {
		case it.qty(vessel) && it.unit == unitBatch:
			m.Batches = model.Float(it.v)
		case it.qty(mass):
			m.FeedKg = model.Float(it.si())
		case it.kind == itNum && !it.soft && !it.ord && m.Batches == nil && m.FeedKg == nil, it.soft && it.kind == itNum && m.Batches == nil && m.FeedKg == nil:
			if it.v <= 20 {
				m.Batches = model.Float(it.v)
			} else {
				m.FeedKg = model.Float(r.massUnit().si(it.v))
			}
		case it.kind == itFrac && m.Batches == nil:
			m.Batches = model.Float(it.v)
		case it.is(sMixed):
		default:
			continue
		}
		it.used = true
	}
	if k := r.find(s, sMixed); m.Batches == nil && m.FeedKg == nil && k >= 0 { // "mixed a new batch"
		for n := k + 1; n < s.j && n <= k+4; n++ {
			if r.items[n].s == "batch" {
				m.Batches, r.items[n].used = model.Float(1), true
			}
		}
	}
	if m.Batches != nil && m.FeedKg != nil { // "2 batches, 200 lb": the batches say it
		m.FeedKg = nil
	}
	if m.Check() != nil {
		r.idleSpan(s)
		return
	}
	r.emit(Fact{m}, s)
}

// fillRecipe reads what a batch of the mix holds.
func (r *reader) fillRecipe(s span) {
	ing := map[string]float64{}
	total := 0.0
	pct := false
	parts := r.byIngredient(s)
	for _, p := range parts {
		if p.name == "" {
			continue
		}
		for k := p.i; k < p.j; k++ {
			it := &r.items[k]
			if it.kind == itNum && !it.soft && !it.ord && !(p.name == "soybean meal 48" && (it.v == 44 || it.v == 48 || it.v == 47.5) && r.secondNumber(k, p)) {
				ing[p.name] += r.massUnit().si(it.v)
			} else if it.qty(mass) && k > 0 && (r.items[k-1].is(sPer) || r.items[k-1].s == "per") {
				it.used = true // "per 100 lb"
				continue
			} else if it.qty(mass) {
				ing[p.name] += it.si()
			} else if it.qty(percent) {
				ing[p.name] += it.v
				pct = true
			} else {
				continue
			}
			it.used = true
			if len(parts) > 1 {
				break
			}
		}
	}
	for _, n := range slices.Sorted(maps.Keys(ing)) { // a fixed order: the same sum to the bit
		total += ing[n]
	}
	if len(ing) == 0 {
		// "a batch is 100 lb" is a size
		r.fillSize(s)
		return
	}
	if pct { // shares: of a batch of the size known, else of a hundredweight
		batch, ok := r.batchSaid()
		if !ok {
			batch, ok = r.c.Herd.BatchKg()
		}
		if !ok {
			batch = r.massUnit().si(100)
		}
		for n, v := range ing {
			ing[n] = v / total * batch
		}
	}
	for n, v := range ing {
		if v <= 0 {
			delete(ing, n)
		}
	}
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.is(sRecipe) || it.unit == unitBatch || it.is(sFiller) {
			it.used = true
		}
	}
	r.setUp.sizes = setSize(r.setUp.sizes, "batch", total)
	r.emit(Fact{model.Recipe{Ingredients: ing}}, s)
}

// batchSaid is the weight of a batch as the text says it, "a batch is 200 lb".
func (r *reader) batchSaid() (float64, bool) {
	for k := range r.items {
		it := &r.items[k]
		if !it.is(sRecipe) && it.unit != unitBatch || !strings.Contains(it.s, "batch") && it.unit != unitBatch {
			continue
		}
		for n := k + 1; n < len(r.items) && n <= k+2; n++ {
			if x := &r.items[n]; x.qty(mass) && (n+1 >= len(r.items) || !r.items[n+1].is(sIngredient)) {
				x.used, it.used = true, true
				return x.si(), true
			}
		}
	}
	return 0, false
}

func (r *reader) secondNumber(k int, p ingredientPart) bool {
	for n := p.i; n < p.j; n++ {
		if n != k && r.items[n].number() {
			return true
		}
	}
	return false
}

func setSize(m map[string]float64, name string, kg float64) map[string]float64 {
	if m == nil {
		m = map[string]float64{}
	}
	m[name] = kg
	return m
}

// fillSpend reads money paid or received.
func (r *reader) fillSpend(s span) {
	var at []int
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.qty(money) || it.kind == itNum && !it.soft && !it.ord {
			at = append(at, k)
		}
	}
	if p := r.find(s, sPay); p >= 0 && r.firstQty(s, money) < 0 && len(at) > 1 && at[0] < p && at[len(at)-1] > p {
		for at[0] < p {
			at = at[1:] // "moss 35 44 spent 12.50"
		}
		s.i = p
	}
	if k := r.firstQty(s, money); k >= 0 && !r.has(span{s.frame, s.i, k}, sPay) {
		for len(at) > 0 && at[0] < k && r.items[at[0]].kind == itNum {
			at = at[1:] // "94 today and had a flat, 85 dollars"
			s.i = min(k, r.clauseFrom(k))
		}
	}
	if len(at) > 1 && at[1]-at[0] == 1 && r.saidInWords(at[0]) && r.saidInWords(at[1]) && r.items[at[1]].v < 100 { // "twenty two fifty"
		r.items[at[0]].v += r.items[at[1]].v / 100
		r.items[at[1]].used, r.items[at[1]].sense = true, setOf(sFiller)
		r.items[at[1]].kind = itWord
		at = append(at[:1], at[2:]...)
	}
	if len(at) > 1 && at[1]-at[0] > 1 { // "18.50 straw and 45 vet"
		for n, k := range at {
			p := span{s.frame, k, s.j}
			if n == 0 {
				p.i = s.i
			}
			if n+1 < len(at) {
				p.j = at[n+1]
			}
			r.oneSpend(p)
		}
		return
	}
	r.oneSpend(s)
}

// saidInWords says that a number is written in letters.
func (r *reader) saidInWords(k int) bool {
	it := &r.items[k]
	return it.kind == itNum && it.from < len(r.text) && !isDigit(r.text[it.from])
}

func (r *reader) oneSpend(s span) {
	sp := model.Spend{Income: r.has(s, sReceived) && !r.has(s, sPay)}
	at := -1
	if k := r.firstQty(s, money); k >= 0 {
		at = k
		sp.Amount, sp.Currency = r.items[k].v, r.items[k].unit.name()
	} else if k := r.firstNum(s); k >= 0 {
		at = k
		sp.Amount, sp.Currency = r.items[k].v, r.currency()
	}
	if at < 0 || sp.Amount <= 0 {
		r.idleSpan(s)
		return
	}
	r.items[at].used = true
	sp.What = r.spendWords(s, at)
	if sp.What == "" && r.quoteHas(span{0, 0, s.i}, "vet", "vet gave", "vet came", "the vet", "from the vet") {
		sp.What = "vet" // "the vet gave brick penicillin and charged 80"
	}
	r.emit(Fact{sp}, s)
	if k := r.find(span{s.frame, at + 1, s.j}, sPay); k >= 0 {
		r.items[k].used = true
	}
}

func (r *reader) currency() string {
	if c := r.c.Herd.Currency; c != "" {
		return c
	}
	if r.units == model.US {
		return "USD"
	}
	return ""
}

// spendWords is what the money was for, in the person's words.
func (r *reader) spendWords(s span, at int) string {
	var words []string
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if k == at || it.kind == itDay || it.kind == itClock {
			continue
		}
		if it.is(sPay) || it.s == "bought" || it.s == "got" || it.is(sReceived) && it.s != "made" {
			it.used = true
			if it.s == "deposit" || it.s == "bill" {
				words = append(words, it.s)
			}
			continue
		}
		if it.is(sFiller) && it.pig < 0 || it.s == "for" || it.is(sAnd) {
			continue
		}
		it.used = true
		words = append(words, strings.TrimSpace(r.text[it.from:it.to]))
	}
	return strings.Join(words, " ")
}

// strayMoney records money told beside another fact: "vet came for Lotte 45
// euro".
func (r *reader) strayMoney(s span) {
	switch s.frame {
	case fDrug, fSick, fMove, fMixed, fBooked, fFeed, fWater, fFence:
	default:
		return
	}
	k := r.firstQty(s, money)
	if k < 0 || r.items[k].used {
		return
	}
	r.items[k].used = true
	sp := model.Spend{Amount: r.items[k].v, Currency: r.items[k].unit.name()}
	switch {
	case r.quoteHas(s, "vet", "vet gave", "vet came", "the vet", "veterinarian"):
		sp.What = "vet"
	case s.frame == fBooked:
		sp.What = "butcher"
	case s.frame == fDrug:
		sp.What = "treatment"
	case s.frame == fMixed || s.frame == fFeed:
		sp.What = "feed"
	}
	if sp.Amount > 0 {
		r.emit(Fact{sp}, s)
	}
}
