package reading

import "strings"

// ordinalBags takes "a third bag" for one bag more, the third: for a part of one people
// say "a third of a bag".
func (r *reader) ordinalBags() {
	for k := range r.items {
		if it := &r.items[k]; r.ordinalOf(it) {
			it.v = 1
		}
	}
}

// ordinalOf says that an item is "a third bag".
func (r *reader) ordinalOf(it *item) bool {
	if !it.qty(vessel) || it.v > 1 {
		return false
	}
	words := strings.Fields(strings.ToLower(r.text[it.from:it.to]))
	return len(words) == 3 && words[0] == "a" && ordinalParts[words[1]]
}

// ordinalParts are ordinals that tell a part as well.
var ordinalParts = setOfWords(split("third, fourth, fifth, sixth, eighth"))

// ordinalBag says that the span tells of such a bag, so that it is asked what is meant.
func (r *reader) ordinalBag(s span) bool {
	for k := s.i; k < s.j; k++ {
		if r.ordinalOf(&r.items[k]) {
			return true
		}
	}
	return false
}
