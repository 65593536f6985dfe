package reading

import (
	"math"

	"troughbell/model"
)

// oddsWeird is how many standard deviations a reading may lie from what is
// expected before it is asked about.
const oddsWeird = 4.0

// oneStandsOut says that a reading given for several pigs by name or sex cannot
// be that of one of them.
func (r *reader) oneStandsOut(w model.Weigh, sel selection, on model.Day) bool {
	if sel.all || len(sel.pigs) < 2 {
		return false
	}
	for k := range sel.pigs {
		if z, ok := r.deviation(w, selection{pigs: sel.pigs[k : k+1]}, on); ok && z > 2*oddsWeird {
			return true
		}
	}
	return false
}

// sidesSwapped says that a girth is that much more than the length said with it
// that the two were most likely swapped: a growing pig is about as long as it
// is round. Common practice, no source.
func sidesSwapped(w model.Weigh) bool { return w.LengthCm > 0 && w.GirthCm > 1.15*w.LengthCm }

// fit is how far readings lie from what is expected.
type fit struct {
	best, second float64
	known        bool
}

// likeliest finds the option that lies nearest to what the pigs should show.
func (r *reader) likeliest(options []model.Weigh, sel selection, on model.Day) (int, fit) {
	best := 0
	f := fit{best: math.Inf(1), second: math.Inf(1)}
	for k, w := range options {
		z, ok := r.deviation(w, sel, on)
		if !ok {
			continue
		}
		f.known = true
		if z < f.best {
			best, f.second, f.best = k, f.best, z
		} else if z < f.second {
			f.second = z
		}
	}
	return best, f
}

// deviation is how many standard deviations a reading lies from what the pigs
// should show on the day; false where nothing is known of them.
func (r *reader) deviation(w model.Weigh, sel selection, on model.Day) (float64, bool) {
	pigs := sel.pigs
	if sel.all {
		pigs = nil
		for p := range r.alive {
			pigs = append(pigs, int16(p))
		}
	}
	kg, by := w.WeightKg, w.By
	if w.GirthCm > 0 {
		by = model.ByTape
		var est model.Estimate
		var err error
		if w.LengthCm > 0 {
			est, err = r.judge.tape(w.GirthCm, w.LengthCm)
		} else {
			est, err = r.judge.girth(w.GirthCm)
		}
		if err != nil {
			return 0, false
		}
		kg = est.Mean
	}
	if by == "" {
		by = model.ByScale
	}
	var sum, spread float64
	n := 0
	for _, p := range pigs {
		if int(p) >= r.alive {
			continue
		}
		est, err := r.judge.weight(r.pigs[p], on, by)
		if err != nil || est.SD <= 0 || math.IsNaN(est.Mean) {
			continue
		}
		sum += est.Mean
		spread += est.SD
		n++
	}
	if n == 0 {
		return 0, false
	}
	mean, sd := sum/float64(n), spread/float64(n)
	// A herd's own spread and the error of a hurried reading are wider than
	// the figure's own interval.
	sd = math.Max(sd, 0.06*mean+1.5)
	if sel.all || len(pigs) > 1 {
		sd += 0.08 * mean
	}
	return math.Abs(kg-mean) / sd, true
}

// usual decides between girth and weight where nothing is known of the pig: a
// number that only one of the two can be in a growing pig.
func (r *reader) usual(options []model.Weigh) (model.Weigh, bool) {
	for _, w := range options {
		if w.GirthCm == 0 && (w.WeightKg > 35 && r.units != model.Metric || r.units == model.Metric && w.WeightKg < 60) {
			return w, true
		}
	}
	return model.Weigh{}, false
}

// habitSpan is how many of a herd's last readings, all by scale or all by tape, make
// a bare number another of them. Common practice, no source.
const habitSpan = 4

// habitual is the option that goes on as the herd's last readings were all made: on
// a scale, or with a tape; -1 where they were mixed or are too few.
func (r *reader) habitual(options []model.Weigh) int {
	taped, n := 0, 0
	ws := r.c.Herd.Weighings
	for k := len(ws) - 1; k >= 0 && n < habitSpan; k-- {
		if w := ws[k].F; w.By != model.ByEye {
			n++
			if w.GirthCm > 0 {
				taped++
			}
		}
	}
	if n < habitSpan || taped != 0 && taped != n {
		return -1
	}
	for k, w := range options {
		if (w.GirthCm > 0) == (taped > 0) {
			return k
		}
	}
	return -1
}

// digitSlips are the numbers that one wrong or swapped digit away from v were
// meant.
func digitSlips(v float64) []float64 {
	frac := v - math.Trunc(v)
	n := int(v)
	var out []float64
	for p := 100; p >= 1; p /= 10 {
		if n < p && p > 1 {
			continue
		}
		d := n / p % 10
		for _, x := range []int{d - 1, d + 1, d - 2, d + 2, d - 3, d + 3} {
			if x >= 0 && x <= 9 && (x > 0 || p < 100) {
				out = append(out, float64(n+(x-d)*p)+frac)
			}
		}
	}
	if n >= 10 {
		swap := n/100*100 + n%10*10 + n/10%10
		out = append(out, float64(swap)+frac)
	}
	if n < 100 {
		out = append(out, float64(n)+100, float64(n)*10)
	}
	if n >= 400 {
		out = append(out, v/10)
	}
	return out
}

// outOfBounds says that no pig ever shows such a reading.
func outOfBounds(w model.Weigh) bool {
	if w.GirthCm > 0 {
		return w.GirthCm < leastGirth || w.GirthCm > mostGirth || w.LengthCm > mostLong || w.LengthCm > 0 && w.LengthCm < leastLong
	}
	return w.WeightKg < lightestKg || w.WeightKg > heaviestKg
}
