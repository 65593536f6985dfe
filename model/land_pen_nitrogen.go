package model

import "math"

// PenNitrogen is what the pigs left on one pen in a year.
type PenNitrogen struct {
	Pen *Pen
	Nitrogen
	FeedKg, GainKg float64
	KgHa           float64 // 0 where the pen's size is not known
	Over           bool    // above NitrogenCeilingKgHa
	Reasons        []Reason
}

const (
	assumedProteinPct = 16.0 // of a mix that nobody told, common practice, no source
	nitrogenYear      = 365
	nitrogenStep      = 7
)

// PenNitrogenYear is the nitrogen that pigs left on each pen in the year up to
// the end of the day, for the pens that had any, in the order set up: the feed
// that the herd used there by its learned appetite, at the protein of the mix of
// the time (16 % where none was told), less what stayed in growth. *Missing
// "pigs", "pen" or "weight" where one is unknown.
func (h *Herd) PenNitrogenYear(today Day) ([]PenNitrogen, error) {
	if len(h.Animals) == 0 {
		return nil, &Missing{What: "pigs"}
	}
	if len(h.Pens) == 0 {
		return nil, &Missing{What: "pen"}
	}
	use := map[*Pen]*PenNitrogen{}
	protein := map[*Pen]float64{} // kg
	assumed := map[*Pen]bool{}
	f := h.feeding()
	for from := max(today-nitrogenYear+1, h.Animals[0].Group.Arrived); from <= today; from += nitrogenStep {
		days := min(nitrogenStep, today-from+1)
		day := from + days/2
		there := h.Alive(day)
		if len(there) == 0 {
			continue
		}
		feed, err := f.use.on(day)
		if err == nil {
			err = feed.lacks
		}
		if err != nil {
			return nil, err
		}
		weights, err := h.Weights(day)
		if err != nil {
			return nil, err
		}
		gain := map[*Animal]float64{}
		mean := 0.0
		for _, w := range weights {
			gain[w.Animal] = max(w.GainKgD.Mid, 0)
			mean += gain[w.Animal] / float64(len(weights))
		}
		each := math.Exp(f.appetiteAt(day.At(12*60, h.location())).Mean) * feed.kg / float64(len(there)) * float64(days)
		pct, told := h.proteinOn(day)
		for _, a := range there {
			p := h.penOn(a, day)
			if p == nil {
				continue
			}
			if use[p] == nil {
				use[p] = &PenNitrogen{Pen: p}
			}
			g, known := gain[a]
			if !known {
				g = mean
			}
			use[p].FeedKg += each
			use[p].GainKg += g * float64(days)
			protein[p] += each * pct / 100
			assumed[p] = assumed[p] || !told
		}
	}
	var out []PenNitrogen
	for _, p := range h.Pens {
		n := use[p]
		if n == nil {
			continue
		}
		if err := n.sum(protein[p], assumed[p]); err != nil {
			return nil, err
		}
		out = append(out, *n)
	}
	if len(out) == 0 {
		return nil, &Missing{What: "pen"}
	}
	return out, nil
}

// sum works out the balance from feed, gain and the protein fed.
func (n *PenNitrogen) sum(proteinKg float64, assumed bool) error {
	pct := 0.0
	if n.FeedKg > 0 {
		pct = 100 * proteinKg / n.FeedKg
	}
	var err error
	if n.Nitrogen, err = NitrogenBalance(n.FeedKg, pct, n.GainKg); err != nil {
		return err
	}
	n.Reasons = []Reason{
		{Code: ReasonNitrogenFed, Q: []Quantity{{n.FedKg, Kilograms}, {n.FeedKg, Kilograms}, {pct, Percent}}},
		{Code: ReasonNitrogenKept, Q: []Quantity{{n.KeptKg, Kilograms}}},
	}
	if assumed {
		n.Reasons = append(n.Reasons, Reason{Code: ReasonNitrogenAssumed, Q: []Quantity{{assumedProteinPct, Percent}}})
	}
	if n.Pen.AreaM2 == nil {
		return nil
	}
	if n.KgHa, err = n.Nitrogen.KgHa(1, *n.Pen.AreaM2); err != nil {
		return err
	}
	n.Over = n.KgHa > NitrogenCeilingKgHa
	n.Reasons = append(n.Reasons, Reason{Code: ReasonNitrogenCeiling, Q: []Quantity{{NitrogenCeilingKgHa, Kilograms}}})
	return nil
}

// proteinOn is the crude protein of the mix of the day, in percent; false where
// it is taken.
func (h *Herd) proteinOn(on Day) (float64, bool) {
	m, ok := h.recipeOn(on)
	if !ok {
		return assumedProteinPct, false
	}
	if f := m.facts(); f.batchKg > 0 && f.CrudeProteinPct > 0 && !math.IsNaN(f.CrudeProteinPct) {
		return f.CrudeProteinPct, true
	}
	return assumedProteinPct, false
}
