package wording_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot/reading"
	"troughbell/bot/wording"
	"troughbell/model"
)

var all = []string{model.All}

// echoes has facts with their phrase in US and in metric units.
var echoes = []struct {
	fact       model.Fact
	us, metric string
}{
	{model.Weigh{Animals: []string{"Fern"}, GirthCm: 38 * in}, "Fern girth 38 in", "Fern girth 38 in"},
	{model.Weigh{Animals: []string{"Fern"}, GirthCm: 38 * in, LengthCm: 42.5 * in}, "Fern girth 38 in length 42.5 in", "Fern girth 38 in length 42.5 in"},
	{model.Weigh{Animals: []string{"Fern"}, GirthCm: 97}, "Fern girth 97 cm", "Fern girth 97 cm"},
	{model.Weigh{Animals: []string{"Fern"}, WeightKg: 181 * lb, By: model.ByScale}, "Fern 181 lb", "Fern 181 lb"},
	{model.Weigh{Animals: []string{"Fern", "Clove"}, WeightKg: 80, By: model.ByScale}, "Fern and Clove 80 kg each", "Fern and Clove 80 kg each"},
	{model.Weigh{Animals: all, WeightKg: 200 * lb, By: model.ByEye}, "all about 200 lb", "all about 200 lb"},
	{model.Refill{FeedKg: model.Float(150 * lb), Full: true}, "fed 150 lb, full", ""},
	{model.Refill{Feeder: "north", FeedKg: model.Float(70), Fraction: model.Float(0.5)}, "fed north 70 kg, now half full", "fed north 70 kg, now half full"},
	{model.Refill{Feeder: "north", Full: true, FromEmpty: true}, "fed north from empty, full", "fed north from empty, full"},
	{model.FeedLevel{Feeder: "north", Fraction: model.Float(0.25)}, "north a quarter left", "north a quarter left"},
	{model.FeedLevel{Fraction: model.Float(0)}, "feeder empty", "feeder empty"},
	{model.FeedLevel{Days: model.Float(2)}, "feeder 2 days left", "feeder 2 days left"},
	{model.FeedLevel{Feeder: "south", FeedKg: model.Float(40 * lb)}, "south 40 lb left", ""},
	{model.Stock{Ingredient: "corn", FeedKg: model.Float(1000 * lb), Amount: model.Float(110), Currency: "USD"}, "bought 1,000 lb corn for $110", ""},
	{model.Stock{Count: model.Float(1)}, "bought 1 bag of feed", "bought 1 bag of feed"},
	{model.Mixed{Batches: model.Float(2.5)}, "mixed 2.5 batches", "mixed 2.5 batches"},
	{model.Mixed{FeedKg: model.Float(100)}, "mixed 100 kg", "mixed 100 kg"},
	{model.Recipe{Ingredients: map[string]float64{"corn": 74 * lb, "mineral premix": 3 * lb, "soybean meal 48": 23 * lb}}, "mix is 74 lb corn, 23 lb soybean meal 48, 3 lb mineral premix", ""},
	{model.Water{Full: true}, "water both full", "water Tonne full"},
	{model.Water{Barrel: "blue", Litres: model.Float(40 * gal)}, "water blue 40 gal", ""},
	{model.Water{Barrel: "blue", Fraction: model.Float(0), Seen: true}, "water blue empty", ""},
	{model.Water{Barrel: "blue", Fraction: model.Float(0.5), Seen: true}, "water blue half left", ""},
	{model.Water{Barrel: "blue", Fraction: model.Float(0.5)}, "water blue filled to half", ""},
	{model.WallowFill{}, "wallow topped up", ""},
	{model.WallowFill{Litres: model.Float(150)}, "wallow 150 l", "wallow 150 l"},
	{model.WallowFill{Minutes: model.Float(30)}, "wallow hosed 30 min", ""},
	{model.WallowFill{Dry: true}, "wallow dry", ""},
	{model.Worm{Treatment: model.Treatment{Animals: all, Product: "ivermectin", WithdrawalDays: model.Int(18)}}, "wormed all, ivermectin, 18 days withdrawal", ""},
	{model.Treat{Treatment: model.Treatment{Animals: []string{"Fern"}}}, "treated Fern", ""},
	{model.Move{Pen: "oak", Animals: []string{"Fern", "Basil"}}, "moved Fern and Basil to oak", ""},
	{model.Sick{Animals: []string{"Fern"}, Note: "limping back left"}, "Fern limping back left", ""},
	{model.Sick{Animals: []string{"Fern"}, Well: true, Note: "fine again"}, "Fern fine again", ""},
	{model.Sick{Animals: []string{"Fern"}, Well: true}, "Fern well again", ""},
	{model.Alarm{What: model.AlarmOut}, "pigs out", ""},
	{model.Alarm{What: model.AlarmOut, Over: true}, "pigs back in", ""},
	{model.Alarm{What: model.AlarmDown, Animals: []string{"Fern"}}, "Fern down", ""},
	{model.Alarm{What: model.AlarmNoWater}, "no water", ""},
	{model.Alarm{What: model.AlarmNoWater, Hours: model.Float(30)}, "no water for 30 hours", ""},
	{model.Fence{Kv: 5.8}, "fence 5.8 kV", ""},
	{model.Weather{HighC: model.Float(310.0 / 9), LowC: model.Float(195.0 / 9), RhPct: model.Float(60)}, "high 94 °F, low 71 °F, humidity 60%", ""},
	{model.Weather{HighC: model.Float(34)}, "high 34 °C", "high 34 °C"},
	{model.Arrive{Count: 2, Animals: []string{"Ash", "Elm"}, Sexes: []model.Sex{model.Gilt, model.Barrow}, WeightKg: model.Float(50 * lb), Born: ptr(day("2026-05-01"))}, "2 pigs came: Ash gilt and Elm barrow, 50 lb each, born Fri May 1", ""},
	{model.Arrive{Count: 3, Sexes: []model.Sex{model.Barrow, model.Gilt, model.Gilt}}, "3 pigs came: 1 barrow and 2 gilts", ""},
	{model.Gone{Animals: []string{"Fern"}, How: model.Died}, "Fern died", ""},
	{model.Gone{Animals: []string{"Fern"}, How: model.Sold, Amount: model.Float(300), Currency: "USD"}, "Fern sold for $300", ""},
	{model.Gone{Count: 2, How: model.Butchered}, "2 pigs butchered", ""},
	{model.Gone{Animals: []string{"Fern"}, How: model.Butchered, HangingKg: model.Float(119 * lb)}, "Fern hung 119 lb", ""},
	{model.Gone{Animals: all, How: model.Butchered, PackagedKg: model.Float(410 * lb)}, "packaged 410 lb", ""},
	{model.Booked{Day: day("2026-09-01"), Minute: model.Int(360), Count: 4}, "butcher Tue Sep 1, 6 am 4 pigs", "butcher Tue 1 Sep 6:00 4 pigs"},
	{model.Booked{Day: day("2026-09-01"), Cancelled: true}, "butcher Tue Sep 1 cancelled", ""},
	{model.AwayFrom{From: day("2026-07-24"), To: day("2026-08-03")}, "away Fri Jul 24 to Mon Aug 3", ""},
	{model.Expected{Day: day("2027-04-10"), Count: 4}, "expect 4 pigs Sat Apr 10 2027", ""},
	{model.Expected{Day: day("2027-04-10")}, "expect pigs Sat Apr 10 2027", ""},
	{model.Expected{Cancelled: true}, "expect no pigs", ""},
	{model.Spend{Amount: 61, Currency: "USD", What: "straw"}, "spent $61 on straw", ""},
	{model.Spend{Amount: 61.5, Currency: "EUR", What: "straw"}, "spent €61.50 on straw", ""},
	{model.Note{What: "second barrel next year"}, "note: second barrel next year", ""},
	{model.Remind{Day: day("2026-07-17"), Minute: model.Int(18 * 60), What: "check the wire"}, "remind Fri Jul 17, 6 pm: check the wire", "remind Fri 17 Jul 18:00: check the wire"},
	{model.Setting{Key: model.SetTarget, Number: model.Float(265 * lb)}, "target 265 lb", ""},
	{model.Setting{Key: model.SetChore, List: []string{"wed", "sat"}}, "chores Wed and Sat", ""},
	{model.Setting{Key: model.SetHour, List: []string{"07:00"}}, "nudges at 7 am", "nudges at 7:00"},
	{model.Setting{Key: model.SetQuiet, List: []string{"21:00", "06:00"}}, "quiet 9 pm to 6 am", "quiet 21:00 to 6:00"},
	{setting(model.SetSize, model.Thing{Name: "bag", FeedKg: model.Float(50 * lb)}), "a bag is 50 lb", ""},
	{setting(model.SetFeeder, model.Thing{Name: "north", CapacityL: model.Float(55 * gal)}), "feeder north holds 55 gal", ""},
	{setting(model.SetBarrel, model.Thing{Name: "blue", CapacityL: model.Float(55 * gal), Nipples: model.Int(2)}), "water barrel blue holds 55 gal, 2 nipples", ""},
	{setting(model.SetBarrel, model.Thing{Name: "barrel 1", CapacityL: model.Float(55 * gal)}), "water barrel 1 holds 55 gal", ""},
	{setting(model.SetFeeder, model.Thing{Name: "big feeder", CapacityKg: model.Float(300 * lb)}), "big feeder holds 300 lb", ""},
	{setting(model.SetFeeder, model.Thing{Name: "feeder", CapacityKg: model.Float(300 * lb)}), "feeder holds 300 lb", ""},
	{setting(model.SetPen, model.Thing{Name: "pen 1", AreaM2: model.Float(400)}), "pen 1 400 m2", ""},
	{setting(model.SetPen, model.Thing{Name: "oak", AreaM2: model.Float(400), InUse: &yes}), "pen oak 400 m2 in use", ""},
	{setting(model.SetPen, model.Thing{Name: "oak", Soil: model.Clay}), "pen oak clay soil", "pen oak clay soil"},
	{model.FeedLevel{Feeder: "north", Spilled: true, SpilledKg: model.Float(20 * lb)}, "north spilled 20 lb", ""},
	{model.FeedLevel{Spilled: true}, "feeder spilled", "feeder spilled"},
	{model.Weather{RainMm: model.Float(25.4)}, "rain 1 in", "rain 25.4 mm"},
	{model.Weather{RainMm: model.Float(20)}, "rain 20 mm", "rain 20 mm"},
	{model.Weather{Rained: true}, "heavy rain", "heavy rain"},
	{model.Recipe{Ingredients: map[string]float64{model.CompleteFeed: 50 * lb}, TagProteinPct: map[string]float64{model.CompleteFeed: 16}}, "complete feed tag says 16% protein", ""},
	{model.Recipe{Ingredients: map[string]float64{"corn": 77 * lb, "soybean meal 48": 23 * lb}, TagProteinPct: map[string]float64{"soybean meal 48": 46.5}}, "mix is 77 lb corn, 23 lb soybean meal 48; soybean meal 48 tag says 46.5% protein", ""},
	{model.Recipe{Ingredients: map[string]float64{"corn": 77 * lb, "soybean meal 48": 23 * lb}, ProteinPct: model.Float(15.5)}, "mix is 77 lb corn, 23 lb soybean meal 48; mix tests 15.5% protein", ""},
	{setting(model.SetWallow, model.Thing{AreaM2: model.Float(4.459), DepthM: model.Float(0.1524)}), "wallow 48 sq ft 6 in deep", ""},
}

func ptr[T any](v T) *T { return &v }

func TestEcho(t *testing.T) {
	for _, row := range echoes {
		require.NoError(t, row.fact.Check(), "%#v", row.fact)
		require.Equal(t, row.us, us(t).Echo(entry(row.fact)))
		if row.metric != "" {
			require.Equal(t, row.metric, metric(t).Echo(entry(row.fact)))
		}
	}
}

// Every kind of fact has a phrase of its own, whatever is in it.
func TestEchoOfEveryKind(t *testing.T) {
	tabled := map[model.Kind]bool{}
	for _, row := range echoes {
		tabled[row.fact.Kind()] = true
	}
	talk := map[model.Kind]bool{"done": true, "snooze": true, "told": true, "question": true, "settled": true, "void": true, "forecast": true, "import": true}
	for _, f := range model.Facts() {
		require.NotEmpty(t, us(t).Echo(entry(f)), f.Kind())
		require.True(t, tabled[f.Kind()] || talk[f.Kind()], "no row for %s", f.Kind())
	}
}

func TestEchoSaysDayAndTime(t *testing.T) {
	e := entry(model.Refill{Full: true})
	require.Equal(t, "fed, full", us(t).Echo(e))
	e.On = day("2026-07-04")
	require.Equal(t, "fed, full, Sat Jul 4", us(t).Echo(e))
	e.Minute = model.Int(18*60 + 30)
	require.Equal(t, "fed, full, Sat Jul 4, 6:30 pm", us(t).Echo(e))
	e.On = day("2025-12-31")
	require.Equal(t, "fed, full, Wed 31 Dec 2025, 18:30", metric(t).Echo(e))
	booked := reading.Entry{Act: reading.Fact{Fact: model.Booked{Day: day("2026-09-01"), Minute: model.Int(360)}}, On: day("2026-07-04"), Minute: model.Int(360)}
	require.Equal(t, "butcher Tue Sep 1, 6 am", us(t).Echo(booked))
	require.Empty(t, us(t).Echo(reading.Entry{Act: reading.Ask{Topic: "today"}}))
}

// A voice without a herd, before set-up, says US units and names nothing.
func TestEchoBeforeSetUp(t *testing.T) {
	v := wording.Voice{Now: time.Date(2026, 7, 11, 8, 0, 0, 0, time.UTC)}
	for _, f := range model.Facts() {
		require.NotEmpty(t, v.Echo(entry(f)))
	}
	require.Equal(t, "water all full", v.Echo(entry(model.Water{Full: true})))
}
