package wording

import (
	"troughbell/model"
)

// echoTalk says facts about what was said between person and program.
func (v Voice) echoTalk(f model.Fact) string {
	switch f := f.(type) {
	case model.Note:
		return "note: " + f.What
	case model.Remind:
		at := v.Day(f.Day)
		if f.Minute != nil {
			at = v.dayThen(f.Day, v.Clock(*f.Minute))
		}
		return "remind " + at + ": " + f.What
	case model.Done:
		return join2("done", v.abouts(f.About))
	case model.Snooze:
		if f.Stop {
			return join2("no more nudges", v.abouts(f.About))
		}
		return join2("put off to "+v.Moment(f.Until), v.abouts(f.About))
	case model.Told:
		return join2("nudge sent", v.abouts(f.About))
	case model.Question:
		return join2("asked", About(f.About))
	case model.Settled:
		return "question " + f.How
	case model.Import:
		return "import of " + countNoun(float64(f.Records), "record", "records") + " from " + f.File
	case model.Void:
		return "taken back (" + f.Why + ")"
	}
	return string(f.Kind())
}

func join2(head, rest string) string {
	if rest == "" {
		return head
	}
	return head + ": " + rest
}

// abouts names topics of nudges in words.
func (v Voice) abouts(topics []string) string {
	words := make([]string, 0, len(topics))
	for _, t := range topics {
		words = append(words, About(t))
	}
	return Join(words, "and")
}

// Offer says what a plan can be kept as, in words that read to it.
func (v Voice) Offer(f model.Fact) string { return capital(v.echoFact(f)) }
