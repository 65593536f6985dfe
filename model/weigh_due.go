package model

import (
	"math"
	"slices"
)

// When a weighing is worth its trouble.
const (
	weighEveryDays  = 21  // no sooner, while the target is far
	weighLastMonth  = 30  // before the target or the butcher
	weighLateDays   = 7   // in the last month
	weighWideDays   = 8.0 // half the 80 % interval of the target day
	weighSettleDays = 7   // after arrival pigs are left to settle
)

// WeighDue gives when a weighing would change a decision: three weeks after the
// last one where the target day is known no better than 8 days either way, at
// most a week later than that in the last month before the target or the
// butcher, and a week after arrival where nothing is known of weight. Where the
// target day is known well enough, monthly. A later group of which nothing is
// known comes first. Where a scale is at hand and the tape was last held against
// it on pigs of under two thirds of the target, it is time to do so again once
// they weigh that: ReasonWeighCheck comes among the reasons. Pigs are the living ones with no
// weighing since. On may lie before today. Missing "pigs".
func (h *Herd) WeighDue(today Day) (Due, error) {
	pigs := h.Alive(today)
	if len(pigs) == 0 {
		return Due{}, &Missing{What: "pigs"}
	}
	var latest *growthReading
	last, arrived := Day(math.MinInt32), pigs[0].Group.Arrived
	for _, a := range pigs {
		arrived = max(arrived, a.Group.Arrived)
	}
	f := h.growth()
	weighedOn := map[*Animal]Day{}
	note := func(a *Animal, r *growthReading) {
		if d := Day(r.day); d <= today {
			weighedOn[a] = max(d, weighedOn[a])
			if d >= last {
				last, latest = d, r
			}
		}
	}
	for _, a := range pigs {
		p := f.pigs[a.Number]
		for i := range p.readings {
			note(a, &p.readings[i])
		}
	}
	for i := range f.means.readings {
		r := &f.means.readings[i]
		for _, j := range r.pigs {
			if a := f.pigs[j].animal; slices.Contains(pigs, a) {
				note(a, r)
			}
		}
	}
	if strangers := f.strangers(pigs); len(strangers) > 0 && len(weighedOn) > 0 {
		return Due{
			On:      strangers[0].Group.Arrived + weighSettleDays,
			Pigs:    strangers,
			Reasons: []Reason{{Code: ReasonWeighNone}},
		}, nil
	}
	due := Due{}
	t, err := h.Target(h.TargetKg, today)
	switch {
	case err != nil || len(weighedOn) == 0:
		due.On = arrived + weighSettleDays
		if err == nil {
			due.On = arrived + weighEveryDays
		}
		due.Reasons = []Reason{{Code: ReasonWeighNone}}
	case t.Herd.Already:
		due.On = last + weighLateDays
		due.Reasons = []Reason{{Code: ReasonWeighNear, On: today, Q: []Quantity{{0, Days}}}}
	default:
		end := t.Herd.Days.Mid
		if b, ok := h.NextBooking(today); ok {
			end = min(end, b.Day)
		}
		half := float64(t.Herd.Days.High-t.Herd.Days.Low) / 2
		every := Day(weighLastMonth)
		if half > weighWideDays {
			every = weighEveryDays
		}
		due.On = last + every
		due.Reasons = []Reason{{Code: ReasonWeighWide, On: t.Herd.Days.Mid, Q: []Quantity{{half, Days}}}}
		if late := max(last+weighLateDays, end-weighLastMonth); late < due.On {
			due.On = late
			due.Reasons = []Reason{{Code: ReasonWeighNear, On: end, Q: []Quantity{{float64(end - today), Days}}}}
		}
	}
	if check, ok := h.tapeCheckDue(pigs, due.On); ok {
		due.Reasons = append(due.Reasons, check)
	}
	if latest != nil {
		due.Reasons = append(due.Reasons, latest.reason(today))
	}
	for _, a := range pigs {
		if d, ok := weighedOn[a]; !ok || d < due.On {
			due.Pigs = append(due.Pigs, a)
		}
	}
	return due, nil
}

// strangers lists the pigs of groups of whose weight nothing is known.
func (f *growthFit) strangers(pigs []*Animal) []*Animal {
	var out []*Animal
	for _, a := range pigs {
		if !f.groups[f.pigs[a.Number].group].known {
			out = append(out, a)
		}
	}
	return out
}
