package reading

import "strings"

// wholeWishes are wishes that count only where they are all that a text says:
// "the sitter's report" and "the vet's calendar" are none.
var wholeWishes = map[string]string{
	"report": "report", "season report": "report", "the report": "report", "send report": "report",
	"send the report": "report", "send me the report": "report", "season's report": "report", "report please": "report",
	"calendar file": "calendar", "ical": "calendar", "icalendar": "calendar", "ics": "calendar", "ics file": "calendar",
	"ical file": "calendar", "calendar export": "calendar", "export calendar": "calendar", "send calendar file": "calendar",
	"import": "import", "import file": "import", "import a file": "import", "import my data": "import", "import weights": "import",
	"import csv": "import", "upload": "import",
	"delete this herd": "delete herd", "delete the herd": "delete herd", "delete herd": "delete herd",
	"delete my herd": "delete herd", "erase this herd": "delete herd", "erase the herd": "delete herd",
	"forget this herd": "delete herd",
	"forget me":        "forget me", "forget about me": "forget me", "delete me": "forget me", "erase me": "forget me",
	"please forget me": "forget me",
	"privacy":          "privacy", "privacy policy": "privacy", "what do you keep": "privacy", "what do you know about me": "privacy",
	"what is kept": "privacy", "where is my data": "privacy", "who can see this": "privacy",
}

func (r *reader) wholeWish() (Reading, bool) {
	text := strings.Join(strings.Fields(strings.ToLower(r.text)), " ")
	text = strings.ReplaceAll(strings.Trim(text, "/.!?"), "’", "'")
	what, ok := wholeWishes[text]
	if !ok {
		return Reading{}, false
	}
	return r.just(Do{What: what}), true
}
