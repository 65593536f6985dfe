package model

import (
	"fmt"
	"sort"
	"strings"
	"time"
)

var weekdays = []string{"sun", "mon", "tue", "wed", "thu", "fri", "sat"}

// WeekdayCode is the three-letter code of a weekday in settings: "sat".
func WeekdayCode(w time.Weekday) string { return weekdays[w] }

// ParseClock reads minutes after midnight from "07:00".
func ParseClock(s string) (int, error) {
	var hour, minute int
	if _, err := fmt.Sscanf(s, "%d:%d", &hour, &minute); err != nil || hour < 0 || hour > 23 || minute < 0 || minute > 59 {
		return 0, fmt.Errorf("%q is not a time of day written as 07:00", s)
	}
	return hour*60 + minute, nil
}

// FormatClock writes minutes after midnight as "07:00".
func FormatClock(minute int) string { return fmt.Sprintf("%02d:%02d", minute/60, minute%60) }

// apply takes a setting into the herd. A value that cannot be read changes
// nothing: settings are checked before they are recorded.
func (h *Herd) apply(s Setting, r Record) {
	if first := h.Chore.Since.IsZero(); first || s.Key == SetZone || s.Key == SetChore || s.Key == SetHour || s.Key == SetEve {
		h.Chore.Since = r.At
	}
	switch s.Key {
	case SetHerd:
		h.Name = s.Text
	case SetZone:
		h.Zone = s.Text
	case SetUnits:
		h.Units = s.Text
	case SetCurrency:
		h.Currency = s.Text
	case SetTarget:
		if s.Number != nil {
			h.TargetKg, h.TargetStated = *s.Number, true
		}
	case SetChore:
		h.setChoreDays(s.List)
	case SetHour:
		if len(s.List) == 1 {
			if m, err := ParseClock(s.List[0]); err == nil {
				h.Chore.Minute, h.Chore.Stated = m, true
			}
		}
	case SetPictures:
		h.DarkPictures = s.Text == DarkPictures
	case SetEve:
		h.Chore.EveMinute = nil
		if len(s.List) == 1 {
			if m, err := ParseClock(s.List[0]); err == nil {
				h.Chore.EveMinute = &m
			}
		}
	case SetShop:
		h.Chore.ShopMinute = UsualShopMinute
		if len(s.List) == 1 {
			if m, err := ParseClock(s.List[0]); err == nil {
				h.Chore.ShopMinute = m
			}
		}
	case SetQuiet:
		h.setQuiet(s.List)
	case SetMute:
		h.Muted[s.Text] = true
	case SetUnmute:
		h.unmute(s.Text, r.At)
	case SetLevel:
		h.LevelMidweek = s.Text == LevelMidweek
	case SetPlace:
		h.Place = nil
		if p, err := ParsePlace(s.Text); err == nil {
			h.Place = &p
		}
	case SetSkipped:
		h.Skipped[s.Text] = true
	case SetSize:
		if s.Thing != nil && s.Thing.FeedKg != nil {
			h.Sizes[s.Thing.Name] = *s.Thing.FeedKg
		}
	case SetFeeder:
		h.setFeeder(s.Thing, r.At)
	case SetBarrel:
		h.setBarrel(s.Thing)
	case SetPen:
		h.setPen(s.Thing, r.At)
	case SetWallow:
		h.setWallow(s.Thing)
	}
}

// unmute has the nudges of a topic, or of all, begin again.
func (h *Herd) unmute(topic string, at time.Time) {
	h.Unmuted[topic] = at
	delete(h.Muted, topic)
	if topic == All {
		clear(h.Muted)
	}
}

func (h *Herd) setChoreDays(codes []string) {
	var days []time.Weekday
	for _, c := range codes {
		for w, code := range weekdays {
			if c == code {
				days = append(days, time.Weekday(w))
			}
		}
	}
	if len(days) > 0 {
		sort.Slice(days, func(i, j int) bool { return days[i] < days[j] })
		h.Chore.Days, h.Chore.Stated = days, true
	}
}

func (h *Herd) setQuiet(l []string) {
	if len(l) != 2 {
		return
	}
	from, err1 := ParseClock(l[0])
	to, err2 := ParseClock(l[1])
	if err1 == nil && err2 == nil {
		h.Quiet = QuietHours{From: from, To: to}
	}
}

// find gives the index of the thing of that name; a thing without a name is the
// only one there is. -1 means none yet.
func find[T any](things []*T, name string, nameOf func(*T) string) int {
	for i, t := range things {
		if strings.EqualFold(nameOf(t), name) {
			return i
		}
	}
	if name == "" && len(things) == 1 {
		return 0
	}
	return -1
}

// Feeder finds a feeder by its name, or the only one by no name; nil if none.
func (h *Herd) Feeder(name string) *Feeder {
	if i := find(h.Feeders, name, func(f *Feeder) string { return f.Name }); i >= 0 {
		return h.Feeders[i]
	}
	return nil
}

// Barrel finds a barrel by its name, or the only one by no name; nil if none.
func (h *Herd) Barrel(name string) *Barrel {
	if i := find(h.Barrels, name, func(b *Barrel) string { return b.Name }); i >= 0 {
		return h.Barrels[i]
	}
	return nil
}

// Pen finds a pen by its name; nil if none.
func (h *Herd) Pen(name string) *Pen {
	if i := find(h.Pens, name, func(p *Pen) string { return p.Name }); i >= 0 {
		return h.Pens[i]
	}
	return nil
}

func (h *Herd) setFeeder(t *Thing, at time.Time) {
	if t == nil {
		return
	}
	f := h.Feeder(t.Name)
	if t.Gone {
		h.Feeders = without(h.Feeders, f)
		if f != nil {
			h.retired = append(h.retired, retiredFeeder{*f, at})
		}
		return
	}
	if f == nil {
		f = &Feeder{Name: nameOr(t.Name, "feeder")}
		h.Feeders = append(h.Feeders, f)
	}
	if t.CapacityKg != nil {
		f.CapacityKg = t.CapacityKg
	}
	if t.CapacityL != nil {
		f.CapacityL = t.CapacityL
	}
}

func (h *Herd) setBarrel(t *Thing) {
	if t == nil {
		return
	}
	b := h.Barrel(t.Name)
	if t.Gone {
		h.Barrels = without(h.Barrels, b)
		return
	}
	if b == nil {
		b = &Barrel{Name: nameOr(t.Name, "barrel")}
		h.Barrels = append(h.Barrels, b)
	}
	if t.CapacityL != nil {
		b.CapacityL = t.CapacityL
	}
	if t.Nipples != nil {
		b.Nipples = t.Nipples
	}
}

func (h *Herd) setPen(t *Thing, at time.Time) {
	if t == nil {
		return
	}
	p := h.Pen(t.Name)
	if t.Gone {
		h.Pens = without(h.Pens, p)
		return
	}
	if p == nil {
		p = &Pen{Name: nameOr(t.Name, "pen")}
		h.Pens = append(h.Pens, p)
	}
	if t.AreaM2 != nil {
		p.AreaM2 = t.AreaM2
	}
	if t.Soil != "" {
		p.Soil = t.Soil
	}
	if t.InUse != nil {
		if *t.InUse {
			for _, other := range h.Pens {
				other.InUse = false
			}
			p.Since = at
		}
		p.InUse = *t.InUse
	}
}

func (h *Herd) setWallow(t *Thing) {
	if t == nil {
		return
	}
	if t.Gone {
		h.Wallow = nil
		return
	}
	if h.Wallow == nil {
		h.Wallow = &Wallow{}
	}
	if t.AreaM2 != nil {
		h.Wallow.AreaM2 = t.AreaM2
	}
	if t.DepthM != nil {
		h.Wallow.DepthM = t.DepthM
	}
}

func nameOr(name, otherwise string) string {
	if name == "" {
		return otherwise
	}
	return name
}

func without[T comparable](things []T, t T) []T {
	out := things[:0]
	for _, x := range things {
		if x != t {
			out = append(out, x)
		}
	}
	return out
}
