package wording

// questionSentences ask back, by the code of the Clarify. {n} are the names in
// doubt, {q0}... the quantities that were said or expected, {on} the day of
// what is to be recorded.
var questionSentences = catalogue{
	"which_animal":       "Which pig[ is {q0:exact}]?",
	"which_feeder":       "Which feeder[ got {q0:exact}]?",
	"which_barrel":       "Which water barrel[ got {q0:exact}]?",
	"which_pen":          "Which pen?",
	"feed_or_water":      "Feed or water[: {q0:exact}]?",
	"girth_or_weight":    "{N}[ {q0:bare}]: girth or weight?",
	"implausible_weight": "[{N}: ]{q0} does not fit[; I expected about {q1}]. Which is right?",
	"implausible_girth":  "[{N}: ]girth {q0:exact} does not fit[; I expected about {q1}]. Which is right?",
	"implausible_pour":   "{q0:exact} does not fit[ in {n}][: I figure room for {q1:feed}]. Which is right?",
	"implausible_water":  "{q0:exact} does not fit[ in {n}]. Which is right?",
	"bag_size":           "How much does one {n} hold? I keep it.",
	"withdrawal_days":    "How many withdrawal days does the label say? Until then not clear.",
	"when_given":         "When was the last dose given?",
	"died_or_out":        "[{N}: ]died, escaped, or only a tag lost?",
	"near_name":          "Is that {n}?",
	"which_kind":         "What is that about?",
	"date_unclear":       "Which day?",
	"zone_guess":         "Which time zone is that?",
	"units":              "Pounds or kilos?",
	"amount":             "How much?",
	"how_many":           "How many pigs?",
	"confirm":            "Is that right?",
}

// choicePhrases are the labels of choices by their code. A tap sends the label
// back as a text.
var choicePhrases = catalogue{
	"yes":        "yes",
	"no":         "no",
	"neither":    "neither",
	"feed":       "feed",
	"water":      "water",
	"girth":      "girth",
	"weight":     "weight",
	"died":       "died",
	"out":        "escaped",
	"tag":        "lost a tag",
	"sold":       "sold",
	"butchered":  "butchered",
	"pounds":     "pounds",
	"kilos":      "kilos",
	"just_now":   "just now",
	"today":      "today",
	"yesterday":  "yesterday",
	"all":        "all pigs",
	"both":       "both",
	"as_said":    "{q0:exact} is right",
	"not_record": "record nothing",
	"unknown":    "not known",
	"skip":       "skip",
}
