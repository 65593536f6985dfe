package model

import "math"

// ReadTape is what a tape reading is taken for in kg, inside the range of the
// published formulas and beyond; within says which. Without a length (0) it is
// girth alone; girth and length together are weighed against girth alone by
// their errors, where both speak.
//
// Below 64 cm the cube rule of Marshall et al., Trop. Anim. Health Prod. 2023
// (749 pigs, best from 5 to 110 kg, 11.5 kg either way at 51 kg; abstract read),
// which meets the Kansas State line there; above 119.5 cm that line goes on, an
// extrapolation with an SD of 8 % by judgement. A girth of nothing or less, or that
// is no number, gives the empty estimate, of no error.
func ReadTape(girthCm, lengthCm float64) (weight Estimate, within bool) {
	if !(girthCm > 0) || math.IsInf(girthCm, 1) {
		return Estimate{}, false
	}
	line, err := WeightFromGirth(girthCm)
	if err != nil {
		kg := girthLine(girthCm)
		if girthCm < tapeLowCm {
			c := 0.4011 + 0.0381*girthCm
			return Estimate{c * c * c, 0.11 * c * c * c}, false
		}
		return Estimate{kg, 0.08 * kg}, false
	}
	rule, err := WeightFromTape(girthCm, lengthCm)
	if err != nil {
		return line, true
	}
	a, b := 1/(line.SD*line.SD), 1/(rule.SD*rule.SD)
	// Both rest on one girth, so the two together are known no better than girth.
	return Estimate{(a*line.Mean + b*rule.Mean) / (a + b), line.SD}, true
}
