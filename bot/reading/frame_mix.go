package reading

import (
	"maps"
	"slices"
	"strings"

	"troughbell/model"
)

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
		case it.kind == itNum && (r.countsPlain(k, s.j) || k+1 < s.j && r.items[k+1].s == "jars"): // "made plum jam, eleven jars"
			continue
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
	if m.Batches != nil && *m.Batches == 1 && r.quoteHas(s, "double", "a double", "double batch", "a double batch") {
		m.Batches = model.Float(2)
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
	if r.fillMixChange(s) {
		return
	}
	ing := map[string]float64{}
	total := 0.0
	pct := false
	batchKg, batchAt := r.batchSize(s)
	bare := true
	parts := r.byIngredient(s)
	for _, p := range parts {
		if p.name == "" {
			continue
		}
		for k := p.i; k < p.j; k++ {
			it := &r.items[k]
			if k == batchAt {
				continue
			}
			bare = bare && it.kind != itQty
			if size, ok := r.sizeOf(it.unit); ok && it.qty(vessel) && it.unit != unitBatch {
				ing[p.name] += it.v * size
			} else if it.kind == itNum && !it.soft && !it.ord && !(p.name == "soybean meal 48" && (it.v == 44 || it.v == 48 || it.v == 47.5) && r.secondNumber(k, p)) {
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
	if bare && batchAt >= 0 && !sameAmount(total, batchKg) && sameAmount(total, r.massUnit().si(100)) {
		pct = true // "a 200 lb batch: 75 corn, 22 soy, 3 mineral"
	}
	if pct { // shares: of a batch of the size known, else of a hundredweight
		batch, ok := batchKg, batchAt >= 0
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

// batchSize is the weight of a whole batch where the sentence of a span tells it,
// with its item: "a batch is 200 lb: ...", "200 lb a batch"; -1 where it does not.
func (r *reader) batchSize(s span) (kg float64, at int) {
	from, to := r.sentenceStart(s.i), r.sentenceEnd(s.j-1)
	for k := from; k < to; k++ {
		it := &r.items[k]
		if it.unit != unitBatch && !(it.is(sRecipe) && strings.Contains(it.s, "batch")) || it.kind == itQty && it.v != 1 {
			continue
		}
		for n := k + 1; n < to && n <= k+labelReach && r.items[n].gap == gapNone; n++ {
			if r.items[n].qty(mass) && (n+1 >= to || r.items[n+1].gap >= gapComma || !r.items[n+1].isAny(setOf(sIngredient, sOf))) {
				r.items[n].used, it.used = true, true
				return r.items[n].si(), n
			}
		}
		n := k - 1
		for n > from && r.items[n].isAny(setOf(sPer, sEach)) && r.items[n].kind == itWord {
			n--
		}
		if n >= from && r.items[n].qty(mass) && (n == from || r.items[n].gap >= gapAnd || !r.items[n-1].is(sIngredient)) {
			r.items[n].used, it.used = true, true
			return r.items[n].si(), n
		}
	}
	return 0, -1
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

// mixLines is the end of the lines that say what a batch holds, one ingredient
// each, below a line that speaks of the mix and ends in the colon at item k; k
// where there are none.
func (r *reader) mixLines(k int) int {
	head := span{fRecipe, r.sentenceStart(k), k + 1}
	if k+1 < len(r.items) && r.items[k+1].gap < gapComma || !r.has(head, sRecipe) && !r.namesBatch(head) || r.has(head, sMixed) && !r.has(head, sRecipe) {
		return k
	}
	end := k
	for from := k + 1; from < len(r.items); {
		to := r.clauseEnd(from)
		if !r.ingredientLine(from, to) {
			break
		}
		end, from = to, to
	}
	if end == k || end == k+1 {
		return k
	}
	return end
}

func (r *reader) namesBatch(s span) bool {
	for k := s.i; k < s.j; k++ {
		if r.items[k].unit == unitBatch {
			return true
		}
	}
	return false
}

// ingredientLine says that items[i:j] are one ingredient and its weight or share.
func (r *reader) ingredientLine(i, j int) bool {
	names, amounts := 0, 0
	for k := i; k < j; k++ {
		it := &r.items[k]
		switch {
		case it.is(sIngredient) && it.canon != "":
			names++
		case it.kind == itNum && !it.soft, it.qty(mass), it.qty(percent):
			amounts++
		case it.isAny(setOf(sFiller, sOf, sAbout)):
		default:
			return false
		}
	}
	return names > 0 && amounts == 1
}
