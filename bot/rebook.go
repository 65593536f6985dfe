package bot

import "troughbell/model"

// rebook cancels the next appointment where the text says that it was moved to
// the day booked now. Where the text gives no number of pigs, that of the old
// appointment holds.
func (t *talk) rebook(b model.Booked, instead bool) (model.Booked, error) {
	old, ok := t.s.Herd.NextBooking(model.DayOf(t.now))
	if b.Cancelled || !instead || !ok || old.Day == b.Day {
		return b, nil
	}
	if b.Count == 0 {
		b.Count = old.Count
	}
	return b, t.append(t.note(model.Booked{Day: old.Day, Cancelled: true}))
}
