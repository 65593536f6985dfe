package model

// premixPct is what premix and minerals take of a ready mixed feed, in percent:
// common practice, no source.
const premixPct = 3.0

// readyMixed is what a bought feed holds by the protein on its tag, in percent:
// taken for corn and soybean meal with premix, mixed to that protein. A judgement:
// such feeds are mostly these two, and their tags seldom tell more. false where
// the two cannot come to it.
func readyMixed(proteinPct float64) (IngredientFacts, bool) {
	corn, _ := Ingredient("corn")
	soy, _ := Ingredient("soybean meal 48")
	in := IngredientFacts{Name: CompleteFeed, CrudeProteinPct: proteinPct, Status: CommonPractice}
	mix, err := PearsonSquare(corn.CrudeProteinPct, soy.CrudeProteinPct, proteinPct, 100, premixPct)
	if err != nil {
		return in, false
	}
	part := func(lean, rich float64) float64 { return (mix.LeanKg*lean + mix.RichKg*rich) / 100 }
	in.EnergyMJKg = part(corn.EnergyMJKg, soy.EnergyMJKg)
	in.LysinePct = part(corn.LysinePct, soy.LysinePct)
	in.SIDLysinePct = part(corn.SIDLysinePct, soy.SIDLysinePct)
	in.CalciumPct = part(corn.CalciumPct, soy.CalciumPct)
	in.STTDPhosphorusPct = part(corn.STTDPhosphorusPct, soy.STTDPhosphorusPct)
	in.CrudeFibrePct = part(corn.CrudeFibrePct, soy.CrudeFibrePct)
	return in, true
}
