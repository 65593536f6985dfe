package wording

import (
	"math"
	"strconv"
	"strings"
	"time"
	"unicode"
	"unicode/utf8"

	"troughbell/model"
)

// A sentence of a catalogue is plain text with these marks:
//
//	{n} {n0} {n1}   all names joined, or one; {N} begins with a capital
//	{d0} {on}       a day; {on} is {d0}. {on:near} as today or tomorrow where it
//	                is. {d0~d1} a span of days; {d0~d1:wide}
//	                is not given where it is one day only
//	{t0} {at}       a moment; {at} is {t0}. {t0:edge} {t0:likely} a computed one
//	{q0} {q0:feed}  a quantity in the person's units, in a style
//	{q0~q1}         two quantities as a range, to stand in brackets behind a number
//	                that says the unit
//	{q0|pig|pigs}   a count with its noun
//	{?q0}           a quantity that is not given where it comes to nought
//	{n*2}           each name with its quantity, from the third on: "north 150 lb"
//	[ ... ]         left out as a whole where something in it is not given
//
// render fills a sentence. What is not given outside of brackets is left out.
func (v Voice) render(sentence string, a Args) string {
	text, _ := v.fill(sentence, a)
	return strings.TrimSpace(text)
}

// fill fills one level of a sentence and reports whether all was given.
func (v Voice) fill(sentence string, a Args) (string, bool) {
	var b strings.Builder
	whole := true
	for len(sentence) > 0 {
		i := strings.IndexAny(sentence, "{[")
		if i < 0 {
			b.WriteString(sentence)
			break
		}
		b.WriteString(sentence[:i])
		closing := byte('}')
		if sentence[i] == '[' {
			closing = ']'
		}
		end := strings.IndexByte(sentence[i:], closing)
		if end < 0 { // the test of the catalogues lets none through
			b.WriteString(sentence[i:])
			break
		}
		inner := sentence[i+1 : i+end]
		if closing == ']' {
			if part, ok := v.fill(inner, a); ok {
				b.WriteString(part)
			}
		} else if word, ok := v.mark(inner, a); ok {
			b.WriteString(word)
		} else {
			whole = false
		}
		sentence = sentence[i+end+1:]
	}
	return b.String(), whole
}

// mark gives the words for one mark, and false where it is not given.
func (v Voice) mark(m string, a Args) (string, bool) {
	if rest, ok := strings.CutPrefix(m, "?"); ok {
		name, _, _ := strings.Cut(rest, "|")
		name, _, _ = strings.Cut(name, ":")
		q, ok := quantity(name, a)
		if !ok {
			return "", false
		}
		if digits, _ := v.number(q, ""); digits == "0" {
			return "", false
		}
		m = rest
	}
	if name, nouns, ok := strings.Cut(m, "|"); ok {
		one, many, _ := strings.Cut(nouns, "|")
		name, style, _ := strings.Cut(name, ":")
		q, ok := quantity(name, a)
		if !ok {
			return "", false
		}
		if style == styleUp {
			q.Value = math.Ceil(q.Value - 1e-9)
		}
		return countNoun(q.Value, one, many), true
	}
	m, style, _ := strings.Cut(m, ":")
	if from, ok := strings.CutPrefix(m, "n*"); ok {
		return v.each(from, style, a)
	}
	if from, to, ok := strings.Cut(m, "~"); ok {
		return v.span(from, to, style, a)
	}
	switch m[0] {
	case 'n', 'N':
		s, ok := v.names(m[1:], a)
		if ok && m[0] == 'N' {
			s = capital(s)
		}
		return s, ok
	case 'o', 'd':
		d, ok := day(m, a)
		if !ok {
			return "", false
		}
		if style == styleNear {
			return v.NearDay(d), true
		}
		return v.Day(d), true
	case 'a', 't':
		i, ok := place(strings.TrimPrefix(m, "at"))
		if !ok || i >= len(a.Moments) || a.Moments[i].IsZero() {
			return "", false
		}
		return v.moment(a.Moments[i], style), true
	}
	q, ok := quantity(m, a)
	if !ok {
		return "", false
	}
	return v.Quantity(q, style), true
}

func (v Voice) moment(t time.Time, style string) string {
	switch style {
	case styleDay:
		return v.Day(model.DayOf(t))
	case styleClock:
		return v.Clock(model.MinuteOf(t))
	case styleEdge:
		return v.Edge(t)
	case styleLikely:
		return v.Likely(t)
	}
	return v.Moment(t)
}

func (v Voice) span(from, to, style string, a Args) (string, bool) {
	if from[0] == 'd' {
		d0, ok0 := day(from, a)
		d1, ok1 := day(to, a)
		return v.DayRange(d0, d1), ok0 && ok1 && (style != styleWide || d0 != d1)
	}
	q0, ok0 := quantity(from, a)
	q1, ok1 := quantity(to, a)
	if !ok0 || !ok1 {
		return "", false
	}
	return v.Range(q0, q1, style), true
}

// each says every name with its own quantity.
func (v Voice) each(from, style string, a Args) (string, bool) {
	first, err := strconv.Atoi(from)
	if err != nil || len(a.Names) == 0 || len(a.Q) < first+len(a.Names) {
		return "", false
	}
	words := make([]string, len(a.Names))
	for i, name := range a.Names {
		words[i] = name + " " + v.Quantity(a.Q[first+i], style)
	}
	return strings.Join(words, ", "), true
}

func (v Voice) names(which string, a Args) (string, bool) {
	if which == "" {
		return v.Names(a.Names), len(a.Names) > 0
	}
	i, ok := place("n" + which)
	if !ok || i >= len(a.Names) || a.Names[i] == "" {
		return "", false
	}
	return v.Names(a.Names[i : i+1]), true
}

func day(m string, a Args) (model.Day, bool) {
	i, ok := place(strings.TrimPrefix(m, "on"))
	if !ok || i >= len(a.Days) || a.Days[i] == 0 {
		return 0, false
	}
	return a.Days[i], true
}

func quantity(m string, a Args) (model.Quantity, bool) {
	i, ok := place(m)
	if !ok || i >= len(a.Q) || math.IsNaN(a.Q[i].Value) {
		return model.Quantity{}, false
	}
	return a.Q[i], true
}

// place is the number behind a mark's letter; no mark at all is the first.
func place(m string) (int, bool) {
	if m == "" {
		return 0, true
	}
	i, err := strconv.Atoi(m[1:])
	return i, err == nil && i >= 0
}

// capital begins a text with a capital.
func capital(s string) string {
	r, n := utf8.DecodeRuneInString(s)
	if n == 0 {
		return s
	}
	return string(unicode.ToUpper(r)) + s[n:]
}
