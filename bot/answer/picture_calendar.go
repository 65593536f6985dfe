package answer

import (
	"troughbell/bot/picture"
	"troughbell/model"
	"troughbell/schedule"
)

// Days that the calendar shows before today at most, and ahead at least.
const calendarBack, calendarAhead = 154, 27

// calendarPicture has the season from the day the pigs came to the day they go,
// with what was done and what comes.
func calendarPicture(a asked) (picture.Drawing, error) {
	pigs := a.h.Alive(a.today)
	if len(pigs) == 0 {
		return nil, &model.Missing{What: "pigs"}
	}
	c := picture.Calendar{From: a.today, To: a.today + calendarAhead, Today: a.today}
	for _, p := range pigs {
		c.From = min(c.From, p.Group.Arrived)
	}
	c.From = max(c.From, a.today-calendarBack)
	c.Events = a.happened(c.From)
	last, ahead := a.comes()
	c.To = max(c.To, min(last, a.today+mostAhead))
	c.Events = append(c.Events, ahead...)
	for _, l := range schedule.Upcoming(a.h, a.now, int(c.To-a.today)) {
		if e, ok := a.dueEvent(l); ok && e.On <= c.To {
			c.Events = append(c.Events, e)
		}
	}
	for d := a.today; d <= c.To; d++ {
		if a.h.IsChoreDay(d) {
			c.Rounds = append(c.Rounds, d)
		}
	}
	return c, nil
}

// happened lists what was done from a day on.
func (a asked) happened(from model.Day) []picture.Event {
	var out []picture.Event
	add := func(on model.Day, about string) {
		if on >= from && on <= a.today {
			out = append(out, picture.Event{On: on, About: about})
		}
	}
	for _, g := range a.h.Groups {
		add(g.Arrived, "arrive")
	}
	for _, r := range a.h.Refills {
		add(r.On, "refill")
	}
	for _, w := range a.h.Waters {
		if !w.F.Seen {
			add(w.On, "water")
		}
	}
	for _, t := range a.h.Treatments {
		about := "treat"
		if t.Worm {
			about = "worm"
		}
		add(t.On, about)
	}
	for _, m := range a.h.Moves {
		add(m.On, "move")
	}
	for _, w := range a.h.Weighings {
		add(w.On, "weigh")
	}
	for _, g := range a.h.Gones {
		add(g.On, "gone")
	}
	return out
}

// comes lists the days that are set, and gives the last of them, or the one on
// which the pigs likely reach their target.
func (a asked) comes() (last model.Day, out []picture.Event) {
	for _, b := range a.h.Bookings {
		if b.F.Day >= a.today {
			out = append(out, picture.Event{On: b.F.Day, About: "butcher", Ahead: true})
			last = max(last, b.F.Day)
		}
	}
	if t, err := a.h.Target(a.h.TargetKg, a.today); err == nil && !t.Herd.Already { // without weights there is no such day
		if last == 0 {
			last = t.Herd.Days.Mid
		}
		for _, g := range t.Groups {
			if !g.Already {
				out = append(out, picture.Event{On: g.Days.Mid, About: "target", Ahead: true})
				last = max(last, g.Days.Mid)
			}
		}
	}
	for _, p := range a.h.Withdrawal(a.now) {
		if p.Known && p.Treated && p.Clear > a.today {
			out = append(out, picture.Event{On: p.Clear, About: "clear", Ahead: true})
		}
	}
	return last, out
}

// dueEvent is a line of what is due as an event. What is overdue is for the next
// round.
func (a asked) dueEvent(l schedule.Line) (picture.Event, bool) {
	switch l.About {
	case "refill", "water", "worm", "move", "weigh", "own":
	default:
		return picture.Event{}, false
	}
	on := l.On
	if on == 0 && !l.At.IsZero() {
		on = model.DayOf(l.At.In(a.now.Location()))
	}
	if on < a.today {
		on = model.DayOf(a.h.NextChore(a.now))
	}
	return picture.Event{On: on, About: l.About, Ahead: true}, true
}
