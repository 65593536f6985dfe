package model

import "math"

// Bounds of body weight that the intake equations are used for, in kilograms.
// The published equations cover 5 to about 135 kg; up to 180 kg they run on,
// nearly flat, as an extrapolation.
const (
	MinIntakeKg = 5.0
	MaxIntakeKg = 180.0
)

const (
	kcalMJ = 0.004184 // megajoules in a kilocalorie, exact

	// ReferenceEnergyMJKg is the metabolizable energy of the feed that the
	// published intake table is written for: 3300 kcal/kg.
	ReferenceEnergyMJKg = 3300 * kcalMJ

	// FeederWaste is the share of the feed leaving the feeder that is never
	// eaten. The published table holds 5 % and divides by 0.95; good feeders
	// are said to waste 2 to 6 %, careless ones 15 % (Ontario Ministry of
	// Agriculture, feeder management; Univ. of Missouri Extension G2325).
	FeederWaste = 0.05

	// Pigs eat less of a richer feed, but not quite in proportion: the slope of
	// Quiniou and Noblet, J. Anim. Sci. 2012, over their diets lies between 0.66
	// and 0.88. Very bulky feed fills the gut first, so that the gain in
	// quantity is bounded.
	energyElasticity = 0.8
	bulkyFeedAtMost  = 1.10
)

// MEIntakeMJD is the metabolizable energy that a pig with feed before it eats in
// a day, in megajoules, before any waste, in mild weather. weightKg lies between
// MinIntakeKg and MaxIntakeKg; outside it is an *OutOfRange. A pig of no stated
// sex is taken midway between barrow and gilt, a sow as a gilt.
//
// Source: NRC 2012, Nutrient Requirements of Swine, 11th edition, from memory.
// Cross-check: divided by 3300 kcal/kg and by 0.95 the equations give back the
// intake column of its growth classes to within 3 %. Between 18 and 20 kg the
// equation for the smallest pigs passes over into those for the larger ones.
func MEIntakeMJD(weightKg float64, sex Sex) (float64, error) {
	if !(weightKg >= MinIntakeKg && weightKg <= MaxIntakeKg) {
		return 0, &OutOfRange{Quantity: "weight_kg", Value: weightKg, Low: MinIntakeKg, High: MaxIntakeKg}
	}
	return meIntakeMJD(weightKg, sex), nil
}

func meIntakeMJD(kg float64, sex Sex) float64 {
	small := -783.6 + 315.9*kg - 5.7685*kg*kg
	if kg <= 18 {
		return small * kcalMJ
	}
	lean := 1 - math.Exp(-math.Exp(-3.803)*math.Pow(kg, 0.9072))
	var kcal float64
	switch sex {
	case Barrow:
		kcal = barrowKcal(kg)
	case Gilt, Sow:
		kcal = 10967 * lean
	case Boar:
		kcal = 10638 * lean
	default:
		kcal = (barrowKcal(kg) + 10967*lean) / 2
	}
	if kg < 20 {
		share := (kg - 18) / 2
		kcal = (1-share)*small + share*kcal
	}
	return kcal * kcalMJ
}

func barrowKcal(kg float64) float64 {
	return 10447 * (1 - math.Exp(-math.Exp(-4.283)*math.Pow(kg, 1.0843)))
}

// FeedUseKgD is the feed that leaves the feeder in a day for one pig, in
// kilograms as fed, FeederWaste included, in mild weather, before anything is
// learned of the herd. energyMJKg is the metabolizable energy of the mix, 8 to
// 18 MJ/kg, or 0 where it is not known (then ReferenceEnergyMJKg). weightKg as
// in MEIntakeMJD; outside either range it is an *OutOfRange.
//
// Source: NRC 2012 intake as in MEIntakeMJD; the effect of the energy from
// Quiniou and Noblet, J. Anim. Sci. 2012.
func FeedUseKgD(weightKg float64, sex Sex, energyMJKg float64) (float64, error) {
	if _, err := MEIntakeMJD(weightKg, sex); err != nil {
		return 0, err
	}
	if energyMJKg != 0 && !(energyMJKg >= minMixMJKg && energyMJKg <= maxMixMJKg) {
		return 0, &OutOfRange{Quantity: "energy_mj_kg", Value: energyMJKg, Low: minMixMJKg, High: maxMixMJKg}
	}
	return feedUseKgD(weightKg, sex, energyMJKg), nil
}

const minMixMJKg, maxMixMJKg = 8, 18

// feedUseKgD is FeedUseKgD with weight and energy held inside their ranges.
func feedUseKgD(weightKg float64, sex Sex, energyMJKg float64) float64 {
	kg := min(max(weightKg, MinIntakeKg), MaxIntakeKg)
	return meIntakeMJD(kg, sex) / ReferenceEnergyMJKg / (1 - FeederWaste) * energyFactor(energyMJKg)
}

// energyFactor scales the reference feed's quantity to a mix of another energy.
func energyFactor(energyMJKg float64) float64 {
	if energyMJKg == 0 {
		return 1
	}
	e := min(max(energyMJKg, minMixMJKg), maxMixMJKg)
	return min(math.Pow(ReferenceEnergyMJKg/e, energyElasticity), bulkyFeedAtMost)
}
