package wording

import (
	"maps"
	"sort"
	"strings"

	"troughbell/model"
)

func (v Voice) echoRefill(f model.Refill) string {
	s := "fed"
	if f.Feeder != "" && f.Feeder != model.SetFeeder { // one that has no name of its own
		s += " " + f.Feeder
	}
	if f.FeedKg != nil {
		s += " " + v.kg(*f.FeedKg)
	}
	after := ""
	switch {
	case f.Full:
		after = "full"
	case f.Fraction != nil:
		after = "now " + levelFull(*f.Fraction)
	}
	if f.FromEmpty {
		s += " from empty"
	}
	return phrase(s, after)
}

func (v Voice) echoFeedLevel(f model.FeedLevel) string {
	name := f.Feeder
	if name == "" {
		name = "feeder"
	}
	switch {
	case f.SpilledKg != nil:
		return name + " spilled " + v.kg(*f.SpilledKg)
	case f.Spilled:
		return name + " spilled"
	case f.Fraction != nil:
		return name + " " + levelLeft(*f.Fraction)
	case f.FeedKg != nil:
		return name + " " + v.kg(*f.FeedKg) + " left"
	case f.Days != nil:
		return name + " " + v.Quantity(Days(*f.Days), styleExact) + " left"
	}
	return name
}

func (v Voice) echoStock(s model.Stock) string {
	verb := "bought"
	if s.Counted {
		verb = "in the shed:"
	}
	what := s.Ingredient
	if what == "" {
		what = "of feed"
	}
	amount := ""
	switch {
	case s.FeedKg != nil:
		amount = v.kg(*s.FeedKg)
	case s.Count != nil:
		amount = countNoun(*s.Count, "bag", "bags")
	}
	paid := ""
	if s.Amount != nil {
		paid = " for " + v.Amount(*s.Amount, s.Currency)
	}
	return verb + " " + amount + " " + what + paid
}

func (v Voice) echoMixed(m model.Mixed) string {
	if m.Batches != nil {
		return "mixed " + countNoun(*m.Batches, "batch", "batches")
	}
	if m.FeedKg != nil {
		return "mixed " + v.kg(*m.FeedKg)
	}
	return "mixed"
}

func (v Voice) echoRecipe(r model.Recipe) string {
	names := make([]string, 0, len(r.Ingredients))
	for name := range r.Ingredients {
		names = append(names, name)
	}
	sort.Slice(names, func(i, j int) bool {
		if a, b := r.Ingredients[names[i]], r.Ingredients[names[j]]; a != b {
			return a > b
		}
		return names[i] < names[j]
	})
	for i, name := range names {
		names[i] = v.kg(r.Ingredients[name]) + " " + name
	}
	tags := v.echoProtein(r)
	if tags != "" && v.knowsMix(r) {
		return tags
	}
	said := "mix is " + phrase(names...)
	if tags != "" {
		said += "; " + tags
	}
	return said
}

// echoProtein says what tags and tests tell of the mix.
func (v Voice) echoProtein(r model.Recipe) string {
	pct := func(x float64) string { return v.Quantity(model.Quantity{Value: x, Unit: model.Percent}, styleExact) }
	if r.ProteinPct != nil {
		return "mix tests " + pct(*r.ProteinPct) + " protein"
	}
	names := make([]string, 0, len(r.TagProteinPct))
	for name := range r.TagProteinPct {
		names = append(names, name)
	}
	sort.Strings(names)
	for i, name := range names {
		names[i] = name + " tag says " + pct(r.TagProteinPct[name]) + " protein"
	}
	return strings.Join(names, "; ")
}

// knowsMix reports whether the parts of a mix go without saying: it is all one
// bought feed, or the herd had them before their protein was told.
func (v Voice) knowsMix(r model.Recipe) bool {
	if len(r.Ingredients) == 1 && r.Ingredients[model.CompleteFeed] > 0 {
		return true
	}
	for _, m := range v.Herd.Recipes {
		if m.F.ProteinPct == nil && len(m.F.TagProteinPct) == 0 && maps.Equal(m.F.Ingredients, r.Ingredients) {
			return true
		}
	}
	return false
}
