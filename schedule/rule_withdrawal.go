package schedule

import (
	"slices"
	"time"

	"troughbell/model"
)

// loadDanger is how long before a booked day a pig that is not clear is a
// danger rather than something to arrange.
const loadDanger = 2 * day

// loadMorning is how soon after the waking hour a load is so near that it is
// not waited for that hour.
const loadMorning = 6 * time.Hour

// appointment is a butcher's day to come, and the moment from which a pig that
// goes to it must be clear.
type appointment struct {
	model.Booked
	load time.Time
}

// appointments lists those to come, the next first; where there is none, one
// without a day.
func (v *view) appointments() []appointment {
	var out []appointment
	for _, b := range v.h.Bookings {
		if b.F.Day < v.day {
			continue
		}
		load := b.F.Day.At(0, v.loc)
		if b.F.Minute != nil {
			load = b.F.Day.At(*b.F.Minute, v.loc)
		}
		out = append(out, appointment{b.F, load})
	}
	slices.SortStableFunc(out, func(a, b appointment) int { return int(a.Day - b.Day) })
	if len(out) == 0 {
		out = append(out, appointment{})
	}
	return out
}

// notClear lists the lines about pigs that are not clear in time for the first
// appointment to which they may go, or not known to be.
func (v *view) notClear(at time.Time) []Line {
	var out []Line
	clears := v.f.Withdrawal(at)
	seen := map[*model.Animal]bool{}
	for i, b := range v.appointments() {
		booked := b.Day != 0
		late := Line{About: aboutWithdrawal, Topic: "withdrawal:booked", Grade: Welfare, Code: CodeWithdrawalConflict, On: b.Day}
		unknown := Line{About: aboutWithdrawal, Topic: "withdrawal:unknown", Grade: Routine, Code: CodeWithdrawalUnknown, On: b.Day}
		if i > 0 { // a line of its own beside that of the next appointment
			late.Topic, unknown.Topic = token(late.Topic, b.Day), token(unknown.Topic, b.Day)
		}
		var latePigs, unknownPigs []*model.Animal
		for _, c := range clears {
			if !c.Treated || seen[c.Animal] || booked && !b.MayTake(c.Animal) {
				continue
			}
			seen[c.Animal] = true
			switch {
			case !c.Known:
				unknownPigs = append(unknownPigs, c.Animal)
				unknown.Reasons = append(unknown.Reasons, c.Reasons...)
			case booked && c.ClearAt.After(b.load):
				latePigs = append(latePigs, c.Animal)
				late.At = later(late.At, c.ClearAt)
				late.Reasons = append(late.Reasons, c.Reasons...)
			}
		}
		for _, x := range []struct {
			l    Line
			pigs []*model.Animal
		}{{late, latePigs}, {unknown, unknownPigs}} {
			if len(x.pigs) == 0 {
				continue
			}
			x.l.Names = named(x.pigs)
			if booked {
				x.l.Latest = b.load
				if x.l.Code == CodeWithdrawalUnknown {
					x.l.Grade = Welfare
				}
			}
			out = append(out, x.l)
		}
	}
	return append(out, v.unknownUnbooked(clears, seen)...)
}

// unknownUnbooked is the line about pigs that no appointment takes and whose
// withdrawal days are not known.
func (v *view) unknownUnbooked(clears []model.PigClear, seen map[*model.Animal]bool) []Line {
	l := Line{About: aboutWithdrawal, Topic: "withdrawal:unbooked", Grade: Routine, Code: CodeWithdrawalUnknown}
	var pigs []*model.Animal
	for _, c := range clears {
		if c.Treated && !c.Known && !seen[c.Animal] {
			pigs = append(pigs, c.Animal)
			l.Reasons = append(l.Reasons, c.Reasons...)
		}
	}
	if len(pigs) == 0 {
		return nil
	}
	l.Names = named(pigs)
	return []Line{l}
}

// withdrawalVisit brings up at each visit that pigs are not clear for the
// booked day; unknown days without a booking only once in four weeks.
func withdrawalVisit(v *view) []need {
	var out []need
	for _, l := range v.notClear(v.visitAt()) {
		n := need{Line: l, quiet: 6 * day}
		n.Latest = time.Time{} // while it is so it is said at every visit
		if l.Grade == Routine {
			n.since = v.visit.Add(-27 * day)
		}
		out = append(out, n)
	}
	return out
}

// withdrawalBetween tells of a booked load against a drug clock once more, two
// days before the load; what becomes known only in the last night is told at
// once.
func withdrawalBetween(v *view) []need {
	var out []need
	for _, l := range v.notClear(v.at) {
		if l.On == 0 {
			continue
		}
		load := l.Latest
		l.Topic += ":load"
		l.Grade = Danger
		l.Earliest = v.evening(model.DayOf(load.Add(-loadDanger)))
		out = append(out, need{
			Line: l, token: token(l.Topic, l.On),
			breaks: load.Before(v.awake(v.start).Add(loadMorning)), // later it would come too late
		})
	}
	return out
}
