package reading

import "strings"

// troubleWords tell that feed or water went another way than into the pigs, or
// could not reach them.
var troubleWords = setOfWords(split("leak, leaks, leaked, leaking, leaky, stuck, clogged, plugged, frozen, froze, burst, cracked, dripping, drips, " +
	"tipped, spilled, spilt, raccoon, raccoons, racoons, coons, rats, mice, birds, bear, bridged, jammed"))

// Trouble reports whether a note in the person's words tells why feed or water
// did not go as the pigs alone would have it.
func Trouble(note string) bool {
	for _, w := range strings.FieldsFunc(strings.ToLower(note), func(r rune) bool { return !('a' <= r && r <= 'z') }) {
		if troubleWords[w] {
			return true
		}
	}
	return false
}
