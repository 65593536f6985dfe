package wording

import (
	"sort"

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
	return "mix is " + phrase(names...)
}
