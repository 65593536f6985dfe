package reading

import (
	"time"

	"troughbell/model"
)

const (
	dayNone    dayForm = iota
	dayOffset          // a days from today
	dayWeekday         // a: 0 Sunday; mod: -1 last, +1 next
	dayDate            // a: month, b: day, c: year or 0
	daySlash           // a/b/c, in the order of the person's country
	dayOfMonth         // the a-th
	dayMonth           // a: month
	dayNth             // the b-th weekday c of month a, the last where b is -1
	dayEaster          // a days after Easter Sunday
)

// Parts of a day that a text names.
const (
	partNone int8 = iota
	partMorning
	partEvening
)

// look is the way a day is sought from today.
type look int8

const (
	lookBack    look = -1
	lookForward look = 1
)

// futureReach is how many days ahead a date without a year may lie and still
// be meant as coming, in a text about what was.
const futureReach = 120

// on is the day that was meant, seen from today. dayFirst reads 5/8 as the
// fifth of August.
func (e dayExpr) on(today model.Day, l look, dayFirst bool) (model.Day, bool) {
	if w := e.weeks; w != 0 {
		e.weeks = 0
		d, ok := e.on(today, lookForward, dayFirst)
		return d + 7*model.Day(w), ok
	}
	if w := e.beside; w != 0 {
		e.beside = 0
		d, ok := e.on(today, l, dayFirst)
		if w > 0 {
			return d + model.Day((int(w)-1-int(d.Weekday())+6)%7+1), ok
		}
		return d - model.Day((int(d.Weekday())-(int(-w)-1)+6)%7+1), ok
	}
	switch e.form {
	case dayOffset:
		return today + model.Day(e.a), true
	case dayWeekday:
		return e.weekdayOn(today, l), true
	case daySlash:
		m, d := e.a, e.b
		if dayFirst && e.b <= 12 || m > 12 {
			m, d = d, m
		}
		return dayExpr{form: dayDate, a: m, b: d, c: e.c}.on(today, l, dayFirst)
	case dayDate:
		return e.dateOn(today, l)
	case dayOfMonth:
		y, m, _ := today.Date()
		for k := range 14 {
			if l == lookBack {
				k = -k
			}
			t := time.Date(y, m+time.Month(k), 1, 0, 0, 0, 0, time.UTC)
			if !validDate(t.Year(), int(t.Month()), e.a) {
				continue
			}
			d := model.DateDay(t.Year(), t.Month(), e.a)
			if l == lookBack && d <= today || l == lookForward && d >= today {
				return d, true
			}
		}
	case dayNth, dayEaster:
		return e.movingOn(today, l)
	case dayMonth:
		day := max(e.b, 1)
		for day > 28 && !validDate(2026, e.a, day) { // the month's last
			day--
		}
		return dayExpr{form: dayDate, a: e.a, b: day}.dateOn(today, l)
	}
	return 0, false
}

func (e dayExpr) weekdayOn(today model.Day, l look) model.Day {
	w := time.Weekday(e.a)
	if l == lookForward {
		if e.mod < 0 {
			return dayExpr{form: dayWeekday, a: e.a, mod: e.mod}.weekdayOn(today, lookBack)
		}
		return today.Next(w)
	}
	back := (int(today.Weekday()) - int(w) + 7) % 7
	switch {
	case e.mod == -2:
		return today - model.Day(back+7)
	case e.mod < 0 && back == 0:
		back = 7
	case e.mod > 0:
		return today.Next(w)
	}
	return today - model.Day(back)
}

func (e dayExpr) dateOn(today model.Day, l look) (model.Day, bool) {
	if e.c != 0 {
		if !validDate(e.c, e.a, e.b) {
			return 0, false
		}
		return model.DateDay(e.c, time.Month(e.a), e.b), true
	}
	y, _, _ := today.Date()
	best, found := model.Day(0), false
	for _, year := range []int{y - 1, y, y + 1} {
		if !validDate(year, e.a, e.b) {
			continue
		}
		d := model.DateDay(year, time.Month(e.a), e.b)
		switch {
		case l == lookForward && d >= today && !found:
			return d, true
		case l == lookBack && d <= today+futureReach:
			best, found = d, true
		}
	}
	return best, found
}
