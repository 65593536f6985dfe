package wording

import (
	"troughbell/model"
)

// SetupSteps names the set-up questions in their order.
var SetupSteps = []string{"pigs", "target", "feeder", "water", "chores"}

// SetupQuestion says a set-up question with its labels; the last is always to
// skip it, which keeps the default that the question names.
func (v Voice) SetupQuestion(step string) (text string, labels []string) {
	units := model.US
	if v.Metric() {
		units = model.Metric
	}
	labels = append(append([]string{}, setupLabels[units][step]...), "skip")
	a := Args{Q: []model.Quantity{Kg(model.DefaultTargetKg)}, Names: []string{v.Clock(model.MinuteOf(v.Now))}}
	return v.say(partSetup, step, a), labels
}

// setupLabels are the likely answers to each set-up question.
var setupLabels = map[string]map[string][]string{
	model.US: {
		"target": {"250 lb", "265 lb", "280 lb"},
		"feeder": {"30 gal", "55 gal"},
		"water":  {"1 water barrel 55 gal", "2 water barrels 55 gal"},
		"chores": {"Sat 7 am", "Sun 7 am"},
	},
	model.Metric: {
		"target": {"110 kg", "120 kg", "130 kg"},
		"feeder": {"100 kg", "130 kg"},
		"water":  {"1 water barrel 200 l", "2 water barrels 200 l"},
		"chores": {"Sat 7:00", "Sun 7:00"},
	},
}

var setupSentences = catalogue{
	"pigs":          "How many pigs came, and about how heavy? As in: 4 pigs 48 lb. None yet: plan 4 pigs from may 2. Skip: I ask when it matters.",
	"pigs_metric":   "How many pigs came, and about how heavy? As in: 4 pigs 22 kg. None yet: plan 4 pigs from 2 May. Skip: I ask when it matters.",
	"target":        "What weight do you aim for? Skip: {q0}.",
	"target_metric": "What weight do you aim for? Skip: {q0}.",
	"feeder":        "How big is the feeder, in gallons or pounds? Skip: I learn it from your fills.",
	"feeder_metric": "How big is the feeder, in litres or kilos? Skip: I learn it from your fills.",
	"water":         "How many water barrels, and how big? As in: 2 barrels 55 gal. Skip: no word on water.",
	"water_metric":  "How many water barrels, and how big? As in: 2 barrels 200 l. Skip: no word on water.",
	"chores": "Which day are chores, at what hour shall I write, and is it {n0} there now? " +
		"As in: sat 7 am, it is 6:40 pm here. Skip: Sat 7 am, my clock.",
	"chores_metric": "Which day are chores, at what hour shall I write, and is it {n0} there now? " +
		"As in: Sat 7:00, it is 18:40 here. Skip: Sat 7:00, my clock.",

	"done":         "Set. {q0} about {d0}[ ({d1~d2:wide})].",
	"done_reached": "Set. {q0} is reached, as I figure it.",
	"done_unknown": "Set.",
	"feed":         "About {q0:feed} feed in all.",
	"unbooked":     "No butcher booked: ask for a day about then.",
	"unbooked_now": "No butcher booked: call now.",
	"booked":       "Butcher {d0}.",
	"assumed":      "Assumed:",
	"first":        "Now text what goes in, as in: {n0}. \"help start\" has the first week.",

	"week_head":  "The first week. Text things like:",
	"week_fill":  "{d0}, what goes in: {n0}",
	"week_look":  "{d0}, do all eat and drink? Else: {n0}",
	"week_level": "{d0}, how full it is, and I learn what they eat: {n0}",
	"week_weigh": "{d0}, a tape: {n0}",
	"week_book":  "{d0}, the butcher: {n0}",
	"week_round": "{t0} I write what to fill on your round.",
	"pigs_none":  "No pigs yet: text \"4 pigs 48 lb\" when they come.",
}
