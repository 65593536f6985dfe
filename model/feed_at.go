package model

import (
	"math"
	"time"
)

// at gives the belief at a moment: that of the latest record not after it,
// carried on. Missing "feeder" or "level" where nothing speaks of a level.
func (f *feedFit) at(t time.Time) (gaussian, []feedMark, error) {
	if f.err != nil {
		return gaussian{}, nil, f.err
	}
	x := wallDays(t)
	last := -1
	for i := len(f.steps) - 1; i >= 0; i-- {
		if f.steps[i].x <= x {
			last = i
			break
		}
	}
	if last < 0 || !anySaid(f.steps[last].marks, f.eating(x)) {
		if len(f.h.Feeders) == 0 {
			return gaussian{}, nil, &Missing{What: "feeder"}
		}
		var names []string
		for _, s := range f.h.Feeders {
			names = append(names, s.Name)
		}
		return gaussian{}, nil, &Missing{What: "level", Names: names}
	}
	g := f.steps[last].g.clone()
	if err := f.advance(g, f.steps[last].x, x); err != nil {
		return gaussian{}, nil, err
	}
	return g, f.steps[last].marks, nil
}

func anySaid(marks []feedMark, of []int) bool {
	for _, i := range of {
		if marks[i].said {
			return true
		}
	}
	return false
}

// appetiteAt is the belief about the herd's appetite alone, learned or not.
func (f *feedFit) appetiteAt(t time.Time) Estimate {
	if f.err == nil {
		if g, _, err := f.at(t); err == nil {
			return Estimate{g.mean[placeAppetite], math.Sqrt(g.at(placeAppetite, placeAppetite))}
		}
	}
	return Estimate{0, appetiteSD}
}

// levelKg is what a feeder holds, never below nothing.
func levelKg(g gaussian, i int) Interval {
	e := Estimate{g.mean[placeLevel(i)], math.Sqrt(g.at(placeLevel(i), placeLevel(i)))}
	v := e.Interval()
	return Interval{max(v.Low, 0), max(v.Mid, 0), max(v.High, 0)}
}

// aboutLog is a quantity of which the logarithm has an error of sd.
func aboutLog(mid, sd float64) Interval {
	f := math.Exp(z80 * sd)
	return Interval{mid / f, mid, mid * f}
}
