package model

// InclusionLimit is the largest share that an ingredient should have in the feed
// of pigs of a weight.
type InclusionLimit struct {
	MostPct float64
	Status  Status
	Source  string // of the limit; empty where there is none
}

// limitStep is a limit that holds below a weight.
type limitStep struct {
	belowKg, mostPct float64
}

// anyWeight stands for the end of the last step.
const anyWeight = MaxRequirementKg + 1

// MostLysineHClPct is the most L-lysine HCl in a mix, in percent: about 3 lb a
// ton, beyond which threonine, methionine and tryptophan run short (from
// memory).
const MostLysineHClPct = 0.15

// inclusionLimits is by ingredient; what is not here may be all of the mix.
var inclusionLimits = map[string]struct {
	steps  []limitStep
	status Status
	source string
}{
	"barley":            {[]limitStep{{25, 25}, {anyWeight, 100}}, FromMemory, "extension practice"},
	"oats":              {[]limitStep{{25, 15}, {50, 20}, {anyWeight, 30}}, FromMemory, "extension practice: 10 to 20 % for starters, up to 20 to 40 % later"},
	"peas":              {[]limitStep{{anyWeight, 36}}, FromSource, "Stein, South Dakota State Univ., as reported: 36 % without loss"},
	"alfalfa meal":      {[]limitStep{{25, 0}, {75, 5}, {anyWeight, 10}}, FromMemory, "extension practice"},
	"fish meal":         {[]limitStep{{50, 6}, {anyWeight, 0}}, FromMemory, "extension practice: stop in the finisher, it taints"},
	"whey":              {[]limitStep{{25, 20}, {anyWeight, 10}}, FromMemory, "extension practice; it is salty"},
	"distillers grains": {[]limitStep{{95, 30}, {anyWeight, 0}}, FromSource, "Kansas State Univ. news: 30 % the usual ceiling; stopping some weeks before slaughter for firm fat from memory"},
	"wheat middlings":   {[]limitStep{{anyWeight, 15}}, FromSource, "Kansas State Univ. Swine Day 2012: to 15 % no harm"},
	"soybean oil":       {[]limitStep{{anyWeight, 5}}, FromMemory, "above 5 % feed cakes"},
	"lysine hcl":        {[]limitStep{{anyWeight, MostLysineHClPct}}, FromMemory, "about 3 lb a ton"},
	// What only brings minerals does no good beyond these.
	"limestone":             {[]limitStep{{anyWeight, 2}}, CommonPractice, ""},
	"monocalcium phosphate": {[]limitStep{{anyWeight, 2}}, CommonPractice, ""},
	"dicalcium phosphate":   {[]limitStep{{anyWeight, 2}}, CommonPractice, ""},
	"salt":                  {[]limitStep{{anyWeight, 0.5}}, FromSource, "pig disease guide 2018: usual 0.4 to 0.6 % of the diet"},
	"mineral premix":        {[]limitStep{{anyWeight, 5}}, FromMemory, "50 to 100 lb a ton: the tag of the bag decides"},
}

// LimitOf is the largest share that an ingredient of the table should have in
// the mix of pigs of a weight, from MinRequirementKg to MaxRequirementKg; 100 %
// where none is known. *OutOfRange outside of the weights; false for an
// ingredient without figures.
func LimitOf(ingredient string, weightKg float64) (limit InclusionLimit, known bool, err error) {
	if !(weightKg >= MinRequirementKg && weightKg <= MaxRequirementKg) {
		return InclusionLimit{}, false, &OutOfRange{"weight_kg", weightKg, MinRequirementKg, MaxRequirementKg}
	}
	in, ok := Ingredient(ingredient)
	if !ok {
		return InclusionLimit{}, false, nil
	}
	l, ok := inclusionLimits[in.Name]
	if !ok {
		return InclusionLimit{MostPct: 100, Status: CommonPractice}, true, nil
	}
	for _, s := range l.steps {
		if weightKg < s.belowKg {
			return InclusionLimit{s.mostPct, l.status, l.source}, true, nil
		}
	}
	return InclusionLimit{MostPct: 100, Status: CommonPractice}, true, nil
}
