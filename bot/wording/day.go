package wording

import (
	"fmt"
	"strconv"
	"time"

	"troughbell/model"
)

// Day writes a day as "Sat Sep 12", with metric units "Sat 12 Sep", with the
// year where it is not this one. The month is a word, so that no order of
// numbers can be misread.
func (v Voice) Day(d model.Day) string {
	return d.Weekday().String()[:3] + " " + v.date(d)
}

// dayThen writes a day and the number behind it, such as a time. With US units,
// where the day ends in a number itself, a comma parts them.
func (v Voice) dayThen(d model.Day, number string) string {
	if v.Metric() {
		return v.Day(d) + " " + number
	}
	return v.Day(d) + ", " + number
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

// LongDay writes a day as "Saturday September 12 2026", with metric units
// "Saturday 12 September 2026".
func (v Voice) LongDay(d model.Day) string {
	y, m, _ := d.Date()
	return fmt.Sprintf("%s %s %d", d.Weekday(), v.inMonth(m.String(), v.DayOfMonth(d)), y)
}

// ShortDay writes a day as "Sep 12", with metric units "12 Sep".
func (v Voice) ShortDay(d model.Day) string {
	return v.inMonth(v.Month(d), v.DayOfMonth(d))
}

// Month writes the month of a day as "Sep".
func (v Voice) Month(d model.Day) string {
	_, m, _ := d.Date()
	return m.String()[:3]
}

// DayOfMonth writes the number of a day in its month.
func (v Voice) DayOfMonth(d model.Day) string {
	_, _, day := d.Date()
	return strconv.Itoa(day)
}

// inMonth puts a day, or several, beside their month: behind it with US units,
// before it with metric ones. No other place knows the order.
func (v Voice) inMonth(month, days string) string {
	if v.Metric() {
		return days + " " + month
	}
	return month + " " + days
}

// date is a day without its weekday, with the year where it is not this one.
func (v Voice) date(d model.Day) string { return v.ShortDay(d) + v.otherYear(d) }

// otherYear is the year behind a day that is not of this one.
func (v Voice) otherYear(d model.Day) string {
	y, _, _ := d.Date()
	if ny, _, _ := v.today().Date(); y == ny {
		return ""
	}
	return fmt.Sprintf(" %d", y)
}

// DayRange writes a span of days as "Aug 14–Sep 15" or "Aug 14–25", with metric
// units "14 Aug–15 Sep" or "14–25 Aug". The year stands once where it is one.
func (v Voice) DayRange(from, to model.Day) string {
	if from == to {
		return v.Day(from)
	}
	fy, fm, _ := from.Date()
	ty, tm, _ := to.Date()
	switch {
	case fy == ty && fm == tm:
		return v.inMonth(v.Month(to), v.DayOfMonth(from)+"–"+v.DayOfMonth(to)) + v.otherYear(to)
	case fy == ty:
		return v.ShortDay(from) + "–" + v.date(to)
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
	return v.dayThen(d, clock)
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
