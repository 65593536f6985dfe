package schedule

import (
	"time"

	"troughbell/model"
)

// loadDanger is how long before a booked day a pig that is not clear is a
// danger rather than something to arrange.
const loadDanger = 2 * day

// loadMorning is how soon after the waking hour a load is so near that it is
// not waited for that hour.
const loadMorning = 6 * time.Hour

// notClear lists the lines about pigs that are not clear: in time for the next
// booking, or not known to be.
func (v *view) notClear(at time.Time) []Line {
	booked, isBooked := v.h.NextBooking(v.day)
	var load time.Time
	if isBooked {
		load = booked.Day.At(0, v.loc)
		if booked.Minute != nil {
			load = booked.Day.At(*booked.Minute, v.loc)
		}
	}
	late := Line{About: aboutWithdrawal, Topic: "withdrawal:booked", Grade: Welfare, Code: CodeWithdrawalConflict, On: booked.Day}
	unknown := Line{About: aboutWithdrawal, Topic: "withdrawal:unknown", Grade: Routine, Code: CodeWithdrawalUnknown, On: booked.Day}
	var latePigs, unknownPigs []*model.Animal
	for _, c := range v.f.Withdrawal(at) {
		switch {
		case !c.Treated:
		case !c.Known:
			unknownPigs = append(unknownPigs, c.Animal)
			unknown.Reasons = append(unknown.Reasons, c.Reasons...)
		case isBooked && c.ClearAt.After(load):
			latePigs = append(latePigs, c.Animal)
			late.At = later(late.At, c.ClearAt)
			late.Reasons = append(late.Reasons, c.Reasons...)
		}
	}
	var out []Line
	for _, x := range []struct {
		l    Line
		pigs []*model.Animal
	}{{late, latePigs}, {unknown, unknownPigs}} {
		if len(x.pigs) == 0 {
			continue
		}
		x.l.Names = named(x.pigs)
		if isBooked {
			x.l.Latest = load
			if x.l.Code == CodeWithdrawalUnknown {
				x.l.Grade = Welfare
			}
		}
		out = append(out, x.l)
	}
	return out
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
