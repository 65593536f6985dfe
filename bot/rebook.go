package bot

import (
	"slices"

	"troughbell/bot/reading"
	"troughbell/model"
)

// rebook takes the pigs of a text that says that they were moved to the day booked
// now out of the appointment they had; it is cancelled where none is left. Where the
// text names no pigs and gives no number, those of the old appointment hold.
func (t *talk) rebook(b model.Booked, e *reading.Entry) (model.Booked, error) {
	old, ok := t.bookingMeant(b, e.InsteadOf)
	if b.Cancelled || !e.Instead || !ok || old.Day == b.Day {
		return b, nil
	}
	if b.Count == 0 {
		b.Count, b.Animals = old.Count, old.Animals
	}
	rest, stay := t.restOf(old, b)
	if !stay {
		rest = model.Booked{Day: old.Day, Cancelled: true}
	}
	left := t.note(rest)
	left.Judged = implied
	if stay {
		t.recorded = append(t.recorded, reading.Entry{Act: reading.Fact{Fact: rest}, On: left.On})
	}
	if there, ok := t.bookedOn(b.Day); ok && len(there.Animals) > 0 && len(b.Animals) > 0 {
		for _, name := range there.Animals { // whom the day takes already
			if !slices.Contains(b.Animals, name) {
				b.Animals = append(slices.Clone(b.Animals), name)
			}
		}
		b.Count = len(b.Animals)
	}
	return b, t.append(left)
}

// restOf is an old appointment with the pigs that stay in it when those that a new
// one names leave it; false where none stays.
func (t *talk) restOf(old, b model.Booked) (model.Booked, bool) {
	if len(b.Animals) == 0 || slices.Equal(b.Animals, old.Animals) {
		return old, false
	}
	rest := old
	rest.Animals = nil
	for _, p := range t.s.Herd.BookedPigs(old, model.DayOf(t.now)) {
		if !slices.Contains(b.Animals, p.Name) {
			rest.Animals = append(rest.Animals, p.Name)
		}
	}
	if len(rest.Animals) == 0 {
		return old, false
	}
	switch {
	case len(old.Animals) == 0 && old.Count > 0: // a number, whoever is heaviest
		rest.Animals, rest.Count = nil, old.Count-len(b.Animals)
	case slices.Contains(rest.Animals, ""):
		rest.Animals, rest.Count = nil, len(rest.Animals)
	default:
		rest.Count = len(rest.Animals)
	}
	return rest, rest.Count > 0
}

func (t *talk) bookedOn(d model.Day) (model.Booked, bool) {
	for _, b := range t.s.Herd.Bookings {
		if b.F.Day == d {
			return b.F, true
		}
	}
	return model.Booked{}, false
}

// bookingMeant is the appointment that a text speaks of: the one of the day it
// names, the one for the pigs that it names, else the next.
func (t *talk) bookingMeant(b model.Booked, was model.Day) (model.Booked, bool) {
	if was != 0 {
		return t.bookedOn(was)
	}
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
