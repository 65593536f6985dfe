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
}
