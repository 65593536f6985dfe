package model

import "time"

// HerdMix is the cheapest mix of what the herd buys, beside the one in use.
type HerdMix struct {
	CheapestMix
	NowPerKg float64 // money a kilogram of the mix in use, by the same prices
	// NowOK says that the mix in use holds enough digestible lysine: else the two
	// prices are of different things.
	NowOK       bool
	ForWeightKg float64
	Currency    string // empty where none was ever named
}

// LeastCostMix is the cheapest mix, at the moment, of the ingredients that the
// herd's recipe holds or that were bought at a known price this season, for a
// batch of the size in use. Of the recipe, what has no lysine and no energy
// (premix, salt, minerals) stays as it is. *Missing "recipe", "pigs" or "weight"
// where unknown, "price" (Names: of what) where an ingredient of the recipe has
// none; *Infeasible as in the function of that name.
func (h *Herd) LeastCostMix(at time.Time) (HerdMix, error) {
	today := DayOf(at)
	check, err := h.RationCheck(today)
	if err != nil {
		return HerdMix{}, err
	}
	m, _ := h.recipeOn(today)
	money := h.account(h.season(today), at)
	q := MixQuery{WeightKg: min(max(check.ForWeightKg, MinRequirementKg), MaxRequirementKg), BatchKg: m.BatchKg(), FixedKg: map[string]float64{}}
	out := HerdMix{NowOK: check.OK, ForWeightKg: check.ForWeightKg, Currency: money.currency}
	var unpriced []string
	used := map[string]bool{}
	for _, name := range sortedKeys(m.Ingredients) {
		in, known := m.ingredient(name)
		if !known || in.SIDLysinePct == 0 && in.EnergyMJKg == 0 {
			q.FixedKg[name] = m.Ingredients[name]
			continue
		}
		p := money.priced[name]
		if p.kg <= 0 {
			unpriced = append(unpriced, name)
			continue
		}
		used[name] = true
		f := PricedFeed{Name: name, PerKg: p.amount / p.kg, TagProteinPct: m.TagProteinPct[name]}
		q.Feeds = append(q.Feeds, f)
		out.NowPerKg += m.Ingredients[name] * f.PerKg / q.BatchKg
	}
	if len(unpriced) > 0 {
		return HerdMix{}, &Missing{What: "price", Names: unpriced}
	}
	for _, name := range sortedKeys(money.priced) {
		in, known := Ingredient(name)
		p := money.priced[name]
		if !known || used[name] || p.kg <= 0 || in.SIDLysinePct == 0 && in.EnergyMJKg == 0 {
			continue
		}
		q.Feeds = append(q.Feeds, PricedFeed{Name: name, PerKg: p.amount / p.kg})
	}
	out.CheapestMix, err = LeastCostMix(q)
	return out, err
}
