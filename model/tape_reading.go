package model

// tapeKg is the live weight that a tape reading stands for, inside the range of
// the published formulas and beyond. Girth and length together are weighed
// against girth alone by their errors, where both speak.
//
// Below 64 cm the cube rule of Marshall et al., Trop. Anim. Health Prod. 2023
// (749 pigs, best from 5 to 110 kg; abstract read), which meets the Kansas State
// line there; above 119.5 cm that line goes on, an extrapolation.
func tapeKg(girthCm, lengthCm float64) float64 {
	line, err := WeightFromGirth(girthCm)
	if err != nil {
		if girthCm < tapeLowCm {
			c := 0.4011 + 0.0381*girthCm
			return c * c * c
		}
		return girthLine(girthCm)
	}
	rule, err := WeightFromTape(girthCm, lengthCm)
	if err != nil {
		return line.Mean
	}
	a, b := 1/(line.SD*line.SD), 1/(rule.SD*rule.SD)
	return (a*line.Mean + b*rule.Mean) / (a + b)
}
