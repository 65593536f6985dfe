package schedule

// The codes of lines. Each says what fills it: Names, On (a day), At (a moment),
// Window (days), Q (quantities in this order). A field not named is zero. A
// quantity that is not known is left out at the end, or 0 where the comment says
// so. "Visit" is a chore moment; "next visit" the one after it on which the
// person is there.
const (
	// About "refill". What to mix and pour at this visit. Names: the feeders to
	// fill, in the order set up. On: the day of the visit. At: the next visit,
	// until which it then lasts. Q: kilograms to pour in all; batches (Count, 0:
	// no batch is known); then kilograms for each of Names.
	CodeRefillVisit = "refill_visit"
	// As CodeRefillVisit, but even full to the brim the feeders named may not
	// last until At: fill them full, and a fill in between is needed.
	CodeRefillBrim = "refill_brim"
	// Between visits: the feeders may run dry before the next visit. Names: the
	// feeders. At: the cautious moment of the first to run dry. On: the likely
	// day of it. Q: kilograms to pour to last until the next visit; batches
	// (Count, 0: no batch is known).
	CodeRefillMidweek = "refill_midweek"
	// As CodeRefillMidweek, but even full to the brim the feeders named may not last
	// until the next visit: fill them full.
	CodeRefillMidweekBrim = "refill_midweek_brim"
	// By calculation a feeder is out by now. Names: the feeders. At: the likely
	// moment. Q: kilograms to pour to last until the next visit; how many times
	// it was told before (Count). Grade danger; say that it is calculated.
	CodeRefillOut = "refill_out"
	// The feeders were seen empty and no pour was logged since. Names: the feeders.
	// At: when they were seen. Q as CodeRefillOut. Grade danger.
	CodeRefillSeenEmpty = "refill_seen_empty"

	// About "water". The barrels to fill at this visit. Names: the barrels. On:
	// the day of the visit. At: the next visit, until which they then last. Q:
	// litres to fill in all (0: unknown); litres a day that the pigs draw.
	CodeWaterVisit = "water_visit"
	// As CodeWaterVisit, but full barrels last only into the day On, before the
	// next visit At: a fill in between is needed.
	CodeWaterBrim = "water_brim"
	// Between visits: the water may run out before the next visit. Names: the
	// barrels. At: the cautious moment. On: the likely day. Q: litres left, likely;
	// litres a day.
	CodeWaterMidweek = "water_midweek"
	// By calculation the water is out by now. Names: the barrels. At: the likely
	// moment. Q: how many times it was told before (Count). Grade danger; say that
	// it is calculated; after a long thirst the vet before opening the water full.
	CodeWaterOut = "water_out"
	// The barrels were seen empty and no fill was logged since. Names: the
	// barrels. At: when they were seen. Q: how many times it was told before
	// (Count). Grade danger; the same caution.
	CodeWaterSeenEmpty = "water_seen_empty"

	// About "wallow". The wallow may be dry before the next visit. On: the earliest
	// likely day. Q: litres to fill it, likely (left out: unknown).
	CodeWallowVisit = "wallow_visit"
	// The wallow is dry or nearly so on a hot day. On: the hot day. Q: high
	// (Celsius); litres to fill it, likely (left out: unknown).
	CodeWallowHeat = "wallow_heat"

	// About "level". No feed was poured for a while: knock and level the feed so
	// that it does not bridge or go stale. Names: the feeders. Q: days since the
	// latest pour.
	CodeLevelStanding = "level_standing"
	// Half way between two rounds, for who asked to be told: level the feed. Names:
	// the feeders.
	CodeLevelMidweek = "level_midweek"
	// A feeder was seen fuller than the pigs' appetite explains: it may be
	// bridged or shut too far. Names: the feeder. On: the day it was seen. Q:
	// kilograms seen; kilograms expected.
	CodeLevelBridged = "level_bridged"

	// About "worm". A worming or a dung test is due. Names: the pigs (empty: all).
	// On: the day due.
	CodeWormDue = "worm_due"
	// A worming is due but could not be clear by the booked day; ask the vet.
	// Names: the pigs (empty: all). On: the booked day.
	CodeWormBlocked = "worm_blocked"

	// About "move". The pigs should leave their pen. Names: the pen (empty:
	// unnamed). On: the day due.
	CodeMoveDue = "move_due"

	// About "weigh". A weighing would change a decision. Names: the pigs (empty:
	// all). On: the day due.
	CodeWeighDue = "weigh_due"
	// The same, and the tape should be held against a scale again. Q: weight when
	// it was last (Kilograms).
	CodeWeighCheck = "weigh_check"

	// About "book". The butcher should be booked. On: the day to book by. Window:
	// the days to ask for.
	CodeBookBy = "book_by"
	// The booked day comes nearer. On: the booked day. Q: days left; pigs booked
	// (Count, 0: all); live weight then, the mean pig's (Kilograms; left out:
	// unknown).
	CodeBookAhead = "book_ahead"
	// The booked day is near: a card on the evening two days before, for pigs loaded
	// the evening before, and on the morning before, when feed is taken away. Its
	// lines: who goes. Names: the pigs named for it (may be empty). On: the booked
	// day. At: the hour booked (zero: not stated). Q: pigs booked (Count; 0: all, or those named).
	CodeBookEve = "book_eve"
	// As CodeBookEve where only a number was booked: Names are the heaviest.
	CodeBookEveHeaviest = "book_eve_heaviest"
	// Feed off 12 to 18 hours before slaughter, as the butcher says; water always.
	// On: the booked day. At: 18 hours before the hour booked.
	CodeBookFeed = "book_feed"
	// The same where no hour is known. On: the booked day.
	CodeBookFeedHours = "book_feed_hours"
	// Who is clear by then, as far as was told. Names: the pigs, or "all". On: the
	// booked day.
	CodeBookClear = "book_clear"

	// About "withdrawal". Pigs are not clear by the booked day. Names: the pigs
	// (empty: unnamed). On: the booked day. At: the moment the last of them is
	// clear. Grade danger from two days before, else welfare.
	CodeWithdrawalConflict = "withdrawal_conflict"
	// Pigs got something whose withdrawal days are not known: not clear. Names:
	// the pigs (empty: unnamed). On: the booked day (zero: none booked).
	CodeWithdrawalUnknown = "withdrawal_unknown"

	// About "heat", from told weather only. On: the hot day. Q: high (Celsius);
	// relative humidity (Percent); THI (Ratio). The reasons say whether the
	// humidity was assumed.
	CodeHeatWatch     = "heat_watch"
	CodeHeatAlert     = "heat_alert"
	CodeHeatDanger    = "heat_danger"
	CodeHeatEmergency = "heat_emergency"

	// About "cold", from told weather only. A night colder than the pigs bear
	// without dry bedding. On: the day told. Q: low (Celsius); the least they bear
	// (Celsius); mean weight (Kilograms).
	CodeColdNight = "cold_night"
	// A hard freeze: nipples and hoses freeze. On: the day told. Q: low (Celsius).
	CodeColdFreeze = "cold_freeze"

	// About "ration". The mix holds less SID lysine than needed. Names:
	// ingredients to change, in alphabetical order (may be empty). On: the visit.
	// Q: SID lysine of the mix (Percent); needed (Percent); for the mean weight
	// (Kilograms); then for each of Names kilograms per batch to add, minus is
	// remove.
	CodeRationShort = "ration_short"
	// The mix holds clearly more than needed: it could be stepped down. As
	// CodeRationShort.
	CodeRationRich = "ration_rich"

	// About "stock". An ingredient will be short at the visit On; buy before it.
	// Names: the ingredients. On: that visit's day. Q: for each of Names kilograms
	// that should be there, then kilograms that the visit needs.
	CodeStockShort = "stock_short"
	// The same on the day before the visit On, while shops are open.
	CodeStockEve = "stock_eve"

	// About "own". A reminder the person asked for. Names: the person's words. On:
	// its day. At: its moment.
	CodeOwnReminder = "own_reminder"

	// About "capacity". From the day On on the full feeders no longer hold the feed
	// between two visits. Names: the feeders. Q: kilograms they hold; kilograms
	// eaten between two visits then.
	CodeCapacityFeed = "capacity_feed"
	// Too few drinkers for the pigs. Q: nipples there (Count); wanted (Count).
	CodeCapacityNipples = "capacity_nipples"

	// The pigs outgrow how something is set. On: the day. Q: height of the nipple
	// (Centimetres); weight of the lightest pig then (Kilograms).
	CodeOutgrownNipple = "outgrown_nipple"
	// The same of shelter and shade. Q: for all pigs; a pig (SquareMetres); mean
	// weight then (Kilograms).
	CodeOutgrownShelter = "outgrown_shelter"
	CodeOutgrownShade   = "outgrown_shade"

	// About "alarm". A reported emergency that was not called over. Names: the
	// pigs (may be empty). At: when it was reported. Q: which telling this is
	// (Count, from 1).
	CodeAlarmOut     = "alarm_out"
	CodeAlarmDown    = "alarm_down"
	CodeAlarmNoWater = "alarm_no_water"
	CodeAlarmNoFeed  = "alarm_no_feed"
	CodeAlarmFence   = "alarm_fence"
	// The latest fence reading was too low to hold pigs. On: its day. Q: the
	// reading (Kilovolts); the least wanted (Kilovolts). About "alarm", grade
	// welfare.
	CodeAlarmFenceLow = "alarm_fence_low"

	// About "season". The last pig has gone, all nudges stop. On: the day it went.
	// Q: pigs of the season (Count); of them butchered or sold (Count).
	CodeSeasonOver = "season_over"
	// Pigs for the next season are to be ordered, and the butcher booked. On: the
	// day on which the last season's first pigs came. Q: how many came (Count).
	// Names: what was noted when it ended, the latest last.
	CodeOrder = "season_order"
	// Pigs come soon. On: the day they come. Q: days until then (Days); how many
	// (Count), 0 where that was not told.
	CodeReady = "season_ready"

	// About "check". No word for a while. On: the day of the latest record. Q: days
	// since.
	CodeCheckSilence = "check_silence"
	// The last such word: nothing more but the round, drug and butcher days, and reminders,
	// until the person writes. As CodeCheckSilence.
	CodeCheckSilenceLast = "check_silence_last"
	// The level of feed is not known: say how full. Names: the feeders (may be
	// empty).
	CodeCheckFeedLevel = "check_feed_level"
	// The level of water is not known: say how full. Names: the barrels (may be
	// empty).
	CodeCheckWaterLevel = "check_water_level"
	// Feed gone that does not fit, a question with Choices. Names: the feeder. On:
	// the day it was full before. At: of the fill. Q: kilograms gone since;
	// kilograms expected.
	CodeOddFeedMore = "odd_feed_more"
	CodeOddFeedLess = "odd_feed_less"
	// A feeder found empty well before its cautious edge, with Choices. Names: the
	// feeder. On: the day. At: when it was found. Q: kilograms that should be left.
	CodeOddFeedEmpty = "odd_feed_empty"
	// Water gone that does not fit, with Choices. Names: the barrels. On: the day
	// their level was told before. At: of the level. Q: litres gone since; litres
	// expected.
	CodeOddWaterMore = "odd_water_more"
	CodeOddWaterLess = "odd_water_less"
	// A pig that hardly grew, with Choices. Names: the pig (empty: unnamed, or the
	// mean of several). On: the day of the weighing before. Q: kilograms gained
	// since; kilograms expected; days since.
	CodeOddGrowth = "odd_growth"
	// A fill that missed what was expected by more than a seventh, where nothing was
	// asked. Names: the feeder. On: its day. Q: kilograms gone since it was full;
	// kilograms expected; percent that the pigs are taken to eat more from now on
	// (left out: hardly any).
	CodeMissedFeed = "missed_feed"
	// A question is still unanswered. Names: the question's record, what it is
	// about, its code, in this order. At: when it was asked.
	CodeCheckQuestion = "check_question"
	// A chore day passed and the feed or water that was to be filled was not logged.
	// Names: "refill" and/or "water". On: the chore day.
	CodeCheckNotFilled = "check_not_filled"
	// A booked day came for all the pigs and no pig was said to have gone, with
	// Choices. On: the booked day. It is asked once; then they count as gone, no one
	// knows where.
	CodeCheckGone = "check_gone"
	// The same where other pigs stay.
	CodeCheckGoneSome = "check_gone_some"

	// About the topic it asks about. A topic was passed over three times: keep it,
	// once a month, or stop. Names: the word of About. Buttons keep, monthly, stop.
	CodeKeepAsking = "keep_asking"

	// About "catch_up". The program was off. At: from when. On: the day it came
	// back. Q: hours off (Ratio).
	CodeCatchUpDown = "catch_up_down"
	// The person is back from being away. On: the last day away. Q: days away.
	CodeCatchUpAway = "catch_up_away"

	// In Nudge.Well only, the figures of a standing message that says all is well.
	// Feed: On: cautious day until which it lasts; At: likely moment of running
	// dry; Q: days (cautious).
	CodeWellFeed = "well_feed"
	// Water: as CodeWellFeed.
	CodeWellWater = "well_water"
	// Weight: On: today. Q: mean weight; its low; its high (Kilograms); pigs (Count).
	CodeWellWeight = "well_weight"
	// Target: Window: the days on which the herd reaches it. Q: the target
	// (Kilograms).
	CodeWellTarget = "well_target"
)

// Codes lists every code of a line, for whoever finds a sentence for each.
var Codes = []string{
	CodeRefillVisit, CodeRefillBrim, CodeRefillMidweek, CodeRefillMidweekBrim, CodeRefillOut, CodeRefillSeenEmpty,
	CodeWaterVisit, CodeWaterBrim, CodeWaterMidweek, CodeWaterOut, CodeWaterSeenEmpty,
	CodeWallowVisit, CodeWallowHeat,
	CodeLevelStanding, CodeLevelMidweek, CodeLevelBridged,
	CodeWormDue, CodeWormBlocked, CodeMoveDue, CodeWeighDue, CodeWeighCheck,
	CodeBookBy, CodeBookAhead, CodeBookEve, CodeBookEveHeaviest, CodeBookFeed, CodeBookFeedHours, CodeBookClear,
	CodeWithdrawalConflict, CodeWithdrawalUnknown,
	CodeHeatWatch, CodeHeatAlert, CodeHeatDanger, CodeHeatEmergency,
	CodeColdNight, CodeColdFreeze,
	CodeRationShort, CodeRationRich, CodeStockShort, CodeStockEve,
	CodeOwnReminder, CodeCapacityFeed, CodeCapacityNipples,
	CodeOutgrownNipple, CodeOutgrownShelter, CodeOutgrownShade,
	CodeAlarmOut, CodeAlarmDown, CodeAlarmNoWater, CodeAlarmNoFeed, CodeAlarmFence, CodeAlarmFenceLow,
	CodeSeasonOver,
	CodeOrder,
	CodeReady,
	CodeCheckSilence, CodeCheckSilenceLast, CodeCheckFeedLevel, CodeCheckWaterLevel, CodeCheckQuestion, CodeCheckNotFilled, CodeCheckGone, CodeCheckGoneSome,
	CodeOddFeedMore, CodeOddFeedLess, CodeOddFeedEmpty, CodeOddWaterMore, CodeOddWaterLess, CodeOddGrowth, CodeMissedFeed,
	CodeKeepAsking,
	CodeCatchUpDown, CodeCatchUpAway,
	CodeWellFeed, CodeWellWater, CodeWellWeight, CodeWellTarget,
}

// The codes of reasons that this package adds to those of the figures.
const (
	// The next visit. On: its day.
	ReasonNextVisit = "next_visit"
	// The person is away. On: the last day away.
	ReasonAway = "away"
	// Nothing was logged since. On: the day.
	ReasonNotLogged = "not_logged"
	// The weather is as told for the day On. Q: high or low (Celsius).
	ReasonWeatherTold = "weather_told"
	// A weather service forecast it for the day On. Q: high or low (Celsius).
	ReasonForecast = "weather_forecast"
	// A fill missed what was expected. Names: the feeder. On: the day it was full
	// before. Q: kilograms gone since; kilograms expected; percent of the published
	// table's feed that the herd is now taken to eat.
	ReasonMissed = "missed_feed"
)

// ReasonCodes lists the codes of reasons that this package adds.
var ReasonCodes = []string{ReasonNextVisit, ReasonAway, ReasonNotLogged, ReasonWeatherTold, ReasonForecast, ReasonMissed}
