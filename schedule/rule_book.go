package schedule

import (
	"time"

	"troughbell/model"
)

// bookAheadDays are the days before a booked day at which it is brought up, on
// the chore day that comes next.
var bookAheadDays = []int{42, 14, 7}

// bookVisit says that the butcher should be booked, or that the booked day
// comes nearer.
func bookVisit(v *view) []need {
	b, ok := v.h.NextBooking(v.day)
	if !ok {
		d, err := v.f.BookingDue(v.day)
		if err != nil || d.Booked {
			return nil
		}
		return []need{{quiet: 14 * day, Line: Line{
			About: aboutBook, Topic: aboutBook, Grade: Routine, Code: CodeBookBy,
			On: d.On, Window: d.Window, Latest: (d.On + 1).At(0, v.loc), Reasons: d.Reasons,
		}}}
	}
	left := int(b.Day - v.day)
	for i := len(bookAheadDays) - 1; i >= 0; i-- {
		if left > bookAheadDays[i] {
			continue
		}
		l := Line{
			About: aboutBook, Topic: token("book:ahead", b.Day, bookAheadDays[i]), Grade: Routine, Code: CodeBookAhead, On: b.Day,
			Q: []model.Quantity{{Value: float64(left), Unit: model.Days}, {Value: float64(b.Count), Unit: model.Count}},
		}
		if m, err := v.f.MeanWeight(v.h.BookedPigs(b, v.day), b.Day); err == nil {
			l.Q = append(l.Q, model.Quantity{Value: m.WeightKg.Mid, Unit: model.Kilograms})
			l.Reasons = m.Reasons
		}
		return []need{{Line: l, since: v.seasonStart()}}
	}
	return nil
}

// bookBetween is the card before a booked day: on the evening two days before,
// for pigs loaded the evening before, and on the morning before, when feed is
// to be taken away.
func bookBetween(v *view) []need {
	var out []need
	for _, b := range v.h.Bookings {
		d := b.F.Day
		if d < v.day {
			continue
		}
		var at time.Time
		if b.F.Minute != nil {
			at = d.At(*b.F.Minute, v.loc)
		}
		for _, m := range []time.Time{v.evening(d - 2), v.morning(d - 1)} {
			out = append(out, need{token: token("book:eve", d, m), quiet: 6 * time.Hour, Line: Line{
				About: aboutBook, Topic: token("book:eve", d), Grade: Welfare, Code: CodeBookEve, On: d, At: at,
				Earliest: m, Latest: m.Add(10 * time.Hour),
				Q: []model.Quantity{{Value: float64(b.F.Count), Unit: model.Count}},
			}})
		}
	}
	return out
}
