package model

import "math"

// smallPigKg is the weight up to which a low strand is wanted.
const smallPigKg = 30.0

// FenceStrandsCm are the heights of the hot strands inside a pig fence for pigs
// of a weight (1 to 220 kg, else *OutOfRange): 25 and 46 cm, and one at 15 cm
// while they are small (an extension answer, re-hosted; the weight of 30 kg from
// which it may go is from memory).
func FenceStrandsCm(weightKg float64) ([]float64, error) {
	const leastKg, mostKg = 1, 220
	switch {
	case !(weightKg >= leastKg && weightKg <= mostKg):
		return nil, &OutOfRange{"weight_kg", weightKg, leastKg, mostKg}
	case weightKg < smallPigKg:
		return []float64{15, 25, 46}, nil
	}
	return []float64{25, 46}, nil
}

// FenceWireM is the wire round a square pen of an area in square metres (more
// than nothing, up to 1e9) in so many strands (1 to 10): else *OutOfRange. A
// long narrow pen takes more. Computed.
func FenceWireM(areaM2 float64, strands int) (float64, error) {
	const mostM2, mostStrands = 1e9, 10
	switch {
	case !(areaM2 > 0 && areaM2 <= mostM2):
		return 0, &OutOfRange{"area_m2", areaM2, 0, mostM2}
	case strands < 1 || strands > mostStrands:
		return 0, &OutOfRange{"strands", float64(strands), 1, mostStrands}
	}
	return 4 * math.Sqrt(areaM2) * float64(strands), nil
}
