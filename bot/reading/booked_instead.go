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
	if !r.putsOff() {
		return
	}
	for k := range es {
		if f, ok := es[k].Act.(Fact); ok && es[k].Replace == "" {
			if b, booked := f.Fact.(model.Booked); booked && !b.Cancelled {
				es[k].Instead = true
			}
		}
	}
}
