package schedule

import (
	"slices"
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

// bookBetween is the card before a booked day: who goes, when feed is to be taken
// away, and who is clear. It comes on the evening two days before, for pigs loaded
// the evening before, and on the morning before, when feed is to be taken away.
func bookBetween(v *view) []need {
	var out []need
	for _, b := range v.h.Bookings {
		if d := b.F.Day; d >= v.day {
			for _, m := range []time.Time{v.evening(d - 2), v.morning(d - 1)} {
				out = append(out, v.loadCard(b.F, m)...)
			}
		}
	}
	return out
}

// feedOff is how long before slaughter feed may be taken away at the earliest, see
// [CodeBookFeed].
const feedOff = 18 * time.Hour

func (v *view) loadCard(b model.Booked, m time.Time) []need {
	var at time.Time
	if b.Minute != nil {
		at = b.Day.At(*b.Minute, v.loc)
	}
	goes := v.h.BookedPigs(b, v.day)
	who := Line{
		Topic: token("book:eve", b.Day), Code: CodeBookEve, On: b.Day, At: at, Names: v.names(goes),
		Q: []model.Quantity{{Value: float64(b.Count), Unit: model.Count}},
	}
	switch {
	case len(b.Animals) > 0:
		who.Q[0].Value, who.Names = 0, b.Animals
	case len(who.Names) > 0:
		who.Code = CodeBookEveHeaviest
	}
	lines := []Line{who}
	if !at.IsZero() {
		lines = append(lines, Line{Topic: token("book:feed", b.Day), Code: CodeBookFeed, On: b.Day, At: at.Add(-feedOff)})
	} else {
		lines = append(lines, Line{Topic: token("book:feed", b.Day), Code: CodeBookFeedHours, On: b.Day})
	}
	if clear := v.clearFor(b, at, goes); len(clear) > 0 {
		lines = append(lines, Line{Topic: token("book:clear", b.Day), Code: CodeBookClear, On: b.Day, Names: clear})
	}
	var out []need
	for _, l := range lines {
		l.About, l.Grade, l.Earliest, l.Latest = aboutBook, Welfare, m, m.Add(10*time.Hour)
		out = append(out, need{Line: l, token: token(l.Topic, m), quiet: 6 * time.Hour})
	}
	return out
}

// clearFor names those that go to an appointment and are clear by then: those that
// got nothing, and those whose days have run. Who is not is told as a danger.
func (v *view) clearFor(b model.Booked, load time.Time, goes []*model.Animal) []string {
	if load.IsZero() {
		load = b.Day.At(0, v.loc)
	}
	var clear []*model.Animal
	for _, p := range goes {
		dirty := slices.ContainsFunc(v.f.Withdrawal(v.at), func(c model.PigClear) bool {
			return c.Animal == p && c.Treated && (!c.Known || c.ClearAt.After(load))
		})
		if !dirty {
			clear = append(clear, p)
		}
	}
	if len(clear) == len(goes) && len(clear) > 0 {
		return []string{model.All}
	}
	return named(clear)
}
