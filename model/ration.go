package model

import "math"

// Ration is what the mix holds against what the pigs need.
type Ration struct {
	CrudeProteinPct, LysinePct, SIDLysinePct float64
	EnergyMJKg                               float64 // ME
	NeededSIDLysinePct                       float64
	ForWeightKg                              float64
	OK                                       bool
	Change                                   map[string]float64 // kg per batch to add, minus is remove
	Unknown                                  []string           // ingredients with no figures
	OverLimit                                []string           // ingredients of which there is more than pigs of this weight should get
	Reasons                                  []Reason
}

// RationCheck holds the mix in use against the mean weight of the pigs. Where
// lysine is short and some ingredient of the mix, or else one that was bought this
// season, is rich enough, Change says how much more of it a batch needs to just
// meet the need. Ingredients without
// figures count as holding nothing and are listed. *Missing "recipe", "pigs" or
// "weight" where one is unknown.
func (h *Herd) RationCheck(on Day) (Ration, error) {
	m, ok := h.recipeOn(on)
	if !ok {
		return Ration{}, &Missing{What: "recipe"}
	}
	pigs := h.Alive(on)
	if len(pigs) == 0 {
		return Ration{}, &Missing{What: "pigs"}
	}
	mean, err := h.MeanWeight(pigs, on)
	if err != nil {
		return Ration{}, err
	}
	return checkRation(m, mean.WeightKg.Mid, h.bought(on)...), nil
}

// bought lists the ingredients bought this season up to the day, by the alphabet.
func (h *Herd) bought(on Day) []string {
	s := h.season(on)
	names := map[string]bool{}
	for _, p := range h.Stocks {
		if p.F.Ingredient != "" && s.holds(p.On) && p.On <= on {
			names[p.F.Ingredient] = true
		}
	}
	return sortedKeys(names)
}

// recipeOn is the latest recipe not later than the day, else the first told.
func (h *Herd) recipeOn(on Day) (Recipe, bool) {
	if len(h.Recipes) == 0 {
		return Recipe{}, false
	}
	best := h.Recipes[0].F
	for _, r := range h.Recipes {
		if r.On <= on {
			best = r.F
		}
	}
	return best, true
}

// checkRation holds a mix against the need at a weight. Where no feed of the mix
// can mend it, what else was bought is looked at.
func checkRation(m Recipe, weightKg float64, shed ...string) Ration {
	f := m.facts()
	r := Ration{
		CrudeProteinPct: f.CrudeProteinPct, LysinePct: f.LysinePct, SIDLysinePct: f.SIDLysinePct,
		EnergyMJKg: f.EnergyMJKg, NeededSIDLysinePct: neededSIDLysinePct(weightKg), ForWeightKg: weightKg,
		Unknown: f.unknown,
	}
	// The comparison bears the rounding of sums, no more.
	r.OK = r.SIDLysinePct >= r.NeededSIDLysinePct-1e-9
	r.Reasons = append(r.Reasons,
		Reason{Code: ReasonRationNeeds, Q: []Quantity{{weightKg, Kilograms}, {r.NeededSIDLysinePct, Percent}}},
		Reason{Code: ReasonRationHolds, Q: []Quantity{{r.SIDLysinePct, Percent}, {r.CrudeProteinPct, Percent}, {r.EnergyMJKg, MegajoulesPerKg}}})
	if len(f.unknown) > 0 {
		r.Reasons = append(r.Reasons, Reason{Code: ReasonRationUnknown, Names: f.unknown, Q: []Quantity{{f.batchKg - f.knownKg, Kilograms}}})
	}
	for _, name := range sortedKeys(m.Ingredients) {
		limit, known, err := LimitOf(name, min(max(weightKg, MinRequirementKg), MaxRequirementKg))
		if share := 100 * m.Ingredients[name] / f.batchKg; err == nil && known && share > limit.MostPct*(1+1e-9) {
			r.OverLimit = append(r.OverLimit, name)
			r.Reasons = append(r.Reasons, Reason{Code: ReasonRationOverLimit, Names: []string{name}, Q: []Quantity{{share, Percent}, {limit.MostPct, Percent}}})
		}
	}
	if r.OK {
		return r
	}
	name, kg, ok := addToMeet(m, f, r.NeededSIDLysinePct, sortedKeys(m.Ingredients))
	if !ok {
		name, kg, ok = addToMeet(m, f, r.NeededSIDLysinePct, shed)
	}
	if !ok {
		r.Reasons = append(r.Reasons, Reason{Code: ReasonRationNoRemedy})
		return r
	}
	r.Change = map[string]float64{name: kg}
	r.Reasons = append(r.Reasons, Reason{Code: ReasonRationAdd, Names: []string{name}, Q: []Quantity{{kg, Kilograms}}})
	return r
}

// addToMeet finds the protein feed among those named of which the least more meets the
// lysine needed, and how much a batch needs of it. Pure lysine is never the
// remedy: beyond about 0.15 % of the feed other amino acids run short (from
// memory).
func addToMeet(m Recipe, f mixFacts, neededPct float64, among []string) (name string, kg float64, ok bool) {
	lacking := (neededPct - f.SIDLysinePct) * f.batchKg
	for _, n := range among {
		in, known := m.ingredient(n)
		if !known || !in.Protein || in.SIDLysinePct <= neededPct {
			continue
		}
		if need := lacking / (in.SIDLysinePct - neededPct); !ok || need < kg {
			name, kg, ok = n, need, true
		}
	}
	if ok && (math.IsInf(kg, 0) || math.IsNaN(kg)) {
		return "", 0, false
	}
	return name, kg, ok
}
