package model

// Codes of the reasons that the cheapest mix, the steps of a ration and whole
// sacks give, with what fills them.
const (
	// ReasonMixFor: Q weight of the pigs, digestible lysine needed in percent.
	ReasonMixFor = "mix_for"
	// ReasonMixByLysine and the like: the mix only just holds enough of it. Q the
	// share needed.
	ReasonMixByLysine     = "mix_by_lysine"
	ReasonMixByProtein    = "mix_by_protein"
	ReasonMixByEnergy     = "mix_by_energy"
	ReasonMixByCalcium    = "mix_by_calcium"
	ReasonMixByPhosphorus = "mix_by_phosphorus"
	// ReasonMixByCalciumMost: it holds as much calcium as it may, Q that share.
	ReasonMixByCalciumMost = "mix_by_calcium_most"
	// ReasonMixAtLimit: Names ingredient that stands at its largest share, Q that
	// share in percent.
	ReasonMixAtLimit = "mix_at_limit"
	// ReasonRationOverLimit: Names ingredient, Q its share of the mix in use, its
	// largest share.
	ReasonRationOverLimit = "ration_over_limit"
	// ReasonMixUnpriced: Names ingredients of the recipe without a price, kept as
	// they are or left out.
	ReasonMixUnpriced = "mix_unpriced"

	// ReasonStepRich: Names the protein feed that the steps change.
	ReasonStepRich = "step_rich"
	// ReasonStepClasses: the steps follow the published growth classes.
	ReasonStepClasses = "step_classes"

	// ReasonSackScaled: Names ingredient, Q what a batch holds of it now, what it
	// would hold.
	ReasonSackScaled = "sack_scaled"
)

// boundBy is the reason of a nutrient that binds a mix.
var boundBy = map[string]string{
	NutrientLysine: ReasonMixByLysine, NutrientProtein: ReasonMixByProtein, NutrientEnergy: ReasonMixByEnergy,
	NutrientCalcium: ReasonMixByCalcium, NutrientCalciumMost: ReasonMixByCalciumMost, NutrientPhosphorus: ReasonMixByPhosphorus,
}

// RationReasonCodes lists the codes of the reasons above, for the catalogue of
// sentences to be held against.
func RationReasonCodes() []string {
	return []string{
		ReasonMixFor, ReasonMixByLysine, ReasonMixByProtein, ReasonMixByEnergy, ReasonMixByCalcium,
		ReasonMixByCalciumMost, ReasonMixByPhosphorus,
		ReasonMixAtLimit, ReasonRationOverLimit, ReasonMixUnpriced, ReasonStepRich, ReasonStepClasses, ReasonSackScaled,
	}
}
