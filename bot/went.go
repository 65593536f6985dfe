package bot

import (
	"troughbell/bot/reading"
	"troughbell/model"
	"troughbell/schedule"
)

// went is what an answer to the question whether the booked pigs went records: that
// they left on that day, or that the day came to nothing. Where nobody knows which
// pigs they are it is false: the person names them.
func (t *talk) went(l schedule.Line, code string) (reading.Entry, bool) {
	r, ok := t.s.record(l.Of)
	if !ok {
		return reading.Entry{}, false
	}
	b, ok := r.Fact.(model.Booked)
	if !ok {
		return reading.Entry{}, false
	}
	today := model.DayOf(t.now)
	if code == schedule.ChoiceWentNot {
		return reading.Entry{Act: reading.Fact{Fact: model.Booked{Day: b.Day, Cancelled: true}}, On: today}, true
	}
	g, sure := t.s.Herd.GoneAsBooked(b)
	return reading.Entry{Act: reading.Fact{Fact: g}, On: b.Day, Dated: b.Day != today}, sure
}
