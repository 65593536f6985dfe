package wording

// talkSentences are what the conversation itself says. {n0} is what it speaks
// of, {n} all of it.
var talkSentences = catalogue{
	"welcome": "Text what you do in the pen; I keep it and say what is due. Any order, any words.",

	"medium_voice":   "I can only read text, not listen. Type it: \"fed 150, full\".",
	"medium_photo":   "I can only read text, not pictures. Type what you see: \"feeder half\".",
	"medium_video":   "I can only read text, not videos. Type what you see: \"feeder half\".",
	"medium_file":    "I can only read text, not files. Type it as a message.",
	"medium_sticker": "I can only read text. Type it: \"all good\", \"feeder half\".",
	"medium_other":   "I can only read text. Type it as a message.",
	"unreadable":     "Nothing recorded: that text is too long or damaged. Send it again, shorter.",

	"forbidden_drugs":       "Not recorded: treatments are for the owner or family. Tell them now.",
	"forbidden_gone":        "Not recorded: a pig that leaves or died is for the owner or family. Tell them now.",
	"forbidden_money":       "Not recorded: money is for the owner or family.",
	"forbidden_costs":       "What was paid is for the owner or family. Ask for one thing, as in: last fill.",
	"forbidden_setup":       "Not changed: bookings and set-up are for the owner or family.",
	"forbidden_invite_herd": "Only the operator of this server can let a new herd in.",
	"forbidden_invite":      "Only the owner can invite someone.",
	"forbidden_delete":      "Only the owner can delete the herd. Your own part in it ends with: forget me.",
	"forbidden_people":      "Only the owner can do that.",
	"forbidden_import":      "Not taken in: files are for the owner or family.",
	"forbidden_export":      "Not sent: the records tell what was paid. They are for the owner or family.",
	"forbidden_undo":        "Not undone: taking back is for the owner or family. Tell them what is wrong.",
	"impossible":            "Not recorded: {n0}. Check it and text it again.",

	"done":            "Noted: {n} done.",
	"done_all":        "Noted: done.",
	"done_refill":     "Noted: {n} done. How much feed went in, or is it full?",
	"snoozed":         "Put off: {n}, until {t0}.",
	"snoozed_all":     "Put off until {t0}.",
	"kept_on":         "I go on telling: {n}.",
	"stopped":         "No more of that this season: {n}. To have it again: resume {n0}.",
	"stopped_all":     "No more of that this season. To have it again: resume all.",
	"stopped_welfare": "Routine lines on {n} stop. Dangers to the pigs I still tell.",

	"backup_tonight":     "Backup: last night.",
	"backup_yesterday":   "Backup: yesterday.",
	"backup_late":        "No backup since {d0}: see the log.",
	"backup_late_others": "No backup since {d0}: tell whoever runs this bot.",
	"backup_none":        "No backup yet: see the log.",
	"backup_none_others": "No backup yet: tell whoever runs this bot.",

	"undone":          "Undone: {n0}.",
	"undone_answer":   "Undone: that answer. {n0}",
	"nothing_to_undo": "Nothing to undo.",
	"nothing_of_kind": "Nothing on {n0} to undo.",
	"nothing_to_skip": "There is no question open.",
	"dropped":         "Dropped. Nothing recorded of it.",
	"pressed":         "{n0}: {t0}[, {n1}]",
	"put_off":         "Put off",

	"do_picture":    "I draw growth, feed, water, heat, the calendar and costs. Text: chart of growth.",
	"do_export":     "Your records as tables (CSV in a ZIP), the season to read, and the coming dates for a calendar.",
	"do_report":     "The season so far, to read or to print.",
	"do_season":     "The season {n0}, to read or to print.",
	"do_calendar":   "The coming dates for your calendar. Take in a later file and they move; nothing doubles.",
	"do_import":     "Send me the file: what \"export\" gave you (the ZIP, or a CSV file of it), or a list of weights that begins with a line such as: date,pig,weight. I say what is in it before I take it in.",
	"invite_owner":  "Code {n0}: one person sends it to the bot by {t0} and has a herd of their own.",
	"invite_family": "Code {n0}: one person of the family sends it to the bot, by {t0}.",
	"invite_helper": "Code {n0}: one helper sends it to the bot, by {t0}. Helpers log the round; no money, no drugs.",
	"herd_code":     "Code {n0}: the owner of a new herd sends it to the bot, by {t0}.",
	"urgent_vet_now": "⚠ Call the vet now. No medicine unless the vet says so.\n" +
		"Meanwhile: shade, dry bedding, quiet; keep the other pigs off.\n" +
		"Note when it began, what it ate and drank. Could it have been without water: ask before you give any.\n" +
		"Dead: leave it where it lies until the vet has said.",
	"urgent_fever": "⚠ If that is a pig's own temperature, it is a fever: call the vet now.\n" +
		"Meanwhile: shade, quiet, water near, away from others. No medicine unless the vet says so.\n" +
		"Note when it began and what it ate. Several with fever: tell the vet at once.",
	"urgent_notifiable": "⚠ Call your vet and the animal health authority at once.\n" +
		"Nothing leaves or enters the farm until they say so; keep visitors out, wash boots.\n" +
		"Keep sick pigs apart. Note which, since when, and what came in lately: pigs, feed, people.",
	"urgent_shock": "⚠ Power off before you touch it. Cannot switch it off: stay away and call the power company.\n" +
		"Then call the vet, even if the pig gets up. Keep it quiet and in shade, the others away.\n" +
		"Leave the power off until the cause is found.",
	"urgent_poison": "⚠ Call the vet now; keep the packet or a piece of what it ate, and read the name out.\n" +
		"Take away what is left; move all pigs from it. Do not make it vomit, give nothing by mouth unless the vet says so.\n" +
		"Note when, how much, and which pigs. It may not be fit to eat: ask before the butcher.",
	"urgent_heat_stroke": "⚠ Shade now, wet it with large drops of cool water, moving air; then call the vet.\n" +
		"Small drinks of cool water. Never an ice-cold bucket over it, and do not drive it.\n" +
		"Cannot stand, fits, or no better in minutes: tell the vet it is urgent. Look at the others too.",
	"urgent_kitchen_waste": "Nothing from a kitchen or a plate: it can carry disease, and in many places it is against the law.\n" +
		"Ask your vet or authority before feeding any waste.",
	"do_unknown": "I cannot do that by text. Try \"help\".",
}
