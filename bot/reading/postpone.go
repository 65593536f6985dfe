package reading

import (
	"strconv"
	"strings"

	"troughbell/model"
)

// postpone is a text that puts off an appointment: whom or what it is for, and the
// day it goes to.
var postpone = newPattern(`^(?:please |can you |could you )?(?:move|push|shift|reschedule|rebook|bump|switch|change|put off|put|postpone) (.+?) (?:back |out |off )?(?:to|until|till|for) (.+?)(?: please| instead)?$`)

// appointmentWords are what people call the appointment itself.
var appointmentWords = setOfWords(split(`butcher, the butcher, booking, the booking, our booking, appointment, the appointment, our appointment,
	butcher date, the butcher date, butcher day, the butcher day, slot, the slot, our slot, slaughter date, the slaughter date, processing date, the date`))

// postponed reads "move hank to sep 15" where Hank is booked at the butcher's, and
// "move sep 1 to sep 3". A bare number may be a pen as well: that is asked.
func (r *reader) postponed() (Reading, bool) {
	m := postpone.groups(r.plain)
	if m == nil || r.alive == 0 {
		return Reading{}, false
	}
	old, names, ok := r.postponedOf(m[1])
	if !ok || r.c.Herd.Pen(m[2]) != nil {
		return Reading{}, false
	}
	number := false
	day, ok := r.dayOfWords(m[2], old.Day)
	if !ok {
		n, err := strconv.Atoi(strings.TrimPrefix(m[2], "the "))
		if err != nil || n < 1 || n > 31 || r.c.Herd.Pen(strconv.Itoa(n)) != nil || r.c.Herd.Pen("pen "+strconv.Itoa(n)) != nil {
			return Reading{}, false
		}
		if day, ok = r.dayOfWords("the "+ordinal(n), old.Day); !ok {
			return Reading{}, false
		}
		number = true
	}
	if day < r.today || day == old.Day {
		return Reading{}, false
	}
	b := model.Booked{Day: day, Count: len(names), Animals: names}
	if len(names) == 0 {
		b.Count, b.Animals, b.Minute = old.Count, old.Animals, old.Minute
	}
	e := Entry{Act: Fact{b}, On: r.today, InsteadOf: old.Day, Instead: true, To: len(r.text)}
	if !number {
		return Reading{Entries: []Entry{e}}, true
	}
	c := Clarify{About: "booked", Code: "day_or_pen", Draft: []Entry{e}, Choices: []Choice{{Entries: []Entry{e}}}}
	moved := model.Move{Pen: "pen " + m[2], Animals: names}
	if len(names) > 0 {
		c.Choices = append(c.Choices, Choice{Entries: []Entry{{Act: Fact{moved}, On: r.today, To: len(r.text)}}})
	}
	c.Choices = append(c.Choices, Choice{Code: "nothing"})
	return r.just(c), true
}

// postponedOf is the appointment that a few words mean, and the pigs where they name
// some of those booked for it.
func (r *reader) postponedOf(words string) (model.Booked, []string, bool) {
	next, ok := r.c.Herd.NextBooking(r.today)
	if !ok {
		return next, nil, false
	}
	if appointmentWords[words] {
		return next, nil, true
	}
	if d, ok := r.dayOfWords(strings.TrimSuffix(words, " booking"), next.Day); ok {
		for _, b := range r.c.Herd.Bookings {
			if b.F.Day == d && d >= r.today {
				return b.F, nil, true
			}
		}
		return next, nil, false
	}
	sub := newReader(Context{Now: r.c.Now, Herd: r.c.Herd}, words)
	defer sub.done()
	sub.tokenize()
	sub.joinNames()
	sub.build()
	var names []string
	for k := range sub.items {
		switch it := &sub.items[k]; {
		case it.pig >= 0 && int(it.pig) < sub.alive && !it.near && sub.pigs[it.pig].Name != "":
			names = append(names, sub.pigs[it.pig].Name)
		case it.is(sFiller), it.is(sAnd), it.s == "and", it.s == "&":
		default:
			return next, nil, false
		}
	}
	if len(names) == 0 {
		return next, nil, false
	}
	for _, b := range r.c.Herd.Bookings { // the one that names them, else one that may take them
		if b.F.Day >= r.today && len(b.F.Animals) > 0 && hasAll(b.F.Animals, names) {
			return b.F, names, true
		}
	}
	for _, b := range r.c.Herd.Bookings {
		if b.F.Day >= r.today && len(b.F.Animals) == 0 {
			return b.F, names, true
		}
	}
	return next, nil, false
}

func hasAll(of, names []string) bool {
	in := map[string]bool{}
	for _, n := range of {
		in[n] = true
	}
	for _, n := range names {
		if !in[n] {
			return false
		}
	}
	return true
}

// dayOfWords is the day that a text's words name and nothing beside it, near to the day
// that an appointment had.
func (r *reader) dayOfWords(words string, was model.Day) (model.Day, bool) {
	sub := newReader(Context{Now: r.c.Now, Herd: r.c.Herd}, words)
	defer sub.done()
	sub.tokenize()
	sub.build()
	for k := range sub.items {
		if it := &sub.items[k]; it.kind != itDay && !it.is(sFiller) {
			return 0, false
		}
	}
	if d := sub.bookedDay(0, was); d != nil {
		return *d, true
	}
	return 0, false
}

// ordinal is a day of the month as it is said: "1st", "15th".
func ordinal(n int) string {
	end := "th"
	if n/10 != 1 {
		switch n % 10 {
		case 1:
			end = "st"
		case 2:
			end = "nd"
		case 3:
			end = "rd"
		}
	}
	return strconv.Itoa(n) + end
}
