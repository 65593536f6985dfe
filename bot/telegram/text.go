package telegram

import (
	"strings"

	"troughbell/bot/reading"
)

// maxName is how much of a person's name is kept, in characters.
const maxName = 40

// clean makes a name fit to show: one line, of what can be seen, not too long.
func clean(name string) string {
	name = strings.Join(strings.Fields(reading.Visible(name)), " ")
	if r := []rune(name); len(r) > maxName {
		return string(r[:maxName])
	}
	return name
}
