package model

// RationStep is a point from which pigs do with a leaner mix.
type RationStep struct {
	FromKg             float64 // mean weight of the herd
	Days               DayInterval
	NeededSIDLysinePct float64 // from there on, up to the end of the class
	// RichKg is how much of the mix's protein feed a batch then needs beside all
	// the rest as it is, and Change how much that is more than now (minus: less).
	RichKg, Change float64
}

// RationSteps is a plan of steps down by weight.
type RationSteps struct {
	Rich    string // the protein feed that the steps change
	Steps   []RationStep
	Reasons []Reason
}

// RationSteps gives the days on which the herd's mean weight comes to the growth
// classes ahead, up to the target, and with how much of its protein feed the
// mix in use meets the need of the middle of each: the class as a whole is fed
// to its mean, as published tables mean it. Steps that the mix cannot be
// brought to (its protein feed is too poor, or it is rich without any) are left
// out. *Missing "recipe", "pigs", "weight" or, where no ingredient of the mix
// is a protein feed, "protein_feed".
func (h *Herd) RationSteps(today Day) (RationSteps, error) {
	check, err := h.RationCheck(today)
	if err != nil {
		return RationSteps{}, err
	}
	m, _ := h.recipeOn(today)
	rich, ok := m.richest()
	if !ok {
		return RationSteps{}, &Missing{What: "protein_feed"}
	}
	out := RationSteps{Rich: rich, Reasons: []Reason{
		{Code: ReasonStepRich, Names: []string{rich}}, {Code: ReasonStepClasses},
	}}
	for _, c := range requirementClasses {
		if c.fromKg <= check.ForWeightKg || c.fromKg >= h.TargetKg {
			continue
		}
		target, err := h.Target(c.fromKg, today)
		if err != nil {
			return RationSteps{}, err
		}
		kg, ok := m.richFor(rich, c.sidLysinePct)
		if !ok {
			continue
		}
		out.Steps = append(out.Steps, RationStep{
			FromKg: c.fromKg, Days: target.Herd.Days, NeededSIDLysinePct: c.sidLysinePct,
			RichKg: kg, Change: kg - m.Ingredients[rich],
		})
	}
	return out, nil
}

// richest is the protein feed of the mix with the most digestible lysine.
func (m Recipe) richest() (string, bool) {
	best, most := "", 0.0
	for _, name := range sortedKeys(m.Ingredients) {
		if in, ok := m.ingredient(name); ok && in.Protein && in.SIDLysinePct > most {
			best, most = name, in.SIDLysinePct
		}
	}
	return best, best != ""
}

// richFor is the kilograms of one ingredient with which the mix, all the rest of
// it kept, just holds a share of digestible lysine; false where no amount does.
func (m Recipe) richFor(name string, neededPct float64) (float64, bool) {
	in, _ := m.ingredient(name)
	var lysine, kg float64
	for _, n := range sortedKeys(m.Ingredients) {
		if n == name {
			continue
		}
		other, _ := m.ingredient(n)
		lysine, kg = lysine+m.Ingredients[n]*other.SIDLysinePct, kg+m.Ingredients[n]
	}
	lacking := neededPct*kg - lysine
	if in.SIDLysinePct <= neededPct || lacking < 0 || kg == 0 {
		return 0, false
	}
	return lacking / (in.SIDLysinePct - neededPct), true
}
