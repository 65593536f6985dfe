package reading

import (
	"time"

	"troughbell/model"
)

// Days of the year that are called by a name.

// holidayWords have a fixed day.
var holidayWords = []struct {
	month, day int
	words      string
}{
	{10, 31, "halloween"},
	{12, 25, "christmas, christmas day, xmas"},
	{12, 24, "christmas eve"},
	{1, 1, "new year's, new years, new year's day, new year"},
	{2, 14, "valentine's, valentines, valentine's day, valentines day"},
	{7, 4, "independence day, fourth of july, the fourth of july, 4th of july, july fourth"},
	{7, 1, "canada day"},
	{12, 26, "boxing day"},
	{12, 31, "new year's eve, new years eve, silvester"},
	{11, 11, "veterans day"},
}

// movingWords are those whose day hangs on the weekday: the nth weekday of a month,
// counted from its end where nth is below zero.
var movingWords = []struct {
	month, nth int
	weekday    time.Weekday
	words      string
}{
	{1, 3, time.Monday, "mlk day, martin luther king day"},
	{2, 3, time.Monday, "presidents day, presidents' day, president's day"},
	{5, 2, time.Sunday, "mother's day, mothers day, muttertag"},
	{5, -1, time.Monday, "memorial day"},
	{6, 3, time.Sunday, "father's day, fathers day"},
	{9, 1, time.Monday, "labor day, labour day"},
	{10, 2, time.Monday, "columbus day, indigenous peoples day"},
	{11, 4, time.Thursday, "thanksgiving, thanksgiving day, turkey day"},
}

// easterWords are counted in days from Easter Sunday.
var easterWords = []struct {
	days  int
	words string
}{
	{0, "easter, easter sunday, ostern, ostersonntag"},
	{-2, "good friday, karfreitag"},
	{1, "easter monday, ostermontag"},
	{39, "ascension day, himmelfahrt"},
	{50, "whit monday, pfingstmontag"},
}

func addHolidays(l *lexicon) {
	add := func(words string, e dayExpr) {
		for _, s := range split(words) {
			m := l.meaning(s)
			m.day, m.isDay = e, true
			long := l.meaning(s + " weekend")
			e.weekend = true
			long.day, long.isDay = e, true
			e.weekend = false
		}
	}
	for _, w := range holidayWords {
		add(w.words, dayExpr{form: dayDate, a: w.month, b: w.day})
	}
	for _, w := range movingWords {
		add(w.words, dayExpr{form: dayNth, a: w.month, b: w.nth, c: int(w.weekday)})
	}
	for _, w := range easterWords {
		add(w.words, dayExpr{form: dayEaster, a: w.days})
	}
}

// movingOn is the holiday next to today, the coming one where a text looks forward.
func (e dayExpr) movingOn(today model.Day, l look) (model.Day, bool) {
	y, _, _ := today.Date()
	var best model.Day
	found := false
	for _, year := range []int{y - 1, y, y + 1} {
		d := e.movingIn(year)
		switch {
		case l == lookForward && d >= today:
			return d, true
		case l == lookBack && d <= today+futureReach:
			best, found = d, true
		}
	}
	return best, found
}

// movingIn is the holiday's day in a year.
func (e dayExpr) movingIn(year int) model.Day {
	if e.form == dayEaster {
		return easterSunday(year) + model.Day(e.a)
	}
	first := model.DateDay(year, time.Month(e.a), 1)
	if e.b < 0 { // the last of its kind
		next := model.DateDay(year, time.Month(e.a)+1, 1)
		back := (int((next - 1).Weekday()) - e.c + 7) % 7
		return next - 1 - model.Day(back) + model.Day(7*(e.b+1))
	}
	ahead := (e.c - int(first.Weekday()) + 7) % 7
	return first + model.Day(ahead+7*(e.b-1))
}

// easterSunday is the day of Easter in the Gregorian calendar, by the method that an
// anonymous reader gave to Nature in 1876 (as printed by Butcher); from memory.
func easterSunday(year int) model.Day {
	a, b, c := year%19, year/100, year%100
	d, e := b/4, b%4
	f := (b + 8) / 25
	g := (b - f + 1) / 3
	h := (19*a + b - d - g + 15) % 30
	i, k := c/4, c%4
	l := (32 + 2*e + 2*i - h - k) % 7
	m := (a + 11*h + 22*l) / 451
	n := h + l - 7*m + 114
	return model.DateDay(year, time.Month(n/31), n%31+1)
}

// longWeekend is the free days around a holiday: to the weekend that it stands beside.
func longWeekend(d model.Day) (from, to model.Day) {
	switch d.Weekday() {
	case time.Monday, time.Tuesday:
		from = d - model.Day(int(d.Weekday())+1)
		return from, d
	case time.Saturday:
		return d, d + 1
	case time.Sunday:
		return d - 1, d
	}
	return d, d + model.Day(7-int(d.Weekday()))
}
