package wording

// answerSentences say the answers of package answer, which fills them. Phrases,
// said with [Voice.Phrase], stand inside of other sentences.
var answerSentences = catalogue{
	"why_nothing": "Ask me something first, then: why?",
	"why_plain":   "That is as it was recorded; nothing was computed.",
	"no_such_pig": "I know no pig called {n}.",
	"pig_gone":    "{N}: not in the herd any more.",
	"with_more":   "With {q0|pig|pigs} more:",
	"with_fewer":  "With {q0|pig|pigs} fewer:",
	"others":      "the others",
	"the_pig":     "the pig",

	// {d0} {d1~d2} the day with its range; {q0} the target, {q1} days until.
	"target_day":       "[{N}: ]{q0} about {d0}[ ({d1~d2:wide})], in {q1}.",
	"target_reached":   "[{N}: ]{q0} is reached, as I figure it.",
	"group_since":      "those of {d0}",
	"group_day":        "{N}: {d0}.",
	"target_not_clear": "NOT CLEAR: {n}, withdrawal days unknown. Read the label, text the days; no butcher before.",
	"target_blocked":   "Not before {d0}: withdrawal runs to {t0}.",
	"target_ask":       "No butcher booked: ask for {d0~d1}.",
	"booked_not_clear": "Butcher {d0}: NOT CLEAR, {n} to {t0}. Move the day.",
	"booked_weight":    "Butcher {d0}[: about {q0} then ({q1~q2})].",
	"by_day_yes":       "By {d0} yes: [{n} ]about {q0} ({q1~q2}).",
	"by_day_no":        "By {d0} not yet: [{n} ]about {q0} ({q1~q2}).",

	// {q0} weight, {q1~q2} range, {q3} gain; {d0} where it is not today.
	"one_weight":  "{N} about {q0} ({q1~q2})[ on {d0}], gaining {q3}.",
	"mean_weight": "About {q0} each ({q1~q2})[ on {d0}], gaining {q3}.",
	"weight_part": "{n} {q0}",
	"gain_part":   "{n} {q3}",

	"feed_lasts":       "Feed lasts past {d0}: safe to {t0:edge}[, likely to {t1:likely}].",
	"feed_short":       "Feed does not last to {d0}: safe to {t0:edge}[, likely to {t1:likely}].",
	"feed_out":         "Feed may be out already: likely to {t1:likely}. I calculate; nobody has looked.",
	"feed_gone":        "Feed is out, as I calculate; nobody has looked. Look now.",
	"feed_amount":      "About {q0:feed} left ({q1~q2:feed}), they eat {q3:feed}.",
	"feeder_part":      "{n} {q0:feed}, safe to {t0:edge}",
	"feeder_part_out":  "{n} may be out",
	"feeder_small":     "From about {d0} full feeders no longer last from visit to visit.",
	"feed_off":         "Butcher {d0}: feed off {t0}, water on[; about {?q0:feed} would be left].",
	"feed_takes":       "To mix for it: {n*0:feed}.",
	"feed_need":        "About {q0:feed} feed to {d0} ({q1~q2:feed})[, {?q3:up|batch|batches}].",
	"feed_need_target": "About {q0:feed} feed to {q4} about {d0} ({q1~q2:feed})[, {?q3:up|batch|batches}].",
	"next_pour":        "{d0}: pour {q0:feed}[, {?q1|batch|batches}]: {n*2:feed}. Lasts past {t0:day}.",

	"water_lasts":  "Water lasts past {d0}: safe to {t0:edge}[, likely to {t1:likely}].",
	"water_short":  "Water does not last to {d0}: safe to {t0:edge}[, likely to {t1:likely}].",
	"water_out":    "Water may be out already: likely to {t1:likely}. I calculate; nobody has looked.",
	"water_gone":   "⚠ Water is out, as I calculate; nobody has looked. Look now; if long dry, vet before water.",
	"water_amount": "About {q0} left, they draw {q1}.",
	"barrel_part":  "{n} {q0}",
	"wallow_dry":   "Wallow dry about {d0}[ ({d1~d2:wide})].[ To fill it: about {?q0}.]",

	"heat_normal":     "{d0}: no heat trouble, {q0}.",
	"heat_watch":      "{d0}: warm for pigs, {q0}. Shade and water that runs.",
	"heat_alert":      "{d0}: hot for pigs, {q0}. Shade, wet wallow; move nothing by day.",
	"heat_danger":     "⚠ {d0}: dangerous heat, {q0}. Wallow, shade, cool water; panting with open mouth: call the vet.",
	"heat_emergency":  "⚠ {d0}: deadly heat, {q0}. Wallow, shade, cool water, look every hour; panting with open mouth: call the vet.",
	"heat_guessed":    "No temperature told: a guess from the season. Text the day's high.",
	"heat_rh_assumed": "Humidity not told: {q1} assumed.",

	"ration_ok":      "The mix is enough: lysine {q0:fine}, they need {q1:fine} at {q2}.",
	"ration_short":   "The mix is short: lysine {q0:fine}, they need {q1:fine} at {q2}.",
	"ration_change":  "To each batch: {n*5:sign}. Protein now {q3}, energy {q4}.",
	"ration_far":     "It takes a richer protein feed than {n}. Protein now {q3}, energy {q4}.",
	"ration_rest":    "Protein {q3}, energy {q4}.",
	"ration_over":    "More {n} than pigs of this weight should get.",
	"ration_cheaper": "Cheapest at your prices: {n*2:feed}; {q0:per}, now {q1:per}.",
	"ration_step":    "From about {d0} ({q1}) {q0} of {n} a batch will do.",
	"ration_unknown": "No figures for {n}: counted as nothing.",

	"yield":     "[{N}: ]about {q0} of meat ({q1~q2}), {q3} hanging, from {q6} live on {d0}.",
	"yield_all": "{q0|pig|pigs}: about {q1} of meat, {q2} hanging.",

	"freezer":        "Freezer: about {q0|cubic foot|cubic feet}.",
	"freezer_metric": "Freezer: about {q1}.",
	"feed_per_gain":  "Feed per weight gained: {q0} ({q1~q2})[, {q3:per} of gain].",

	"cost":                 "{q0} so far, about {q1} by the butcher: {q2:per} hanging, {q3:per} live.",
	"cost_over":            "{q1} in all: {q2:per} hanging, {q3:per} live.",
	"cost_unpriced_metric": "{q4:feed} of feed has no price yet. Text: bought 250 kg barley 60.",
	"cost_unpriced":        "{q4:feed} of feed has no price yet. Text: bought 500 lb corn 60.",

	"worming":             "Worming due {d0}[: {n}]. Dung test first, or by the label; your vet knows what fits.",
	"worming_now":         "Worming is due[: {n}]. Dung test first, or by the label; your vet knows what fits.",
	"last_dose":           "With the {q0} you gave, a last dose by {t0} is clear for {d0}; the label rules.",
	"last_dose_gone":      "With the {q0} you gave, any dose now is too late for {d0}: ask the vet.",
	"worming_blocked":     "No worming now: due {d0}, but it may not be clear by the butcher. Ask the vet.",
	"worming_blocked_now": "No worming now: it is due, but may not be clear by the butcher. Ask the vet.",
	"move":                "Pen move due {d0}[, out of {n}].",
	"move_now":            "Pen move is due[, out of {n}].",

	"clear_unknown":      "NOT CLEAR: {n}. Withdrawal days unknown: read the label or ask the vet, then text the days.",
	"clear_at":           "NOT CLEAR: {n}, clear {t0} by the days you gave. The label rules.",
	"clear_already":      "Clear since {t0} by the days you gave[: {n}]. The label rules.",
	"clear_never":        "Clear: no treatment on file[ for {n}].",
	"clear_part":         "{N}: {t0}.",
	"clear_part_unknown": "{N}: days unknown.",
	"clear_for":          "Butcher {d0}: clear.",
	"clear_on":           "On {d0}: clear.",
	"not_clear_for":      "Butcher {d0}: NOT CLEAR.",
	"not_clear_on":       "On {d0}: NOT CLEAR.",

	// {q0} pigs, {q1} target, {q2} feed, {q3} feeders, {q4} barrels, {q5}
	// nipples, {q6} shelter, {q7} shade, {q8} pen each, {q9} weight at the start, {q10} a
	// drum;
	// {d0} {d1~d2} finish, {d3} book by, {d4} start.
	"plan":         "{q0|pig|pigs} from {d4}: {q1} about {d0}[ ({d1~d2:wide})], {q2:feed} feed. Book by {d3}.",
	"plan_late":    "{q0|pig|pigs} from {d4}: {q1} about {d0}[ ({d1~d2:wide})], {q2:feed} feed. Book now.",
	"plan_things":  "{q3|feeder|feeders} and {q4|water barrel|water barrels} of {q10}, {q5|nipple|nipples}.",
	"plan_room":    "Shelter {q6}, shade {q7}, pens {q8} each.",
	"plan_nipples": "{q2|feeding place|feeding places}. Nipples {q0} high at first, {q1} at the end.",
	"plan_fence":   "{q0|hot strand|hot strands} round a square pen: {q1} of wire.",
	"plan_money":   "Feed about {q0}, at the {q1:per} you pay.",
	"plan_assumed": "Assumed: {q9} each at the start.",

	"due_more":    "And {q0} more.",
	"nothing_due": "Nothing due in the next two weeks but the round on {d0}.",
	"past":        "{d0}: {n0}.",
	"no_past":     "Nothing on file[ for {n}].",
	"sizes":       "{n0}.",
}
