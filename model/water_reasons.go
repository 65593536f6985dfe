package model

// Codes of the reasons that water, wallow, heat, withdrawal, worming, moves and
// booking give. Beside each: the Names, the On day and the Q that it carries.
const (
	WaterLevel        = "water_level"         // barrel; day its level was last told; litres now
	WaterUse          = "water_use"           // litres a day now, pigs
	WaterHeat         = "water_heat"          // day of the hottest told or forecast high ahead; that high
	WaterHeatGuessed  = "water_heat_guessed"  // high taken for today from the season
	WaterLearned      = "water_learned"       // percent of the published draw, marks it was learned from
	WaterPublished    = "water_published"     // nothing learned yet: litres per kg feed, percent spilt at nipples
	WaterFavoured     = "water_favoured"      // barrel the pigs draw most from; percent of the draw
	WaterDryEarly     = "water_dry_early"     // barrel; day it was found lower than it could be: leak or favoured, left out of learning
	WaterOdd          = "water_odd"           // barrels; day the level was told before; litres gone since, litres expected, half the range of that
	WaterUnlogged     = "water_unlogged"      // barrel; day it was found fuller than it could be: a fill not told
	WaterBarrelUnseen = "water_barrel_unseen" // barrels never filled or seen, counted as dry
	WaterAlarm        = "water_alarm"         // day: no water was reported and not settled since

	WallowLoss        = "wallow_loss"         // litres a day, fall of the level in cm a day
	WallowLearned     = "wallow_learned"      // fills it was learned from
	WallowFirstGuess  = "wallow_first_guess"  // fall of the level in mm a day: no fills to learn from yet
	WallowSizeAssumed = "wallow_size_assumed" // square metres, metres deep
	WallowAssumedFull = "wallow_assumed_full" // never filled or seen dry: counted as full today
	WallowLastFilled  = "wallow_last_filled"  // day
	WallowFoundDry    = "wallow_found_dry"    // day
	WallowHose        = "wallow_hose"         // litres a minute taken for the hose

	HeatHighTold        = "heat_high_told"        // day; high
	HeatHighForecast    = "heat_high_forecast"    // day; high
	HeatHighSupposed    = "heat_high_supposed"    // day; high
	HeatHumidity        = "heat_humidity"         // percent
	HeatHumidityAssumed = "heat_humidity_assumed" // percent
	HeatIndex           = "heat_index"            // index
	HeatPlainLine       = "heat_plain_line"       // the line for any pig
	HeatHeavyPigs       = "heat_heavy_pigs"       // weight of the heaviest pig, the line for heavy ones
	HeatWeightUnknown   = "heat_weight_unknown"   // the line for heavy pigs

	WithdrawalRuns        = "withdrawal_runs"         // product, none where not said; day of the dose; days
	WithdrawalDaysUnknown = "withdrawal_days_unknown" // product, none where not said; day of the dose
	WithdrawalUnsettled   = "withdrawal_unsettled"    // day of a text on a drug that is still asked about

	WormingSinceArrival = "worming_since_arrival" // day of arrival; days after it
	WormingSinceLast    = "worming_since_last"    // product, none where not said; day of the last one; days between
	WormingTestFirst    = "worming_test_first"    // a dung sample first, else the label
	WormingLastDay      = "worming_last_day"      // last day of a dose that is clear in time; days of withdrawal counted
	WormingReadLabel    = "worming_read_label"    // withdrawal days of the product not known; days from due to the butcher
	WormingTooLate      = "worming_too_late"      // day of the butcher; days of withdrawal counted

	MoveSince       = "move_since"        // pen; day they came; days so far
	MoveLoad        = "move_load"         // pen; pig-days so far and borne, both at 75 kg
	MoveWet         = "move_wet"          // pen; days of wet ground in the stay
	MoveDefaultDays = "move_default_days" // pen whose size is unknown; days
	MoveRested      = "move_rested"       // pen rested longest; days of rest
	MoveRest        = "move_rest"         // days of rest that a pen should get

	BookingWindow = "booking_window" // likely day; days from today to its early and late edge; target weight
	BookingLead   = "booking_lead"   // day to book by; lead days
	// BookingLeadOwn is the same, learned.
	BookingLeadOwn = "booking_lead_own" // day to book by; lead days, bookings it is from
	BookingStands  = "booking_stands"   // day booked
)

// WaterReasonCodes lists every code of this file, for whoever finds words for
// them.
func WaterReasonCodes() []string {
	return []string{
		WaterLevel, WaterUse, WaterHeat, WaterHeatGuessed, WaterLearned, WaterPublished,
		WaterFavoured, WaterDryEarly, WaterOdd, WaterUnlogged, WaterBarrelUnseen, WaterAlarm,
		WallowLoss, WallowLearned, WallowFirstGuess, WallowSizeAssumed, WallowAssumedFull,
		WallowLastFilled, WallowFoundDry, WallowHose,
		HeatHighTold, HeatHighForecast, HeatHighSupposed, HeatHumidity, HeatHumidityAssumed,
		HeatIndex, HeatPlainLine, HeatHeavyPigs, HeatWeightUnknown,
		WithdrawalRuns, WithdrawalDaysUnknown, WithdrawalUnsettled,
		WormingSinceArrival, WormingSinceLast, WormingTestFirst, WormingLastDay,
		WormingReadLabel, WormingTooLate,
		MoveSince, MoveLoad, MoveWet, MoveDefaultDays, MoveRested, MoveRest,
		BookingWindow, BookingLead, BookingLeadOwn, BookingStands,
	}
}
