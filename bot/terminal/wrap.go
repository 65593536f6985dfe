package terminal

import (
	"strings"
	"unicode/utf8"
)

// leastWidth is the width below which breaking lines helps nobody.
const leastWidth = 20

// wrap breaks a line between words so that each part has at most width
// characters; a longer word stays whole. A width below 20, or not known, breaks
// nothing.
func wrap(line string, width int) []string {
	if width < leastWidth || utf8.RuneCountInString(line) <= width {
		return []string{line}
	}
	var out []string
	part, n := "", 0
	for _, w := range strings.Split(line, " ") {
		long := utf8.RuneCountInString(w)
		if part != "" && n+1+long > width {
			out = append(out, part)
			part, n = "", 0
		}
		if part == "" {
			part, n = w, long
			continue
		}
		part, n = part+" "+w, n+1+long
	}
	return append(out, part)
}
