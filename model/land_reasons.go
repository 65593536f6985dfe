package model

// Codes of the reasons that pens, nitrogen, worms in the ground and what pigs
// outgrow give. Beside each: the Names, the On day and the Q that it carries.
const (
	ReasonNitrogenFed     = "nitrogen_fed"             // nitrogen in the feed, kg; feed, kg; its protein, percent
	ReasonNitrogenKept    = "nitrogen_kept"            // nitrogen kept in growth, kg
	ReasonNitrogenAssumed = "nitrogen_protein_assumed" // protein taken, percent
	ReasonNitrogenCeiling = "nitrogen_ceiling"         // kg a hectare and year
	ReasonWormSoil        = "worm_soil"                // pen; day from which eggs left there can infect
	ReasonWormSoilCold    = "worm_soil_cold"           // pen: too cold so far for eggs to ripen
	ReasonWormSurvival    = "worm_survival"            // years that the hardiest eggs last
	ReasonOutgrownNipple  = "outgrown_nipple"          // day; height, cm; weight of the lightest pig
	ReasonOutgrownShelter = "outgrown_shelter"         // day; square metres a pig from there on; weight
	ReasonOutgrownShade   = "outgrown_shade"           // day; square metres a pig from there on; weight
	ReasonOutgrownStrand  = "outgrown_strand"          // day from which the lowest strand may go; its height, cm
)

// LandReasonCodes lists the codes of the reasons above, for the catalogue of
// sentences to be held against.
func LandReasonCodes() []string {
	return []string{
		ReasonNitrogenFed, ReasonNitrogenKept, ReasonNitrogenAssumed, ReasonNitrogenCeiling,
		ReasonWormSoil, ReasonWormSoilCold, ReasonWormSurvival,
		ReasonOutgrownNipple, ReasonOutgrownShelter, ReasonOutgrownShade, ReasonOutgrownStrand,
	}
}
