package wording

// reasonSentences say the reasons of figures, by the codes of packages model
// and schedule, where the arguments of each are told.
var reasonSentences = catalogue{
	// Growth.
	"last_weighed":    "Last weighed {on} by {n}: {q0}, {q1} before.",
	"weighings_count": "It rests on {q0|weighing|weighings}.",
	"never_weighed":   "Never weighed: {n}; the mean of the herd stands for them.",
	"arrival_guess":   "From {q0} each, as said when they came {on}.",
	"age_guess":       "From their birth on {on}, {q0} ago; no weight is known.",
	"herd_speed":      "Your pigs grow at {q0} of the published table (give or take {q1}).",
	"table_gain":      "The published table gains {q0} at this weight.",
	"tape_bias":       "Your tape reads {q0:sign} against the scale (give or take {q1}); allowed for.",
	"sick_slow":       "{N} sick since {on}: counted as half growth.",
	"reading_doubted": "{N} {q0} on {on} fits badly with the rest: hardly counted.",
	"past_table":      "Above {q0} the table ends: an extrapolation.",
	"weigh_none":      "Nothing was weighed yet.",
	"weigh_wide":      "The day {on} is uncertain by {q0} either way.",
	"weigh_near":      "{on} is near, in {q0}: a weight decides now.",

	// Feed.
	"feed_last_mark":        "{N}: level last told {on}.",
	"feed_level_unseen":     "{N}: only pours were told, the latest {on}; no level was seen.",
	"feed_pigs":             "{q0|pig|pigs} of about {q1} eat {q2:feed}, waste included.",
	"feed_appetite":         "Your fills say {q0} of the published table's feed (give or take {q1}).",
	"feed_by_table":         "By the published table, give or take {q0}: no fill has taught more yet.",
	"feed_capacity":         "{N} holds about {q0:feed}.",
	"feed_capacity_guessed": "{N} holds about {q0:feed}, guessed from the largest pour.",
	"feed_heat":             "Heat takes {q0} off the feed, at a mean of {q1}.",
	"feed_cold":             "Cold adds {q0} to the feed, at a mean of {q1}.",
	"feed_sick":             "[{N} ]unwell: what they eat is uncertain.",
	"feed_span_left_out":    "{N}: the span before {on} was too strange to learn from.",
	"feeder_never_filled":   "{N} was never filled, as far as I know.",
	"feed_until_butcher":    "Feed is reckoned up to the butcher, {on}.",

	// Water and wallow.
	"water_level":         "{N}: last told {on}, about {q0} now.",
	"water_use":           "{q1|pig|pigs} draw {q0}.",
	"water_heat":          "Hottest day told or forecast: {q0} on {on}.",
	"water_heat_guessed":  "No weather told: {q0} taken from the season, a guess.",
	"water_learned":       "Your fills say {q0} of the published draw, from {q1|mark|marks}.",
	"water_published":     "Published: {q0} per kg of feed, {q1} spilt at nipples; nothing learned yet.",
	"water_favoured":      "They draw most from {n}: {q0}.",
	"water_dry_early":     "{N} was lower on {on} than it could be: leak or favoured; not learned from.",
	"water_unlogged":      "{N} was fuller on {on} than it could be: a fill not told.",
	"water_barrel_unseen": "{N} never filled or seen: counted as dry.",
	"water_alarm":         "No water was reported {on} and not settled since.",
	"wallow_loss":         "It loses {q0}.",
	"wallow_learned":      "Learned from {q0|fill|fills}.",
	"wallow_first_guess":  "A first guess of {q0:bare} mm a day: no fills to learn from yet.",
	"wallow_size_assumed": "Size not told: {q0}, {q1} deep assumed.",
	"wallow_assumed_full": "Never filled or seen dry: counted as full today.",
	"wallow_last_filled":  "Last filled {on}.",
	"wallow_found_dry":    "Found dry {on}.",
	"wallow_hose":         "The hose is taken to give {q0} a minute.",

	// Heat.
	"heat_high_told":        "High told for {on}: {q0}.",
	"heat_high_forecast":    "High forecast for {on}: {q0}.",
	"heat_high_guessed":     "High guessed from the season for {on}: {q0}.",
	"heat_humidity":         "Humidity {q0}.",
	"heat_humidity_assumed": "Humidity not told: {q0} assumed.",
	"heat_index":            "Temperature-humidity index {q0}; alert from 75, danger from 79, emergency from 84.",
	"heat_plain_line":       "Any pig wants shade from {q0}.",
	"heat_heavy_pigs":       "Pigs of {q0} want shade from {q1}.",
	"heat_weight_unknown":   "Weights not known: the line for heavy pigs, {q0}.",

	// Health.
	"withdrawal_runs":         "{N}, last dose {on}: {q0} of withdrawal, as you told.",
	"withdrawal_days_unknown": "{N}, {on}: withdrawal days not told. Unknown is not clear.",
	"worming_since_arrival":   "They came {on}; first look {q0} after.",
	"worming_since_last":      "Last wormed {on}[ with {n}]; next look {q0} after.",
	"worming_test_first":      "A dung sample first shows whether it is needed.",
	"worming_last_day":        "Last dose that is clear in time: {on}, with {q0} of withdrawal.",
	"worming_read_label":      "Withdrawal days not known: read the label. The butcher is {q0} off.",
	"worming_too_late":        "With {q0} of withdrawal it would not be clear by the butcher, {on}.",

	// Pens and booking.
	"move_since":        "In {n} since {on}, {q0}.",
	"move_load":         "{N}: {q0} pig-days of {q1} that it bears, at 75 kg (165 lb) a pig.",
	"move_default_days": "Size of {n} not told: {q0} taken.",
	"move_rested":       "Rested longest: {n}, {q0}.",
	"move_rest":         "A pen should rest {q0}.",
	"booking_window":    "{q2} likely on {on}.",
	"booking_lead":      "Butchers are often booked {q0} ahead: by {on}.",
	"booking_stands":    "Booked for {on}.",

	// Added by the schedule.
	"next_visit":            "The next visit is {on}.",
	"away":                  "You are away to {on}.",
	"not_logged":            "Nothing was logged since {on}.",
	"weather_told":          "Told for {on}: {q0}.",
	"humidity_assumed_here": "Humidity not told: {q0} assumed.",
}
