package answer

import (
	"cmp"
	"slices"

	"troughbell/bot/wording"
	"troughbell/model"
)

// sacks says how many batches a whole sack makes, of the richest protein feed of
// the mix or else of what there is least of.
func sacks(a asked) Answer {
	m, ok := a.h.Recipe()
	if !ok {
		return a.missing(&model.Missing{What: "recipe"})
	}
	size, measure := a.h.Sizes["bag"], "bag"
	if size == 0 {
		size, measure = a.h.Sizes["sack"], "sack"
	}
	if size == 0 {
		return a.missing(&model.Missing{What: "bag_size"})
	}
	name := sackedPart(m)
	out, err := model.WholeSackBatch(m, name, size)
	if err != nil {
		return a.missing(err)
	}
	parts := map[string]any{}
	args := wording.Args{Q: []model.Quantity{wording.N(out.Batches), wording.Kg(size), wording.Kg(out.Recipe.BatchKg())}, Names: []string{measure, name}}
	list := wording.Args{}
	for _, n := range byWeight(out.Recipe) {
		parts[n] = kg(out.Recipe.Ingredients[n])
		list.Names = append(list.Names, n)
		list.Q = append(list.Q, wording.Kg(out.Recipe.Ingredients[n]))
	}
	data := map[string]any{
		"ingredient": name, "sack_kg": kg(size), "batches": out.Batches, "batch_kg": kg(out.Recipe.BatchKg()), "ingredients": parts,
	}
	return Answer{Data: data, Text: a.say("sacks", args) + "\n" + a.say("sacks_batch", list), Reasons: out.Reasons}
}

// sackedPart is the part of a mix that comes in sacks that should come out whole.
func sackedPart(m model.Recipe) string {
	names := byWeight(m)
	for _, n := range names {
		if in, ok := model.Ingredient(n); ok && in.Protein {
			return n
		}
	}
	return names[len(names)-1]
}

// byWeight lists the parts of a mix, the heaviest first.
func byWeight(m model.Recipe) []string {
	var names []string
	for n := range m.Ingredients {
		names = append(names, n)
	}
	slices.SortFunc(names, func(x, y string) int {
		return cmp.Or(cmp.Compare(m.Ingredients[y], m.Ingredients[x]), cmp.Compare(x, y))
	})
	return names
}

// pigCost says what one pig costs by the herd's own money, or what it eats where
// nothing is priced yet: no price is known but the person's own.
func pigCost(a asked) Answer {
	out := cost(a)
	alive := len(a.h.Alive(a.today))
	if out.Data != nil && alive > 0 {
		if c, err := a.h.Cost(a.now); err == nil {
			each := c.Forecast / float64(alive)
			out.Data["forecast_per_pig"] = kg(each)
			out.Text = a.say("pig_cost", wording.Args{Q: []model.Quantity{wording.Cash(each)}}) + "\n" + out.Text
		}
		return out
	}
	q := model.NeedsQuery{Count: 1, From: a.today, WeightKg: weanedKg, TargetKg: a.endKg()}
	n, err := model.PlanNeeds(q)
	if err != nil {
		return a.missing(err)
	}
	args := wording.Args{Q: []model.Quantity{wording.Kg(q.WeightKg), wording.Kg(q.TargetKg), wording.Kg(n.FeedKg.Mid)}}
	if price, _, ok := a.h.FeedPrice(a.now); ok {
		args.Q = append(args.Q, wording.Cash(price*n.FeedKg.Mid))
	}
	return Answer{Text: a.say("pig_cost_untold", args)}
}
