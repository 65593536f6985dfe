package wording

import (
	"fmt"
	"time"

	"troughbell/model"
)

// Day writes a day as "Sat 12 Sep", with the year where it is not this one.
// The month is a word, so that no order of numbers can be misread.
func (v Voice) Day(d model.Day) string {
	return d.Weekday().String()[:3] + " " + v.date(d)
}

// NearDay writes a day as "today", "tomorrow" or like Day.
func (v Voice) NearDay(d model.Day) string {
	switch {
	case v.Lasting:
	case d == v.today():
		return "today"
	case d == v.today()+1:
		return "tomorrow"
	}
	return v.Day(d)
}

func (v Voice) date(d model.Day) string {
	y, m, day := d.Date()
	s := fmt.Sprintf("%d %s", day, m.String()[:3])
	if ny, _, _ := v.today().Date(); y != ny {
		s += fmt.Sprintf(" %d", y)
	}
	return s
}

// DayRange writes a span of days as "14 Aug–15 Sep" or "14–25 Aug".
func (v Voice) DayRange(from, to model.Day) string {
	if from == to {
		return v.Day(from)
	}
	fy, fm, fd := from.Date()
	ty, tm, _ := to.Date()
	if fy == ty && fm == tm {
		return fmt.Sprintf("%d–%s", fd, v.date(to))
	}
	if fy == ty { // the year stands once
		return fmt.Sprintf("%d %s–%s", fd, fm.String()[:3], v.date(to))
	}
	return v.date(from) + "–" + v.date(to)
}

// Clock writes minutes after midnight as "6 am", "8:30 pm", or "18:00" with
// metric units.
func (v Voice) Clock(minute int) string {
	h, m := minute/60, minute%60
	if v.Metric() {
		return fmt.Sprintf("%d:%02d", h, m)
	}
	half := "am"
	if h >= 12 {
		half = "pm"
	}
	h = (h+11)%12 + 1
	if m == 0 {
		return fmt.Sprintf("%d %s", h, half)
	}
	return fmt.Sprintf("%d:%02d %s", h, m, half)
}

// Moment writes a moment as "Thu 6 am", with its date where it is not within
// the days around now.
func (v Voice) Moment(t time.Time) string {
	d := model.DayOf(t)
	clock := v.Clock(model.MinuteOf(t))
	switch away := int(d - v.today()); {
	case v.Lasting:
	case away == 0:
		return "today " + clock
	case away == 1:
		return "tomorrow " + clock
	case away > 1 && away < 6:
		return d.Weekday().String()[:3] + " " + clock
	}
	return v.Day(d) + " " + clock
}

// hourly is how far ahead a computed moment is told by the hour; beyond, the day
// is all that is known.
const hourly = 48 * time.Hour

// Edge writes the moment until which something is safe, rounded to the safe
// side: the full hour before it, beyond two days the last whole day before it.
func (v Voice) Edge(t time.Time) string {
	if t.Sub(v.Now) <= hourly {
		return v.Moment(t.Truncate(time.Hour))
	}
	d := model.DayOf(t)
	if t.Hour() < 18 {
		d--
	}
	return v.Day(d)
}

// longAgo is how far back a computed moment is told by the hour.
const longAgo = 12 * time.Hour

// Likely writes a computed moment to the nearest hour, further off its day.
func (v Voice) Likely(t time.Time) string {
	if ahead := t.Sub(v.Now); ahead <= hourly && ahead > -longAgo {
		if ahead < 0 { // what is past is never told as still to come
			return v.Moment(t.Truncate(time.Hour))
		}
		return v.Moment(t.Round(time.Hour))
	}
	return v.Day(model.DayOf(t))
}
