package reading

import (
	"slices"

	"troughbell/model"
)

// insteadWords are the words by which a new appointment takes the place of one
// that was made before, rather than standing beside it.
var insteadWords = []string{"moved", "changed", "instead", "rescheduled", "rebooked", "shifted", "switched", "postponed", "bumped", "pushed"}

// putsOff says that the text has one of them.
func (r *reader) putsOff() bool {
	return slices.ContainsFunc(r.toks, func(t token) bool { return t.kind == tokWord && slices.Contains(insteadWords, t.s) })
}

// instead marks the bookings that take the place of the next one.
func (r *reader) instead(es []Entry) {
	off := r.putsOff()
	for k := range es {
		if f, ok := es[k].Act.(Fact); ok && es[k].Replace == "" {
			if b, booked := f.Fact.(model.Booked); booked && !b.Cancelled && (off || r.nowInstead(es[k])) {
				es[k].Instead = true
			}
		}
	}
}

// nowInstead says that an appointment is told to be on its day now, so that it was on
// another before: "butcher is oct 9 now".
func (r *reader) nowInstead(e Entry) bool {
	if next, ok := r.c.Herd.NextBooking(r.today); !ok || len(r.c.Herd.Bookings) == 0 || next.Day == 0 {
		return false
	}
	now := false
	for k := range r.items {
		it := &r.items[k]
		if it.to <= e.From || it.from >= e.To && (it.gap >= gapComma || it.from > e.To+1) {
			continue
		}
		if it.s == "another" || it.s == "also" || it.s == "second" || it.s == "too" {
			return false
		}
		now = now || it.s == "now" || it.s == "is now" || it.s == "it's now" || it.s == "are now"
	}
	return now
}
