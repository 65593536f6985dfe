package reading

import (
	"slices"
	"strconv"
	"strings"

	"troughbell/model"
)

var (
	againWords = newPattern(`^(?:please |ok |can you |could you )*(?:(?:start|restart|resume|unmute|turn on|switch on|bring back|put back|i want|i'd like|give me|send)(?: me| us)?(?: about)?|(?:nudge|tell|warn|bother|ping|text)(?: me| us)? (?:about|of)|nudges again:) ?(?:the |my |our |those |all )*(.*?) ?(nudges?|reminders?|messages?|pings?|nudging|reminding)?(?: me| us)?(?: about (.+?))?( again| back| back on| on again| on| once more)?(?: please)?$`)
	againAll   = setOfWords(split(`unmute all, unmute everything, unmute, all nudges again, start nudges again, start nudging again, start nudging me again, nudges on, nudges back on, resume nudges, resume,
		start again with the nudges, start all nudges again, turn nudges on, turn nudges back on, resume all, resume all nudges, resume everything, nudge me again, start reminding me again, bring back the nudges`))
	// inAWhile is a word on when to be told again, as an answer to a nudge: "in an hour".
	inAWhile = newPattern(`^(?:(?:remind|tell|ask|nudge|ping|text) (?:me|us) (?:again )?)?in (?:about )?(an?|one|two|three|a couple of|[0-9]{1,2}) ?(hours?|hrs?|h)(?: again| please)?$`)
)

// nudgesAgain reads a text that is nothing but the wish to hear again of a topic that
// was stopped, or of all.
func (r *reader) nudgesAgain() (Reading, bool) {
	text := strings.TrimRight(r.plain, "! ")
	if againAll[text] {
		return r.just(Fact{model.Setting{Key: model.SetUnmute, Text: model.All}}), true
	}
	if m := inAWhile.groups(text); m != nil {
		hours := map[string]int{"a": 1, "an": 1, "one": 1, "two": 2, "a couple of": 2, "three": 3}[m[1]]
		if n, err := strconv.Atoi(m[1]); err == nil {
			hours = n
		}
		return r.just(Snooze{Hours: hours}), hours > 0
	}
	m := againWords.groups(text)
	if m == nil {
		return Reading{}, false
	}
	about := aboutOf(strings.TrimSpace(m[1] + m[3]))
	said := strings.HasPrefix(text, "unmute") || strings.HasPrefix(text, "nudges again") || m[2] != "" && m[4] != "" || r.wasStopped(about) && (m[4] != "" || strings.HasPrefix(text, "resume") || strings.HasPrefix(text, "restart"))
	if about == "" || about == "own" || !said {
		return Reading{}, false
	}
	return r.just(Fact{model.Setting{Key: model.SetUnmute, Text: about}}), true
}

// wasStopped says that the nudges of a topic were stopped: then "resume weighing"
// speaks of them, and not of a job to do.
func (r *reader) wasStopped(about string) bool {
	return r.c.Herd.Muted[about] || slices.ContainsFunc(r.c.Herd.Snoozes, func(s model.Dated[model.Snooze]) bool {
		return s.F.Stop && (slices.Contains(s.F.About, about) || slices.Contains(s.F.Topics, about))
	})
}
