package model

import "math"

// Space is the floor that one pig of a weight wants, in square metres.
type Space struct {
	LegalM2         float64 // least by EU law, indoors: Directive 2008/120/EC (read)
	OrganicIndoorM2 float64 // EU organic rule, Regulation 889/2008 Annex III (read)
	OrganicRunM2    float64 // and its run outside
	LyingM2         float64 // all pigs stretched out: 0.0336 kg^0.667, a meta-analysis of 2006, from memory
	ShelterM2       float64 // bedded shelter beside a yard: between law and organic rule, judgement
	ShadeM2         float64 // Midwest Plan Service, from memory
}

// shadeSmallKg is the weight from which a pig wants more shade: 100 lb, Midwest
// Plan Service, from memory.
const shadeSmallKg = 45.4

// spaceStep is floor up to a weight.
type spaceStep struct{ toKg, m2 float64 }

var (
	legalM2         = []spaceStep{{10, 0.15}, {20, 0.20}, {30, 0.30}, {50, 0.40}, {85, 0.55}, {110, 0.65}, {math.Inf(1), 1.00}}
	organicIndoorM2 = []spaceStep{{50, 0.8}, {85, 1.1}, {110, 1.3}, {math.Inf(1), 1.5}}
	organicRunM2    = []spaceStep{{50, 0.6}, {85, 0.8}, {110, 1.0}, {math.Inf(1), 1.2}}
	shelterSteps    = []spaceStep{{shelterSmallKg, shelterSmallM2}, {math.Inf(1), shelterM2}}
	shadeSteps      = []spaceStep{{shadeSmallKg, 0.37}, {math.Inf(1), shadeM2}}
)

func upTo(steps []spaceStep, kg float64) float64 {
	i := 0
	for kg > steps[i].toKg {
		i++
	}
	return steps[i].m2
}

// SpaceAt is the floor for one pig of a weight (1 to 220 kg, else *OutOfRange).
// Its sources stand with the fields.
func SpaceAt(weightKg float64) (Space, error) {
	const leastKg, mostKg = 1, 220
	if !(weightKg >= leastKg && weightKg <= mostKg) {
		return Space{}, &OutOfRange{"weight_kg", weightKg, leastKg, mostKg}
	}
	return Space{
		LegalM2: upTo(legalM2, weightKg), OrganicIndoorM2: upTo(organicIndoorM2, weightKg), OrganicRunM2: upTo(organicRunM2, weightKg),
		LyingM2: 0.0336 * math.Pow(weightKg, 0.667), ShelterM2: upTo(shelterSteps, weightKg), ShadeM2: upTo(shadeSteps, weightKg),
	}, nil
}

// FeederHolesFor is how many feeding places so many pigs (1 to 200, else
// *OutOfRange) want at a feeder that is always open: one for four, Midwest Plan
// Service 1991 as quoted by Brumm, 2010; trials found six to ten enough.
func FeederHolesFor(pigs int) (int, error) {
	if pigs < 1 || pigs > mostPigs {
		return 0, &OutOfRange{"count", float64(pigs), 1, mostPigs}
	}
	return (pigs + pigsAHole - 1) / pigsAHole, nil
}

// FeederWidthCm is the width of feeder for each pig where four share, by weight
// (20 to 150 kg, else *OutOfRange): 59 mm at 50 kg and 74 mm at 100 kg (Brumm,
// Understanding feeders and drinkers, 2010, as quoted), a straight line through
// the two and on (computed).
func FeederWidthCm(weightKg float64) (float64, error) {
	const leastKg, mostKg = 20, 150
	if !(weightKg >= leastKg && weightKg <= mostKg) {
		return 0, &OutOfRange{"weight_kg", weightKg, leastKg, mostKg}
	}
	return 5.9 + (weightKg-50)/50*1.5, nil
}
