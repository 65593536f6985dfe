package wording

import (
	"slices"
	"strings"
	"time"

	"troughbell/bot/reading"
	"troughbell/model"
	"troughbell/schedule"
)

func (v Voice) talk(code string, names ...string) string {
	return v.say(partTalk, code, Args{Names: names})
}

// talkOr says a sentence, or another where there is none of that code.
func (v Voice) talkOr(code, otherwise string, names ...string) string {
	if _, ok := talkSentences[code]; !ok {
		code = otherwise
	}
	return v.talk(code, names...)
}

// Welcome begins a conversation.
func (v Voice) Welcome() string { return v.talk("welcome") }

// Medium answers what is no text.
func (v Voice) Medium(medium string) string { return v.talkOr("medium_"+medium, "medium_other") }

// Unreadable answers a text that cannot be read as one.
func (v Voice) Unreadable() string { return v.talk("unreadable") }

// Forbidden says which right is missing: "drugs", "gone", "money", "setup",
// "undo".
func (v Voice) Forbidden(what string) string { return v.talkOr("forbidden_"+what, "forbidden_setup") }

// Impossible says why a fact cannot be.
func (v Voice) Impossible(err error) string { return v.talk("impossible", err.Error()) }

// Done acknowledges that what a nudge asked for is done.
func (v Voice) Done(about []string) string {
	switch {
	case len(about) == 0:
		return v.talk("done_all")
	case DoneAsks(about):
		return v.talk("done_refill", v.topics(about)...)
	}
	return v.talk("done", v.topics(about)...)
}

// DoneAsks reports whether Done asks how much it was.
func DoneAsks(about []string) bool { return slices.Contains(about, "refill") }

// Snoozed acknowledges that something is put off, or stopped.
func (v Voice) Snoozed(s model.Snooze) string {
	code, names := "snoozed", v.topics(s.About)
	if s.Stop {
		code = "stopped"
		for _, a := range s.About {
			if a == "refill" || a == "water" || a == "heat" || a == "withdrawal" {
				code = "stopped_welfare"
			}
		}
	}
	if len(names) == 0 {
		code += "_all"
	}
	if code == "stopped_welfare_all" {
		code = "stopped_all"
	}
	return v.say(partTalk, code, Args{Names: names, Moments: []time.Time{s.Until}})
}

// KeptOn acknowledges that a topic goes on as it was.
func (v Voice) KeptOn(about []string) string { return v.talk("kept_on", v.topics(about)...) }

func (v Voice) topics(about []string) []string {
	var out []string
	for _, a := range about {
		out = append(out, About(a))
	}
	return out
}

// Undone names what was taken back.
func (v Voice) Undone(e reading.Entry) string { return v.talk("undone", v.Echo(e)) }

// UndoneAnswer says that an answer was taken back, with the question that is open
// again.
func (v Voice) UndoneAnswer(question string) string { return v.talk("undone_answer", question) }

// NothingToUndo says that there is nothing, of that kind or at all.
func (v Voice) NothingToUndo(of string) string {
	if of == "" {
		return v.talk("nothing_to_undo")
	}
	return v.talk("nothing_of_kind", About(of))
}

// NothingToSkip says that no question is open.
func (v Voice) NothingToSkip() string { return v.talk("nothing_to_skip") }

// Dropped says that the open question is dropped.
func (v Voice) Dropped() string { return v.talk("dropped") }

// Do answers a wish that is neither record nor question.
func (v Voice) Do(what string) string { return v.talkOr("do_"+what, "do_unknown") }

// SitterSheet is the button, and the text, that asks for a sitter's sheet.
func (Voice) SitterSheet() string { return "sitter sheet" }

// Urgent is the card for an emergency told in words: "vet_now", "fever",
// "notifiable", "shock", "poison", "heat_stroke", or for "kitchen_waste". A code
// without a card of its own gets that of the vet.
func (v Voice) Urgent(code string) string { return v.talkOr("urgent_"+code, "urgent_vet_now") }

// Pressed is what a pressed button turns into: its word, when, and who.
func (v Voice) Pressed(label, who string) string {
	names := []string{label}
	if who != "" {
		names = append(names, who)
	}
	return v.say(partTalk, "pressed", Args{Names: names, Moments: []time.Time{v.Now}})
}

// Settled is the line below a nudge that somebody settled in words: done, else
// put off.
func (v Voice) Settled(done bool, who string) string {
	word := v.talk("put_off")
	if done {
		word = buttonLabel(schedule.ButtonDone)
	}
	return v.Pressed(word, who)
}

// Invite gives a one-time code to hand on.
func (v Voice) Invite(code, role string, until time.Time) string {
	return v.say(partTalk, "invite_"+role, Args{Names: []string{code}, Moments: []time.Time{until}})
}

// Fault answers a message that the program itself failed on.
func Fault() string {
	return "Not recorded: I could not handle that message. It is logged; please text it in other words."
}

// Stranger is the one sentence for somebody who has no right to speak here.
func Stranger() string {
	return "This is a private herd book. If you belong to it, send the code its owner gave you."
}

// PressUnknown answers a button that is not known.
func PressUnknown() string { return "That button is no longer in use. Text it in words." }

// PressSettled answers a button that was pressed before, or whose question was
// answered; how is the line that says who settled it and when, if there is one.
func PressSettled(how string) string {
	return strings.TrimSpace("That is settled already. " + how)
}

// PressReplaced answers a button of an answer that an edit has changed.
func PressReplaced() string {
	return "You edited that text since: the buttons below my new answer count."
}

// PressOvertaken answers a button of a nudge that came again since.
func PressOvertaken() string { return "That was told anew since: answer the latest message on it." }

// Above is what is left of a message that an edit made needless and that cannot
// be taken away.
func Above() string { return "My answer to your edited text stands above." }

// Backup says in few words how old the newest copy of the database is; day 0 is
// none. Who runs the server is sent to its log where it is too old.
func (v Voice) Backup(on model.Day, operator bool) string {
	code := "backup_late"
	switch age := v.today() - on; {
	case on == 0:
		code = "backup_none"
	case age <= 0:
		return v.talk("backup_tonight")
	case age == 1:
		return v.talk("backup_yesterday")
	}
	if !operator {
		code += "_others"
	}
	return v.say(partTalk, code, Args{Days: []model.Day{on}})
}

// BackupFails tells who runs the server that no copy can be made, and why where
// that is known.
func BackupFails(why string) string {
	said := "No backup could be made."
	if why != "" {
		said += " " + why
	}
	return said + " I try again each hour; the log tells more."
}
