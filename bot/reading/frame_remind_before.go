package reading

import (
	"strings"

	"troughbell/model"
)

// A reminder may be wished for so long before something: before the butcher's day that is
// booked, a day that is named, or what the same text told before.

// daysBefore finds the words of a reminder's span that say how long before what it is to
// come, and on which day that is, 0 where it cannot be told.
func (r *reader) daysBefore(s span) (day model.Day, i, j int, ok bool) {
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		n, end := 0, k+1
		switch {
		case it.kind == itDay && it.day.form == dayOffset && it.day.a < 0 && beforeWords[lastWord(strings.ToLower(r.quote(k, k+1)))]:
			n = -it.day.a
		case it.kind == itQty && it.unit.dim() == days && k+1 < s.j && r.items[k+1].gap == gapNone && beforeWords[firstWord(r.items[k+1].s)]:
			n, end = int(it.si()+0.5), k+2
		case (it.unit == unitWeek && it.kind == itWord || it.s == "the week" || it.s == "week") && k+1 < s.j && r.items[k+1].s == "before":
			n, end = 7, k+2
		case it.s == "the week before" || it.s == "week before":
			n = 7
		default:
			continue
		}
		from := k
		if from > s.i && r.items[from-1].s == "the" {
			from--
		}
		at, to := r.beforeWhat(end, s)
		if at == 0 {
			return 0, from, to, true
		}
		return at - model.Day(n), from, to, true
	}
	return 0, 0, 0, false
}

// beforeWhat is the day that a reminder is to come before, and where the words for it end
// that begin at item k; 0 where nothing tells it.
func (r *reader) beforeWhat(k int, s span) (model.Day, int) {
	to, booked := k, false
	for to < s.j && r.items[to].gap == gapNone {
		it := &r.items[to]
		if it.kind == itDay {
			if d, ok := it.day.on(r.today, lookForward, r.dayFirst); ok && !booked {
				return d, to + 1
			}
			break
		}
		if it.isAny(setOf(sButcher, sBook)) && it.pig < 0 || bookingWords[it.s] {
			booked = true
		} else if !(it.s == "the" || it.s == "our" || it.s == "my" || it.s == "they" || it.s == "go" || it.s == "that" || booked && appointmentTails[it.s]) {
			break
		}
		to++
	}
	if !booked {
		to = k
		for n := len(r.out) - 1; n >= 0; n-- {
			if f, ok := r.out[n].Act.(Fact); ok {
				switch x := f.Fact.(type) {
				case model.Booked:
					return x.Day, to
				case model.AwayFrom:
					return x.From, to
				}
			}
		}
		for n := s.i - 1; n >= 0; n-- {
			if it := &r.items[n]; it.kind == itDay && !it.day.every {
				if d, ok := it.day.on(r.today, lookForward, r.dayFirst); ok {
					return d, to
				}
			}
		}
		return 0, to
	}
	for n := len(r.out) - 1; n >= 0; n-- {
		if f, ok := r.out[n].Act.(Fact); ok {
			if b, ok := f.Fact.(model.Booked); ok {
				return b.Day, to
			}
		}
	}
	if b, ok := r.c.Herd.NextBooking(r.today); ok {
		return b.Day, to
	}
	return 0, to
}

var (
	beforeWords      = listed("before, prior, ahead, beforehand")
	bookingWords     = listed("appointment, slaughter, processing, booking, slot, the appointment, the butcher, the locker, butcher day, locker day, butcher date, they go, kill date, kill day")
	appointmentTails = listed("date, day, appointment, slot, the, to, appt, takes, them, booking")
)

// clauseToDo are the words of a clause before item i, of what a reminder behind it is to
// be of: "call the vet friday, | remind me"; -1 if there is none.
func (r *reader) clauseToDo(i int) int {
	if !r.saidAhead(i) {
		return -1
	}
	if begin := r.sentenceStart(i - 1); r.idleRun(begin, i) {
		return begin
	}
	return -1
}

// saidAhead says that something of the same sentence stands before item i, and not when
// the chores are.
func (r *reader) saidAhead(i int) bool {
	return i > 0 && !r.has(span{fRemind, r.sentenceStart(i - 1), i}, sChore) && !strings.ContainsAny(r.text[r.items[i-1].to:r.items[i].from], ".;!?\n")
}

// dayNamedIn is the day to come that is told in the items from i to j.
func (r *reader) dayNamedIn(i, j int) (model.Day, bool) {
	for k := i; k < j; k++ {
		if it := &r.items[k]; it.kind == itDay && !it.day.every {
			d, ok := it.day.on(r.today, lookForward, r.dayFirst)
			it.used = ok
			return d, ok && d >= r.today
		}
	}
	return 0, false
}

// politeTail takes from the words of a reminder what only asks for it.
func politeTail(what string) string {
	for again := true; again; {
		again = false
		for _, p := range politeTails {
			if low := strings.ToLower(what); low == p || strings.HasSuffix(low, " "+p) || strings.HasSuffix(low, ","+p) {
				what, again = strings.TrimRight(what[:len(what)-len(p)], " ,?"), true
			}
		}
	}
	return what
}

var politeTails = split("would you, would ya, will you, will ya, can you, could you, please, pls, thanks, thank you, if you can, if you could, if you would, ok, okay, wouldya, won't you, would you please")
