package reading

import "strings"

// choresOnce says that chores are spoken of for once, or by whom or whether they are done,
// which sets no chore day: "my wife will do chores next weekend", "can't do chores
// saturday".
func (r *reader) choresOnce(s span, _ int) bool {
	if r.fromNowOn(r.sentenceStart(s.i), r.sentenceEnd(s.j-1)) {
		return false
	}
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.kind == itDay && it.day.every {
			return false
		}
	}
	for k := r.clauseFrom(s.i); k < s.j; k++ {
		it := &r.items[k]
		switch {
		case it.kind == itDay && (it.day.mod != 0 || strings.HasPrefix(strings.ToLower(r.text[it.from:it.to]), "this ")):
			return true
		case k < s.i && (household[it.s] || persons[lastWord(it.s)] && !isUs[lastWord(it.s)]):
			return true
		case k < s.i && it.is(sNot):
			return true
		}
	}
	return false
}

// isUs are the words for who texts.
var isUs = setOfWords(split("i, im, i'm, i've, ive, we, we're, were, me, us, am, are"))
