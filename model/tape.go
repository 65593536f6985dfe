package model

import "math"

// The range of heart girth of the Kansas State trial, 50 to 273 lb by its line.
const (
	tapeLowCm  = 64.0
	tapeHighCm = 119.5
)

// The range of girth and length in which the two-measure rule is used: 25 to 50
// in of girth, 20 to 60 in of length. The rule was published without one.
const (
	ruleGirthLowCm, ruleGirthHighCm   = 63.5, 127.0
	ruleLengthLowCm, ruleLengthHighCm = 50.8, 152.4
)

// WeightFromGirth is a pig's live weight in kg from its heart girth alone: the
// line of Groesbeck et al., Kansas State University Swine Research 2002 (100
// pigs of 50 to 273 lb), 10.1709 lb an inch less 205.7492 lb. The abstract was
// read. Its stated error of 10 lb is nearer one than two SD for one pig by its
// own R²; the SD here is 3.6 kg or 4.1 %, whichever is more, for lean crosses
// (computed). Outside 64 to 119.5 cm it is an *OutOfRange.
func WeightFromGirth(girthCm float64) (Estimate, error) {
	if !(girthCm >= tapeLowCm && girthCm <= tapeHighCm) {
		return Estimate{}, &OutOfRange{"girth", girthCm, tapeLowCm, tapeHighCm}
	}
	kg := girthLine(girthCm)
	return Estimate{kg, math.Max(3.6, 0.041*kg)}, nil
}

// girthLine is the Kansas State line, in cm and kg.
func girthLine(cm float64) float64 {
	const lbPerInch, lessLb, kgPerLb, cmPerInch = 10.1709, 205.7492, 0.45359237, 2.54
	return (lbPerInch*cm/cmPerInch - lessLb) * kgPerLb
}

// WeightFromTape is a pig's live weight in kg from heart girth and length (from
// between the ears to the base of the tail): girth squared times length over
// 400 in inches and pounds, an almanac rule, seen in copies and in an article of
// 5m Publishing of 12 March 2002. The accuracy claimed for it, 3 %, has no trial
// behind it; the SD here is 3.6 kg or 6 %, whichever is more (judgement).
// Outside 63.5 to 127 cm of girth and 50.8 to 152.4 cm of length it is an
// *OutOfRange.
func WeightFromTape(girthCm, lengthCm float64) (Estimate, error) {
	if !(girthCm >= ruleGirthLowCm && girthCm <= ruleGirthHighCm) {
		return Estimate{}, &OutOfRange{"girth", girthCm, ruleGirthLowCm, ruleGirthHighCm}
	}
	if !(lengthCm >= ruleLengthLowCm && lengthCm <= ruleLengthHighCm) {
		return Estimate{}, &OutOfRange{"length", lengthCm, ruleLengthLowCm, ruleLengthHighCm}
	}
	const lbPerCubicInch, kgPerLb, cmPerInch = 1.0 / 400, 0.45359237, 2.54
	kg := girthCm * girthCm * lengthCm * lbPerCubicInch * kgPerLb / (cmPerInch * cmPerInch * cmPerInch)
	return Estimate{kg, math.Max(3.6, 0.06*kg)}, nil
}
