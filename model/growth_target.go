package model

// TargetDay is when a weight is reached.
type TargetDay struct {
	Days    DayInterval
	Already bool // reached on or before today
}

// TargetFigure is when the herd reaches a weight.
type TargetFigure struct {
	TargetKg float64
	Herd     TargetDay   // median day on which the mean of the herd reaches it
	Groups   []TargetDay // for each of Herd.Groups that has living pigs, in order
	Animals  map[*Animal]TargetDay
	Reasons  []Reason
}

// targetHorizon is how far ahead a target day is looked for, in days. A weight
// not reached by then is answered with that day.
const targetHorizon = 730

// Target gives the days on which herd, groups and pigs reach targetKg, seen
// from today. Already there: today. Missing "pigs" or "weight" as in Weights;
// *OutOfRange for a target of no more than nothing or over 220 kg, where the
// growth table ends. Low is the first day on which the weight is reached with
// 10 % chance, Mid with an even chance, High with 90 %.
func (h *Herd) Target(targetKg float64, today Day) (TargetFigure, error) {
	const mostKg = 220
	if !(targetKg > 0 && targetKg <= mostKg) {
		return TargetFigure{}, &OutOfRange{"target", targetKg, 0, mostKg}
	}
	pigs, err := h.growing(h.Alive(today))
	if err != nil {
		return TargetFigure{}, err
	}
	f := h.growth()
	t := TargetFigure{
		TargetKg: targetKg,
		Herd:     f.target(alike(pigs), targetKg, today),
		Animals:  make(map[*Animal]TargetDay, len(pigs)),
		Reasons:  f.reasons(pigs, today, f.state(alike(pigs), today)),
	}
	for _, g := range h.Groups {
		var own []*growthPig
		for _, p := range pigs {
			if p.animal.Group == g {
				own = append(own, p)
			}
		}
		switch len(own) {
		case 0:
		case len(pigs):
			t.Groups = append(t.Groups, t.Herd)
		default:
			t.Groups = append(t.Groups, f.target(alike(own), targetKg, today))
		}
	}
	known := map[*growthPig]TargetDay{}
	if len(pigs) == 1 {
		known[pigs[0].like] = t.Herd
	}
	for _, p := range pigs {
		day, ok := known[p.like]
		if !ok {
			day = f.target([]alikePigs{p.alone()}, targetKg, today)
			known[p.like] = day
		}
		t.Animals[p.animal] = day
	}
	return t, nil
}

// target finds the days on which the mean weight of pigs reaches a weight.
func (f *growthFit) target(pigs []alikePigs, kg float64, today Day) TargetDay {
	var s growthState
	reached := func(z float64) func(Day) bool {
		return func(on Day) bool {
			f.stateInto(&s, pigs, on)
			return s.at(z) >= kg
		}
	}
	if f.median(pigs, today) >= kg {
		return TargetDay{Days: DayInterval{today, today, today}, Already: true}
	}
	t := TargetDay{}
	t.Days.Mid = firstDay(today, today+targetHorizon, func(on Day) bool { return f.median(pigs, on) >= kg })
	t.Days.Low = firstDay(today, t.Days.Mid, reached(z80))
	t.Days.High = firstDay(t.Days.Mid, today+targetHorizon, reached(-z80))
	return t
}

// firstDay is the first day from the one to the other, both included, on which
// something that stays true is true, or the last: steps that double, then halves.
func firstDay(from, to Day, is func(Day) bool) Day {
	if is(from) {
		return from
	}
	low, high := from, from
	for step := Day(4); ; step *= 2 {
		if high += step; high >= to {
			high = to
			break
		}
		if is(high) {
			break
		}
		low = high
	}
	for high-low > 1 {
		if mid := low + (high-low)/2; is(mid) {
			high = mid
		} else {
			low = mid
		}
	}
	return high
}
