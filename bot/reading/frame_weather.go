package reading

import (
	"strings"

	"troughbell/model"
)

// degreeLabel is what the words around a number of the weather say that it is.
type degreeLabel uint8

const (
	unlabelled degreeLabel = iota
	dayHigh
	nightLow
	humidity
)

// labelReach is how many small words may stand between a number of the weather
// and the word that says what it is: "high was up to 93".
const labelReach = 3

// fillWeather reads a day's high and low and its humidity.
func (r *reader) fillWeather(s span) {
	w := model.Weather{}
	scale := unitF
	if r.units == model.Metric {
		scale = unitC
	}
	for k := s.i; k < s.j; k++ { // a stated scale holds for the whole span
		if it := &r.items[k]; it.unit == unitF || it.unit == unitC {
			scale = it.unit
		}
	}
	celsius := func(v float64, u unitID, minus bool) *float64 {
		if minus {
			v = -v
		}
		if u != unitF && u != unitC {
			u = scale
		}
		return model.Float(u.si(v))
	}
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		switch {
		case it.kind == itSlash || it.kind == itDay && it.day.form == daySlash && w.HighC == nil && r.noDegrees(s):
			w.HighC, w.LowC = celsius(it.v, it.unit, false), celsius(it.v2, it.unit, false)
			if *w.LowC > *w.HighC {
				w.HighC, w.LowC = w.LowC, w.HighC
			}
		case it.qty(percent):
			w.RhPct = model.Float(it.v)
		case it.kind == itNum && !it.soft && !it.ord, it.qty(temperature):
			if w.HighC != nil && r.hourBehindAt(k, s) {
				it.used = true // "96 here at 3"
				continue
			}
			if r.felt(k, s) {
				it.used = true
				continue
			}
			v := celsius(it.v, it.unit, it.minus)
			switch label := r.degreeLabel(k, s); {
			case label == humidity && it.kind == itNum:
				w.RhPct = model.Float(it.v)
			case label == nightLow && w.LowC == nil, label == unlabelled && w.LowC == nil && r.coldMorning(k):
				w.LowC = v
			case w.HighC == nil:
				w.HighC = v
			case w.LowC == nil:
				w.LowC = v
				if *w.LowC > *w.HighC && !r.has(s, sHigh) {
					w.HighC, w.LowC = w.LowC, w.HighC
				}
			}
		case it.isAny(setOf(sWeather, sHigh, sLow, sHumid, sHere)):
		default:
			continue
		}
		it.used = true
	}
	if k := r.firstAny(s); k >= 0 && r.units == model.US && !r.has(s, sWeather) && !r.has(s, sHigh) && !r.has(s, sLow) && !r.has(s, sHumid) && r.items[k].v < 20 && !r.coldMorning(k) {
		r.idleSpan(s) // a bare number and a day: no weather to speak of
		return
	}
	if w.HighC != nil && w.LowC == nil && r.lastIsWeather() && r.tonight(s) && !r.has(s, sHigh) { // "93 today, 70 tonight"
		w.HighC, w.LowC = nil, w.HighC
	}
	if w.HighC == nil && w.LowC == nil && w.RhPct == nil || w.Check() != nil {
		r.idleSpan(s)
		return
	}
	if w.HighC != nil && w.LowC != nil && r.onlyLastNight(s) { // "88 out, 61 last night"
		r.emitOn(Fact{w}, s, r.today, nil, false)
		return
	}
	on, _, dated := r.when(s, lookBack)
	r.emitOn(Fact{w}, s, on, nil, dated) // a day's weather has no time of day
}

// tonight says that the night to come is the one day of a span.
func (r *reader) tonight(s span) bool {
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.kind == itDay && it.day.form == dayOffset && it.day.a == 0 && (it.s == "tonight" || it.s == "tonite" || it.s == "2nite") {
			return true
		}
	}
	return false
}

// onlyLastNight says that the one day of a span is the night before, told behind
// another number.
func (r *reader) onlyLastNight(s span) bool {
	at, degrees := -1, 0
	for k := s.i; k < s.j; k++ {
		if r.items[k].kind == itDay {
			if at >= 0 || !r.items[k].lastNight() {
				return false
			}
			at = k
		}
		if at < 0 && r.degreesAt(k) {
			degrees++
		}
	}
	return at >= 0 && degrees > 1
}

// degreeLabel is what the number at k is said to be: by the word right behind it
// where words follow their numbers, "75 high 60 low", else by the one before it.
func (r *reader) degreeLabel(k int, s span) degreeLabel {
	if n := k + 1; n < s.j && r.items[n].gap == gapNone && !r.labelsFirst(s) {
		if l := labelOf(&r.items[n]); l != unlabelled && !r.items[n].is(sLeft) && !r.labelsNext(n, s) {
			return l
		}
	}
	for n := k - 1; n >= s.i && n >= k-labelReach && (r.items[n+1].gap < gapComma || r.items[n].label); n-- {
		it := &r.items[n]
		if l := labelOf(it); l != unlabelled {
			return l
		}
		if !it.isAny(setOf(sFiller, sIs, sAbout, sAt, sOf, sTo, sWeather)) {
			break
		}
	}
	if n := k + 1; n < s.j && r.items[n].gap == gapNone && r.items[n].lastNight() {
		return nightLow // "61 last night"
	}
	for n := k - 1; n >= s.i && n >= k-labelReach && r.items[n].isAny(setOf(sFiller, sAbout, sIs, sWeather)) || n >= s.i && r.items[n].lastNight(); n-- {
		if r.items[n].lastNight() {
			return nightLow // "last night only 8"
		}
	}
	return unlabelled
}

// labelsFirst says that the words of a span come before their numbers.
func (r *reader) labelsFirst(s span) bool {
	for k := s.i; k < s.j; k++ {
		if r.degreesAt(k) {
			return false
		}
		if labelOf(&r.items[k]) != unlabelled {
			return true
		}
	}
	return false
}

// felt says that the number at k is how hot it felt, which is no reading of the
// air.
func (r *reader) felt(k int, s span) bool {
	for n := k - 1; n >= r.sentenceStart(s.i) && n >= k-labelReach && r.items[n+1].gap < gapComma; n-- {
		switch r.items[n].s {
		case "felt", "feels", "heat index", "feels like", "felt like", "feeling like", "real feel", "index", "wind chill":
			return true
		}
	}
	return false
}

// labelsNext says that the word at n speaks of the number behind it.
func (r *reader) labelsNext(n int, s span) bool {
	for m := n + 1; m < s.j && m <= n+labelReach && r.items[m].gap < gapComma; m++ {
		if r.degreesAt(m) {
			return true
		}
		if !r.items[m].isAny(setOf(sFiller, sIs, sAbout, sAt, sOf, sTo)) {
			return false
		}
	}
	return false
}

// degreesAt says that a number stands at k that the weather can have.
func (r *reader) degreesAt(k int) bool {
	it := &r.items[k]
	return it.kind == itNum && !it.soft && !it.ord || it.qty(temperature) || it.qty(percent)
}

// lastNight says that an item is the night that ended this morning.
func (it *item) lastNight() bool {
	return it.kind == itDay && it.day.form == dayOffset && it.day.a == -1 && strings.Contains(it.s, "night")
}

func labelOf(it *item) degreeLabel {
	switch {
	case it.kind == itDay || it.number():
		return unlabelled
	case it.is(sHumid):
		return humidity
	case it.is(sLow):
		return nightLow
	case it.is(sHigh):
		return dayHigh
	}
	return unlabelled
}

func (r *reader) noDegrees(s span) bool {
	for k := s.i; k < s.j; k++ {
		if r.items[k].qty(temperature) || r.items[k].kind == itNum || r.items[k].kind == itSlash {
			return false
		}
	}
	return true
}

// humidityAlone says that the clause of item k is but a share, behind a temperature
// of the same sentence: "30 C, night 16 C, 55 %".
func (r *reader) humidityAlone(k int) bool {
	for n := r.clauseFrom(k); n < r.clauseEnd(k); n++ {
		if it := &r.items[n]; n != k && !it.isAny(setOf(sFiller, sAbout, sIs, sHumid)) {
			return false
		}
	}
	for n := r.clauseFrom(k) - 1; n >= r.sentenceStart(k); n-- {
		it := &r.items[n]
		if it.feeder >= 0 || it.barrel >= 0 || it.isAny(setOf(sFeeder, sBarrel, sFeed)) && !it.is(sFiller) {
			return false
		}
		if it.qty(temperature) || it.is(sHumid) {
			return true
		}
	}
	return false
}

// hourBehindAt says that the number at item k is an hour of the day: "96 at 3".
func (r *reader) hourBehindAt(k int, s span) bool {
	it := &r.items[k]
	return k > s.i && r.items[k-1].s == "at" && it.gap == gapNone && it.kind == itNum && it.v >= 1 && it.v <= 12 && it.v == float64(int(it.v))
}
