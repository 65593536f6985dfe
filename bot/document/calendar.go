package document

import (
	"fmt"
	"slices"
	"sort"
	"time"

	"troughbell/bot/wording"
	"troughbell/model"
	"troughbell/schedule"
)

const (
	// roundsAhead is how many rounds a calendar holds.
	roundsAhead = 8
	// calendarDays is how far a calendar looks for what falls due.
	calendarDays = 120
	// roundLasts is how long a round takes in a calendar.
	roundLasts = time.Hour
)

// Calendar writes the herd's coming dates as an iCalendar file (RFC 5545). id
// names the herd for good. given is what earlier files held, as the one before
// gave it; what this one holds comes back to be given to the next: so a thing that
// moved keeps its UID, and one that fell away is taken back.
func Calendar(h *model.Herd, id string, now time.Time, given Given) ([]byte, Given, error) {
	c := calendar{h: h, now: now, today: model.DayOf(now), v: wording.Voice{Herd: h, Now: now, Lasting: true}}
	c.rounds()
	c.bookings()
	c.reminders()
	c.clears()
	c.lines()
	after := given.with(c.dates, c.today, now)
	name := wording.Report("calendar")
	if h.Name != "" {
		name = h.Name
	}
	b, err := after.file(name, id, now)
	return b, after, err
}

// date is one date of a calendar.
type date struct {
	// Key tells what it is among those of its kind: a date of the same key is the
	// same thing on another day.
	Kind  string    `json:"kind"`
	Key   string    `json:"key"`
	Title string    `json:"title"`
	From  string    `json:"from"` // as RFC 5545 writes it, by the clock of the zone
	To    string    `json:"to"`   // likewise, exclusive
	Zone  string    `json:"zone,omitempty"`
	Timed bool      `json:"timed,omitempty"` // they are moments; else days
	Last  model.Day `json:"last"`            // its last day
}

type calendar struct {
	h     *model.Herd
	now   time.Time
	today model.Day
	v     wording.Voice
	dates []date
}

func (c *calendar) allDay(kind, key, title string, on model.Day) {
	c.dates = append(c.dates, date{Kind: kind, Key: key, Title: title, From: compact(on), To: compact(on + 1), Last: on})
}

func (c *calendar) timed(kind, key, title string, at time.Time, lasts time.Duration) {
	at = at.In(c.now.Location())
	end := at.Add(lasts)
	c.dates = append(c.dates, date{
		Kind: kind, Key: key, Title: title, Timed: true, Zone: at.Location().String(),
		From: at.Format(localLayout), To: end.Format(localLayout), Last: model.DayOf(end),
	})
}

func compact(d model.Day) string {
	y, m, day := d.Date()
	return fmt.Sprintf("%04d%02d%02d", y, m, day)
}

// rounds has the next chore days, while pigs are there. A round is known by its
// week and its place in it, so that another chore day moves it.
func (c *calendar) rounds() {
	if len(c.h.Alive(c.today)) == 0 {
		return
	}
	at := c.now
	for range roundsAhead {
		at = c.h.NextChore(at)
		year, week := at.ISOWeek()
		place := 1
		for d := model.DayOf(at) - 1; d.Weekday() != time.Sunday; d-- { // ISO weeks begin on Monday
			if c.h.IsChoreDay(d) {
				place++
			}
		}
		c.timed("round", fmt.Sprintf("%d-w%02d-%d", year, week, place), wording.Report("round"), at, roundLasts)
	}
}

// bookings has the appointments.
func (c *calendar) bookings() {
	all := slices.Clone(c.h.Bookings)
	sort.SliceStable(all, func(i, j int) bool { return all[i].F.Day < all[j].F.Day })
	for _, b := range all {
		switch {
		case b.F.Day < c.today || b.F.Cancelled:
		case b.F.Minute == nil:
			c.allDay(kindButcher, b.ID, wording.Report("butcher"), b.F.Day)
		default:
			c.timed(kindButcher, b.ID, wording.Report("butcher"), b.F.Day.At(*b.F.Minute, c.now.Location()), roundLasts)
		}
	}
}

func (c *calendar) reminders() {
	for _, r := range c.h.Reminds {
		switch {
		case r.F.Day < c.today:
		case r.F.Minute == nil:
			c.allDay(kindRemind, r.ID, r.F.What, r.F.Day)
		default:
			c.timed(kindRemind, r.ID, r.F.What, r.F.Day.At(*r.F.Minute, c.now.Location()), 15*time.Minute)
		}
	}
}

// clears has for each pig under a withdrawal the first day that it is clear all
// through, those of one day together, by the first of them; of unknown days there
// is no date.
func (c *calendar) clears() {
	days := map[model.Day][]*model.Animal{}
	var order []model.Day
	for _, p := range c.h.Withdrawal(c.now) {
		if !p.Known || !p.Treated || !p.ClearAt.After(c.now) {
			continue
		}
		on := p.NotBefore()
		if days[on] == nil {
			order = append(order, on)
		}
		days[on] = append(days[on], p.Animal)
	}
	for _, on := range order {
		title := wording.Report("clear_event") + ": " + c.v.Names(c.v.NamesOf(days[on]))
		c.allDay("clear", fmt.Sprint(days[on][0].Number+1), title, on)
	}
}

// lines has what else falls due, as "what's due?" says it. What is overdue is for
// today.
func (c *calendar) lines() {
	taken := map[string]int{}
	for _, l := range schedule.Upcoming(c.h, c.now, calendarDays) {
		on := l.On
		if on == 0 && !l.At.IsZero() {
			on = model.DayOf(l.At.In(c.now.Location()))
		}
		booked := l.About == "book" && slices.ContainsFunc(c.h.Bookings, func(b model.Dated[model.Booked]) bool { return b.F.Day == on })
		if l.About == "own" || booked || on == 0 { // it is there already, or of no day
			continue
		}
		key := l.Topic
		if taken[key]++; taken[key] > 1 {
			key = fmt.Sprintf("%s-%d", key, taken[key])
		}
		c.allDay("due", key, c.v.Line(l), max(on, c.today))
	}
}
