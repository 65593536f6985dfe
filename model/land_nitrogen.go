package model

// Nitrogen is the nitrogen balance of a pig or a herd over a span.
type Nitrogen struct {
	FedKg, KeptKg, ExcretedKg float64
}

const (
	proteinPerNitrogen = 6.25  // the convention of feed analysis
	keptPerGain        = 0.026 // kg N per kg gain, 0.025 to 0.028: computed from a review of nitrogen efficiency in Animal (Cambridge)

	// NitrogenCeilingKgHa is what European rules allow manure to bring in a
	// year (Regulation 889/2008 Annex III, seen in its poultry rows).
	NitrogenCeilingKgHa = 170.0
)

// NitrogenBalance is the nitrogen fed, kept and left behind, from feed in
// kilograms as fed (not negative), its crude protein in percent (0 to 100) and
// the live-weight gain in kilograms (not negative). Outside: *OutOfRange. What
// is kept is never more than what is fed.
func NitrogenBalance(feedKg, crudeProteinPct, gainKg float64) (Nitrogen, error) {
	switch {
	case !(feedKg >= 0 && feedKg <= 1e6):
		return Nitrogen{}, &OutOfRange{"feed_kg", feedKg, 0, 1e6}
	case !(crudeProteinPct >= 0 && crudeProteinPct <= 100):
		return Nitrogen{}, &OutOfRange{"crude_protein_pct", crudeProteinPct, 0, 100}
	case !(gainKg >= 0 && gainKg <= 1e5):
		return Nitrogen{}, &OutOfRange{"gain_kg", gainKg, 0, 1e5}
	}
	n := Nitrogen{FedKg: feedKg * crudeProteinPct / 100 / proteinPerNitrogen}
	n.KeptKg = min(gainKg*keptPerGain, n.FedKg)
	n.ExcretedKg = n.FedKg - n.KeptKg
	return n, nil
}

// KgHa is the nitrogen that so many pigs, each with the balance n, leave on a
// hectare of an area in square metres. The area must be more than nothing:
// else *OutOfRange.
func (n Nitrogen) KgHa(pigs int, areaM2 float64) (float64, error) {
	if !(areaM2 > 0 && areaM2 <= 1e9) {
		return 0, &OutOfRange{"area_m2", areaM2, 0, 1e9}
	}
	return n.ExcretedKg * float64(pigs) * 1e4 / areaM2, nil
}
