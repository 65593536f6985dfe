package model

import "math"

// SackBatch is a mix scaled so that whole sacks of one ingredient come out.
type SackBatch struct {
	Recipe  Recipe // of one batch
	Batches int    // that one sack makes
	Reasons []Reason
}

// WholeSackBatch scales a mix so that one sack of an ingredient (sackKg, more
// than nothing, up to 2000 kg) makes a whole number of batches, as near to the
// batch in use as can be: the shares of the mix stay, no open sack is left
// over. *OutOfRange for a sack outside the range or an ingredient that the mix
// does not hold. Computed.
func WholeSackBatch(m Recipe, ingredient string, sackKg float64) (SackBatch, error) {
	const mostSackKg = 2000
	if !(sackKg > 0 && sackKg <= mostSackKg) {
		return SackBatch{}, &OutOfRange{"sack_kg", sackKg, 0, mostSackKg}
	}
	kg := m.Ingredients[ingredient]
	if !(kg > 0 && kg <= mostBatchKg) {
		return SackBatch{}, &OutOfRange{"ingredient_kg", kg, 0, mostBatchKg}
	}
	out := SackBatch{Batches: max(int(math.Round(sackKg/kg)), 1)}
	by := sackKg / float64(out.Batches) / kg
	out.Recipe = Recipe{Ingredients: make(map[string]float64, len(m.Ingredients)), TagProteinPct: m.TagProteinPct}
	for _, name := range sortedKeys(m.Ingredients) {
		out.Recipe.Ingredients[name] = m.Ingredients[name] * by
	}
	out.Reasons = []Reason{{
		Code: ReasonSackScaled, Names: []string{ingredient},
		Q: []Quantity{{kg, Kilograms}, {kg * by, Kilograms}},
	}}
	return out, nil
}

// Purchase is what to buy of one ingredient.
type Purchase struct {
	Ingredient string
	NeedKg     float64 // for the feed asked for
	Sacks      int     // whole ones, 0 where its sack is not known
	OverKg     float64 // left of them
}

// ShoppingList is what a mix takes for so much feed (feedKg, not negative, up to
// 1e6 kg), less what is at hand, in whole sacks where their size in kilograms is
// given by name (more than nothing). By the alphabet; what is at hand in full is
// left out. *OutOfRange outside the ranges, a mix of nothing too. Computed.
func ShoppingList(m Recipe, feedKg float64, sackKg, atHandKg map[string]float64) ([]Purchase, error) {
	const mostFeedKg = 1e6
	if !(feedKg >= 0 && feedKg <= mostFeedKg) {
		return nil, &OutOfRange{"feed_kg", feedKg, 0, mostFeedKg}
	}
	if _, err := AnalyseMix(m); err != nil {
		return nil, err
	}
	batch := m.BatchKg()
	var out []Purchase
	for _, name := range sortedKeys(m.Ingredients) {
		have := atHandKg[name]
		if !(have >= 0 && have <= mostFeedKg) {
			return nil, &OutOfRange{"at_hand_kg", have, 0, mostFeedKg}
		}
		p := Purchase{Ingredient: name, NeedKg: feedKg*m.Ingredients[name]/batch - have}
		if p.NeedKg <= 0 {
			continue
		}
		if size, told := sackKg[name]; told {
			if !(size > 0 && size <= mostFeedKg) {
				return nil, &OutOfRange{"sack_kg", size, 0, mostFeedKg}
			}
			p.Sacks = int(math.Ceil(p.NeedKg/size - 1e-9))
			p.OverKg = float64(p.Sacks)*size - p.NeedKg
		}
		out = append(out, p)
	}
	return out, nil
}
