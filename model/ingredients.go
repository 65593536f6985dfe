package model

import (
	"math"
	"sort"
	"strings"
)

// Status says how a published figure came into the program.
type Status string

// The statuses of figures.
const (
	FromSource     Status = "seen in the source"
	FromMemory     Status = "from memory"
	Checked        Status = "from memory, cross-checked"
	CommonPractice Status = "common practice, no source"
)

// IngredientFacts is what a feed ingredient holds, as fed. Shares are percent of
// its weight; energy is metabolizable energy for pigs.
type IngredientFacts struct {
	Name            string
	EnergyMJKg      float64
	CrudeProteinPct float64
	LysinePct       float64
	SIDLysinePct    float64 // standardized ileal digestible
	// CalciumPct and STTDPhosphorusPct are minerals: calcium in all, phosphorus
	// digestible by the standardized total tract digestibility. A mineral premix
	// has none here: its tag tells.
	CalciumPct        float64
	STTDPhosphorusPct float64
	CrudeFibrePct     float64
	Protein           bool // a protein feed: what to add where lysine is short
	Status            Status
}

// ingredients is by name. Composition: NRC 2012, Nutrient Requirements of Swine,
// ingredient tables, from memory. Lysine of corn, dehulled soybean meal and
// L-lysine HCl was checked against five published diets (Vier et al., J. Anim.
// Sci. 97, 2019; J. Anim. Sci. 99, skab090, 2021) and gives their printed digit.
// Minerals and fibre are from memory throughout; the digestible phosphorus of
// alfalfa meal is not known and counts as none.
// The owner's feed tag, where there is one, tells more than any table.
var ingredients = func() map[string]IngredientFacts {
	m := map[string]IngredientFacts{}
	for _, r := range []struct {
		name                  string
		kcal, cp, lysine, sid float64
		ca, p, fibre          float64
		protein               bool
		status                Status
	}{
		{"corn", 3395, 8.2, 0.25, 0.185, 0.02, 0.09, 2, false, Checked},
		{"soybean meal 48", 3294, 47.7, 2.96, 2.634, 0.33, 0.34, 3.9, true, Checked},
		{"soybean meal 44", 3382, 43.9, 2.76, 2.43, 0.35, 0.31, 6.6, true, FromMemory},
		{"wheat", 3215, 14.5, 0.39, 0.32, 0.06, 0.22, 2.6, false, FromMemory},
		{"barley", 3073, 11.3, 0.40, 0.30, 0.06, 0.16, 3.9, false, FromMemory},
		{"oats", 2551, 11.2, 0.49, 0.37, 0.05, 0.14, 11, false, FromMemory},
		{"sorghum", 3532, 9.4, 0.20, 0.15, 0.02, 0.11, 2.1, false, FromMemory},
		{"peas", 3353, 22.2, 1.63, 1.39, 0.09, 0.24, 6.2, true, FromMemory},
		{"alfalfa meal", 1700, 16.5, 0.74, 0.41, 1.5, 0, 25, false, FromMemory},
		{"fish meal", 3528, 63.3, 4.56, 3.93, 4.3, 2.4, 0, true, FromMemory},
		{"whey", 3415, 11.6, 0.88, 0.86, 0.62, 0.63, 0, false, FromMemory},
		{"distillers grains", 3396, 27.4, 0.90, 0.55, 0.08, 0.39, 8.9, false, FromMemory},
		{"wheat middlings", 2968, 15.8, 0.65, 0.51, 0.1, 0.5, 6.5, false, FromMemory},
		{"soybean oil", 8574, 0, 0, 0, 0, 0, 0, false, FromMemory},
		{"limestone", 0, 0, 0, 0, 37, 0, 0, false, FromMemory},
		{"monocalcium phosphate", 0, 0, 0, 0, 16.9, 18.9, 0, false, FromMemory},
		{"dicalcium phosphate", 0, 0, 0, 0, 22.5, 15, 0, false, FromMemory},
		{"salt", 0, 0, 0, 0, 0.3, 0, 0, false, FromMemory},
		{"mineral premix", 0, 0, 0, 0, 0, 0, 0, false, CommonPractice},
		{"lysine hcl", 4600, 94.5, 78.8, 78.8, 0, 0, 0, false, Checked},
	} {
		m[r.name] = IngredientFacts{
			Name: r.name, EnergyMJKg: r.kcal * kcalMJ, CrudeProteinPct: r.cp,
			LysinePct: r.lysine, SIDLysinePct: r.sid, CalciumPct: r.ca, STTDPhosphorusPct: r.p,
			CrudeFibrePct: r.fibre, Protein: r.protein, Status: r.status,
		}
	}
	return m
}()

// Ingredient gives the figures of an ingredient by its canonical name, whatever
// the case; false where there are none.
func Ingredient(name string) (IngredientFacts, bool) {
	f, ok := ingredients[strings.ToLower(strings.TrimSpace(name))]
	return f, ok
}

// IngredientNames lists the canonical names that have figures, in the order of
// the alphabet.
func IngredientNames() []string {
	names := make([]string, 0, len(ingredients))
	for name := range ingredients {
		names = append(names, name)
	}
	sort.Strings(names)
	return names
}

// mixFacts is what a mix holds, its ingredients without figures counted as
// holding nothing.
type mixFacts struct {
	IngredientFacts
	batchKg, knownKg float64
	unknown          []string
}

func (m Recipe) facts() mixFacts {
	f := mixFacts{batchKg: m.BatchKg()}
	for _, name := range sortedKeys(m.Ingredients) {
		kg := m.Ingredients[name]
		in, ok := m.ingredient(name)
		share := kg / f.batchKg
		if !ok { // but its tag may tell the protein
			f.CrudeProteinPct += share * in.CrudeProteinPct
			f.unknown = append(f.unknown, name)
			continue
		}
		f.knownKg += kg
		f.EnergyMJKg += share * in.EnergyMJKg
		f.CrudeProteinPct += share * in.CrudeProteinPct
		f.LysinePct += share * in.LysinePct
		f.SIDLysinePct += share * in.SIDLysinePct
		f.CalciumPct += share * in.CalciumPct
		f.STTDPhosphorusPct += share * in.STTDPhosphorusPct
		f.CrudeFibrePct += share * in.CrudeFibrePct
	}
	if tested := m.ProteinPct; tested != nil && f.CrudeProteinPct > 0 { // lysine goes with protein, as for a tag
		by := *tested / f.CrudeProteinPct
		f.LysinePct *= by
		f.SIDLysinePct *= by
		f.CrudeProteinPct = *tested
	}
	return f
}

// intakeEnergyMJKg is the energy to reckon intake with: that of the mix where
// nearly all of it has figures, else 0 for not known.
func (m Recipe) intakeEnergyMJKg() float64 {
	f := m.facts()
	if f.batchKg <= 0 || f.knownKg < 0.95*f.batchKg || math.IsNaN(f.EnergyMJKg) {
		return 0
	}
	return f.EnergyMJKg
}
