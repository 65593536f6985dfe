package bot

import (
	"slices"
	"strings"

	"troughbell/model"
)

// rebooks are the words by which a new appointment takes the place of the next
// one, rather than standing beside it.
var rebooks = []string{"moved", "changed", "instead", "rescheduled", "rebooked", "shifted", "switched", "postponed"}

// rebook cancels the next appointment where the text says that it was moved to
// the day booked now. Where the text gives no number of pigs, that of the old
// appointment holds.
func (t *talk) rebook(b model.Booked) (model.Booked, error) {
	words := strings.FieldsFunc(strings.ToLower(t.m.Text), func(r rune) bool { return r < 'a' || r > 'z' })
	moved := slices.ContainsFunc(rebooks, func(w string) bool { return slices.Contains(words, w) })
	old, ok := t.s.Herd.NextBooking(model.DayOf(t.now))
	if b.Cancelled || !moved || !ok || old.Day == b.Day {
		return b, nil
	}
	if b.Count == 0 {
		b.Count = old.Count
	}
	return b, t.append(t.note(model.Booked{Day: old.Day, Cancelled: true}))
}
