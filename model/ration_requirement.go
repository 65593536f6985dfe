package model

// Requirement is what the feed of a pig must hold, as fed, free choice: shares
// in percent of its weight, metabolizable energy in MJ/kg. It holds no safety
// margin, and means lean pigs in full growth: a mix somewhat short slows and
// fattens pigs, it does not sicken them.
type Requirement struct {
	SIDLysinePct      float64
	CrudeProteinPct   float64 // nitrogen times 6.25, synthetic amino acids taken as given
	CalciumPct        float64
	STTDPhosphorusPct float64
	EnergyMJKg        float64 // the energy that the shares are written for
}

// requirementClass is a growth class with what its feed needs.
type requirementClass struct {
	fromKg, toKg                                                     float64
	sidLysinePct, crudeProteinPct, calciumPct, sttdPhosphorusPct, me float64
}

// requirementClasses are the growth classes of NRC 2012, Nutrient Requirements
// of Swine, 11th edition, from memory. Lysine was checked only against itself
// (grams a day rise and fall smoothly over the classes). The digestible
// phosphorus of the classes from 25 kg on was read in Vier et al., J. Anim. Sci.
// 97, 2019, that of 11 to 25 kg in the Univ. of Illinois swine nutrition
// summaries, with calcium as 2.15 times it, which the column gives to 0.01.
var requirementClasses = []requirementClass{
	{5, 7, 1.50, 22.7, 0.85, 0.45, 3400},
	{7, 11, 1.35, 20.6, 0.80, 0.40, 3400},
	{11, 25, 1.23, 18.9, 0.70, 0.33, 3350},
	{25, 50, 0.98, 15.7, 0.66, 0.31, 3300},
	{50, 75, 0.85, 13.8, 0.59, 0.27, 3300},
	{75, 100, 0.73, 12.1, 0.52, 0.24, 3300},
	{100, 135, 0.61, 10.4, 0.46, 0.21, 3300},
}

// What the requirement is given for, in kilograms of body weight: the published
// classes, and above them the last one held, to where the growth table ends.
const (
	MinRequirementKg = 5.0
	MaxRequirementKg = 220.0
)

// RequirementAt is what the feed of a pig of this weight needs: straight lines
// between the mid-points of the weight classes, constant below 6 and above 117.5
// kg. weightKg lies between MinRequirementKg and MaxRequirementKg: else
// *OutOfRange.
//
// Source: NRC 2012, Nutrient Requirements of Swine, 11th edition, from memory,
// parts of it checked; see the classes.
func RequirementAt(weightKg float64) (Requirement, error) {
	if !(weightKg >= MinRequirementKg && weightKg <= MaxRequirementKg) {
		return Requirement{}, &OutOfRange{"weight_kg", weightKg, MinRequirementKg, MaxRequirementKg}
	}
	return requirementAt(weightKg), nil
}

// NeededSIDLysinePct is the standardized ileal digestible lysine of
// RequirementAt, in percent as fed, with its range, error and source.
func NeededSIDLysinePct(weightKg float64) (float64, error) {
	r, err := RequirementAt(weightKg)
	return r.SIDLysinePct, err
}

// neededSIDLysinePct takes any weight above nothing, constant outside the range.
func neededSIDLysinePct(weightKg float64) float64 { return requirementAt(weightKg).SIDLysinePct }

func requirementAt(weightKg float64) Requirement {
	classes := requirementClasses
	for i, c := range classes {
		mid := (c.fromKg + c.toKg) / 2
		if weightKg > mid {
			continue
		}
		if i == 0 {
			return c.between(c, 0)
		}
		b := classes[i-1]
		below := (b.fromKg + b.toKg) / 2
		return b.between(c, (weightKg-below)/(mid-below))
	}
	last := classes[len(classes)-1]
	return last.between(last, 0)
}

// between is the need at a share of the way from one class to another.
func (c requirementClass) between(next requirementClass, share float64) Requirement {
	mix := func(a, b float64) float64 { return a + share*(b-a) }
	return Requirement{
		SIDLysinePct:      mix(c.sidLysinePct, next.sidLysinePct),
		CrudeProteinPct:   mix(c.crudeProteinPct, next.crudeProteinPct),
		CalciumPct:        mix(c.calciumPct, next.calciumPct),
		STTDPhosphorusPct: mix(c.sttdPhosphorusPct, next.sttdPhosphorusPct),
		EnergyMJKg:        mix(c.me, next.me) * kcalMJ,
	}
}
