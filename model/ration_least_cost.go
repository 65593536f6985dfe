package model

import "sort"

// PricedFeed is an ingredient that can be had, with its price.
type PricedFeed struct {
	Name  string  // by the ingredient table
	PerKg float64 // money a kilogram, not negative
	// AtHandKg is the most of it that a batch can have; 0: no bound.
	AtHandKg float64
	// TagProteinPct is crude protein as printed on its bag, in percent; 0: not
	// known, the table holds.
	TagProteinPct float64
}

// MixQuery asks for the cheapest mix.
type MixQuery struct {
	WeightKg float64 // of the pigs that eat it
	BatchKg  float64
	Feeds    []PricedFeed
	// FixedKg is what each batch holds whatever it costs, by name: the mineral
	// premix by its tag, salt. What is fixed has no price here.
	FixedKg map[string]float64
	// Minerals asks for calcium and digestible phosphorus from the feeds as well.
	// Without it a fixed premix is taken to bring them, as its tag says.
	Minerals bool
}

// CheapestMix is the cheapest mix that meets a requirement.
type CheapestMix struct {
	Recipe  Recipe
	PerKg   float64 // money, without what is fixed
	Holds   MixAnalysis
	Reasons []Reason
}

// The nutrients that a mix must hold enough of, as Infeasible names them.
const (
	NutrientLysine     = "sid_lysine"
	NutrientProtein    = "crude_protein"
	NutrientEnergy     = "energy"
	NutrientCalcium    = "calcium"
	NutrientPhosphorus = "sttd_phosphorus"
	// NutrientCalciumMost is calcium the other way: too much of it binds
	// phosphorus. Best is then the least that any mix holds.
	NutrientCalciumMost = "calcium_at_most"
	// NutrientBulk is weight itself: the inclusion limits of what is at hand add
	// up to less than a batch.
	NutrientBulk = "bulk"
)

// Infeasible is the error of a mix that cannot be made of what is at hand. Of
// each nutrient, Needed is the share wanted and Best the most that any mix of
// what is at hand holds (percent, energy in MJ/kg). Where Together is set each can be met
// alone, but not all at once.
type Infeasible struct {
	Short    []Shortfall
	Together bool
}

// Shortfall is one nutrient that cannot be had in full.
type Shortfall struct {
	Nutrient     string
	Needed, Best float64
}

func (e *Infeasible) Error() string {
	if len(e.Short) == 0 {
		return "no mix of these ingredients meets the requirement"
	}
	return "no mix of these ingredients holds enough " + e.Short[0].Nutrient
}

// leastMixEnergy is the least energy of a mix as a share of that the requirement
// is written for: below it pigs fill up before they have eaten enough (common
// practice, no source).
const leastMixEnergy = 0.92

// mostCalcium is the most calcium in a mix by that needed, so that limestone does
// not serve as filler (common practice, no source).
const mostCalcium = 1.3

// mostFeeds bounds how many ingredients a mix is chosen from.
const mostFeeds = 40

// LeastCostMix finds the cheapest mix whose digestible lysine, crude protein and
// energy (and minerals, where asked) meet the requirement at a weight, each
// ingredient within its inclusion limit ([LimitOf]) and what is at hand. Weight
// as in [RequirementAt]; BatchKg up to 100000 kg; 1 to 40 feeds of the ingredient
// table, each once, at prices from 0 to 1e6; what is fixed weighs less than the
// batch: else *OutOfRange, or *Missing "ingredient" for a feed without figures.
// *Infeasible says which nutrient cannot be met. The same query gives the same
// mix, in whatever order its feeds stand.
//
// Method: a linear program by the simplex method (the library gonum). Energy
// must be at least 92 % of that the requirement is written for.
func LeastCostMix(q MixQuery) (CheapestMix, error) {
	p, err := newMixProgram(q)
	if err != nil {
		return CheapestMix{}, err
	}
	if err := p.attainable(); err != nil {
		return CheapestMix{}, err
	}
	kg, err := p.solve()
	if err != nil {
		return CheapestMix{}, err
	}
	m := Recipe{Ingredients: map[string]float64{}, TagProteinPct: map[string]float64{}}
	var out CheapestMix
	for i, f := range p.feeds {
		if kg[i] <= 0 {
			continue
		}
		m.Ingredients[f.Name] += kg[i]
		if f.TagProteinPct > 0 {
			m.TagProteinPct[f.Name] = f.TagProteinPct
		}
		out.PerKg += kg[i] * f.PerKg / q.BatchKg
	}
	for _, name := range sortedKeys(q.FixedKg) {
		if kg := q.FixedKg[name]; kg > 0 {
			m.Ingredients[name] += kg
		}
	}
	if len(m.TagProteinPct) == 0 {
		m.TagProteinPct = nil
	}
	out.Recipe = m
	if out.Holds, err = AnalyseMix(m); err != nil {
		return CheapestMix{}, err
	}
	out.Reasons = p.reasons(kg)
	return out, nil
}

// mixProgram is a query turned into numbers: kilograms a batch.
type mixProgram struct {
	q     MixQuery
	feeds []PricedFeed // by name
	holds []IngredientFacts
	most  []float64 // kg
	loose float64   // kg of the batch that are not fixed
	needs []nutrientNeed
}

// nutrientNeed is one nutrient that the batch must hold enough of.
type nutrientNeed struct {
	nutrient string
	needed   float64 // share of the batch, in its own unit
	atMost   bool    // needed is the most that it may hold, not the least
	fixed    float64 // what is fixed brings, share times kg
	of       func(IngredientFacts) float64
}

func newMixProgram(q MixQuery) (*mixProgram, error) {
	need, err := RequirementAt(q.WeightKg)
	switch {
	case err != nil:
		return nil, err
	case !(q.BatchKg > 0 && q.BatchKg <= mostBatchKg):
		return nil, &OutOfRange{"batch_kg", q.BatchKg, 0, mostBatchKg}
	case len(q.Feeds) < 1 || len(q.Feeds) > mostFeeds:
		return nil, &OutOfRange{"feeds", float64(len(q.Feeds)), 1, mostFeeds}
	}
	p := &mixProgram{q: q, feeds: append([]PricedFeed(nil), q.Feeds...), loose: q.BatchKg}
	sort.SliceStable(p.feeds, func(i, j int) bool { return p.feeds[i].Name < p.feeds[j].Name })
	if err := p.takeFeeds(); err != nil {
		return nil, err
	}
	p.needs = []nutrientNeed{
		{NutrientLysine, need.SIDLysinePct, false, 0, func(f IngredientFacts) float64 { return f.SIDLysinePct }},
		{NutrientProtein, need.CrudeProteinPct, false, 0, func(f IngredientFacts) float64 { return f.CrudeProteinPct }},
		{NutrientEnergy, leastMixEnergy * need.EnergyMJKg, false, 0, func(f IngredientFacts) float64 { return f.EnergyMJKg }},
	}
	if q.Minerals {
		calcium := func(f IngredientFacts) float64 { return f.CalciumPct }
		p.needs = append(p.needs,
			nutrientNeed{NutrientCalcium, need.CalciumPct, false, 0, calcium},
			nutrientNeed{NutrientCalciumMost, mostCalcium * need.CalciumPct, true, 0, calcium},
			nutrientNeed{NutrientPhosphorus, need.STTDPhosphorusPct, false, 0, func(f IngredientFacts) float64 { return f.STTDPhosphorusPct }})
	}
	for _, name := range sortedKeys(q.FixedKg) {
		kg := q.FixedKg[name]
		if !(kg >= 0 && kg < p.loose) {
			return nil, &OutOfRange{"fixed_kg", kg, 0, p.loose}
		}
		p.loose -= kg
		in, _ := Ingredient(name) // without figures it holds nothing
		for k := range p.needs {
			p.needs[k].fixed += kg * p.needs[k].of(in)
		}
	}
	return p, nil
}

// takeFeeds checks each feed and finds what it holds and the most of it.
func (p *mixProgram) takeFeeds() error {
	const mostPrice = 1e6
	for i, f := range p.feeds {
		limit, known, err := LimitOf(f.Name, p.q.WeightKg)
		switch {
		case err != nil:
			return err
		case !known:
			return &Missing{What: "ingredient", Names: []string{f.Name}}
		case i > 0 && p.feeds[i-1].Name == f.Name:
			return &OutOfRange{"times_" + f.Name, 2, 1, 1}
		case !(f.PerKg >= 0 && f.PerKg <= mostPrice):
			return &OutOfRange{"price", f.PerKg, 0, mostPrice}
		case !(f.AtHandKg >= 0 && f.AtHandKg <= mostBatchKg):
			return &OutOfRange{"at_hand_kg", f.AtHandKg, 0, mostBatchKg}
		case !(f.TagProteinPct >= 0 && f.TagProteinPct <= 100):
			return &OutOfRange{"tag_protein_pct", f.TagProteinPct, 0, 100}
		}
		m := Recipe{}
		if f.TagProteinPct > 0 {
			m.TagProteinPct = map[string]float64{f.Name: f.TagProteinPct}
		}
		in, _ := m.ingredient(f.Name)
		most := limit.MostPct / 100 * p.q.BatchKg
		if f.AtHandKg > 0 {
			most = min(most, f.AtHandKg)
		}
		p.holds, p.most = append(p.holds, in), append(p.most, most)
	}
	return nil
}
