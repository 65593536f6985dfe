package answer

import (
	"cmp"
	"errors"
	"maps"
	"slices"

	"troughbell/bot/wording"
	"troughbell/model"
)

// worthSaving is how much cheaper a mix must be to be worth a sentence.
const worthSaving = 0.03

// cheaper adds the cheapest mix at the herd's own prices, where they are known,
// and says so where it saves enough.
func (a asked) cheaper(data map[string]any) string {
	m, err := a.h.LeastCostMix(a.now)
	var no *model.Infeasible
	if errors.As(err, &no) {
		short := map[string]any{}
		for _, s := range no.Short {
			short[s.Nutrient] = map[string]any{"needed": fine(s.Needed), "best": fine(s.Best)}
		}
		data["least_cost"] = map[string]any{"possible": false, "short": short}
		return ""
	}
	if err != nil { // prices not told: the check stands without
		return ""
	}
	if m.Currency == "" {
		m.Currency = a.v.Currency()
	}
	batch := map[string]any{}
	args := wording.Args{Q: []model.Quantity{wording.Cash(m.PerKg), wording.Cash(m.NowPerKg)}}
	for _, name := range a.mixNames(m.Recipe) {
		batch[name] = kg(m.Recipe.Ingredients[name])
		args.Names = append(args.Names, name)
		args.Q = append(args.Q, wording.Kg(m.Recipe.Ingredients[name]))
	}
	data["least_cost"] = map[string]any{
		"possible": true, "batch_kg": batch, "per_kg": fine(m.PerKg), "now_per_kg": fine(m.NowPerKg), "currency": m.Currency,
	}
	if !m.NowOK || m.PerKg > (1-worthSaving)*m.NowPerKg {
		return ""
	}
	return a.say("ration_cheaper", args)
}

// mixNames lists the ingredients of a mix, the most first.
func (a asked) mixNames(m model.Recipe) []string {
	names := slices.Collect(maps.Keys(m.Ingredients))
	slices.SortFunc(names, func(x, y string) int {
		return cmp.Or(cmp.Compare(m.Ingredients[y], m.Ingredients[x]), cmp.Compare(x, y))
	})
	return names
}

// stepDown adds the days from which the mix may be leaner, and says the next.
func (a asked) stepDown(data map[string]any) string {
	steps, err := a.h.RationSteps(a.today)
	if err != nil || len(steps.Steps) == 0 {
		return ""
	}
	var list []map[string]any
	for _, s := range steps.Steps {
		list = append(list, map[string]any{
			"date": s.Days.Mid.String(), "low": s.Days.Low.String(), "high": s.Days.High.String(), "from_kg": kg(s.FromKg),
			"needed_sid_lysine_pct": fine(s.NeededSIDLysinePct), "ingredient": steps.Rich, "batch_kg": kg(s.RichKg),
		})
	}
	data["steps"] = list
	next := steps.Steps[0]
	if next.Change >= 0 {
		return ""
	}
	return a.say("ration_step", wording.Args{
		Names: []string{steps.Rich}, Days: []model.Day{next.Days.Mid},
		Q: []model.Quantity{wording.Kg(next.RichKg), wording.Kg(next.FromKg)},
	})
}
