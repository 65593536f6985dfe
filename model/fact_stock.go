package model

import "errors"

// Stock is an ingredient or feed bought, or counted in the shed.
type Stock struct {
	Ingredient string   `json:"ingredient,omitempty"` // canonical name; empty: ready-mixed feed
	FeedKg     *float64 `json:"feed_kg,omitempty"`
	Count      *float64 `json:"count,omitempty"` // bags or sacks, where their size is not known
	Amount     *float64 `json:"amount,omitempty"`
	Currency   string   `json:"currency,omitempty"`
	// Counted says that FeedKg is what stands there now, not what was added.
	Counted bool `json:"counted,omitempty"`
}

func (Stock) Kind() Kind   { return "stock" }
func (Stock) Version() int { return 1 }

func (s Stock) Check() error {
	if s.FeedKg == nil && s.Count == nil {
		return errors.New("a purchase of feed needs a weight or a count of bags")
	}
	if s.FeedKg != nil && *s.FeedKg < 0 || s.Count != nil && *s.Count < 0 {
		return errors.New("a stock cannot be negative")
	}
	return nil
}

func (s Stock) fold(h *Herd, r Record) { h.Stocks = append(h.Stocks, dated(s, r)) }

// Mixed is feed mixed at home, in batches of the herd's recipe or by weight.
type Mixed struct {
	Batches *float64 `json:"batches,omitempty"`
	FeedKg  *float64 `json:"feed_kg,omitempty"`
}

func (Mixed) Kind() Kind   { return "mixed" }
func (Mixed) Version() int { return 1 }

func (m Mixed) Check() error {
	if m.Batches == nil && m.FeedKg == nil {
		return errors.New("a mix needs a number of batches or a weight")
	}
	if m.Batches != nil && *m.Batches <= 0 || m.FeedKg != nil && *m.FeedKg <= 0 {
		return errors.New("what was mixed must be more than nothing")
	}
	return nil
}

func (m Mixed) fold(h *Herd, r Record) { h.Mixes = append(h.Mixes, dated(m, r)) }

// Recipe is what one batch of the home mix holds: kilograms by canonical name
// of the ingredient.
type Recipe struct {
	Ingredients map[string]float64 `json:"ingredients"`
	// TagProteinPct is crude protein as printed on the tag of an ingredient's bag,
	// in percent, by the same names: it overrides the table.
	TagProteinPct map[string]float64 `json:"tag_protein_pct,omitempty"`
	// ProteinPct is crude protein of the whole mix as tested or printed, in percent:
	// it overrides what the ingredients come to.
	ProteinPct *float64 `json:"protein_pct,omitempty"`
}

// CompleteFeed is the ingredient that stands for feed bought ready mixed. Only
// its tag tells what it holds.
const CompleteFeed = "complete feed"

func (Recipe) Kind() Kind   { return "recipe" }
func (Recipe) Version() int { return 1 }

func (m Recipe) Check() error {
	if len(m.Ingredients) == 0 {
		return errors.New("a recipe needs at least one ingredient")
	}
	for _, kg := range m.Ingredients {
		if kg <= 0 {
			return errors.New("each ingredient of a recipe needs a weight")
		}
	}
	for _, pct := range m.TagProteinPct {
		if !(pct >= 0 && pct <= 100) {
			return errors.New("the protein on a tag lies between 0 and 100 %")
		}
	}
	if p := m.ProteinPct; p != nil && !(*p >= 0 && *p <= 100) {
		return errors.New("the protein of a mix lies between 0 and 100 %")
	}
	return nil
}

func (m Recipe) fold(h *Herd, r Record) { h.Recipes = append(h.Recipes, dated(m, r)) }

// BatchKg is the weight of one batch in kilograms, 0 of a mix of nothing.
func (m Recipe) BatchKg() float64 {
	var sum float64
	for _, name := range sortedKeys(m.Ingredients) { // a fixed order: the same sum to the bit
		sum += m.Ingredients[name]
	}
	return sum
}
