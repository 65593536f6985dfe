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

// apart gives the variance of one pig's table day on a day with what is shared
// known, and adds to h how the day moves with what is shared, times coef. It is
// sum for the commonest case: no weighings of several pigs, one day each.
func (f *growthFit) apart(p *growthPig, day, coef float64, h []float64) float64 {
	var room [64]float64
	q := room[:min(len(p.readings), len(room))]
	if len(p.readings) > len(room) {
		q = make([]float64, len(p.readings))
	}
	at := f.moment(p, day)
	f.seenIn(q, p, at)
	for c, x := range growthDesign(day - f.groups[p.group].day) {
		for k, y := range q {
			x -= y * p.u[k*growthColumns+c]
		}
		h[p.column(c)] += coef * x
	}
	return f.kernel(p, at, at) - dot(q, q)
}

// sharedVariance is the variance that what is shared gives to a sum that moves
// with it by h; h is used up.
func (f *growthFit) sharedVariance(h []float64) float64 {
	f.info.forward(h)
	return dot(h, h)
}

// spread gives the SD of each pig's table day on its day, and the variance of
// their sum, each times its coef.
func (f *growthFit) spread(terms []growthTerm) (sds []float64, variance float64) {
	sds = make([]float64, len(terms))
	if len(f.means.readings) > 0 {
		known := map[*growthPig]float64{}
		for i, t := range terms {
			sd, ok := known[t.pig.like]
			if !ok {
				_, v := f.sum(growthTerm{t.pig, t.day, 1})
				sd = math.Sqrt(v)
				known[t.pig.like] = sd
			}
			sds[i] = sd
		}
		if len(terms) == 1 {
			return sds, math.Pow(terms[0].coef*sds[0], 2)
		}
		_, variance = f.sum(terms...)
		return sds, variance
	}
	h, all := make([]float64, len(f.theta)), make([]float64, len(f.theta))
	for i, t := range terms {
		clear(h)
		own := f.apart(t.pig, t.day, 1, h)
		variance += t.coef * t.coef * own
		for c, x := range h {
			all[c] += t.coef * x
		}
		sds[i] = math.Sqrt(math.Max(own+f.sharedVariance(h), 1e-9))
	}
	return sds, variance + f.sharedVariance(all)
}
