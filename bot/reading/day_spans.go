package reading

import (
	"strings"

	"troughbell/model"
)

// What a day holds for beyond the span that it stands in.

// chores are the frames whose days spread over what is joined by "and". The day
// of a weather or of a sickness is its own.
var chores = map[frame]bool{
	fWeigh: true, fFeed: true, fWater: true, fWallow: true, fDrug: true, fMove: true, fMixed: true, fSpend: true, fStock: true,
}

// noLentDay says that no later day holds for the span in hand.
const noLentDay = -1

// lendDay finds the day that closes a clause and holds for all that is joined in
// it by "and": "filled the wallow and barrel last night". It is the item of that
// day, or noLentDay.
func (r *reader) lendDay(spans []span, n int) int {
	s := spans[n]
	if !chores[s.frame] || r.toldDay(s) {
		return noLentDay
	}
	for k := r.sentenceStart(s.i); k < s.i; k++ {
		if r.items[k].kind == itDay {
			return noLentDay // the day said before holds
		}
	}
	for m := n + 1; m < len(spans); m++ {
		x := spans[m]
		if x.i >= x.j {
			continue
		}
		if r.items[x.i].gap > gapAnd || !chores[x.frame] && x.frame != fIdle {
			return noLentDay
		}
		for k := x.i; k < x.j; k++ {
			it := &r.items[k]
			if k > x.i && it.gap > gapAnd {
				return noLentDay
			}
			if it.kind != itDay {
				continue
			}
			if it.day.every || it.day.form == dayOffset && it.day.a > 0 || k+1 < len(r.items) && r.items[k+1].gap < gapComma {
				return noLentDay
			}
			return k
		}
	}
	return noLentDay
}

// dayBefore says that a day stands in the sentence of item k before it.
func (r *reader) dayBefore(k int) bool {
	for n := r.sentenceStart(k); n < k; n++ {
		if r.items[n].kind == itDay {
			return true
		}
	}
	return false
}

func (r *reader) toldDay(s span) bool {
	for k := s.i; k < s.j; k++ {
		if r.items[k].kind == itDay {
			return true
		}
	}
	return false
}

// sameAgain lets a day with a bare number and no word of its own go on with what
// was told before it: "monday it was ninety one, tuesday ninety three".
func (r *reader) sameAgain(spans []span) []span {
	for n := 1; n < len(spans); n++ {
		if a, b := &spans[n-1], &spans[n]; a.i+1 < a.j && b.i < b.j && factual[b.frame] && r.items[a.j-1].kind == itDay && !r.items[a.j-1].day.every && r.items[a.j-1].gap >= gapAnd && r.items[b.i].gap == gapNone && r.dayBefore(a.j-1) {
			a.j, b.i = a.j-1, b.i-1 // "sunday 4 bags to the south | and monday 3 to the north"
		}
		if a, b := &spans[n-1], &spans[n]; factual[a.frame] && b.i+1 < b.j && r.items[b.i].kind == itDay && r.items[b.i].gap < gapAnd && r.items[b.i+1].gap >= gapComma && !r.toldDay(*a) {
			a.j, b.i = a.j+1, b.i+1 // "moved 506 to creek last night, | the boys stay"
		}
		p, s := spans[n-1], &spans[n]
		if p.frame != fWeather && p.frame != fWallow && p.frame != fFence || s.frame == p.frame || !r.toldDay(p) {
			continue
		}
		if r.dayAndNumber(*s) {
			s.frame = p.frame
		}
	}
	return spans
}

// dayAndNumber says that a span holds as many days as bare numbers and no word of
// its own.
func (r *reader) dayAndNumber(s span) bool {
	days, numbers := 0, 0
	for k := s.i; k < s.j; k++ {
		switch it := &r.items[k]; {
		case it.kind == itDay:
			days++
		case it.kind == itNum && !it.soft && !it.ord:
			numbers++
		case it.kind == itWord && it.isAny(setOf(sFiller, sIs, sPronoun, sAnd, sAbout)) && !it.isAny(setOf(sNot, sPlan)):
		default:
			return false
		}
	}
	return days > 0 && numbers == days
}

// lastIsWeather says that the newest entry tells the weather.
func (r *reader) lastIsWeather() bool {
	if len(r.out) == 0 {
		return false
	}
	f, ok := r.out[len(r.out)-1].Act.(Fact)
	if !ok {
		return false
	}
	_, weather := f.Fact.(model.Weather)
	return weather
}

// longestRange is the most days that "wed thru fri ... each day" may take.
const longestRange = 14

// dayRange gives the first and the last day of a span that tells the same of
// every day of a range, and the items of the two: "wed thru fri hosed 20 each day".
func (r *reader) dayRange(s span) (first, last model.Day, a, b int, ok bool) {
	a, b = -1, -1
	each := false
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		switch {
		case it.kind == itDay && a < 0:
			a = k
		case it.kind == itDay && b < 0:
			b = k
		case it.kind == itDay:
			return 0, 0, 0, 0, false
		}
		switch it.s {
		case "each", "each day", "every", "every day", "daily", "a day", "per day", "apiece":
			each = true
		}
	}
	if !each || b < 0 || !factual[s.frame] || s.frame == fArrive || s.frame == fStock {
		return 0, 0, 0, 0, false
	}
	for k := a + 1; k < b; k++ {
		if !r.items[k].is(sTo) && r.items[k].s != "-" {
			return 0, 0, 0, 0, false
		}
	}
	if b != a+2 && !(b == a+1 && strings.ContainsAny(r.text[r.items[a].to:r.items[b].from], "-–")) {
		return 0, 0, 0, 0, false
	}
	first, ok1 := r.items[a].day.on(r.today, lookBack, r.dayFirst)
	last, ok2 := r.items[b].day.on(r.today, lookBack, r.dayFirst)
	if !ok1 || !ok2 || last <= first || last > r.today || last-first >= longestRange {
		return 0, 0, 0, 0, false
	}
	return first, last, a, b, true
}

// fillEachDay fills a span once for every day of its range.
func (r *reader) fillEachDay(s span, first, last model.Day, a, b int) {
	for k := a + 1; k <= b; k++ {
		r.blank(k)
	}
	kept := append([]item(nil), r.items[s.i:s.j]...)
	for d := first; d <= last; d++ {
		copy(r.items[s.i:s.j], kept)
		r.items[a].day = dayExpr{form: dayOffset, a: int(d - r.today)}
		r.fill(s)
	}
}
