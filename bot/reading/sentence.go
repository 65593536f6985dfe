package reading

import "strings"

// sentenceEnd is the item that begins the next sentence.
func (r *reader) sentenceEnd(k int) int {
	n := k + 1
	for n < len(r.items) && r.items[n].gap < gapStop {
		n++
	}
	return n
}

func (r *reader) lineEnd(k int) int {
	n := k + 1
	for n < len(r.items) && !strings.Contains(r.text[r.items[n-1].to:r.items[n].from], "\n") {
		n++
	}
	return n
}

func (r *reader) fillersBefore(k int) bool {
	for n := k - 1; n >= 0; n-- {
		if k-n > openingWords {
			return false
		}
		if n+1 < k && r.items[n+1].gap >= gapStop {
			break
		}
		if !r.items[n].isAny(setOf(sFiller, sThanks, sYes)) && r.items[n].s != "but" && r.items[n].s != "and" {
			return false
		}
		if r.items[n+1].gap >= gapStop {
			break
		}
	}
	return true
}

// openingWords is how many small words may stand before what a sentence is
// about.
const openingWords = 10

func (r *reader) sentenceStart(k int) int {
	for k > 0 && r.items[k].gap < gapStop {
		k--
	}
	return k
}
