package reading

import (
	"time"
)

type dayForm uint8

// dayExpr is a day as it was said, before it is known whether it looks back or
// forward.
type dayExpr struct {
	form    dayForm
	a, b, c int
	mod     int8
	part    int8
	coarse  bool // "last week": no single day
	every   bool // "saturdays": a habit
	weekend bool // "labor day weekend"
	weeks   int8 // counted on from that day: "a week from friday"
	beside  int8 // the weekday behind that day, counted from 1, below zero before it: "the tuesday after easter"
}

var ordinalWords = map[string]int{
	"first": 1, "second": 2, "third": 3, "fourth": 4, "fifth": 5, "sixth": 6, "seventh": 7, "eighth": 8, "ninth": 9,
	"tenth": 10, "eleventh": 11, "twelfth": 12, "thirteenth": 13, "fourteenth": 14, "fifteenth": 15, "sixteenth": 16,
	"seventeenth": 17, "eighteenth": 18, "nineteenth": 19, "twentieth": 20, "thirtieth": 30,
}

// dayReader reads days from tokens.
type dayReader struct {
	lex    *lexicon
	toks   []token
	metric bool
	depth  int // how many words of a day led here
}

// deepest is how many words may lead to a day, as in "on sat the 5th".
const deepest = 3

func (d dayReader) word(i int) string {
	if i >= 0 && i < len(d.toks) && d.toks[i].kind == tokWord {
		return d.toks[i].s
	}
	return ""
}

// month gives the month that the word at i names, 0 if none. Words that are
// also other words need a number beside them, which the callers see to.
func (d dayReader) month(i int) int {
	if m := d.lex.of[d.word(i)]; m != nil {
		return int(m.month)
	}
	return 0
}

// dayNumber reads a day of the month at i and how many tokens it took.
func (d dayReader) dayNumber(i int) (day, n int, ordinal bool) {
	if i >= len(d.toks) {
		return 0, 0, false
	}
	t := d.toks[i]
	if t.kind == tokNum && t.decimals == 0 && t.v >= 1 && t.v <= 31 {
		return int(t.v), 1, t.ordinal
	}
	if o := ordinalWords[d.word(i)]; o > 0 {
		return o, 1, true
	}
	if w := d.word(i); w == "twenty" || w == "thirty" {
		j := i + 1
		if j < len(d.toks) && d.toks[j].s == "-" {
			j++
		}
		if o := ordinalWords[d.word(j)]; o > 0 && o < 10 {
			return o + map[string]int{"twenty": 20, "thirty": 30}[w], j + 1 - i, true
		}
	}
	return 0, 0, false
}

// year reads ", 2026" or "2026" at i.
func (d dayReader) year(i int) (year, n int) {
	j := i
	if j < len(d.toks) && (d.toks[j].s == "," || d.toks[j].s == ".") {
		j++
	}
	if j < len(d.toks) && d.toks[j].kind == tokNum && d.toks[j].decimals == 0 && d.toks[j].v >= 2000 && d.toks[j].v < 2100 {
		return int(d.toks[j].v), j + 1 - i
	}
	return 0, 0
}

// at reads a day that begins at token i and says how many tokens it took; 0
// means that no day begins there.
func (d dayReader) at(i int) (dayExpr, int) {
	t := d.toks[i]
	if d.depth++; d.depth > deepest {
		return dayExpr{}, 0
	}
	if e, n := d.weeksFrom(i); n > 0 {
		return e, n
	}
	if e, n := d.weekOfMonth(i); n > 0 {
		return e, n
	}
	switch t.kind {
	case tokISO:
		if validDate(int(t.v), int(t.v2), int(t.v3)) {
			return dayExpr{form: dayDate, a: int(t.v2), b: int(t.v3), c: int(t.v)}, 1
		}
	case tokSlash:
		if e, ok := slashDay(t); ok {
			return e, 1
		}
	case tokNum:
		e, n := d.fromNumber(i)
		return d.weekendOf(e, i, n)
	case tokWord:
		e, n := d.fromWord(i)
		return d.weekendOf(e, i, n)
	}
	return dayExpr{}, 0
}

// weekendOf takes the "weekend" behind a date to it: "the 4th of july weekend".
func (d dayReader) weekendOf(e dayExpr, i, n int) (dayExpr, int) {
	if n > 0 && e.form == dayDate && d.word(i+n) == "weekend" {
		e.weekend = true
		n++
	}
	return e, n
}

func validDate(y, m, day int) bool {
	if m < 1 || m > 12 || day < 1 {
		return false
	}
	t := time.Date(y, time.Month(m), day, 0, 0, 0, 0, time.UTC)
	return t.Day() == day
}

func slashDay(t token) (dayExpr, bool) {
	a, b, c := int(t.v), int(t.v2), int(t.v3)
	if c > 0 && c < 100 {
		c += 2000
	}
	if c != 0 && (c < 2000 || c > 2100) {
		return dayExpr{}, false
	}
	if a < 1 || b < 1 || a > 31 || b > 31 || a > 12 && b > 12 {
		return dayExpr{}, false
	}
	return dayExpr{form: daySlash, a: a, b: b, c: c}, true
}

func (d dayReader) fromNumber(i int) (dayExpr, int) {
	t := d.toks[i]
	if e, n := d.dotted(i); n > 0 {
		return e, n
	}
	if i+3 < len(d.toks) && (d.toks[i+1].s == "-" || d.toks[i+1].s == "–") && t.decimals == 0 && t.v <= 31 { // "24-27 july"
		if _, n, _ := d.dayNumber(i + 2); n > 0 {
			if m := d.month(i + 2 + n); m > 0 && validDate(2024, m, int(t.v)) {
				y, _ := d.year(i + 3 + n)
				return dayExpr{form: dayDate, a: m, b: int(t.v), c: y}, 1
			}
		}
	}
	if day, n, ordinal := d.dayNumber(i); n > 0 {
		j := i + n
		if d.word(j) == "of" {
			j++
		} else if j < len(d.toks) && d.toks[j].s == "." && !d.toks[j].spaced {
			j++
		}
		if m := d.month(j); m > 0 && (d.word(j) != "march" && d.word(j) != "may" || ordinal || !d.followedByNumber(j)) && validDate(2024, m, day) {
			y, yn := d.year(j + 1)
			return dayExpr{form: dayDate, a: m, b: day, c: y}, j + 1 + yn - i
		}
		if ordinal && t.ordinal && !d.countsThing(i+n) {
			return dayExpr{form: dayOfMonth, a: day}, n
		}
	}
	return d.ago(i)
}

// followedByNumber says that another number follows the month, so that the one
// before it belongs elsewhere: "dot 38 may 5".
func (d dayReader) followedByNumber(i int) bool {
	_, n, _ := d.dayNumber(i + 1)
	return n > 0
}

// countsThing says that an ordinal counts a thing and is no day: "2nd barrel".
func (d dayReader) countsThing(i int) bool {
	w := d.word(i)
	if w == "" {
		return false
	}
	m := d.lex.of[w]
	return m != nil && m.sense.any(setOf(sBarrel, sFeeder, sPen, sPigs, sYoung, sOld, sWorm, sTreat)) || w == "one" || w == "time" || w == "group" || w == "batch"
}

// dayBehind are words behind which a day of the month is told by its number: "booked for
// the fifth".
var dayBehind = setOfWords(split("for, until, till, til, by, from, since, through, before, after"))

// dayLeads are words that a day follows, and hardly ever an amount with a decimal.
var dayLeads = map[string]bool{"on": true, "since": true, "until": true, "till": true, "til": true, "bis": true, "seit": true, "am": true, "vom": true}

// unitless says that the word at i is no unit.
func (d dayReader) unitless(i int) bool {
	m := d.lex.of[d.word(i)]
	return m == nil || m.unit == 0
}

// dotted reads 5.8. and 5.8.2026, and 5.8 behind a word that a day follows.
func (d dayReader) dotted(i int) (dayExpr, int) {
	t := d.toks[i]
	if t.kind != tokNum || t.decimals < 1 || t.decimals > 2 {
		return dayExpr{}, 0
	}
	day, rest := 0, ""
	for k := range len(t.s) {
		if t.s[k] == '.' {
			rest = t.s[k+1:]
			break
		}
		if !isDigit(t.s[k]) {
			return dayExpr{}, 0
		}
		day = day*10 + int(t.s[k]-'0')
	}
	if rest == "" || len(rest) > 2 {
		return dayExpr{}, 0
	}
	month, _ := digits(rest, 0)
	if !validDate(2024, int(month), day) {
		return dayExpr{}, 0
	}
	next := token{kind: tokBreak, spaced: true}
	if i+1 < len(d.toks) {
		next = d.toks[i+1]
	}
	if next.spaced { // "on 17.7"
		if d.metric && dayLeads[d.word(i-1)] && (next.kind == tokBreak || next.kind == tokWord && d.unitless(i+1)) {
			return dayExpr{form: dayDate, a: int(month), b: day}, 1
		}
		return dayExpr{}, 0
	}
	if next.kind == tokNum && next.s[0] == '.' && (len(next.s) == 5 || len(next.s) == 3) { // ".2026"
		y, _ := digits(next.s, 1)
		if y < 100 {
			y += 2000
		}
		return dayExpr{form: dayDate, a: int(month), b: day, c: int(y)}, 2
	}
	if next.s != "." || !d.metric {
		return dayExpr{}, 0
	}
	if i+2 >= len(d.toks) || d.toks[i+2].kind == tokBreak { // a full stop, unless it is plainly a day
		before := d.word(i - 1)
		if i > 0 && before != "am" && before != "on" && before != "vom" && before != "seit" && before != "since" && !d.otherNumber(i) {
			return dayExpr{}, 0
		}
	}
	return dayExpr{form: dayDate, a: int(month), b: day}, 2
}

func (d dayReader) otherNumber(i int) bool {
	for k := i - 1; k >= 0 && d.toks[k].kind != tokBreak; k-- {
		if d.toks[k].kind == tokNum {
			return true
		}
	}
	return false
}

// ago reads "3 days ago", "two weeks back".
func (d dayReader) ago(i int) (dayExpr, int) {
	v, n := d.count(i)
	if n == 0 || v > 400 {
		return dayExpr{}, 0
	}
	m := d.lex.of[d.word(i+n)]
	if m == nil || m.unit != unitDay && m.unit != unitWeek && m.unit != unitMonth {
		return dayExpr{}, 0
	}
	after := d.lex.of[d.word(i+n+1)]
	if after == nil || !after.sense.has(sAgo) || d.word(i+n+1) == "before" && d.waitsFor(i+n+2) {
		return dayExpr{}, 0
	}
	return dayExpr{form: dayOffset, a: -int(m.unit.si(v) + 0.5)}, n + 2
}

// waitsFor says that what the days before it are counted to is that the meat may be
// eaten: "ten days before you can eat her", "10 days before slaughter".
func (d dayReader) waitsFor(i int) bool {
	if m := d.lex.of[d.word(i)]; m != nil && m.sense.any(setOf(sButcher, sSlaughtered)) {
		return true
	}
	for k := i; k < i+waitReach; k++ {
		if m := d.lex.of[d.word(k)]; eatWords[d.word(k)] || k > i && (d.word(k-1) == "can" || d.word(k-1) == "could") && m != nil && m.sense.has(sButcher) {
			return true
		}
	}
	return false
}

// waitReach is within how many words it is said what the meat waits for.
const waitReach = 6

// eatWords tell that meat may be eaten.
var eatWords = setOfWords(split("butcher, slaughtering, eat, eaten, eating, edible, safe, fit, butchering, butchered, slaughter, slaughtered, knife, meat, clear, freezer, table, menu"))

func (d dayReader) count(i int) (float64, int) {
	if i >= len(d.toks) {
		return 0, 0
	}
	if d.toks[i].kind == tokNum && !d.toks[i].ordinal {
		return d.toks[i].v, 1
	}
	if w := d.word(i); w == "a" || w == "an" || w == "one" {
		if v, n := d.lex.spoken(d.toks[i:]); n > 0 {
			return v, n
		}
		return 1, 1
	}
	return d.lex.spoken(d.toks[i:])
}

func (d dayReader) fromWord(i int) (dayExpr, int) {
	switch w := d.word(i); w {
	case "on", "am", "vom", "since", "seit":
		if i+1 < len(d.toks) {
			if e, n := d.at(i + 1); n > 0 && e.form != dayOffset {
				return e, n + 1
			}
		}
		return dayExpr{}, 0
	case "the":
		if day, n, ordinal := d.dayNumber(i + 1); n > 0 && ordinal {
			if e, n := d.at(i + 1); n > 0 {
				return e, n + 1
			}
			if d.toks[i+1].kind == tokWord && !(d.word(i-1) == "on" || day > 9 || day > 3 && dayBehind[d.word(i-1)]) {
				return dayExpr{}, 0
			}
			if d.countsThing(i + 1 + n) {
				return dayExpr{}, 0
			}
			return dayExpr{form: dayOfMonth, a: day}, n + 1
		}
	case "last", "past", "next", "this", "coming", "every", "each", "letzten", "nächsten":
		j := i + 1
		if d.word(j) == "past" || d.word(j) == "coming" {
			j++
		}
		if m := d.lex.of[d.word(j)]; m != nil && m.isDay && m.day.form == dayWeekday {
			e := m.day
			switch w {
			case "last", "letzten":
				e.mod = -1
			case "next", "nächsten", "coming":
				e.mod = 1
			case "every", "each":
				e.every = true
			}
			n := j + 1 - i
			return d.partOfDay(e, i, n)
		}
	case "in":
		if v, n := d.count(i + 1); n > 0 && v < 400 {
			if m := d.lex.of[d.word(i+1+n)]; m != nil && (m.unit == unitDay || m.unit == unitWeek || m.unit == unitMonth) && len(d.word(i+1+n)) > 1 {
				if a := d.word(i + 2 + n); a != "old" && a != "and" {
					return dayExpr{form: dayOffset, a: int(m.unit.si(v) + 0.5)}, n + 2
				}
			}
		}
		if m := d.month(i + 1); m > 0 && !d.followedByNumber(i+1) {
			return dayExpr{form: dayMonth, a: m, coarse: true}, 2
		}
	case "mid", "early", "late", "end":
		j := i + 1
		if d.word(j) == "of" || d.word(j) == "o" {
			j++
		}
		if m := d.month(j); m > 0 && !d.followedByNumber(j) {
			part := map[string]int{"mid": 15, "early": 5, "late": 25, "end": 31}[w]
			return dayExpr{form: dayMonth, a: m, b: part, coarse: true}, j + 1 - i
		}
	}
	if m := d.month(i); m > 0 {
		j := i + 1
		if j < len(d.toks) && d.toks[j].s == "." && !d.toks[j].spaced {
			j++ // "Aug. 5"
		}
		if d.word(j) == "the" {
			j++
		}
		if day, n, _ := d.dayNumber(j); n > 0 && validDate(2024, m, day) {
			y, yn := d.year(j + n)
			return dayExpr{form: dayDate, a: m, b: day, c: y}, j + n + yn - i
		}
		return dayExpr{}, 0
	}
	if w := d.word(i); ordinalWords[w] > 0 || w == "twenty" || w == "thirty" {
		if day, n, ordinal := d.dayNumber(i); ordinal && (d.word(i+n) == "of" && d.month(i+n+1) > 0 || d.month(i+n) > 0) {
			j := i + n
			if d.word(j) == "of" {
				j++
			}
			if m := d.month(j); validDate(2024, m, day) {
				y, yn := d.year(j + 1)
				return dayExpr{form: dayDate, a: m, b: day, c: y}, j + 1 + yn - i
			}
		}
	}
	if e, n := d.phrase(i); n > 0 {
		if e.form == dayWeekday {
			return d.weekday(e, i, n)
		}
		return e, n
	}
	if w := d.word(i); w == "a" || w == "an" || w == "one" || w == "two" || w == "three" || w == "four" || w == "five" || w == "six" || w == "ten" || w == "couple" {
		return d.ago(i)
	}
	return dayExpr{}, 0
}

// phrase reads the longest day word or phrase of the lexicon at i.
func (d dayReader) phrase(i int) (dayExpr, int) {
	m, n := d.lex.phrase(d.toks[i:], func(m *meaning) bool { return m.isDay })
	if m == nil {
		return dayExpr{}, 0
	}
	return m.day, n
}

// weekday looks whether a date or a part of the day follows its name.
func (d dayReader) weekday(e dayExpr, i, n int) (dayExpr, int) {
	w := d.word(i)
	if w == "sun" && (d.word(i-1) == "the" || d.word(i+1) == "is") {
		return dayExpr{}, 0
	}
	e.every = len(w) > 5 && w[len(w)-1] == 's'
	j := i + n
	if j < len(d.toks) && (d.toks[j].s == "," || d.toks[j].s == ".") {
		j++
	}
	if j < len(d.toks) {
		if full, m := d.at(j); m > 0 && (full.form == dayDate || full.form == dayOfMonth || full.form == daySlash && full.c > 0) {
			return full, j + m - i
		}
	}
	if d.word(i+n) == "before" && d.word(i+n+1) == "last" {
		e.mod = -2
		return e, n + 2
	}
	if w := d.word(i + n); (w == "after" || w == "before") && i+n+1 < len(d.toks) {
		if base, m := d.at(i + n + 1); m > 0 && (base.form == dayDate || base.form == dayNth || base.form == dayEaster) && base.beside == 0 {
			base.beside = int8(e.a + 1)
			if w == "before" {
				base.beside = -base.beside
			}
			return base, n + 1 + m
		}
	}
	return d.partOfDay(e, i, n)
}

// partOfDay adds "morning" or "evening" said behind a weekday.
func (d dayReader) partOfDay(e dayExpr, i, n int) (dayExpr, int) {
	switch d.word(i + n) {
	case "morning", "morn", "mornings":
		e.part = partMorning
		return e, n + 1
	case "evening", "night", "afternoon", "eve", "evenings", "nights":
		e.part = partEvening
		return e, n + 1
	}
	return e, n
}
