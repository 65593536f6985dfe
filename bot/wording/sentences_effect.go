package wording

// effectSentences say what a record changed, behind its echo. Sentences of
// several lines are cards for emergencies.
var effectSentences = catalogue{
	"feed_past":      "[{N} ]safe past {on}.",
	"feed_short":     "[{N} ]not to {on}: safe to {at:edge}.",
	"feed_empty":     "fill now[: {q0:feed} lasts to {on}].",
	"feed_out":       "[{N} ]may be out already: look now.",
	"feed_capacity":  "How much does {n} hold? Then I say how long it lasts.",
	"water_past":     "Safe past {on}.",
	"water_short":    "Not to {on}: safe to {at:edge}.",
	"water_out":      "May be out already: look now.",
	"water_capacity": "How much does {n} hold? Then I say how long it lasts.",
	"water_one_dry":  "The others: safe to {at:edge}. Leak or stuck nipple? Check it and fill.",
	"water_dry": "⚠ How long were they dry?\n" +
		"Under half a day and all normal: fill and watch. Half a day to a day: small drinks first, several short openings.\n" +
		"Over a day, or any pig staggering, twitching, blind or fitting: call the vet BEFORE water.\n" +
		"After a long dry spell never turn it on full: salt poisoning can kill.",
	"water_back_slowly": "⚠ Small drinks first, several short openings over hours, never full on.\n" +
		"May it be over a day, or any pig off feed, staggering, twitching, blind or fitting: call the vet BEFORE water.",
	"water_back_vet": "⚠ Call the vet BEFORE you open the water: they may have been dry for a day.\n" +
		"Then small sips only, over many hours. Turned on full after such a thirst, water can kill: salt poisoning.",
	"wallow_dry":    "Dry about {on}.",
	"wallow_rained": "Wallow dry about {on}.",

	"tape_weight": "About {q0} ({q1~q2}).",
	"gained":      "Up {q0} in {q1}.",
	"lost":        "Down {q0} in {q1}: look the pig over.",

	"clear":             "Clear {at} by the days you gave; the label rules.",
	"not_clear_unknown": "NOT clear: how many withdrawal days does the label say?",
	"not_clear_other":   "NOT clear: an earlier product's withdrawal days are unknown.",
	"booking_not_clear": "⚠ Butcher {on}: NOT CLEAR.",
	"sick_look": "Look: breathing, legs, belly, droppings, drinking.\n" +
		"Call the vet for hard breathing, staggering, a pig that will not rise, or a day off feed.\n" +
		"Keep it in shade with water near.",
	"fence_weak": "Weak: under {q0} pigs test it. Check ground rod and weeds, power off first.",

	"move_next": "Next move about {on}.",
	"reached":   "{q0} is reached, as I figure it.",
	"finish":    "{q0} about {on}[ ({d1~d3:wide})].",
	"died":      "I am sorry. Watch the others; local rules say where the carcass may go.",
	"left":      "{q0|pig|pigs} left; all plans follow.",
	"none_left": "That was the last pig: nudges stop.",

	"dressed": "{q0} of about {q1} live.",

	"price":                "{q0:per}.",
	"forecast_on":          "Heat and frost by MET Norway's forecast, the evening before. Nothing finer than a tenth of a degree is kept. To stop: location off.",
	"forecast_none":        "No forecast is fetched here; text the day's high, as in: 94 today.",
	"forecast_none_metric": "No forecast is fetched here; text the day's high, as in: 34 C today.",
	"home":                 "Nudges are on again.",
	"next_round":           "I write next {at}.",
	"target_day":           "About {on}[ ({d1~d3:wide})].",

	"weight_then":    "About {q0} then ({q1~q2}).",
	"not_clear_then": "⚠ {N} NOT CLEAR on {on}: withdrawal.",
	"away_feed":      "Feed is safe only to {at:edge}: someone must fill.",
	"away_feed_out":  "Feed may be out already: look and fill before you leave.",
	"away_water_out": "Water may be out already: look and fill before you leave.",
	"away_water":     "Water is safe only to {at:edge}: someone must fill.",

	"ration_ok":    "Lysine {q1:fine}, needs {q2:fine} at {q0}: enough.",
	"ration_short": "Lysine {q1:fine}, needs {q2:fine} at {q0}: short.",

	"heat_watch":     "Warm for pigs: shade, and water that runs.",
	"heat_alert":     "Hot for pigs: shade, wet wallow, cool water; no moving or loading by day.",
	"heat_danger":    "⚠ Dangerous heat for pigs: shade, wallow and cool water now. A pig down: call the vet.",
	"heat_emergency": "⚠ Deadly heat for pigs: shade, wallow and cool water now, look every hour. A pig down: call the vet.",

	"alarm_out": "⚠ Walk, do not chase; shake a feed bucket.\n" +
		"Someone between them and the road. Near traffic: call the police.\n" +
		"Power off, open the fence on their side, lead them in and count[ {q0}].\n" +
		"Then check the wire, and text: pigs in.",
	"alarm_down": "⚠ Call the vet now.\n" +
		"Hot day: shade, moving air, wet it with cool water in large drops; never an ice-cold bucket.\n" +
		"Look: breathing, legs, belly; could it have been dry, or eaten something? Keep the others off.\n" +
		"Dead, or more than one down: change nothing, call the vet.",
	"alarm_no_water": "⚠ How long were they dry?\n" +
		"Under half a day and all normal: fill and watch. Half a day to a day: small drinks first, several short openings.\n" +
		"Over a day, or any pig staggering, twitching, blind or fitting: call the vet BEFORE water.\n" +
		"After a long dry spell never turn it on full: salt poisoning can kill.",
	"alarm_no_feed": "⚠ Trough or barrel empty? Knock the feeder: it may be bridged.\n" +
		"Feed now, in several places so that all reach it.\n" +
		"Is water running? Pigs that do not drink do not eat.",
	"alarm_fence": "⚠ Count the pigs first[ ({q0})].\n" +
		"Power off before you touch the wire. Clear weeds and sticks, join the break, check the ground rod.\n" +
		"Power on, read the voltage at the far end, and text it: fence 6.2.",
	"alarm_over_out":      "Count: {q0}? Check the wire.",
	"alarm_over_no_water": "Watch them for a day: staggering or twitching, call the vet.",
}
