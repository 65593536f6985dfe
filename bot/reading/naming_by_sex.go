package reading

import "strings"

// sexOfNamed says that words begin with a sex and tell right behind it who is of it: "girls
// are Dolly and Loretta", "boy is Conway", "barrows: Hank and Bo".
func (r *reader) sexOfNamed(words []string) bool {
	if r.sexWord(strings.ToLower(words[0])) == "" {
		return false
	}
	for k, w := range words[1:] {
		switch low := strings.ToLower(w); {
		case k < 3 && saidOfNames[low]:
		default:
			return w != low && r.mayBeName(w) && !r.wordOfThing(low)
		}
	}
	return false
}

var saidOfNames = listed("is, are, =, :, named, called, will, be, being, to, pigs, pig, ones, one, -")

// smallTalk says that a word is one that says nothing: "lol", "haha".
func (r *reader) smallTalk(low string) bool {
	m := r.lex.of[low]
	return m != nil && m.sense.any(setOf(sThanks, sFiller))
}
