package schedule

// The choices of questions about what does not fit. Each is a phrase of the
// catalogue; what it records is the bot's to know.
const (
	ChoiceSpilled   = "odd_spilled"    // feed was spilled, spoilt or wasted
	ChoiceOthers    = "odd_others"     // other animals took it
	ChoiceAte       = "odd_ate"        // the pigs just ate it
	ChoiceNotFull   = "odd_not_full"   // it was not full the time before
	ChoiceDrinkers  = "odd_drinkers"   // the drinkers run slow
	ChoicePigOff    = "odd_pig_off"    // a pig is off its feed
	ChoiceStuck     = "odd_stuck"      // the feed is bridged, or the feeder shut too far
	ChoiceAteLess   = "odd_ate_less"   // the pigs just ate less
	ChoiceTrough    = "odd_trough"     // only the trough is empty, feed hangs above it
	ChoiceLeak      = "odd_leak"       // a leak, or it was tipped
	ChoiceDrank     = "odd_drank"      // the pigs just drank it
	ChoiceClogged   = "odd_clogged"    // a nipple is clogged or frozen
	ChoiceRain      = "odd_rain"       // it was filled, or rain got in
	ChoiceDrankLess = "odd_drank_less" // the pigs just drank less
	ChoiceIll       = "odd_ill"        // worms, or ill
	ChoiceShort     = "odd_short"      // short of feed or water
	ChoiceBullied   = "odd_bullied"    // the others keep it off
	ChoiceMisread   = "odd_misread"    // weighed or read wrong
	ChoiceWentAll   = "went_all"       // the booked pigs went
	ChoiceWentSome  = "went_some"      // not all of them did
	ChoiceWentNot   = "went_not"       // they are still there
)

// Choices lists every choice, for whoever finds a phrase and a meaning for each.
var Choices = []string{
	ChoiceSpilled, ChoiceOthers, ChoiceAte, ChoiceNotFull, ChoiceDrinkers, ChoicePigOff, ChoiceStuck, ChoiceAteLess,
	ChoiceTrough, ChoiceLeak, ChoiceDrank, ChoiceClogged, ChoiceRain, ChoiceDrankLess, ChoiceIll, ChoiceShort,
	ChoiceBullied, ChoiceMisread, ChoiceWentAll, ChoiceWentSome, ChoiceWentNot,
}
