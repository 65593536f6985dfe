package schedule

import (
	"time"

	"troughbell/model"
)

// waterVisit says which barrels to fill at the visit so that the water lasts to
// the next one, at its cautious edge.
func waterVisit(v *view) []need {
	w, err := v.f.WaterLeft(v.visitAt())
	until := v.wanted(v.next)
	if err != nil || !w.EdgeAt.Before(until) {
		return nil
	}
	l := Line{
		About: aboutWater, Topic: aboutWater, Grade: Routine, Code: CodeWaterVisit,
		On: v.day, At: until, Latest: w.EdgeAt, Reasons: v.untilNext(w.Reasons), Look: v.looksAtWater(w),
	}
	fill, known := 0.0, true
	for _, b := range w.Barrels {
		l.Names = append(l.Names, b.Name)
		size := v.h.Barrel(b.Name)
		if size == nil || size.CapacityL == nil {
			known = false
			continue
		}
		fill += max(0, *size.CapacityL-b.Litres.Mid)
	}
	if !known {
		fill, l.Look = 0, false
	}
	l.Q = []model.Quantity{{Value: fill, Unit: model.Litres}, {Value: w.UseLD.Mid, Unit: model.LitresPerDay}}
	// What the reply to the fill will say: full is judged at the same edge.
	if full, err := v.f.WaterFilled(v.visitAt()); err == nil && full.EdgeAt.Before(until) {
		l.Code = CodeWaterBrim
		l.On = model.DayOf(full.EdgeAt.In(v.loc))
	}
	return []need{{Line: l, quiet: sameVisit}}
}

// waterBetween tells of water that cannot wait for the next visit: once in time
// to act, and as an emergency when it is likely gone.
func waterBetween(v *view) []need {
	w, err := v.f.WaterLeft(v.at)
	if err != nil || !w.EdgeAt.Before(v.wanted(v.lastsUntil(w.EdgeAt, w.LikelyAt))) {
		return nil
	}
	l := Line{
		About: aboutWater, Topic: "water:between", Grade: Welfare, Code: CodeWaterMidweek,
		On: model.DayOf(w.LikelyAt.In(v.loc)), At: w.EdgeAt, Latest: v.next, Reasons: w.Reasons, Look: v.looksAtWater(w),
		Q: []model.Quantity{{Value: w.Litres.Mid, Unit: model.Litres}, {Value: w.UseLD.Mid, Unit: model.LitresPerDay}},
	}
	for _, b := range w.Barrels {
		l.Names = append(l.Names, b.Name)
	}
	l.Earliest = v.callAt(v.earlier(w.EdgeAt))
	var spoken time.Time
	latest(v.h.Waters, func(at time.Time) { spoken = at })
	out := []need{{Line: l, token: token(aboutWater, "between", spoken, v.next), edge: w.EdgeAt, quiet: v.sinceVisit()}}
	if !w.LikelyAt.Before(v.wanted(v.next)) {
		return out
	}
	l.Topic, l.Code, l.Grade, l.At, l.On, l.Q, l.Look = "water:out", CodeWaterOut, Danger, w.LikelyAt, 0, nil, false
	l.Reasons = append([]model.Reason{v.notLogged(spoken)}, w.Reasons...)
	n := need{Line: l, quiet: v.sinceVisit()}
	if seen, ok := v.seenEmpty(); ok { // seen by a person, not calculated: it breaks the quiet hours
		n.Code, n.At, n.breaks = CodeWaterSeenEmpty, seen, true
		return append(out[:0], v.tellAgain(n, spoken, seen.Add(alarmEvery), waterOutTellings)...)
	}
	return append(out, v.tellAgain(n, spoken, w.LikelyAt, waterOutTellings)...)
}

// seenEmpty gives when the barrels were last seen empty, where no water was
// logged since: all of them in one word, or each by its name.
func (v *view) seenEmpty() (time.Time, bool) {
	empty := map[string]bool{}
	for i := len(v.h.Waters) - 1; i >= 0; i-- {
		w := v.h.Waters[i]
		if !w.F.Seen || w.F.Fraction == nil || *w.F.Fraction > 0 {
			return time.Time{}, false
		}
		if b := v.h.Barrel(w.F.Barrel); w.F.Barrel == "" || b == nil {
			return w.At, true
		} else if empty[b.Name] = true; len(empty) == len(v.h.Barrels) {
			return v.h.Waters[len(v.h.Waters)-1].At, true
		}
	}
	return time.Time{}, false
}
