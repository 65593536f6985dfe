package bot

import (
	"slices"

	"troughbell/model"
)

// rebook cancels the next appointment where the text says that it was moved to
// the day booked now. Where the text gives no number of pigs, that of the old
// appointment holds.
func (t *talk) rebook(b model.Booked, instead bool) (model.Booked, error) {
	old, ok := t.bookingMeant(b)
	if b.Cancelled || !instead || !ok || old.Day == b.Day {
		return b, nil
	}
	if b.Count == 0 {
		b.Count, b.Animals = old.Count, old.Animals
	}
	return b, t.append(t.note(model.Booked{Day: old.Day, Cancelled: true}))
}

// bookingMeant is the appointment that a text speaks of: the one for the pigs that
// it names, else the next.
func (t *talk) bookingMeant(b model.Booked) (model.Booked, bool) {
	today := model.DayOf(t.now)
	if len(b.Animals) > 0 {
		for _, old := range t.s.Herd.Bookings {
			if old.F.Day >= today && slices.ContainsFunc(b.Animals, func(name string) bool { return slices.Contains(old.F.Animals, name) }) {
				return old.F, true
			}
		}
	}
	return t.s.Herd.NextBooking(today)
}
