package reading

import (
	"slices"
	"strings"
)

// wholeWishes are wishes that count only where they are all that a text says:
// "the sitter's report" and "the vet's calendar" are none.
var wholeWishes = map[string]string{
	"report": "report", "season report": "report", "the report": "report", "send report": "report",
	"send the report": "report", "send me the report": "report", "season's report": "report", "report please": "report",
	"how did the season go": "report", "how did this season go": "report", "how is the season going": "report", "how was the season": "report",
	"calendar file": "calendar", "ical": "calendar", "icalendar": "calendar", "ics": "calendar", "ics file": "calendar",
	"ical file": "calendar", "calendar export": "calendar", "export calendar": "calendar", "send calendar file": "calendar",
	"import": "import", "import file": "import", "import a file": "import", "import my data": "import", "import weights": "import",
	"import csv": "import", "upload": "import",
	"privacy": "privacy", "privacy policy": "privacy", "what do you keep": "privacy", "what do you know about me": "privacy",
	"what is kept": "privacy", "where is my data": "privacy", "who can see this": "privacy", "who sees my data": "privacy",
	"what do you know": "privacy", "what do you know about us": "privacy", "what do you store": "privacy", "what data do you keep": "privacy",
	"what do you save": "privacy", "how long do you keep it": "privacy", "how long do you keep my data": "privacy", "data protection": "privacy",
	"where do you keep it": "privacy", "where do you keep my data": "privacy", "is this private": "privacy",
}

// onLabel says that the text is the label of an answer to the open question.
func (r *reader) onLabel() bool {
	p := r.c.Pending
	return p != nil && slices.ContainsFunc(p.Labels, func(l string) bool { return plain(l) == r.plain })
}

// longestWish is how long a wish may be, blanks and signs with it.
const longestWish = 50

func (r *reader) wholeWish() (Reading, bool) {
	if len(r.text) > longestWish {
		return Reading{}, false
	}
	text := strings.Join(strings.Fields(strings.ToLower(r.text)), " ")
	text = strings.ReplaceAll(strings.Trim(text, "/.!?"), "’", "'")
	what, ok := wholeWishes[text]
	if !ok || r.onLabel() {
		return Reading{}, false
	}
	return r.just(Do{What: what}), true
}
