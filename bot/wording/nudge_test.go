package wording_test

import (
	"strings"
	"testing"
	"time"
	"unicode/utf8"

	"github.com/stretchr/testify/require"

	"troughbell/bot/reading"
	"troughbell/bot/wording"
	"troughbell/model"
	"troughbell/schedule"
)

func at(d string, hour int) time.Time { return day(d).At(hour*60, chicago) }

// lines has for every code of the schedule an example line with what it says.
var lines = []struct {
	line schedule.Line
	want string
}{
	{
		schedule.Line{Code: schedule.CodeRefillVisit, Names: []string{"north", "south"}, On: day("2026-07-11"), At: at("2026-07-18", 7), Q: []model.Quantity{wording.Kg(285 * lb), wording.N(3), wording.Kg(150 * lb), wording.Kg(135 * lb)}},
		"Today: mix 3 batches, pour 285 lb: north 150, south 135. Lasts past Sat Jul 18.",
	},
	{
		schedule.Line{Code: schedule.CodeRefillVisit, Names: []string{"north"}, On: day("2026-07-11"), At: at("2026-07-18", 7), Q: []model.Quantity{wording.Kg(150 * lb), wording.N(0), wording.Kg(150 * lb)}},
		"Today: pour 150 lb into north. Lasts past Sat Jul 18.",
	},
	{
		schedule.Line{Code: schedule.CodeRefillBrim, Names: []string{"north", "south"}, On: day("2026-07-11"), At: at("2026-07-18", 7), Q: []model.Quantity{wording.Kg(285 * lb), wording.N(1), wording.Kg(150 * lb), wording.Kg(135 * lb)}},
		"Today: fill to the brim, 285 lb, 1 batch: north 150, south 135. May not reach Sat Jul 18: plan a fill between.",
	},
	{
		schedule.Line{Code: schedule.CodeRefillMidweek, Names: []string{"north"}, On: day("2026-07-16"), At: at("2026-07-15", 5), Q: []model.Quantity{wording.Kg(90 * lb), wording.N(0)}},
		"Feed in north: safe only to Tue Jul 14, likely to Thu Jul 16. Pour 90 lb.",
	},
	{
		schedule.Line{Code: schedule.CodeRefillMidweek, Names: []string{"north"}, On: day("2026-07-12"), At: at("2026-07-11", 11), Q: []model.Quantity{wording.Kg(90 * lb), wording.N(1)}},
		"Feed in north: may be out already, likely lasts until tomorrow. Look, and pour 90 lb, 1 batch.",
	},
	{
		schedule.Line{Code: schedule.CodeRefillMidweekBrim, Names: []string{"north"}, On: day("2026-07-16"), At: at("2026-07-15", 5), Q: []model.Quantity{wording.Kg(90 * lb), wording.N(2)}},
		"Feed in north: safe only to Tue Jul 14, likely to Thu Jul 16. Fill to the brim, 90 lb, 2 batches.",
	},
	{
		schedule.Line{Code: schedule.CodeRefillMidweekBrim, Names: []string{"north"}, On: day("2026-07-12"), At: at("2026-07-11", 11), Q: []model.Quantity{wording.Kg(90 * lb), wording.N(0)}},
		"Feed in north: may be out already, likely lasts until tomorrow. Look, and fill to the brim, 90 lb.",
	},
	{
		schedule.Line{Code: schedule.CodeRefillOut, Grade: schedule.Danger, Names: []string{"north"}, At: at("2026-07-11", 8), Q: []model.Quantity{wording.Kg(90 * lb), wording.N(0)}},
		"⚠ Feed in north: out since today 8 am as I calculate; nobody has looked. Pour 90 lb, or text the level.",
	},
	{
		schedule.Line{Code: schedule.CodeWaterVisit, Names: []string{"blue", "white"}, On: day("2026-07-11"), At: at("2026-07-18", 7), Q: []model.Quantity{wording.L(300), wording.LD(50)}},
		"Today: fill blue and white, 79 gal; they draw 13 gal a day. Then safe past Sat Jul 18.",
	},
	{
		schedule.Line{Code: schedule.CodeWaterBrim, Names: []string{"blue"}, On: day("2026-07-16"), At: at("2026-07-18", 7), Q: []model.Quantity{wording.L(0), wording.LD(50)}},
		"Fill blue: full is safe only into Thu Jul 16. Plan a fill before the round on Sat Jul 18.",
	},
	{
		schedule.Line{Code: schedule.CodeWaterMidweek, Names: []string{"blue"}, On: day("2026-07-16"), At: at("2026-07-12", 20), Q: []model.Quantity{wording.L(100), wording.LD(50)}},
		"Water in blue: safe only to tomorrow 8 pm, likely to Thu Jul 16. 26 gal left, they draw 13 gal a day.",
	},
	{
		schedule.Line{Code: schedule.CodeWaterMidweek, Names: []string{"blue"}, On: day("2026-07-11"), At: at("2026-07-11", 5), Q: []model.Quantity{wording.L(0), wording.LD(50)}},
		"Water in blue: may be out already, likely lasts until today. Look and fill; they draw 13 gal a day.",
	},
	{
		schedule.Line{Code: schedule.CodeWaterOut, Grade: schedule.Danger, Names: []string{"blue"}, At: at("2026-07-10", 8), Q: []model.Quantity{wording.N(1)}},
		"⚠ Water in blue: out since Fri Jul 10 as I calculate; nobody has looked. Look now. If long dry or any pig staggers: vet before water.",
	},
	{
		schedule.Line{Code: schedule.CodeWaterSeenEmpty, Grade: schedule.Danger, Names: []string{"blue"}, At: at("2026-07-11", 8), Q: []model.Quantity{wording.N(1)}},
		"⚠ Water: blue seen empty today 8 am, no fill since. Fill now, a little at a time. If long dry or any pig staggers: vet before water.",
	},
	{schedule.Line{Code: schedule.CodeWallowVisit, On: day("2026-07-14"), Q: []model.Quantity{wording.L(435)}}, "Wallow: dry from Tue Jul 14. Top up, about 115 gal."},
	{schedule.Line{Code: schedule.CodeWallowVisit, On: day("2026-07-14")}, "Wallow: dry from Tue Jul 14. Top up."},
	{schedule.Line{Code: schedule.CodeWallowHeat, On: day("2026-07-14"), Q: []model.Quantity{celsius(35)}}, "Wallow: dry or nearly so, and 95 °F on Tue Jul 14. Fill it."},
	{schedule.Line{Code: schedule.CodeLevelStanding, Names: []string{"north"}, Q: []model.Quantity{wording.Days(12)}}, "Feed in north: nothing poured for 12 days. Knock and level it so that it does not bridge."},
	{schedule.Line{Code: schedule.CodeLevelMidweek, Names: []string{"north", "south"}}, "Level the feed in north and south: knock it, look that it falls."},
	{schedule.Line{Code: schedule.CodeLevelBridged, Names: []string{"north"}, On: day("2026-07-11"), Q: []model.Quantity{wording.Kg(90 * lb), wording.Kg(30 * lb)}}, "Feed in north: 90 lb seen Sat Jul 11, 30 lb expected. Knock it: bridged or shut too far?"},
	{schedule.Line{Code: schedule.CodeWormDue, On: day("2026-07-18")}, "Worming due Sat Jul 18. Dung test first, or by the label; then text product and withdrawal days."},
	{schedule.Line{Code: schedule.CodeWormDue, Names: []string{"Fern"}, On: day("2026-07-04")}, "Worming due since Sat Jul 4: Fern. Dung test first, or by the label; then text product and withdrawal days."},
	{schedule.Line{Code: schedule.CodeWormBlocked, On: day("2026-08-01")}, "No worming now: it may not be clear by the butcher, Sat Aug 1. Ask the vet."},
	{schedule.Line{Code: schedule.CodeMoveDue, Names: []string{"oak"}, On: day("2026-07-18")}, "Pen move due Sat Jul 18: out of oak."},
	{schedule.Line{Code: schedule.CodeWeighDue, On: day("2026-07-18")}, "Tape Sat Jul 18: it would sharpen the butcher date."},
	{schedule.Line{Code: schedule.CodeWeighCheck, On: day("2026-07-18"), Q: []model.Quantity{wording.Kg(55 * lb)}}, "Tape Sat Jul 18, some on the scale too: the tape was last checked at 55 lb."},
	{schedule.Line{Code: schedule.CodeWeighCheck, On: day("2026-07-04"), Q: []model.Quantity{wording.Kg(55 * lb)}}, "Tape them, some on the scale too: due since Sat Jul 4, the tape was last checked at 55 lb."},
	{schedule.Line{Code: schedule.CodeBookBy, On: day("2026-07-20"), Window: model.DayInterval{Low: day("2026-08-25"), Mid: day("2026-09-01"), High: day("2026-09-08")}}, "No butcher booked: call by Mon Jul 20, ask for Aug 25–Sep 8."},
	{schedule.Line{Code: schedule.CodeBookBy, On: day("2026-07-01"), Window: model.DayInterval{Low: day("2026-08-25"), Mid: day("2026-09-01"), High: day("2026-09-08")}}, "No butcher booked: call now, ask for Aug 25–Sep 8."},
	{schedule.Line{Code: schedule.CodeBookAhead, On: day("2026-07-25"), Q: []model.Quantity{wording.Days(14), wording.N(0), wording.Kg(265 * lb)}}, "Butcher Sat Jul 25, in 14 days, about 265 lb each then."},
	{schedule.Line{Code: schedule.CodeBookEve, On: day("2026-07-12"), At: at("2026-07-12", 6), Q: []model.Quantity{wording.N(4)}}, "Butcher Sun Jul 12, 6 am: 4 pigs. Load in the cool."},
	{schedule.Line{Code: schedule.CodeBookEve, On: day("2026-07-12"), Names: []string{"Dot", "Tank"}, Q: []model.Quantity{wording.N(0)}}, "Butcher Sun Jul 12: Dot and Tank. Load in the cool."},
	{schedule.Line{Code: schedule.CodeBookEveHeaviest, On: day("2026-07-12"), At: at("2026-07-12", 6), Names: []string{"Dot", "Tank"}, Q: []model.Quantity{wording.N(2)}}, "Butcher Sun Jul 12, 6 am: 2 pigs, by weight Dot and Tank. Load in the cool."},
	{schedule.Line{Code: schedule.CodeBookFeed, On: day("2026-07-12"), At: at("2026-07-11", 12)}, "Feed off 12 to 18 hours before slaughter, so not before today 12 pm; the butcher's word counts. Water always."},
	{schedule.Line{Code: schedule.CodeRefillSeenEmpty, Grade: schedule.Danger, Names: []string{"the feeder"}, At: at("2026-07-11", 8), Q: []model.Quantity{wording.Kg(50), wording.N(0)}}, "⚠ Feed: the feeder seen empty today 8 am, no fill since. Pour 110 lb and text it, or text what you found."},
	{schedule.Line{Code: schedule.CodeCheckSilenceLast, On: day("2026-06-13"), Q: []model.Quantity{{Value: 28, Unit: model.Days}}}, "No word since Sat Jun 13, 28 days: only rounds, drug and butcher days, your reminders till you text."},
	{schedule.Line{Code: schedule.CodeColdFreeze, On: day("2026-07-11"), Q: []model.Quantity{{Value: -8, Unit: model.Celsius}}}, "Hard freeze tonight: 18 °F. Drain hoses, check nipples in the morning; no water is no feed."},
	{schedule.Line{Code: schedule.CodeBookFeedHours, On: day("2026-07-12")}, "Feed off 12 to 18 hours before slaughter, as the butcher says. Water always."},
	{schedule.Line{Code: schedule.CodeBookClear, On: day("2026-07-12"), Names: []string{"all"}}, "Clear by what you told: all pigs."},
	{schedule.Line{Code: schedule.CodeWithdrawalConflict, Grade: schedule.Danger, Names: []string{"Fern"}, On: day("2026-07-12"), At: at("2026-07-13", 18)}, "⚠ NOT CLEAR for the butcher Sun Jul 12: Fern, clear Mon 6 pm. Move the day or hold them back."},
	{schedule.Line{Code: schedule.CodeWithdrawalConflict, On: day("2026-07-12"), At: at("2026-07-13", 18)}, "NOT CLEAR for the butcher Sun Jul 12: clear Mon 6 pm. Move the day or hold them back."},
	{schedule.Line{Code: schedule.CodeWithdrawalUnknown, Names: []string{"Fern"}, On: day("2026-07-25")}, "NOT CLEAR: Fern, withdrawal days unknown; butcher Sat Jul 25. Read the label or ask the vet, then text the days."},
	{schedule.Line{Code: schedule.CodeHeatWatch, On: day("2026-07-12"), Q: []model.Quantity{celsius(28)}}, "Warm tomorrow: 82 °F. Shade, water that runs."},
	{schedule.Line{Code: schedule.CodeHeatAlert, On: day("2026-07-12"), Q: []model.Quantity{celsius(31)}}, "Hot tomorrow: 88 °F. Wet the wallow, check every nipple, move nothing by day."},
	{schedule.Line{Code: schedule.CodeHeatDanger, Grade: schedule.Danger, On: day("2026-07-12"), Q: []model.Quantity{celsius(34)}}, "⚠ Dangerous heat tomorrow: 93 °F. Wallow, shade, cool water before noon. Panting with open mouth or down: call the vet."},
	{schedule.Line{Code: schedule.CodeHeatEmergency, Grade: schedule.Danger, On: day("2026-07-12"), Q: []model.Quantity{celsius(37)}}, "⚠ Deadly heat tomorrow: 99 °F. Wallow, shade, cool water, look every hour. Panting with open mouth or down: call the vet."},
	{schedule.Line{Code: schedule.CodeColdNight, On: day("2026-07-12"), Q: []model.Quantity{celsius(2), celsius(10), wording.Kg(50 * lb)}}, "Cold tomorrow: 36 °F, they bear 50 °F at 50 lb. Deep dry straw, windy side shut."},
	{schedule.Line{Code: schedule.CodeColdFreeze, On: day("2026-07-12"), Q: []model.Quantity{celsius(-6)}}, "Hard freeze tomorrow: 21 °F. Drain hoses, check nipples in the morning; no water is no feed."},
	{schedule.Line{Code: schedule.CodeRationShort, Names: []string{"soybean meal 48"}, On: day("2026-07-11"), Q: []model.Quantity{percent(0.74), percent(0.77), wording.Kg(176 * lb), wording.Kg(1.5 * lb)}}, "Mix: 0.74% lysine, needs 0.77% at 176 lb. A batch: soybean meal 48 +1.5 lb."},
	{schedule.Line{Code: schedule.CodeRationRich, On: day("2026-07-11"), Q: []model.Quantity{percent(0.84), percent(0.67), wording.Kg(220 * lb)}}, "Mix: 0.84% lysine, 0.67% is enough at 220 lb."},
	{schedule.Line{Code: schedule.CodeStockShort, Names: []string{"corn", "soybean meal 48"}, On: day("2026-07-18"), Q: []model.Quantity{wording.Kg(104 * lb), wording.Kg(148 * lb), wording.Kg(8 * lb), wording.Kg(46 * lb)}}, "Shed short for Sat Jul 18: corn 105 of 150 lb and soybean meal 48 8 of 46 lb. Buy before."},
	{schedule.Line{Code: schedule.CodeStockShort, Names: []string{"corn"}, On: day("2026-07-11"), Q: []model.Quantity{wording.Kg(104 * lb), wording.Kg(148 * lb)}}, "Shed short today: corn 105 of 150 lb. Mix what it holds; buy the rest."},
	{schedule.Line{Code: schedule.CodeStockEve, Names: []string{"corn"}, On: day("2026-07-12"), Q: []model.Quantity{wording.Kg(104 * lb), wording.Kg(148 * lb)}}, "Shed short for tomorrow, Sun Jul 12: corn 105 of 150 lb."},
	{schedule.Line{Code: schedule.CodeOwnReminder, Names: []string{"check the wire"}, On: day("2026-07-11")}, "Reminder: check the wire."},
	{schedule.Line{Code: schedule.CodeCapacityFeed, Names: []string{"north"}, On: day("2026-08-01"), Q: []model.Quantity{wording.Kg(300 * lb), wording.Kg(310 * lb)}}, "From Sat Aug 1 full feeders (300 lb) may not last between two visits: up to 310 lb is eaten. Add one or fill between."},
	{schedule.Line{Code: schedule.CodeCapacityNipples, Q: []model.Quantity{wording.N(1), wording.N(2)}}, "Drinkers: 1 there, 2 wanted. Add one before it gets hot."},
	{schedule.Line{Code: schedule.CodeAlarmOut, Grade: schedule.Danger, At: at("2026-07-11", 8), Q: []model.Quantity{wording.N(2)}}, "⚠ Pigs out, reported today 8 am, not called in. Counted? Text: pigs in."},
	{schedule.Line{Code: schedule.CodeAlarmDown, Grade: schedule.Danger, Names: []string{"Fern"}, At: at("2026-07-11", 8), Q: []model.Quantity{wording.N(2)}}, "⚠ Pig down: Fern, reported today 8 am. Vet called? Text how it is."},
	{schedule.Line{Code: schedule.CodeAlarmNoWater, Grade: schedule.Danger, At: at("2026-07-11", 8), Q: []model.Quantity{wording.N(2)}}, "⚠ No water reported today 8 am, no fill since. If long dry or any pig staggers: vet before water."},
	{schedule.Line{Code: schedule.CodeAlarmNoFeed, Grade: schedule.Danger, At: at("2026-07-11", 8), Q: []model.Quantity{wording.N(2)}}, "⚠ No feed reported today 8 am, no fill since."},
	{schedule.Line{Code: schedule.CodeAlarmFence, Grade: schedule.Danger, At: at("2026-07-11", 8), Q: []model.Quantity{wording.N(2)}}, "⚠ Fence down reported today 8 am. Text the voltage when it is up: fence 6.2."},
	{schedule.Line{Code: schedule.CodeAlarmFenceLow, On: day("2026-07-11"), Q: []model.Quantity{kv(2.5), kv(4)}}, "Fence 2.5 kV on Sat Jul 11: under 4 kV pigs test it. Check ground rod and weeds, power off first."},
	{schedule.Line{Code: schedule.CodeSeasonOver, On: day("2026-07-11"), Q: []model.Quantity{wording.N(7), wording.N(6)}}, "Season over Sat Jul 11: 7 pigs, 6 to butcher or sold. All nudges stop. One thing for next year? Text: note ..."},
	{schedule.Line{Code: schedule.CodeOrder, On: day("2026-04-01"), Q: []model.Quantity{wording.N(4)}}, "Pigs again? 4 pigs came Wed Apr 1. Order them now and ask the butcher for a day. Then text: expect 4 pigs and the day."},
	{schedule.Line{Code: schedule.CodeOrder, On: day("2026-04-01"), Q: []model.Quantity{wording.N(1)}, Names: []string{"more shade", "worm earlier"}}, "Pigs again? 1 pig came Wed Apr 1. Order them now and ask the butcher for a day. Then text: expect 1 pig and the day. You noted: more shade and worm earlier."},
	{schedule.Line{Code: schedule.CodeReady, On: day("2026-08-01"), Q: []model.Quantity{wording.Days(10), wording.N(4)}}, "Pigs come Sat Aug 1, in 10 days, 4 of them. Before then: bed the shelter, test the fence, let each drinker run, get feed in."},
	{schedule.Line{Code: schedule.CodeReady, On: day("2026-08-01"), Q: []model.Quantity{wording.Days(1), wording.N(0)}}, "Pigs come Sat Aug 1, in 1 day. Before then: bed the shelter, test the fence, let each drinker run, get feed in."},
	{schedule.Line{Code: schedule.CodeCheckSilence, On: day("2026-07-02"), Q: []model.Quantity{wording.Days(9)}}, "No word since Thu Jul 2, 9 days: figures are guesses. Text one level, as in: half left."},
	{schedule.Line{Code: schedule.CodeCheckFeedLevel, Names: []string{"north"}}, "How full is the feed in north?"},
	{schedule.Line{Code: schedule.CodeCheckFeedLevel, Names: []string{"feeder"}}, "How full is the feed in the feeder?"},
	{schedule.Line{Code: schedule.CodeCheckFeedLevel}, "How full is the feed?"},
	{schedule.Line{Code: schedule.CodeCheckWaterLevel, Names: []string{"blue", "white"}}, "How full is the water in blue and white?"},
	{schedule.Line{Code: schedule.CodeCheckQuestion, Names: []string{"r7", "weigh", "which_animal"}, At: at("2026-07-11", 8)}, "Still open from today 8 am, weighing: Which pig? Answer it, or text: cancel."},
	{schedule.Line{Code: schedule.CodeCheckQuestion, Names: []string{"r7", "refill", "bag_size"}, At: at("2026-07-11", 8)}, "Still open from today 8 am, feed: How much does one hold? Answer it, or text: cancel."},
	{schedule.Line{Code: schedule.CodeCheckQuestion, Names: []string{"r7", "setup", "pigs"}, At: at("2026-07-11", 8)}, "Still open from today 8 am, set-up: How many pigs came, and about how heavy? Answer it, or text: cancel."},
	{schedule.Line{Code: schedule.CodeCheckNotFilled, Names: []string{"refill", "water"}, On: day("2026-07-11")}, "No fill logged Sat Jul 11: feed and water. Done? Text it, as in: filled 150, full."},
	{
		schedule.Line{Code: schedule.CodeOddFeedMore, Names: []string{"north"}, On: day("2026-07-04"), At: at("2026-07-11", 8), Q: []model.Quantity{wording.Kg(190 * lb), wording.Kg(115 * lb)}, Choices: []string{schedule.ChoiceSpilled, schedule.ChoiceOthers, schedule.ChoiceAte, schedule.ChoiceNotFull}},
		"Feed in north: 190 lb gone since Sat Jul 4, 115 lb expected. What took the rest?",
	},
	{
		schedule.Line{Code: schedule.CodeOddFeedLess, Names: []string{"north"}, On: day("2026-07-04"), At: at("2026-07-11", 8), Q: []model.Quantity{wording.Kg(80 * lb), wording.Kg(115 * lb)}},
		"Feed in north: only 80 lb gone since Sat Jul 4, 115 lb expected. Look at drinkers, each pig, the gate. What was it?",
	},
	{
		schedule.Line{Code: schedule.CodeOddFeedEmpty, Names: []string{"north"}, On: day("2026-07-11"), At: at("2026-07-11", 8), Q: []model.Quantity{wording.Kg(115 * lb)}},
		"Feed in north: empty today, some 115 lb should be left. Knock it and look inside: is only the trough empty?",
	},
	{
		schedule.Line{Code: schedule.CodeOddWaterMore, Names: []string{"blue"}, On: day("2026-07-04"), At: at("2026-07-11", 8), Q: []model.Quantity{wording.L(190), wording.L(50)}},
		"Water in blue: 50 gal gone since Sat Jul 4, 13 gal expected. Look for a leak. What was it?",
	},
	{
		schedule.Line{Code: schedule.CodeOddWaterLess, Names: []string{"blue", "white"}, On: day("2026-07-04"), At: at("2026-07-11", 8), Q: []model.Quantity{wording.L(50), wording.L(190)}},
		"Water in blue and white: only 13 gal gone since Sat Jul 4, 50 gal expected. Does every nipple run? What was it?",
	},
	{
		schedule.Line{Code: schedule.CodeOddGrowth, Names: []string{"Fern"}, On: day("2026-06-13"), Q: []model.Quantity{wording.Kg(9 * lb), wording.Kg(46 * lb), wording.Days(28)}},
		"Fern: only +9 lb since Sat Jun 13, 28 days; +46 lb expected. Look it over. What may it be?",
	},
	{
		schedule.Line{Code: schedule.CodeOddGrowth, Names: []string{"Fern", "Otis"}, On: day("2026-06-13"), Q: []model.Quantity{wording.Kg(9 * lb), wording.Kg(46 * lb), wording.Days(28)}},
		"Fern and Otis: only +9 lb each since Sat Jun 13, 28 days; +46 lb each expected. Look them over. What may it be?",
	},
	{
		schedule.Line{Code: schedule.CodeMissedFeed, Names: []string{"north"}, On: day("2026-07-11"), Q: []model.Quantity{wording.Kg(190 * lb), wording.Kg(155 * lb), percent(4)}},
		"Feed in north, Sat Jul 11: 190 lb gone, I had said 155 lb. I now reckon with +4%.",
	},
	{
		schedule.Line{Code: schedule.CodeMissedFeed, Names: []string{"north"}, On: day("2026-07-11"), Q: []model.Quantity{wording.Kg(130 * lb), wording.Kg(155 * lb)}},
		"Feed in north, Sat Jul 11: 130 lb gone, I had said 155 lb.",
	},
	{
		schedule.Line{Code: schedule.CodeOutgrownNipple, On: day("2026-07-16"), Q: []model.Quantity{{Value: 55, Unit: model.Centimetres}, wording.Kg(50)}},
		"Nipples: raise to 21.5 in by Thu Jul 16; the lightest weighs 110 lb then. About 2 in above its shoulder.",
	},
	{
		schedule.Line{Code: schedule.CodeOutgrownShelter, On: day("2026-07-16"), Q: []model.Quantity{{Value: 3.2, Unit: model.SquareMetres}, {Value: 0.8, Unit: model.SquareMetres}, wording.Kg(50)}},
		"Shelter: 34 sq ft of bedding for all by Thu Jul 16; they weigh 110 lb then.",
	},
	{
		schedule.Line{Code: schedule.CodeOutgrownShade, On: day("2026-07-16"), Q: []model.Quantity{{Value: 2.24, Unit: model.SquareMetres}, {Value: 0.56, Unit: model.SquareMetres}, wording.Kg(45.4)}},
		"Shade: 24 sq ft for all by Thu Jul 16; they weigh 100 lb then.",
	},
	{schedule.Line{Code: schedule.CodeCheckGone, On: day("2026-07-10")}, "Did the pigs go Fri Jul 10? No word: I take it they did, and rest."},
	{schedule.Line{Code: schedule.CodeCheckGoneSome, On: day("2026-07-10")}, "Did those booked go Fri Jul 10?"},
	{schedule.Line{Code: schedule.CodeKeepAsking, Names: []string{"weigh"}}, "Weighing: passed over three times. Keep, monthly, or stop?"},
	{schedule.Line{Code: schedule.CodeCatchUpDown, At: at("2026-07-10", 8), On: day("2026-07-11"), Q: []model.Quantity{{Value: 26, Unit: model.Ratio}}}, "I was off from Fri Jul 10, 8 am, 26 hours. Texts sent meanwhile may be lost: what is missing?"},
	{schedule.Line{Code: schedule.CodeCatchUpAway, On: day("2026-07-11"), Q: []model.Quantity{wording.Days(10)}}, "Back from 10 days away. Text what was filled, and one level of feed and water."},
	{schedule.Line{Code: schedule.CodeWellFeed, On: day("2026-07-19"), At: at("2026-07-22", 7), Q: []model.Quantity{wording.Days(8)}}, "Feed: safe to Sun Jul 19."},
	{schedule.Line{Code: schedule.CodeWellWater, On: day("2026-07-19"), At: at("2026-07-22", 7), Q: []model.Quantity{wording.Days(8)}}, "Water: safe to Sun Jul 19."},
	{schedule.Line{Code: schedule.CodeWellWeight, On: day("2026-07-11"), Q: []model.Quantity{wording.Kg(176 * lb), wording.Kg(161 * lb), wording.Kg(190 * lb), wording.N(4)}}, "4 pigs about 176 lb (161–190)."},
	{schedule.Line{Code: schedule.CodeWellTarget, Window: model.DayInterval{Low: day("2026-08-25"), Mid: day("2026-09-01"), High: day("2026-09-08")}, Q: []model.Quantity{wording.Kg(265 * lb)}}, "265 lb Aug 25–Sep 8."},
	{
		schedule.Line{Code: schedule.CodeWaterVisit, Look: true, Names: []string{"blue"}, On: day("2026-07-11"), At: at("2026-07-18", 7), Q: []model.Quantity{wording.L(300), wording.LD(50)}},
		"Today: fill blue, 79 gal; they draw 13 gal a day. Then safe past Sat Jul 18. First text how full it is.",
	},
	{
		schedule.Line{Code: schedule.CodeWaterVisit, Look: true, Names: []string{"blue", "white"}, On: day("2026-07-11"), At: at("2026-07-18", 7), Q: []model.Quantity{wording.L(300), wording.LD(50)}},
		"Today: fill blue and white, 79 gal; they draw 13 gal a day. Then safe past Sat Jul 18. First text how full each is.",
	},
}

func celsius(c float64) model.Quantity { return model.Quantity{Value: c, Unit: model.Celsius} }
func percent(p float64) model.Quantity { return model.Quantity{Value: p, Unit: model.Percent} }
func kv(x float64) model.Quantity      { return model.Quantity{Value: x, Unit: model.Kilovolts} }

func TestNudgeLines(t *testing.T) {
	seen := map[string]bool{}
	for _, row := range lines {
		seen[row.line.Code] = true
		text, _ := us(t).Nudge(schedule.Nudge{Grade: row.line.Grade, Lines: []schedule.Line{row.line}})
		require.Equal(t, row.want, text)
		verdict, _, _ := strings.Cut(text, ". ")
		require.LessOrEqual(t, utf8.RuneCountInString(verdict), 110)
		require.NotEmpty(t, metric(t).Line(row.line))
	}
	for _, code := range schedule.Codes {
		require.True(t, seen[code], "no example of %s", code)
	}
}

// A change of more than half a batch is no advice.
func TestNudgeRationOutOfReach(t *testing.T) {
	h := orchard(t).add("2026-07-01", 600, true, model.Recipe{Ingredients: map[string]float64{"barley": 83, "peas": 17}}).herd()
	l := schedule.Line{Code: schedule.CodeRationShort, Names: []string{"peas"}, Q: []model.Quantity{percent(0.48), percent(1.07), wording.Kg(65 * lb), wording.Kg(178)}}
	require.Equal(t, "Mix: 0.48% lysine, needs 1.07% at 65 lb. It takes a richer protein feed than peas.", wording.Voice{Herd: h, Now: now}.Line(l))
}

func TestNudgeAllWell(t *testing.T) {
	var well []schedule.Line
	for _, row := range lines {
		if strings.HasPrefix(row.line.Code, "well_") {
			well = append(well, row.line)
		}
	}
	text, labels := us(t).Nudge(schedule.Nudge{Standing: true, Well: well, Buttons: []schedule.Button{schedule.ButtonDone}})
	require.Equal(t, "All is well on Sat Jul 11: nothing to do beyond the look-over.\n"+
		"Feed: safe to Sun Jul 19. Water: safe to Sun Jul 19. 4 pigs about 176 lb (161–190). 265 lb Aug 25–Sep 8.", text)
	require.Equal(t, []string{"Done"}, labels)
}

// Six lines at most, and nothing is left unsaid.
func TestNudgeHasSixLines(t *testing.T) {
	n := schedule.Nudge{
		Standing: true,
		Buttons:  []schedule.Button{schedule.ButtonDone, schedule.ButtonTomorrow, schedule.ButtonNextChore, schedule.ButtonStop},
	}
	for _, row := range lines[:9] {
		n.Lines = append(n.Lines, row.line)
	}
	text, labels := us(t).Nudge(n)
	require.Equal(t, 5, strings.Count(text, "\n"))
	for _, row := range lines[:9] {
		require.Contains(t, text, row.want)
	}
	require.Equal(t, []string{"Done", "Tomorrow", "Next chore day", "Stop this"}, labels)
}

func TestNudgeButtonsDiffer(t *testing.T) {
	_, labels := us(t).Nudge(schedule.Nudge{Buttons: []schedule.Button{
		schedule.ButtonDone, schedule.ButtonTomorrow, schedule.ButtonNextChore, schedule.ButtonStop, schedule.ButtonKeep, schedule.ButtonMonthly,
	}})
	require.Equal(t, []string{"Done", "Tomorrow", "Next chore day", "Stop this", "Keep", "Monthly"}, labels)
}

// A line that asks has its answers on buttons; beside other lines, in words.
func TestNudgeChoices(t *testing.T) {
	ask := schedule.Line{
		Code: schedule.CodeOddFeedMore, Names: []string{"north"}, On: day("2026-07-04"), Q: []model.Quantity{wording.Kg(190 * lb), wording.Kg(115 * lb)},
		Choices: []string{schedule.ChoiceSpilled, schedule.ChoiceOthers, schedule.ChoiceAte, schedule.ChoiceNotFull},
	}
	text, labels := us(t).Nudge(schedule.Nudge{Lines: []schedule.Line{ask}, Buttons: []schedule.Button{}})
	require.NotContains(t, text, "Text:")
	require.Equal(t, []string{"spilled or wasted", "other animals", "they ate it", "not full last time"}, labels)
	text, labels = us(t).Nudge(schedule.Nudge{Lines: []schedule.Line{lines[1].line, ask}, Buttons: []schedule.Button{schedule.ButtonDone}})
	require.Contains(t, text, "What took the rest? Text: spilled or wasted, other animals, they ate it or not full last time.")
	require.Equal(t, []string{"Done"}, labels)
	for _, code := range schedule.Choices {
		labels := us(t).Choices(schedule.Line{Choices: []string{code}})
		require.NotEmpty(t, labels[0], code)
		require.LessOrEqual(t, len(labels[0]), 20, code)
		require.NotContains(t, us(t).None(reading.None{Reason: code}, ""), "did not understand", code)
	}
}
