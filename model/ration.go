package model

// Ration is what the mix holds against what the pigs need.
type Ration struct {
	CrudeProteinPct, LysinePct, SIDLysinePct float64
	EnergyMJKg                               float64 // ME
	NeededSIDLysinePct                       float64
	ForWeightKg                              float64
	OK                                       bool
	Change                                   map[string]float64 // kg per batch to add, minus is remove
	Unknown                                  []string           // ingredients with no figures
	Reasons                                  []Reason
}

// RationCheck holds the mix in use against the mean weight of the pigs.
func (h *Herd) RationCheck(on Day) (Ration, error) { panic("ration") }
