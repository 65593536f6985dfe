package model

import "math"

// growthTerm is a pig's table day on a day, with a factor: one summand of a
// quantity that is asked of the fit.
type growthTerm struct {
	pig       *growthPig
	day, coef float64
}

// path is where on the table the fit has the pig on the day.
func (f *growthFit) path(p *growthPig, day float64) float64 {
	if len(f.means.readings) > 0 {
		mean, _ := f.sum(growthTerm{p, day, 1})
		return mean
	}
	at := f.moment(p, day)
	mean, days := f.prior(p, day)
	k := sharedColumns + 2*p.group
	mean += f.theta[k] + days*(f.theta[0]+f.theta[k+1])
	for i, m := range p.moments {
		mean += f.kernel(p, at, m) * p.w[i]
	}
	return mean
}

// sum gives mean and variance of a weighted sum of table days, all that pigs
// share taken into account.
func (f *growthFit) sum(terms ...growthTerm) (mean, variance float64) {
	n := len(f.theta)
	h := make([]float64, n) // how the sum moves with what is shared
	g := make([]float64, len(f.means.readings))
	qs, moments := make([][]float64, len(terms)), make([]growthMoment, len(terms))
	for i, t := range terms {
		prior, days := f.prior(t.pig, t.day)
		moments[i] = f.moment(t.pig, t.day)
		q := f.seen(t.pig, moments[i])
		qs[i] = q
		mean += t.coef * (prior + dot(q, t.pig.v))
		for c, x := range growthDesign(days) {
			for k, y := range q {
				x -= y * t.pig.u[k*growthColumns+c]
			}
			h[t.pig.column(c)] += t.coef * x
		}
		for j := range i + 1 {
			o := terms[j]
			if o.pig != t.pig {
				continue
			}
			v := t.coef * o.coef * (f.kernel(t.pig, moments[i], moments[j]) - dot(q, qs[j]))
			if j < i {
				v *= 2
			}
			variance += v
		}
		for m := range g {
			for _, part := range f.means.parts[m] {
				if f.pigs[part.pig] == t.pig {
					g[m] += t.coef * part.coef * (f.kernel(t.pig, moments[i], part.at) - dot(q, part.q))
					break
				}
			}
		}
	}
	if len(g) > 0 {
		f.means.block.forward(g)
		mean += dot(g, f.means.v)
		variance -= dot(g, g)
		for m, x := range g {
			for c := range h {
				h[c] -= x * f.means.u[m*n+c]
			}
		}
	}
	mean += dot(h, f.theta)
	f.info.forward(h)
	return mean, math.Max(variance+dot(h, h), 1e-9)
}

// variance is that of one pig's table day on a day: sum for the commonest case,
// without its memory.
func (f *growthFit) variance(p *growthPig, day float64) float64 {
	var room [64]float64
	var cols [32]float64
	if len(f.means.readings) > 0 || len(p.readings) > len(room) || len(f.theta) > len(cols) {
		_, v := f.sum(growthTerm{p, day, 1})
		return v
	}
	at := f.moment(p, day)
	q, h := f.seenIn(room[:len(p.readings)], p, at), cols[:len(f.theta)]
	days := day - f.groups[p.group].day
	for c, x := range growthDesign(days) {
		for k, y := range q {
			x -= y * p.u[k*growthColumns+c]
		}
		h[p.column(c)] = x
	}
	f.info.forward(h)
	return math.Max(f.kernel(p, at, at)-dot(q, q)+dot(h, h), 1e-9)
}
