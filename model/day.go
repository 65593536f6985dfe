package model

import (
	"fmt"
	"time"
)

// Day is a calendar day, counted from 1970-01-01, with no zone and no hour.
// Adding to it can never be upset by a clock change.
type Day int32

const dayLayout = "2006-01-02"

// DayOf is the calendar day of t where t's own location says it is.
func DayOf(t time.Time) Day {
	return DateDay(t.Date())
}

// DateDay is the day of a date; out-of-range months and days carry over as in
// [time.Date].
func DateDay(year int, month time.Month, day int) Day {
	return Day(time.Date(year, month, day, 0, 0, 0, 0, time.UTC).Unix() / 86400)
}

// ParseDay reads a day written as 2026-05-16.
func ParseDay(s string) (Day, error) {
	t, err := time.Parse(dayLayout, s)
	if err != nil {
		return 0, fmt.Errorf("%q is not a day written as 2026-05-16", s)
	}
	return DayOf(t), nil
}

// Date gives the day's year, month and day of the month.
func (d Day) Date() (year int, month time.Month, day int) {
	return d.utc().Date()
}

// Weekday is the day of the week.
func (d Day) Weekday() time.Weekday { return d.utc().Weekday() }

// offsetReach is how far from a wall time its zone's offsets before and after a
// clock change are looked up: further than any change of the clock moves it.
const offsetReach = 3 * time.Hour

// At is the moment the day's wall clock in loc shows minute minutes after
// midnight. A time inside a spring gap moves forward by the gap; a time that
// comes twice in autumn is its first pass. time.Date promises neither.
func (d Day) At(minute int, loc *time.Location) time.Time {
	y, m, day := d.Date()
	wall := time.Date(y, m, day, 0, minute, 0, 0, time.UTC)
	near := time.Date(y, m, day, 0, minute, 0, 0, loc)
	with := func(t time.Time) time.Time {
		_, offset := t.Zone()
		return wall.Add(-time.Duration(offset) * time.Second).In(loc)
	}
	first := with(near.Add(-offsetReach))
	if sameWall(first, wall) {
		return first
	}
	if second := with(near.Add(offsetReach)); sameWall(second, wall) {
		return second
	}
	return first
}

func sameWall(a, b time.Time) bool {
	return a.Hour() == b.Hour() && a.Minute() == b.Minute() && a.Day() == b.Day()
}

// Next is the first day after d that falls on w.
func (d Day) Next(w time.Weekday) Day {
	step := (int(w) - int(d.Weekday()) + 7) % 7
	if step == 0 {
		step = 7
	}
	return d + Day(step)
}

func (d Day) utc() time.Time { return time.Unix(int64(d)*86400, 0).UTC() }

// String writes the day as 2026-05-16.
func (d Day) String() string { return d.utc().Format(dayLayout) }

// MarshalText writes the day as 2026-05-16, in JSON and CSV alike.
func (d Day) MarshalText() ([]byte, error) { return []byte(d.String()), nil }

// UnmarshalText reads what MarshalText wrote.
func (d *Day) UnmarshalText(b []byte) error {
	p, err := ParseDay(string(b))
	if err != nil {
		return err
	}
	*d = p
	return nil
}

// MinuteOf is the number of minutes since midnight that t's wall clock shows.
func MinuteOf(t time.Time) int { return t.Hour()*60 + t.Minute() }
