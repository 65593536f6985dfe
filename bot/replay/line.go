package replay

import (
	"encoding/json"
	"strconv"
	"strings"
	"time"
	"unicode/utf8"
)

// line is one line of a timed log. A tick has no text.
type line struct {
	number int
	wall   time.Time // the wall clock, as if in UTC
	who    string
	edit   int    // line of the message that it edits; 0: none
	reply  int    // line of the message that it replies to; 0: none
	file   string // path of the document that it brings; empty: none
	text   string
	tick   bool
}

// layouts of the moment that a line begins with.
var layouts = []string{"2006-01-02 15:04", "2006-01-02 15:04:05", "2006-01-02T15:04", "2006-01-02T15:04:05"}

// skipped reports whether the line says nothing: blank, or a comment.
func skipped(s string) bool {
	s = strings.TrimSpace(s)
	return s == "" || s[0] == '#'
}

// parseLine reads one line of a timed log:
//
//	line = moment [ who ] [ "edit" N | "reply" N | "file" PATH ] "|" text
//	text = anything, trimmed; a valid JSON string is decoded; empty: a tick
func parseLine(number int, s string) (line, error) {
	l := line{number: number}
	if !utf8.ValidString(s) {
		return l, badf("the line is not valid UTF-8: save the log as UTF-8")
	}
	head, text, ok := strings.Cut(s, "|")
	if !ok {
		return l, badf(`the line has no "|": write it as "2026-05-16 08:10 | text"`)
	}
	words := strings.Fields(head)
	n, err := l.takeMoment(words)
	if err != nil {
		return l, err
	}
	if err := l.takeHead(words[n:]); err != nil {
		return l, err
	}
	l.text = DecodeText(text)
	l.tick = l.text == "" && l.file == ""
	if l.tick && (l.edit != 0 || l.reply != 0) {
		return l, badf("an edit or a reply needs a text")
	}
	return l, nil
}

func (l *line) takeMoment(words []string) (used int, err error) {
	for n := 1; n <= 2 && n <= len(words); n++ {
		for _, layout := range layouts {
			if t, err := time.Parse(layout, strings.Join(words[:n], " ")); err == nil {
				l.wall = t
				return n, nil
			}
		}
	}
	return 0, badf(`the line must begin with a day and a time, as "2026-05-16 08:10"`)
}

func (l *line) takeHead(words []string) error {
	if n := len(words); n >= 2 && words[n-2] == "file" {
		l.file, words = words[n-1], words[:n-2]
	}
	if n := len(words); n >= 2 && (words[n-2] == "edit" || words[n-2] == "reply") {
		of, err := strconv.Atoi(words[n-1])
		if err != nil || of < 1 {
			return badf("%q is not a line number", words[n-1])
		}
		if words[n-2] == "edit" {
			l.edit = of
		} else {
			l.reply = of
		}
		words = words[:n-2]
	}
	for _, w := range words {
		if w == "edit" || w == "reply" {
			return badf("%q needs the number of a line behind it, once", w)
		}
	}
	l.who = strings.Join(words, " ")
	return nil
}

// DecodeText trims a text, and decodes one that is a valid JSON string, so that
// it may hold line breaks.
func DecodeText(s string) string {
	s = strings.TrimSpace(s)
	if strings.HasPrefix(s, `"`) {
		var decoded string
		if json.Unmarshal([]byte(s), &decoded) == nil {
			return decoded
		}
	}
	return s
}
