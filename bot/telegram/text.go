package telegram

import "strings"

// maxName is how much of a person's name is kept, in characters.
const maxName = 40

// clean makes a name fit to show: one line, without control or direction
// characters, not too long.
func clean(name string) string {
	name = strings.Map(func(r rune) rune {
		if r < ' ' || r == 0x7f || r >= 0x200b && r <= 0x200f || r >= 0x202a && r <= 0x202e || r >= 0x2066 && r <= 0x2069 {
			return -1
		}
		return r
	}, name)
	if r := []rune(strings.TrimSpace(name)); len(r) > maxName {
		return string(r[:maxName])
	}
	return strings.TrimSpace(name)
}
