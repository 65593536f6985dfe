package model

import "math"

// MixAnalysis is what a mix holds as fed: shares in percent of its weight,
// metabolizable energy in MJ/kg.
type MixAnalysis struct {
	EnergyMJKg        float64
	CrudeProteinPct   float64
	LysinePct         float64
	SIDLysinePct      float64
	CalciumPct        float64
	STTDPhosphorusPct float64
	CrudeFibrePct     float64
	BatchKg           float64
	Unknown           []string // ingredients without figures, counted as holding nothing
}

// most a batch may weigh, in kilograms: a slip of the pen beyond it.
const mostBatchKg = 1e5

// AnalyseMix works out what a mix holds from the ingredient table, the tags of
// its bags going before the table. Each ingredient weighs more than nothing and
// the batch up to 100000 kg, a tag says 0 to 100 %: else *OutOfRange. A mix of
// nothing is one too. A protein of the whole mix as tested goes before all of
// them.
//
// Source: the ingredient table, see [Ingredient]. What a tag says of protein
// scales lysine with it, by the ratio of the table (judgement: within a feed,
// lysine goes with protein).
func AnalyseMix(m Recipe) (MixAnalysis, error) {
	for _, name := range sortedKeys(m.Ingredients) {
		if kg := m.Ingredients[name]; !(kg > 0 && kg <= mostBatchKg) {
			return MixAnalysis{}, &OutOfRange{"ingredient_kg", kg, 0, mostBatchKg}
		}
	}
	for _, name := range sortedKeys(m.TagProteinPct) {
		if pct := m.TagProteinPct[name]; !(pct >= 0 && pct <= 100) {
			return MixAnalysis{}, &OutOfRange{"tag_protein_pct", pct, 0, 100}
		}
	}
	if p := m.ProteinPct; p != nil && !(*p >= 0 && *p <= 100) {
		return MixAnalysis{}, &OutOfRange{"protein_pct", *p, 0, 100}
	}
	f := m.facts()
	if !(f.batchKg > 0 && f.batchKg <= mostBatchKg) {
		return MixAnalysis{}, &OutOfRange{"batch_kg", f.batchKg, 0, mostBatchKg}
	}
	return MixAnalysis{
		EnergyMJKg: f.EnergyMJKg, CrudeProteinPct: f.CrudeProteinPct, LysinePct: f.LysinePct,
		SIDLysinePct: f.SIDLysinePct, CalciumPct: f.CalciumPct, STTDPhosphorusPct: f.STTDPhosphorusPct,
		CrudeFibrePct: f.CrudeFibrePct, BatchKg: f.batchKg, Unknown: f.unknown,
	}, nil
}

// ingredient is the figures of an ingredient of the mix, its tag before the
// table; false where there are none.
func (m Recipe) ingredient(name string) (IngredientFacts, bool) {
	in, ok := Ingredient(name)
	tag, told := m.TagProteinPct[name]
	if !told || math.IsNaN(tag) {
		return in, ok
	}
	if name == CompleteFeed {
		return readyMixed(tag)
	}
	if in.CrudeProteinPct > 0 {
		by := tag / in.CrudeProteinPct
		in.LysinePct *= by
		in.SIDLysinePct *= by
	}
	in.CrudeProteinPct = tag
	return in, ok
}
