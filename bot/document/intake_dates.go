package document

import (
	"regexp"
	"strconv"
	"strings"
	"time"

	"troughbell/model"
)

// dateStyle is in which order a table writes the day and the month.
type dateStyle struct {
	dayFirst bool
	unclear  bool // nothing tells
}

var (
	isoDate   = regexp.MustCompile(`^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})$`)
	shortDate = regexp.MustCompile(`^(\d{1,2})([-/.])(\d{1,2})([-/.])(\d{4}|\d{2})\.?$`)
	wordDate  = regexp.MustCompile(`^(\d{1,2})\.?[ -]([a-z]{3,9})\.?,?[ -](\d{4}|\d{2})$`)
	dateWord  = regexp.MustCompile(`^([a-z]{3,9})\.? (\d{1,2})(?:st|nd|rd|th)?,? (\d{4})$`)
	clockTime = regexp.MustCompile(`^(\d{1,2}):(\d{2})(?::\d{2}(?:\.\d+)?)? ?([ap]m)?$`)
)

// datesIn finds the order of day and month by the cells of columns of dates: that of
// the herd's units, unless the dates themselves rule it out and the other fits all of
// them. It reports whether it is the other.
func (s *sheet) datesIn(cols []string, units string) (swapped bool) {
	dayFirst := units == model.Metric
	s.dates.dayFirst = dayFirst
	fits := map[bool]bool{true: true, false: true}
	for _, l := range s.lines {
		for _, col := range cols {
			date, _ := dateAndTime(s.cell(l, col))
			m := shortDate.FindStringSubmatch(date)
			if m == nil || m[2] != m[4] || m[2] == "." {
				continue
			}
			for _, first := range []bool{true, false} {
				if _, ok := shortDay(m, first); !ok {
					fits[first] = false
				}
			}
		}
	}
	switch {
	case units == "" && fits[true] == fits[false]:
		s.dates.unclear = true
	case fits[dayFirst]:
	case fits[!dayFirst]:
		s.dates.dayFirst, swapped = !dayFirst, units != ""
	default:
		s.dates.unclear = true
	}
	return swapped
}

// day reads a cell that holds a day, and the minute of the day where it tells one.
func (s *sheet) day(cell string) (d model.Day, minute *int, ok bool) {
	date, clock := dateAndTime(cell)
	if clock != "" {
		m, good := clockOf(clock)
		if !good {
			return 0, nil, false
		}
		minute = &m
	}
	if m := isoDate.FindStringSubmatch(date); m != nil {
		d, ok = realDay(m[1], m[2], m[3])
		return d, minute, ok
	}
	if m := shortDate.FindStringSubmatch(date); m != nil && m[2] == m[4] {
		if m[2] == "." {
			d, ok = shortDay(m, true)
			return d, minute, ok
		}
		if s.dates.unclear {
			return 0, nil, false
		}
		d, ok = shortDay(m, s.dates.dayFirst)
		return d, minute, ok
	}
	low := strings.ToLower(date)
	if m := wordDate.FindStringSubmatch(low); m != nil {
		d, ok = wordDay(m[1], m[2], m[3])
		return d, minute, ok
	}
	if m := dateWord.FindStringSubmatch(low); m != nil {
		d, ok = wordDay(m[2], m[1], m[3])
		return d, minute, ok
	}
	return 0, nil, false
}

// dateAndTime parts a cell at the clock time behind its date.
func dateAndTime(cell string) (date, clock string) {
	cell = strings.TrimSpace(cell)
	if len(cell) > 10 && cell[10] == 'T' {
		return cell[:10], cell[11:]
	}
	if i := strings.IndexByte(cell, ' '); i > 0 && strings.Contains(cell[i:], ":") {
		if j := strings.LastIndexByte(cell[:strings.IndexByte(cell, ':')], ' '); j > 0 {
			return strings.TrimRight(strings.TrimSpace(cell[:j]), ","), strings.TrimSpace(cell[j:])
		}
	}
	return cell, ""
}

// clockOf reads minutes after midnight from "7:30", "07:30:00" or "7:30 pm".
func clockOf(s string) (int, bool) {
	m := clockTime.FindStringSubmatch(strings.ToLower(strings.TrimSpace(s)))
	if m == nil {
		return 0, false
	}
	hour, _ := strconv.Atoi(m[1]) // the pattern has digits only
	minute, _ := strconv.Atoi(m[2])
	switch {
	case m[3] != "" && (hour < 1 || hour > 12), hour > 23, minute > 59:
		return 0, false
	case m[3] == "pm" && hour < 12:
		hour += 12
	case m[3] == "am" && hour == 12:
		hour = 0
	}
	return hour*60 + minute, true
}

func shortDay(m []string, dayFirst bool) (model.Day, bool) {
	if dayFirst {
		return realDay(m[5], m[3], m[1])
	}
	return realDay(m[5], m[1], m[3])
}

// realDay is the day of a date that there is; two digits of a year are of this
// century.
func realDay(year, month, day string) (model.Day, bool) {
	y, err1 := strconv.Atoi(year)
	mo, err2 := strconv.Atoi(month)
	d, err3 := strconv.Atoi(day)
	if err1 != nil || err2 != nil || err3 != nil || mo < 1 || mo > 12 || d < 1 || d > 31 {
		return 0, false
	}
	if len(year) == 2 {
		y += 2000
	}
	out := model.DateDay(y, time.Month(mo), d)
	if _, month, day := out.Date(); int(month) != mo || day != d {
		return 0, false
	}
	return out, true
}

func wordDay(day, month, year string) (model.Day, bool) {
	for m := time.January; m <= time.December; m++ {
		name := strings.ToLower(m.String())
		if month == name || month == name[:3] || month == "sept" && m == time.September {
			return realDay(year, strconv.Itoa(int(m)), day)
		}
	}
	return 0, false
}
