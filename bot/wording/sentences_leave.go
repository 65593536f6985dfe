package wording

// leaveSentences are what is said about deleting a herd, about its people who go,
// and about what is kept of them. {n0} is the herd, or the person spoken of.
var leaveSentences = catalogue{
	"this_herd":                "this herd",
	"no_name":                  "who sits at the terminal",
	"delete":                   "This deletes {n0} for good: [{?q0|record|records} since {d0}, ]every text and answer, {q1|person|people}[ ({n1})] with chats and rights[, {?q2|file|files} not sent yet].",
	"copies":                   "Copies of it stay where I run: {n}. Who runs me there can delete them.",
	"daily_copies":             "{q0|daily copy|daily copies} in the folder {n0}, the latest of {d0}, gone within 8 weeks",
	"no_copies":                "I know of no copy of it where I run.",
	"elsewhere":                "Copies made elsewhere, exported files and what stands in your chats are yours to delete.",
	"export_first":             "To keep the records, text first: export.",
	"type_herd":                "To delete it, text its name, {n0}, within {q0|minute|minutes}. Anything else lets it be.",
	"type_unnamed_herd":        "It has no name. To delete it, text {n0} within {q0|minute|minutes}. Anything else lets it be.",
	"deleted":                  "Deleted: {n0}, with all records, texts and people. Nothing of it is left in my file.",
	"deleted_unnamed":          "Deleted: the herd, with all records, texts and people. Nothing of it is left in my file.",
	"deleted_by_owner":         "The owner has deleted {n0}, with all records, texts and people. I keep nothing of it and send nothing more about it.",
	"deleted_by_owner_unnamed": "The owner has deleted the herd, with all records, texts and people. I keep nothing of it and send nothing more about it.",
	"speaks_of":                "This chat speaks of {n0} now.",
	"still_operator":           "You still run this server. For a new herd of your own text /newherd, then send me the code that it gives.",
	"not_told":                 "Not told from here: {q0|chat|chats} on Telegram.",

	"forget":              "Forgetting you takes your name, your chat and who said what out of {n}. What you logged stays with the herd, as by someone. You can write and hear nothing here after that.",
	"forget_operator":     "Your right to run this server goes too: at its next start it prints a code for somebody else.",
	"type_name":           "To be forgotten, text your name, {n0}, within {q0|minute|minutes}. Anything else lets it be.",
	"type_unnamed_person": "To be forgotten, text {n0} within {q0|minute|minutes}. Anything else lets it be.",
	"forgotten":           "You are forgotten: I keep neither your name nor this chat, and send nothing more.",
	"forgotten_notice":    "A person of the herd asked to be forgotten and is told nothing more. What they logged stays, as by someone.",
	"owner_goes":          "You own {n0}: somebody has to. Hand it on, as in \"make {n1} owner\", and then text forget me; or delete it with all it holds: delete this herd.",
	"owner_alone":         "You own {n0}, and nobody else is in it. Delete it with all it holds: delete this herd. Or hand it on: invite somebody, then text, as in \"make Bea owner\".",
	"owner_elsewhere":     "You own {n0} too: change to it with /herd {n0}, and hand it on or delete it there first.",

	"let_be":   "Nothing deleted or handed on.",
	"too_late": "That came too late: nothing deleted or handed on. Ask again.",

	"people":                 "In {n0}: {n1}.",
	"people_unnamed":         "In this herd: {n1}.",
	"people_owner":           "\"remove NAME\" takes somebody out, \"make NAME owner\" hands the herd on, \"invite\" lets somebody in.",
	"person":                 "{n0}[ ({n1})]",
	"nobody":                 "Nobody called {n0} is in the herd[. There are: {n1}].",
	"two_of_name":            "Two here go by {n0}. Say which: remove helper {n0}, or remove family {n0}.",
	"not_yourself":           "That is you. To be forgotten, text: forget me.",
	"not_owner":              "{n0} owns the herd and cannot be taken out.",
	"removed":                "{n0} is out: reads, writes and hears nothing here any more. What {n0} logged stays under that name. To let them in again: invite.",
	"removed_notice":         "The owner has taken you out of {n0}. I keep your chat no longer and send nothing more about it.",
	"removed_notice_unnamed": "The owner has taken you out of the herd. I keep your chat no longer and send nothing more about it.",
	"hand_over":              "{n0} will own the herd, with the right to invite and to delete; you stay as family. To do it, text {n0} within {q0|minute|minutes}. Anything else lets it be.",
	"owns_already":           "{n0} owns the herd.",
	"handed_over":            "{n0} owns the herd now; you are family.",
	"handed_notice":          "You own {n0} now: you can invite, remove and delete. Text help to begin.",
	"handed_notice_unnamed":  "You own the herd now: you can invite, remove and delete. Text help to begin.",

	"privacy": "Kept: your texts, what I read from them and answered, names and chat numbers of your people, in one file where I run. " +
		"Who runs me can read it; family sees all, helpers no money; other households nothing.\n" +
		"How long: records until the herd is deleted. My sent messages {q0|day|days}; an incoming message only until it is handled, one that failed {q1|day|days}, a file to import one day.\n" +
		"Nothing goes elsewhere but through this chat[ and, for the weather, {n0} to the forecast service].\n" +
		"Take it along: export. End it: forget me, or, as the owner, delete this herd.",
}
