package wording

import "troughbell/model"

// Topics has one entry for each thing that help can be asked about.
var Topics = []Topic{
	{
		Name: "feed", Title: "Feed", Words: []string{"feeding", "feeder", "feed_left", "feed_need"},
		Kinds:  []model.Kind{"refill", "feed_level"},
		US:     []string{"filled FEEDER 150 lb, full", "FEEDER half left", "FEEDER tipped, lost 40 lb", "how much feed is left?"},
		Metric: []string{"filled FEEDER 70 kg, full", "FEEDER half left", "FEEDER tipped, lost 20 kg", "how much feed is left?"},
	},
	{
		Name: "water", Title: "Water", Words: []string{"barrel", "water_left", "drinker", "nipple"},
		Kinds:  []model.Kind{"water"},
		US:     []string{"water BARREL full", "water BARREL 40 gal", "how long does the water last?"},
		Metric: []string{"water BARREL full", "water BARREL 150 l", "how long does the water last?"},
	},
	{
		Name: "weigh", Title: "Weights and growth", Words: []string{"weight", "tape", "girth", "growth", "weighing"},
		Kinds:  []model.Kind{"weigh"},
		US:     []string{"PIG girth 38 length 42", "PIG 155 lb", "what do they weigh?"},
		Metric: []string{"PIG girth 96 length 107", "PIG 70 kg", "what do they weigh?"},
	},
	{
		Name: "butcher", Title: "Butcher and yield", Words: []string{"butcher_date", "target", "yield", "booking", "hung"},
		Kinds:  []model.Kind{"booked", "gone"},
		US:     []string{"how long till butcher?", "butcher sep 1 6 am 4 pigs", "PIG hung 190 lb"},
		Metric: []string{"how long till butcher?", "butcher 1 Sep 6:00 4 pigs", "PIG hung 86 kg"},
	},
	{
		Name: "health", Title: "Worming, treatments, sick pigs", Words: []string{"worming", "withdrawal", "sick", "treatment", "vet"},
		Kinds: []model.Kind{"worm", "treat", "sick"},
		US:    []string{"wormed all, ivermectin, 18 days withdrawal", "PIG limping back left", "when is PIG clear?"},
	},
	{
		Name: "alarm", Title: "Emergencies", Words: []string{"emergency", "emergencies", "out", "fence"},
		Kinds: []model.Kind{"alarm", "fence"},
		US:    []string{"pigs out", "no water", "fence 5.8"},
	},
	{
		Name: "mix", Title: "Mix, shed and ration", Words: []string{"ration", "ration_check", "batch", "shed"},
		Kinds:  []model.Kind{"recipe", "mixed", "stock"},
		US:     []string{"mix is 74 corn 23 soybean meal 3 mineral", "tag says 46% protein", "bought 500 lb corn $60", "tell me about shopping at 5 pm"},
		Metric: []string{"mix is 74 kg barley 23 kg soybean meal 3 kg mineral", "tag says 46% protein", "mixed 2 batches", "bought 250 kg barley 60"},
	},
	{
		Name: "heat", Title: "Weather, heat and wallow", Words: []string{"hot", "cold", "weather", "rain"},
		Kinds:  []model.Kind{"weather", "wallow"},
		US:     []string{"94 today, low 71", "half an inch of rain", "wallow hosed 30 min", "is it too hot?"},
		Metric: []string{"34 C today, low 22", "12 mm rain", "wallow hosed 30 min", "is it too hot?"},
	},
	{
		Name: "pens", Title: "Pens and moves", Words: []string{"pen", "rotation"},
		Kinds:  []model.Kind{"move"},
		US:     []string{"moved all to PEN", "PEN 50x80 ft", "PEN is clay", "when do they move?"},
		Metric: []string{"moved all to PEN", "PEN 400 m2", "PEN is clay", "when do they move?"},
	},
	{
		Name: "money", Title: "Money", Words: []string{"cost", "costs", "spending"},
		Kinds: []model.Kind{"spend"},
		US:    []string{"spent 61 straw", "sold PIG 300", "what do they cost?"},
	},
	{
		Name: "pictures", Title: "Pictures", Words: []string{"picture", "chart", "graph", "plot"},
		US: []string{"chart of the feed", "graph of PIG", "chart of costs", "graph of last season"},
	},
	{
		Name: "files", Title: "Files, out and in", Words: []string{"file", "export", "import", "report", "calendar", "csv", "zip"},
		Kinds: []model.Kind{"import"},
		US:    []string{"export", "import", "report last season", "calendar file"},
	},
	{
		Name: "settings", Title: "Herd and settings", Words: []string{"setup", "set-up", "pigs", "plan", "sizes"},
		Kinds: []model.Kind{"settings", "arrive"},
		US: []string{
			"4 pigs came 48 lb each", "expect 4 pigs apr 10", "target 265 lb", "chores sat 7 am", "write me at 6 am", "quiet 9 pm to 6 am",
			"FEEDER holds 300 lb", "water BARREL holds 55 gal, 2 nipples", "PEN 50x80 ft in use", "wallow 8x8 ft 8 in deep",
			"a bag is 50 lb", "our herd is Oak Hollow", "time zone Chicago", "metric units", "prices in USD", "mute weighing",
		},
		Metric: []string{
			"4 pigs came 22 kg each", "expect 4 pigs 10 Apr", "target 120 kg", "chores Sat 7:00", "write me at 6:00", "quiet 21:00 to 6:00",
			"FEEDER holds 150 kg", "water BARREL holds 200 l, 2 nipples", "PEN 400 m2 in use", "wallow 6 m2 20 cm deep",
			"a bag is 25 kg", "our herd is Oak Hollow", "time zone Berlin", "us units", "prices in EUR", "mute weighing",
		},
	},
	{
		Name: "nudges", Title: "Nudges and reminders", Words: []string{"reminder", "reminders", "quiet", "today"},
		Kinds:  []model.Kind{"remind", "note", "away", "expected", "done", "snooze"},
		US:     []string{"what's due?", "remind friday 6 pm: check the wire", "away jul 24 to aug 3", "tell me the evening before, 7 pm"},
		Metric: []string{"what's due?", "remind Friday 18:00: check the wire", "away 24 Jul to 3 Aug", "tell me the evening before, 19:00"},
	},
	{
		Name: "people", Title: "People, and what is kept", Words: []string{"privacy", "invite", "family", "helper", "delete"},
		US: []string{"people", "invite helper", "forget me", "privacy"},
	},
}
