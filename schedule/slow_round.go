package schedule

import (
	"slices"
	"time"

	"troughbell/model"
)

// roundLook is how many of the latest rounds are looked at for ones that came a
// day late.
const roundLook = 8

// lateRound is the moment by which a round is done that comes a day late, where
// this household was seen to be late; else zero.
func (v *view) lateRound() time.Time {
	if v.lead() == 0 && !v.roundSlipped() {
		return time.Time{}
	}
	return v.evening(model.DayOf(v.next.In(v.loc)) + 1).Add(deed)
}

// roundSlipped reports whether one of the latest rounds that asked for feed or
// water brought no fill on its day: one had to be asked for on the evening after,
// or came on that day.
func (v *view) roundSlipped() bool {
	seen := 0
	for i := len(v.tolds) - 1; i >= 0 && seen < roundLook; i-- {
		t := v.tolds[i]
		if slices.Contains(t.F.Topics, topicNotFilled) {
			return true
		}
		d := model.DayOf(t.At.In(v.loc))
		if !t.F.Standing || d+1 >= v.day || v.h.IsChoreDay(d+1) || !asksFill(t.F.Topics) {
			continue
		}
		seen++
		start, over := d.At(0, v.loc), (d+1).At(0, v.loc)
		if !v.filledBetween(start, over) && v.filledBetween(over, (d+2).At(0, v.loc)) {
			return true
		}
	}
	return false
}

// asksFill reports whether what was told of asks to fill feeders or barrels.
func asksFill(topics []string) bool {
	for _, t := range topics {
		if t == aboutRefill || t == aboutWater {
			return true
		}
	}
	return false
}

// lateRisk is the share of the way from the cautious edge to the likely end that
// is left for a late round: a round that comes late one time in five, and feed or
// water that is out one time in ten by then, make the 2 % of the edge (computed,
// for a normal distribution).
const lateRisk = 0.37

// lastsUntil is until when feed or water must last that ends at the edges: to the
// next visit at its cautious one, and to a late visit with less caution, since
// being late and being short are both rare.
func (v *view) lastsUntil(edge, likely time.Time) time.Time {
	if edge.Before(v.next) {
		return v.next
	}
	if late := v.lateRound(); edge.Add(time.Duration(lateRisk * float64(likely.Sub(edge)))).Before(late) {
		return late
	}
	return v.next
}

// earlier is the edge, or the next visit where that comes first: what a visit may
// come too late for is called for before it.
func (v *view) earlier(edge time.Time) time.Time {
	if v.next.Before(edge) {
		return v.next
	}
	return edge
}
