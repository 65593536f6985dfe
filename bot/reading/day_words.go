package reading

import "strings"

var weekdayWords = []struct {
	weekday int
	words   string
}{
	{0, "sunday, sun, sundays, sonntag, sundy, sunady"},
	{1, "monday, mon, mondays, montag, mondy"},
	{2, "tuesday, tue, tues, tuesdays, dienstag, tuesdy"},
	{3, "wednesday, wed, weds, wednesdays, mittwoch, wensday, wednsday, wednesdy"},
	{4, "thursday, thu, thur, thurs, thursdays, donnerstag, thrusday, thursdy"},
	{5, "friday, fri, fridays, freitag, firday, fridy"},
	{6, "saturday, sat, saturdays, samstag, sonnabend, saterday, saturdy, satruday, sats"},
}

var monthWords = []struct {
	month int
	words string
}{
	{1, "january, jan, januar"},
	{2, "february, feb, februar, febuary"},
	{3, "march, mar, märz"},
	{4, "april, apr"},
	{5, "may, mai"},
	{6, "june, jun, juni"},
	{7, "july, jul, juli"},
	{8, "august, aug"},
	{9, "september, sep, sept"},
	{10, "october, oct, oktober, okt"},
	{11, "november, nov"},
	{12, "december, dec, dezember, dez"},
}

// offsetWords are days counted from today.
var offsetWords = []struct {
	offset int
	part   int8 // partMorning, partEvening
	words  string
}{
	{0, partNone, "today, 2day, todays, heute, this day, 2day's, tody"},
	{0, partMorning, "this morning, this am, this a.m., this mornin, earlier this morning, this mrng, heute morgen, heute früh, first thing this morning"},
	{0, partEvening, "tonight, this evening, this afternoon, this arvo, this pm, this eve, 2nite, tonite, heute abend, this aft"},
	{-1, partNone, "yesterday, yesterday's, yest, yday, ystrdy, yestrday, yesterdy, yesterdays, gestern, ystd, yesturday, yester, yestaday, ysterday, the day before, day before today"},
	{-1, partMorning, "yesterday morning, yest am, yesterday am, yest morning"},
	{-1, partEvening, "last night, yesterday evening, yesterday afternoon, yest pm, yesterday pm, yesterday night, last evening, last nite, yest evening, lastnight, yest afternoon, yest eve"},
	{-2, partNone, "before yesterday, 2 days back, day before yesterday, the day before yesterday, vorgestern, night before last, the night before last, day before yest"},
	{1, partNone, "tomorrow, tmrw, tomorow, tommorow, tommorrow, 2moro, tomorrow's, morgen, 2morrow, tmr, tmw, tomoro"},
	{1, partMorning, "tomorrow morning, tomorrow am"},
	{1, partEvening, "tomorrow evening, tomorrow night, tomorrow afternoon, tomorrow pm"},
	{2, partNone, "day after tomorrow, the day after tomorrow, übermorgen"},
	{7, partNone, "next week"},
	{-7, partNone, "a week ago, last week, one week ago, week ago"},
}

func addDays(l *lexicon) {
	for _, s := range split("this weekend, weekend, the weekend, over the weekend, this coming weekend") {
		m := l.meaning(s)
		m.day, m.isDay = dayExpr{form: dayWeekday, a: 6, b: 1}, true
	}
	addHolidays(l)
	for _, w := range weekdayWords {
		for _, s := range split(w.words) {
			m := l.meaning(s)
			m.day, m.isDay = dayExpr{form: dayWeekday, a: w.weekday}, true
		}
	}
	for _, w := range monthWords {
		for _, s := range split(w.words) {
			l.meaning(s).month = int8(w.month)
		}
	}
	for _, w := range offsetWords {
		for _, s := range split(w.words) {
			m := l.meaning(s)
			m.day, m.isDay = dayExpr{form: dayOffset, a: w.offset, part: w.part, coarse: strings.Contains(s, "week")}, true
		}
	}
}
