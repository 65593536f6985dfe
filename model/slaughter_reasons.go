package model

// Codes of the reasons that the run-up to the butcher, freezer, feed per gain
// and the size of feeders give, with what fills them.
const (
	ReasonFeedOffHours    = "feed_off_hours"     // hours off feed planned, least, most
	ReasonFeedOffAssumed  = "feed_off_assumed"   // the hour of slaughter is not known: Q minutes after midnight taken
	ReasonFeedOutLeft     = "feed_out_left"      // kg left when feed goes off, likely; kg there now
	ReasonLastDose        = "last_dose"          // day of loading; withdrawal days
	ReasonFreezerSpace    = "freezer_space"      // litres a kg of packed meat
	ReasonFeedPerGainUsed = "feed_per_gain_used" // day from which; kg of feed used; kg gained
	ReasonFeederSpan      = "feeder_span"        // kg that full feeders hold; days between visits
)

// SlaughterReasonCodes lists the codes of the reasons above, for the catalogue
// of sentences to be held against.
func SlaughterReasonCodes() []string {
	return []string{
		ReasonFeedOffHours, ReasonFeedOffAssumed, ReasonFeedOutLeft, ReasonLastDose,
		ReasonFreezerSpace, ReasonFeedPerGainUsed, ReasonFeederSpan,
	}
}
