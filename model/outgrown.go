package model

// Outgrown is a day on which pigs outgrow how something is set.
type Outgrown struct {
	Code   string // of the reason: ReasonOutgrownNipple and the like
	Days   DayInterval
	FromKg float64 // weight of the lightest pig (nipples) or the mean pig
	// Value is what fits from there on: cm of height, square metres a pig.
	Value   float64
	Reasons []Reason
}

// Adequacy is what the pigs want now of what is set up once and forgotten, and
// when they outgrow it.
type Adequacy struct {
	Nipples        int     // wanted
	NipplesHave    int     // -1 where not known of all barrels
	NippleHeightCm float64 // straight out, for the lightest pig
	FeederHoles    int     // wanted
	FeederWidthCm  float64 // wanted in all
	ShelterM2      float64 // wanted in all
	ShadeM2        float64
	StrandsCm      []float64 // of an electric fence
	Ahead          []Outgrown
}

// Adequacy is what the herd wants on the day, and the days until its target on
// which that changes. Weights outside what a figure is given for are held at its
// end here: pigs do not stop to need it. *Missing "pigs" or "weight".
func (h *Herd) Adequacy(today Day) (Adequacy, error) {
	pigs := h.Alive(today)
	if len(pigs) == 0 {
		return Adequacy{}, &Missing{What: "pigs"}
	}
	weights, err := h.Weights(today)
	if err != nil {
		return Adequacy{}, err
	}
	var a Adequacy
	light, mean := weights[0], 0.0
	for _, w := range weights {
		if w.WeightKg.Mid < light.WeightKg.Mid {
			light = w
		}
		mean += w.WeightKg.Mid / float64(len(weights))
	}
	n := min(len(pigs), mostPigs)
	if a.Nipples, err = NipplesFor(n); err != nil {
		return Adequacy{}, err
	}
	if a.FeederHoles, err = FeederHolesFor(n); err != nil {
		return Adequacy{}, err
	}
	if a.NippleHeightCm, err = NippleHeightCm(min(max(light.WeightKg.Mid, 5), 180), false); err != nil {
		return Adequacy{}, err
	}
	width, err := FeederWidthCm(min(max(mean, 20), 150))
	if err != nil {
		return Adequacy{}, err
	}
	space, err := SpaceAt(min(max(mean, 1), 220))
	if err != nil {
		return Adequacy{}, err
	}
	if a.StrandsCm, err = FenceStrandsCm(min(max(light.WeightKg.Mid, 1), 220)); err != nil {
		return Adequacy{}, err
	}
	a.FeederWidthCm = width * float64(n)
	a.ShelterM2, a.ShadeM2 = space.ShelterM2*float64(n), space.ShadeM2*float64(n)
	a.NipplesHave = h.nipplesThere()
	a.Ahead, err = h.outgrown(light, mean, today)
	return a, err
}

// nipplesThere counts the nipples set up; -1 where a barrel's are not known.
func (h *Herd) nipplesThere() int {
	have := 0
	for _, b := range h.Barrels {
		if b.Nipples == nil {
			return -1
		}
		have += *b.Nipples
	}
	if len(h.Barrels) == 0 {
		return -1
	}
	return have
}

// outgrown lists what changes until the target, in the order of the days.
func (h *Herd) outgrown(light PigWeight, meanKg float64, today Day) ([]Outgrown, error) {
	var out []Outgrown
	add := func(code string, kg, value float64, unit Unit, lightest bool) error {
		t, err := h.Target(kg, today)
		if err != nil {
			return err
		}
		days := t.Herd.Days
		if lightest {
			days = t.Animals[light.Animal].Days
		}
		out = append(out, Outgrown{
			Code: code, Days: days, FromKg: kg, Value: value,
			Reasons: []Reason{{Code: code, On: days.Mid, Q: []Quantity{{value, unit}, {kg, Kilograms}}}},
		})
		return nil
	}
	// A nipple is raised to the height of the next weight of the table before the
	// lightest pig has come to it.
	for _, n := range nippleHeights {
		if n.weightKg > light.WeightKg.Mid && n.weightKg < h.TargetKg {
			if err := add(ReasonOutgrownNipple, n.weightKg, n.straightCm, Centimetres, true); err != nil {
				return nil, err
			}
		}
	}
	if meanKg < shelterSmallKg && shelterSmallKg < h.TargetKg {
		if err := add(ReasonOutgrownShelter, shelterSmallKg, shelterM2, SquareMetres, false); err != nil {
			return nil, err
		}
	}
	if meanKg < shadeSmallKg && shadeSmallKg < h.TargetKg {
		if err := add(ReasonOutgrownShade, shadeSmallKg, shadeM2, SquareMetres, false); err != nil {
			return nil, err
		}
	}
	if light.WeightKg.Mid < smallPigKg && smallPigKg < h.TargetKg {
		if err := add(ReasonOutgrownStrand, smallPigKg, 15, Centimetres, true); err != nil {
			return nil, err
		}
	}
	for i := 1; i < len(out); i++ {
		for j := i; j > 0 && out[j].Days.Mid < out[j-1].Days.Mid; j-- {
			out[j], out[j-1] = out[j-1], out[j]
		}
	}
	return out, nil
}
