package wording

// noneSentences say why nothing was recorded, by the reason of the None. {n0}
// is a pig's name, {n1} a feeder's.
var noneSentences = catalogue{
	"chatter":               "Nothing to record. Text what you did, or \"help\".",
	"plan":                  "Nothing recorded: that is a plan. Text it once it is done.",
	"hearsay":               "Nothing recorded: I keep only what you saw or did yourself.",
	"negation":              "Nothing recorded: as I read it, it was not done.",
	"not_this_herd":         "Nothing recorded: that is not about your pigs.",
	"not_understood":        "I did not understand that. Try \"{n0} girth 38\", \"fed 150, full\" or \"help\".",
	"not_understood_metric": "I did not understand that. Try \"{n0} girth 96\", \"fed 70, full\" or \"help\".",
	"future":                "Nothing recorded: that day is still to come. Text it once it is done, or \"remind me ...\".",
	"before":                "Nothing recorded: that day is before your pigs came. Which day was it?",
	"unit":                  "Nothing recorded: I do not take that unit. Use pounds or kilos, gallons or litres, inches or cm.",
	"stones":                "Nothing recorded: I take pounds or kilos. {q0:exact} st is {q1} lb or {q2} kg.",
	"empty":                 "That was empty. Text what you did, or \"help\".",
	"kept":                  "Kept as it was.",
	"settled":               "That question is settled. Nothing changed.",

	// What was answered to a question about what did not fit.
	"odd_ate":        "Kept: learned as what they eat.",
	"odd_ate_less":   "Kept: learned as what they eat. If it goes on, look again.",
	"odd_not_full":   "Left out of what I learn.",
	"odd_others":     "Left out of what I learn.",
	"odd_spilled":    "Left out of what I learn.",
	"odd_drinkers":   "Left out. A pint (half a litre) should run in a minute: clean the screens.",
	"odd_pig_off":    "Left out. Which one? Text it, as in: {n0} off feed. No better in a day: the vet.",
	"odd_stuck":      "Left out. Knock it, open the gate a little, look tomorrow.",
	"odd_trough":     "The feeder counts as it stood. Knock it, open the gate a little.",
	"odd_leak":       "Left out of what I learn. Mended and filled? Text it.",
	"odd_drank":      "Kept: learned as what they draw.",
	"odd_drank_less": "Kept: learned as what they draw. If it goes on, look again.",
	"odd_clogged":    "Left out. Clear it and see it run: no water is no feed.",
	"odd_rain":       "Left out of what I learn.",
	"odd_ill":        "Kept. A dung test or the vet tells. Text what you see, as in: {n0} off feed.",
	"odd_short":      "Kept. See that feed falls and every nipple runs.",
	"odd_bullied":    "Kept. One more place to eat and drink, away from the others, helps.",
	"went_all":       "Which ones went? Text it, as in: loaded {n0}.",
	"went_some":      "Which ones went? Text it, as in: loaded {n0}.",
	"went_not":       "Nudges go on. A new day? Text it, as in: butcher 15 Oct.",
	"odd_misread":    "That weighing counts for nothing now.",
}
