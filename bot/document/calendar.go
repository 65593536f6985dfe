package document

import (
	"bytes"
	"fmt"
	"sort"
	"strings"
	"time"

	ics "github.com/arran4/golang-ical"

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
// names the herd for good: a date keeps its UID from file to file, so that
// taking in a later file moves it and doubles nothing.
func Calendar(h *model.Herd, id string, now time.Time) ([]byte, error) {
	c := calendar{h: h, id: id, now: now, today: model.DayOf(now), v: wording.Voice{Herd: h, Now: now}, taken: map[string]int{}}
	c.out = ics.NewCalendar()
	c.out.SetProductId("-//troughbell//coming dates//EN")
	c.out.SetCalscale("GREGORIAN")
	c.out.SetMethod(ics.MethodPublish)
	name := wording.Report("calendar")
	if h.Name != "" {
		name = h.Name
	}
	c.out.SetXWRCalName(name)
	if zone := now.Location(); zone != time.UTC {
		c.out.AddVTimezone(zoneOf(zone, now))
	}
	c.rounds()
	c.bookings()
	c.reminders()
	c.clears()
	c.lines()
	var b bytes.Buffer
	if err := c.out.SerializeTo(&b, ics.WithNewLine("\r\n")); err != nil {
		return nil, fmt.Errorf("calendar: %w", err)
	}
	return b.Bytes(), nil
}

type calendar struct {
	h     *model.Herd
	id    string
	now   time.Time
	today model.Day
	v     wording.Voice
	out   *ics.Calendar
	taken map[string]int // UIDs so far
}

func (c *calendar) event(key, title string) *ics.VEvent {
	c.taken[key]++
	if n := c.taken[key]; n > 1 {
		key = fmt.Sprintf("%s-%d", key, n)
	}
	safe := strings.Map(func(r rune) rune {
		if r > '~' || r <= ' ' {
			return '_'
		}
		return r
	}, key)
	e := c.out.AddEvent(safe + "-" + c.id + "@troughbell")
	e.SetDtStampTime(c.now)
	e.SetSequence(int(c.now.Unix() / 60)) // a later file wins over an earlier one
	e.SetSummary(title)
	return e
}

func (c *calendar) allDay(key, title string, on model.Day) {
	e := c.event(key, title)
	date := ics.WithValue(string(ics.ValueDataTypeDate))
	e.SetProperty(ics.ComponentPropertyDtStart, compact(on), date)
	e.SetProperty(ics.ComponentPropertyDtEnd, compact(on+1), date)
	e.SetTimeTransparency(ics.TransparencyTransparent)
}

func (c *calendar) timed(key, title string, at time.Time, lasts time.Duration) {
	e := c.event(key, title)
	zone := c.now.Location()
	set := func(p ics.ComponentProperty, t time.Time) {
		if zone == time.UTC {
			e.SetProperty(p, t.UTC().Format("20060102T150405Z"))
			return
		}
		e.SetProperty(p, t.In(zone).Format(localLayout), ics.WithTZID(zone.String()))
	}
	set(ics.ComponentPropertyDtStart, at)
	set(ics.ComponentPropertyDtEnd, at.Add(lasts))
}

func compact(d model.Day) string {
	y, m, day := d.Date()
	return fmt.Sprintf("%04d%02d%02d", y, m, day)
}

// rounds has the next chore days, while pigs are there.
func (c *calendar) rounds() {
	if len(c.h.Alive(c.today)) == 0 {
		return
	}
	at := c.now
	for range roundsAhead {
		at = c.h.NextChore(at)
		c.timed("round-"+compact(model.DayOf(at)), wording.Report("round"), at, roundLasts)
	}
}

// bookings has the appointments. Each is known by its place among those of the
// herd, so that one moved to another day stays the same.
func (c *calendar) bookings() {
	all := append([]model.Dated[model.Booked](nil), c.h.Bookings...)
	sort.SliceStable(all, func(i, j int) bool { return all[i].F.Day < all[j].F.Day })
	for i, b := range all {
		if b.F.Day < c.today || b.F.Cancelled {
			continue
		}
		key := fmt.Sprintf("butcher-%d", i+1)
		if b.F.Minute == nil {
			c.allDay(key, wording.Report("butcher"), b.F.Day)
			continue
		}
		c.timed(key, wording.Report("butcher"), b.F.Day.At(*b.F.Minute, c.now.Location()), roundLasts)
	}
}

func (c *calendar) reminders() {
	for _, r := range c.h.Reminds {
		if r.F.Day < c.today {
			continue
		}
		if r.F.Minute == nil {
			c.allDay("remind-"+r.ID, r.F.What, r.F.Day)
			continue
		}
		c.timed("remind-"+r.ID, r.F.What, r.F.Day.At(*r.F.Minute, c.now.Location()), 15*time.Minute)
	}
}

// clears has for each pig under a withdrawal the first day that it is clear all
// through; of unknown days there is no date.
func (c *calendar) clears() {
	days := map[model.Day][]*model.Animal{}
	for _, p := range c.h.Withdrawal(c.now) {
		if p.Known && p.Treated && p.ClearAt.After(c.now) {
			days[p.NotBefore()] = append(days[p.NotBefore()], p.Animal)
		}
	}
	order := make([]model.Day, 0, len(days))
	for d := range days {
		order = append(order, d)
	}
	sort.Slice(order, func(i, j int) bool { return order[i] < order[j] })
	for i, d := range order {
		title := wording.Report("clear_event") + ": " + c.v.Names(c.v.NamesOf(days[d]))
		c.allDay(fmt.Sprintf("clear-%d", i+1), title, d)
	}
}

// lines has what else falls due, as "what's due?" says it.
func (c *calendar) lines() {
	for _, l := range schedule.Upcoming(c.h, c.now, calendarDays) {
		if l.About == "own" || l.About == "book" && l.On == 0 {
			continue
		}
		on := l.On
		if on == 0 && !l.At.IsZero() {
			on = model.DayOf(l.At.In(c.now.Location()))
		}
		if on < c.today {
			continue
		}
		c.allDay("due-"+l.Topic, c.v.Line(l), on)
	}
}
