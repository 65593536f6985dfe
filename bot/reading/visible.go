package reading

import (
	"strings"
	"unicode"
)

// mostMarks is how many accents may stand on one letter: no language has more
// than three.
const mostMarks = 3

// Visible takes out of a text what cannot be seen in it or hides what can: control
// and format characters, those that turn the direction of what follows among them,
// and accents heaped upon one another. What texts, names and notes say is shown as
// it stands from here on. Line breaks and tabs stay.
func Visible(text string) string {
	if !hides(text) {
		return text
	}
	marks := 0
	return strings.Map(func(r rune) rune {
		switch {
		case r == '\n' || r == '\t':
			marks = 0
			return r
		case r == '\u2028' || r == '\u2029':
			return '\n'
		case unicode.In(r, unicode.Cc, unicode.Cf, unicode.Co):
			return -1
		case unicode.In(r, unicode.Mn, unicode.Me):
			if marks++; marks > mostMarks {
				return -1
			}
			return r
		}
		marks = 0
		return r
	}, text)
}

// hides reports whether a text has anything but printable ASCII, line breaks and
// tabs: most have not.
func hides(text string) bool {
	for i := range len(text) {
		if c := text[i]; c >= 0x7f || c < ' ' && c != '\n' && c != '\t' {
			return true
		}
	}
	return false
}
