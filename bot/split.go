package bot

import (
	"strings"
	"unicode/utf16"
)

// maxUnits is how long one message may be, in UTF-16 units: below Telegram's
// limit of 4,096 in whichever way that is counted.
const maxUnits = 4000

// split cuts a text into messages of at most limit units, at line ends where it
// can, and never within a character.
func split(text string, limit int) []string {
	var out []string
	for units(text) > limit {
		cut := prefix(text, limit)
		if i := strings.LastIndexByte(text[:cut], '\n'); i > 0 {
			out, text = append(out, text[:i]), text[i+1:]
			continue
		}
		out, text = append(out, text[:cut]), text[cut:]
	}
	return append(out, text)
}

func units(s string) int {
	n := 0
	for _, r := range s {
		n += utf16.RuneLen(r)
	}
	return n
}

// prefix is the length in bytes of the longest start of at most limit units.
func prefix(s string, limit int) int {
	n := 0
	for i, r := range s {
		if n += utf16.RuneLen(r); n > limit {
			return i
		}
	}
	return len(s)
}
