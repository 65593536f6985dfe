package wording

// lineSentences say the lines of nudges, by the codes of package schedule, where
// the arguments of each are told. {d0} is the line's day, {d1} {d2} {d3} the low,
// middle and high day of its window.
var lineSentences = catalogue{
	"all_well": "All is well on {on}: nothing to do beyond the look-over.",

	"refill_visit":            "{on:near}: [mix {?q1|batch|batches}, ]pour {q0:feed}: {n*2:feedbare}. Lasts past {at:day}.",
	"refill_visit_one":        "{on:near}: [mix {?q1|batch|batches}, ]pour {q0:feed} into {n}. Lasts past {at:day}.",
	"refill_brim":             "{on:near}: fill to the brim, {q0:feed}[, {?q1|batch|batches}]: {n*2:feedbare}. May not reach {at:day}: plan a fill between.",
	"refill_brim_one":         "{on:near}: fill {n} to the brim, {q0:feed}[, {?q1|batch|batches}]. May not reach {at:day}: plan a fill between.",
	"refill_midweek":          "Feed in {n}: safe only to {at:edge}, likely to {on:near}. Pour {q0:feed}[, {?q1|batch|batches}].",
	"refill_midweek_now":      "Feed in {n}: may be out already, likely lasts until {on:near}. Look, and pour {q0:feed}[, {?q1|batch|batches}].",
	"refill_midweek_brim":     "Feed in {n}: safe only to {at:edge}, likely to {on:near}. Fill to the brim, {q0:feed}[, {?q1|batch|batches}].",
	"refill_midweek_brim_now": "Feed in {n}: may be out already, likely lasts until {on:near}. Look, and fill to the brim, {q0:feed}[, {?q1|batch|batches}].",
	"refill_seen_empty":       "Feed: {n} seen empty {at}, no fill since. Pour {q0:feed} and text it, or text what you found.",
	"refill_out":              "Feed in {n}: out since {at:likely} as I calculate; nobody has looked. Pour {q0:feed}, or text the level.",

	"water_visit":       "{on:near}: fill {n}[, {?q0}]; they draw {q1}. Then safe past {at:day}.",
	"water_brim":        "Fill {n}[, {?q0}]: full is safe only into {on}. Plan a fill before the round on {at:day}.",
	"water_midweek":     "Water in {n}: safe only to {at:edge}, likely to {on:near}.[ {?q0} left,] they draw {q1}.",
	"water_midweek_now": "Water in {n}: may be out already, likely lasts until {on:near}. Look and fill; they draw {q1}.",
	"water_out":         "Water in {n}: out since {at:likely} as I calculate; nobody has looked. Look now. If long dry or any pig staggers: vet before water.",
	"water_seen_empty":  "Water: {n} seen empty {at}, no fill since. Fill now, a little at a time. If long dry or any pig staggers: vet before water.",

	"look_first":      "First text how full it is.",
	"look_first_each": "First text how full each is.",

	"wallow_visit": "Wallow: dry from {on:near}. Top up[, about {?q0}].",
	"wallow_heat":  "Wallow: dry or nearly so, and {q0} on {on:near}. Fill it[, about {?q1}].",

	"level_standing": "Feed in {n}: nothing poured for {q0}. Knock and level it so that it does not bridge.",
	"level_midweek":  "Level the feed in {n}: knock it, look that it falls.",
	"level_bridged":  "Feed in {n}: {q0:feed} seen {on}, {q1:feed} expected. Knock it: bridged or shut too far?",

	"worm_due":         "Worming due {on:near}[: {n}]. Dung test first, or by the label; then text product and withdrawal days.",
	"worm_due_late":    "Worming due since {on}[: {n}]. Dung test first, or by the label; then text product and withdrawal days.",
	"worm_blocked":     "No worming now[: {n}]: it may not be clear by the butcher, {on}. Ask the vet.",
	"move_due":         "Pen move due {on:near}[: out of {n}].",
	"move_due_late":    "Pen move due since {on}[: out of {n}].",
	"weigh_due_late":   "Tape them[: {n}]: due since {on}, it would sharpen the butcher date.",
	"weigh_check_late": "Tape them, some on the scale too[: {n}]: due since {on}, the tape was last checked at {q0}.",
	"weigh_check":      "Tape {on:near}, some on the scale too[: {n}]: the tape was last checked at {q0}.",
	"weigh_due":        "Tape {on:near}[: {n}]: it would sharpen the butcher date.",

	"book_by":           "No butcher booked: call by {d0:near}, ask for {d1~d3}.",
	"book_by_late":      "No butcher booked: call now, ask for {d1~d3}.",
	"book_ahead":        "Butcher {on}, in {q0}[: {?q1|pig|pigs}][, about {q2} each then].",
	"book_ahead_today":  "Butcher today[: {?q1|pig|pigs}][, about {q2} each]. Load in the cool, water always.",
	"book_eve":          "Butcher {on}[, {at:clock}][: {n}][: {?q0|pig|pigs}]. Load in the cool.",
	"book_eve_heaviest": "Butcher {on}[, {at:clock}][: {?q0|pig|pigs}], by weight {n}. Load in the cool.",
	"book_feed":         "Feed off 12 to 18 hours before slaughter, so not before {at}; the butcher's word counts. Water always.",
	"book_feed_hours":   "Feed off 12 to 18 hours before slaughter, as the butcher says. Water always.",
	"book_clear":        "Clear by what you told: {n}.",

	"withdrawal_conflict": "NOT CLEAR for the butcher {on}:[ {n},] clear {at}. Move the day or hold them back.",
	"withdrawal_unknown":  "NOT CLEAR:[ {n},] withdrawal days unknown[; butcher {on}]. Read the label or ask the vet, then text the days.",

	"heat_watch":     "Warm {on:near}: {q0}. Shade, water that runs[, humidity {q1}].",
	"heat_alert":     "Hot {on:near}: {q0}. Wet the wallow, check every nipple, move nothing by day.",
	"heat_danger":    "Dangerous heat {on:near}: {q0}. Wallow, shade, cool water before noon. Panting with open mouth or down: call the vet.",
	"heat_emergency": "Deadly heat {on:near}: {q0}. Wallow, shade, cool water, look every hour. Panting with open mouth or down: call the vet.",

	"cold_night":        "Cold {on:near}: {q0}, they bear {q1} at {q2}. Deep dry straw, windy side shut.",
	"cold_night_today":  "Cold tonight: {q0}, they bear {q1} at {q2}. Deep dry straw, windy side shut.",
	"cold_freeze_today": "Hard freeze tonight: {q0}. Drain hoses, check nipples in the morning; no water is no feed.",
	"cold_freeze":       "Hard freeze {on:near}: {q0}. Drain hoses, check nipples in the morning; no water is no feed.",

	"ration_short":     "Mix: {q0:fine} lysine, needs {q1:fine} at {q2}.[ A batch: {n*3:sign}.]",
	"ration_short_far": "Mix: {q0:fine} lysine, needs {q1:fine} at {q2}. It takes a richer protein feed than {n}.",
	"ration_rich":      "Mix: {q0:fine} lysine, {q1:fine} is enough at {q2}.[ A batch could be: {n*3:sign}.]",

	"stock_short":       "Shed short for {on:near}: {n}. Buy before.",
	"stock_short_today": "Shed short today: {n}. Mix what it holds; buy the rest.",
	"stock_eve":         "Shed short for tomorrow, {on}: {n}.",

	"own_reminder": "Reminder: {n}.",

	"capacity_feed":    "From {on} full feeders ({q0:feed}) may not last between two visits: up to {q1:feed} is eaten. Add one or fill between.",
	"capacity_nipples": "Drinkers: {q0} there, {q1} wanted. Add one before it gets hot.",

	"outgrown_nipple":        "Nipples: raise to {q0} by {on:near}; the lightest weighs {q1} then. About 2 in above its shoulder.",
	"outgrown_nipple_metric": "Nipples: raise to {q0} by {on:near}; the lightest weighs {q1} then. About 5 cm above its shoulder.",
	"outgrown_shelter":       "Shelter: {q0} of bedding for all by {on:near}; they weigh {q2} then.",
	"outgrown_shade":         "Shade: {q0} for all by {on:near}; they weigh {q2} then.",

	"alarm_out":       "Pigs out[: {n}], reported {at}, not called in. Counted? Text: pigs in.",
	"alarm_down":      "Pig down[: {n}], reported {at}. Vet called? Text how it is.",
	"alarm_no_water":  "No water reported {at}, no fill since. If long dry or any pig staggers: vet before water.",
	"alarm_no_feed":   "No feed reported {at}, no fill since.",
	"alarm_fence":     "Fence down reported {at}. Text the voltage when it is up: fence 6.2.",
	"alarm_fence_low": "Fence {q0} on {on}: under {q1} pigs test it. Check ground rod and weeds, power off first.",

	"season_over": "Season over {on}: {q0|pig|pigs}, {q1} to butcher or sold. All nudges stop. One thing for next year? Text: note ...",

	"season_order": "Pigs again? {q0|pig|pigs} came {on}. Order them now and ask the butcher for a day. Then text: expect {q0|pig|pigs} and the day.[ You noted: {n}.]",
	"season_ready": "Pigs come {on}, in {q0}[, {?q1} of them]. Before then: bed the shelter, test the fence, let each drinker run, get feed in.",

	"check_silence":        "No word since {on}, {q0}: figures are guesses. Text one level, as in: half left.",
	"check_silence_last":   "No word since {on}, {q0}: only rounds, drug and butcher days, your reminders till you text.",
	"check_feed_level":     "How full is the feed[ in {n}]?",
	"check_water_level":    "How full is the water[ in {n}]?",
	"check_question_again": "You texted \"{n0}\" {t0}, never settled. {n1}",
	"check_question":       "Still open from {at}, {n1}:[ {n2}] Answer it, or text: cancel.",
	"odd_feed_more":        "Feed in {n}: {q0:feed} gone since {on}, {q1:feed} expected. What took the rest?",
	"odd_feed_less":        "Feed in {n}: only {q0:feed} gone since {on}, {q1:feed} expected. Look at drinkers, each pig, the gate. What was it?",
	"odd_feed_empty":       "Feed in {n}: empty {on:near}, some {q0:feed} should be left. Knock it and look inside: is only the trough empty?",
	"odd_water_more":       "Water in {n}: {q0} gone since {on}, {q1} expected. Look for a leak. What was it?",
	"odd_water_less":       "Water in {n}: only {q0} gone since {on}, {q1} expected. Does every nipple run? What was it?",
	"odd_growth":           "[{N}: ]only {q0:sign} each since {on}, {q2}; {q1:sign} each expected. Look them over. What may it be?",
	"odd_growth_one":       "{N}: only {q0:sign} since {on}, {q2}; {q1:sign} expected. Look it over. What may it be?",
	"missed_feed":          "Feed in {n}, {on}: {q0:feed} gone, I had said {q1:feed}.[ I now reckon with {q2:sign}.]",
	"told_by":              "Told by {n}.",
	"choices":              "Text: {n}.",

	"check_gone_some":  "Did those booked go {on}?",
	"check_gone":       "Did the pigs go {on}? No word: I take it they did, and rest.",
	"check_not_filled": "No fill logged {on}[: {n}]. Done? Text it, as in: filled 150, full.",

	"keep_asking": "{N}: passed over three times. Keep, monthly, or stop?",

	"catch_up_down": "I was off from {at}, {q0} hours. Texts sent meanwhile may be lost: what is missing?",
	"catch_up_away": "Back from {q0} away. Text what was filled, and one level of feed and water.",

	"well_feed":   "Feed: safe to {on}.",
	"well_water":  "Water: safe to {on}.",
	"well_weight": "{q3|pig|pigs} about {q0} ({q1~q2}).",
	"well_target": "{q0} {d1~d3}.",
}
