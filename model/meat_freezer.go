package model

// Freezer space of packed meat: a cubic foot takes 35 to 40 lb of cut and wrapped
// meat (extension figure, from memory).
const (
	litresPerCubicFoot = 28.316846592
	freezerLeastLb     = 35.0
	freezerMostLb      = 40.0
	kgPerLbExact       = 0.45359237
	mostFreezerKg      = 1e5
	freezerLeastLKg    = litresPerCubicFoot / (freezerMostLb * kgPerLbExact)
	freezerMostLKg     = litresPerCubicFoot / (freezerLeastLb * kgPerLbExact)
	freezerLKg         = litresPerCubicFoot / ((freezerLeastLb + freezerMostLb) / 2 * kgPerLbExact)
)

// FreezerL is the freezer space in litres for so much packed meat in kilograms (0
// to 100000, else *OutOfRange), with its range; odd shapes take more.
func FreezerL(packedKg float64) (Interval, error) {
	if !(packedKg >= 0 && packedKg <= mostFreezerKg) {
		return Interval{}, &OutOfRange{"packed_kg", packedKg, 0, mostFreezerKg}
	}
	return Interval{packedKg * freezerLeastLKg, packedKg * freezerLKg, packedKg * freezerMostLKg}, nil
}
