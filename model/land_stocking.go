package model

// Stocking is how hard pigs use ground.
type Stocking struct {
	PigsPerHa    float64
	PigDaysPerHa float64 // at MeanPigKg
	// OverCover is PigDaysPerHa over what kept most cover, [PigDaysPerHa]: above 1
	// the ground will be bare.
	OverCover float64
}

// StockingRate is how hard so many pigs (1 to 200) of a mean weight (5 to 220 kg)
// use an area in square metres (more than nothing, up to 1e9) in so many days (0
// to 400): else *OutOfRange. Computed, against the trial named at
// [PigDaysPerHa].
func StockingRate(pigs int, weightKg, areaM2, days float64) (Stocking, error) {
	const leastKg, mostKg, mostDays, mostM2 = 5, 220, 400, 1e9
	switch {
	case pigs < 1 || pigs > mostPigs:
		return Stocking{}, &OutOfRange{"count", float64(pigs), 1, mostPigs}
	case !(weightKg >= leastKg && weightKg <= mostKg):
		return Stocking{}, &OutOfRange{"weight_kg", weightKg, leastKg, mostKg}
	case !(areaM2 > 0 && areaM2 <= mostM2):
		return Stocking{}, &OutOfRange{"area_m2", areaM2, 0, mostM2}
	case !(days >= 0 && days <= mostDays):
		return Stocking{}, &OutOfRange{"days", days, 0, mostDays}
	}
	s := Stocking{PigsPerHa: float64(pigs) * 1e4 / areaM2}
	s.PigDaysPerHa = s.PigsPerHa * days * weightKg / MeanPigKg
	s.OverCover = s.PigDaysPerHa / PigDaysPerHa
	return s, nil
}
