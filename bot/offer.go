package bot

import (
	"reflect"
	"strings"
	"unicode/utf8"

	"troughbell/bot/reading"
	"troughbell/model"
)

// longestOffer is how many characters of a label a phone still shows.
const longestOffer = 48

// offer puts what a plan could be kept as below the answer that nothing was
// recorded: pigs to expect, or a reminder. The label is a text that reads to just
// that, so that a tap, or the same words later, keeps it.
func (t *talk) offer(n reading.None) {
	if len(t.r.Entries) != 1 || len(t.buttons) > 0 || strings.ContainsRune(t.m.Text, '\n') {
		return
	}
	var f model.Fact
	switch {
	case n.Coming != nil:
		f = *n.Coming
	case n.Reason == reading.NonePlan:
		m, ok := reading.Planned(t.context(), t.m.Text)
		if !ok {
			return
		}
		f = m
	default:
		return
	}
	label := t.voice().Offer(f)
	if utf8.RuneCountInString(label) > longestOffer || forbidden(t.m.From, f) != "" || !t.readsTo(label, f) {
		return
	}
	t.buttons = rows([]string{label})
}

// readsTo says that a text is read as a fact and nothing else.
func (t *talk) readsTo(text string, want model.Fact) bool {
	r := reading.Read(reading.Context{Now: t.now, Herd: t.s.Herd}, text)
	if len(r.Entries) != 1 || len(r.Left) > 0 {
		return false
	}
	f, ok := r.Entries[0].Act.(reading.Fact)
	return ok && reflect.DeepEqual(f.Fact, want)
}
