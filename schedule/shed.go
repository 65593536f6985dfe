package schedule

import (
	"sort"
	"time"

	"troughbell/model"
)

// shed is what should be there of each ingredient of the mix, in kilograms.
// Only ingredients whose stock was ever said are in it.
type shed map[string]float64

// shedAt adds up the stock at the moment: the latest count or purchase, what
// was bought since, less what went into the mix since. Where no mixing is ever
// logged, what was poured counts as mixed.
func (v *view) shedAt(at time.Time) (shed, model.Recipe, bool) {
	r, ok := v.h.Recipe()
	if !ok || r.BatchKg() <= 0 {
		return nil, r, false
	}
	out, counted := shed{}, map[string]time.Time{}
	for _, s := range v.h.Stocks {
		kg, known := v.stockKg(s.F)
		if _, in := r.Ingredients[s.F.Ingredient]; !in || !known || s.At.After(at) {
			continue
		}
		if _, had := out[s.F.Ingredient]; s.F.Counted || !had {
			out[s.F.Ingredient] = kg
			counted[s.F.Ingredient] = s.At
			continue
		}
		out[s.F.Ingredient] += kg
	}
	for name, since := range counted {
		out[name] -= v.mixedKg(since, at) * r.Ingredients[name] / r.BatchKg()
		out[name] = max(0, out[name])
	}
	return out, r, len(out) > 0
}

// stockKg is the weight of a stock said as a weight, or as bags of a known size.
func (v *view) stockKg(s model.Stock) (float64, bool) {
	if s.FeedKg != nil {
		return *s.FeedKg, true
	}
	size, ok := v.h.Sizes["bag"]
	if s.Count == nil || !ok {
		return 0, false
	}
	return *s.Count * size, true
}

// mixedKg is the feed mixed after one moment up to another.
func (v *view) mixedKg(after, until time.Time) float64 {
	var sum float64
	for _, m := range v.h.Mixes {
		if !m.At.After(after) || m.At.After(until) {
			continue
		}
		switch batch, ok := v.h.BatchKg(); {
		case m.F.FeedKg != nil:
			sum += *m.F.FeedKg
		case m.F.Batches != nil && ok:
			sum += *m.F.Batches * batch
		}
	}
	if len(v.h.Mixes) > 0 {
		return sum
	}
	for _, r := range v.h.Refills {
		if r.F.FeedKg != nil && r.At.After(after) && !r.At.After(until) {
			sum += *r.F.FeedKg
		}
	}
	return sum
}

// short is an ingredient of which less is there than a visit needs.
type short struct {
	name         string
	haveKg, need float64
}

// shortAt lists, in the order of names, what is short at the first visit in
// the row that lacks anything, and that visit. The first of the visits needs what is to be poured
// at it; each later one what was eaten since the one before.
func (v *view) shortAt(at time.Time, visits []time.Time) ([]short, time.Time) {
	have, r, ok := v.shedAt(at)
	if !ok {
		return nil, time.Time{}
	}
	for i := 0; i+1 < len(visits); i++ {
		kg, ok := v.pourAt(visits, i)
		if !ok {
			return nil, time.Time{}
		}
		var out []short
		for name, kgInBatch := range r.Ingredients {
			stock, tracked := have[name]
			if !tracked {
				continue
			}
			need := kg * kgInBatch / r.BatchKg()
			if need > stock {
				out = append(out, short{name, stock, need})
			}
			have[name] = max(0, stock-need)
		}
		if len(out) > 0 {
			sort.Slice(out, func(i, j int) bool { return out[i].name < out[j].name })
			return out, visits[i]
		}
	}
	return nil, time.Time{}
}

// pourAt is the feed that the visit of that index will take.
func (v *view) pourAt(visits []time.Time, i int) (float64, bool) {
	if i == 0 {
		p, err := v.f.RefillPlan(visits[0], visits[1])
		return p.PourKg, err == nil
	}
	kg, err := v.eaten(visits[i-1], visits[i])
	return kg.Mid, err == nil
}

// eaten is the feed that the pigs eat from one moment to another.
func (v *view) eaten(from, to time.Time) (model.Interval, error) {
	last := model.DayOf(to.In(v.loc)) - 1
	n, err := v.f.FeedNeed(from, last)
	if err != nil {
		return model.Interval{}, err
	}
	covered := (last + 1).At(0, v.loc).Sub(from)
	return n.FeedKg.Scale(to.Sub(from).Hours() / covered.Hours()), nil
}
