package reading

import (
	"strconv"
	"strings"

	"troughbell/model"
)

// shifted reads a text that puts the next appointment with the butcher off, or brings it
// forward, by days or weeks: "butcher bumped us one day later, same hour".
func (r *reader) shifted() (Reading, bool) {
	if len(r.c.Herd.Bookings) == 0 || !strings.Contains(r.plain, "day") && !strings.Contains(r.plain, "week") || strings.Contains(r.text, "?") {
		return Reading{}, false
	}
	days, unclear, ok := daysShifted(r.plain)
	if !ok {
		return Reading{}, false
	}
	var next *model.Dated[model.Booked]
	for k := range r.c.Herd.Bookings {
		if b := &r.c.Herd.Bookings[k]; b.F.Day >= r.today && !b.F.Cancelled && (next == nil || b.F.Day < next.F.Day) {
			next = b
		}
	}
	if next == nil {
		return Reading{}, false
	}
	b := next.F
	if unclear {
		e := Entry{Act: Fact{b}, On: r.today, Replace: next.ID, To: len(r.text)}
		return r.just(Clarify{About: "booked", Code: "date_unclear", Want: "date", Draft: []Entry{e}}), true
	}
	if b.Day += model.Day(days); b.Day < r.today {
		return Reading{}, false
	}
	return Reading{Entries: []Entry{{Act: Fact{b}, On: r.today, Replace: next.ID, To: len(r.text)}}}, true
}

// daysShifted is by how many days a text says that an appointment was moved; unclear where
// it says "moved forward", which some mean for later.
func daysShifted(text string) (days int, unclear, ok bool) {
	butcher := strings.HasPrefix(text, "they ") && strings.Contains(text, " us ")
	later, earlier, forward, amount := false, false, false, 0
	for n, clause := range strings.FieldsFunc(text, func(c rune) bool { return strings.ContainsRune(",.;:-\n", c) }) {
		words := strings.Fields(clause)
		if amount != 0 { // what stands behind but says why
			if len(words) > 8 || strings.ContainsAny(clause, "0123456789") {
				return 0, false, false
			}
			continue
		}
		if n > 2 {
			return 0, false, false
		}
		for k, w := range words {
			v, counts := shiftNumbers[w]
			if d, err := strconv.Atoi(w); err == nil {
				v, counts = d, true
			}
			switch {
			case counts && k+1 < len(words) && shiftUnits[words[k+1]] > 0 && amount == 0:
				amount = v * shiftUnits[words[k+1]]
			case shiftUnits[w] > 0 && k > 0, counts && (w == "a" || w == "an"):
			case butcherWords[w]:
				butcher = true
			case laterWords[w]:
				later = true
			case earlierWords[w]:
				earlier = true
			case w == "forward" || w == "forwards":
				forward = true
			case shiftFillers[w]:
			default:
				return 0, false, false
			}
		}
	}
	if forward && !later && !earlier {
		if !strings.Contains(text, "brought") && !strings.Contains(text, "bring") && !strings.Contains(text, "pulled") {
			return 0, amount != 0 && butcher, amount != 0 && butcher
		}
		earlier = true
	}
	switch {
	case amount == 0 || !butcher || later == earlier:
		return 0, false, false
	case earlier:
		return -amount, false, true
	}
	return amount, false, true
}

var (
	shiftNumbers = map[string]int{"a": 1, "an": 1, "one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "ten": 10}
	shiftUnits   = map[string]int{"day": 1, "days": 1, "week": 7, "weeks": 7}
	butcherWords = setOfWords(split("butcher, butcher's, butchers, locker, slaughter, slaughterhouse, processor, abattoir, appointment, slot, booking, kill"))
	laterWords   = setOfWords(split("later, back, off, out, delayed, postponed, deferred"))
	earlierWords = setOfWords(split("earlier, sooner, up, ahead"))
	shiftFillers = setOfWords(split(`the, our, us, me, we, we're, we've, it, its, it's, they, they've, he, she, has, have, had, is, was, been, got, to, by, now, just, so, then, at, same, time, hour, date, and, ok, well, oh, sorry, actually, called, rang, phoned, says, said, texted, today,
		moved, move, bumped, pushed, shifted, put, rescheduled, brought, pulled, slid, can, take, could, only, must, day's, that, this, for, all, pigs, them, place, guy, house, meat, update, change, of, plan, plans`))
)
