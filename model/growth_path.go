package model

import (
	"math"
	"slices"
)

// growthTerm is the table day on a day of each of some pigs that are alike, with a
// factor: summands of a quantity that is asked of the fit.
type growthTerm struct {
	alikePigs
	day, coef float64
}

// alikePigs is so many pigs of which just the same is known, by one of them.
type alikePigs struct {
	pig *growthPig
	n   float64
}

func (p *growthPig) alone() alikePigs { return alikePigs{p, 1} }

// alike counts the pigs by kind, in their order.
func alike(pigs []*growthPig) []alikePigs {
	kinds := make([]alikePigs, 0, len(pigs))
	for _, p := range pigs {
		same := -1
		if p.like != p || p.liked {
			same = slices.IndexFunc(kinds, func(a alikePigs) bool { return a.pig.like == p.like })
		}
		if same >= 0 {
			kinds[same].n++
		} else {
			kinds = append(kinds, p.alone())
		}
	}
	return kinds
}

// path is where on the table the fit has the pig on the day.
func (f *growthFit) path(p *growthPig, day float64) float64 {
	if f.means.block.n > 0 {
		mean, _ := f.sum(growthTerm{p.alone(), day, 1})
		return mean
	}
	at := f.moment(p, day)
	mean, design := f.prior(p, day)
	mean += f.shared(p, design)
	if t := p.tail; t.holds(at) {
		return mean + t.stillW + at.faded*t.speedW
	}
	for i, m := range p.moments[:p.block.n] {
		mean += f.kernel(p, at, m) * p.w[i]
	}
	return mean
}

// sum gives mean and variance of a weighted sum of table days, all that pigs
// share taken into account.
func (f *growthFit) sum(terms ...growthTerm) (mean, variance float64) {
	n := len(f.theta)
	h := make([]float64, n) // how the sum moves with what is shared
	g := make([]float64, f.means.block.n)
	qs, moments := make([][]float64, len(terms)), make([]growthMoment, len(terms))
	for i, t := range terms {
		prior, design := f.prior(t.pig, t.day)
		moments[i] = f.moment(t.pig, t.day)
		q := f.seen(t.pig, moments[i])
		qs[i] = q
		mean += t.n * t.coef * (prior + dot(q, t.pig.v))
		for c, x := range design {
			for k, y := range q {
				x -= y * t.pig.u[k*growthColumns+c]
			}
			h[t.pig.column(c)] += t.n * t.coef * x
		}
		for j := range i + 1 {
			o := terms[j]
			if o.pig != t.pig {
				continue
			}
			v := t.n * t.coef * o.coef * (f.kernel(t.pig, moments[i], moments[j]) - dot(q, qs[j]))
			if j < i {
				v *= 2
			}
			variance += v
		}
		for m := range g {
			if part := f.means.part(m, t.pig); part != nil {
				g[m] += t.n * t.coef * part.coef * (f.kernel(t.pig, moments[i], part.at) - dot(q, part.q))
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
	at := f.moment(p, day)
	_, design := f.prior(p, day)
	known := 0.0
	if t := p.tail; t.holds(at) {
		for c := range design {
			design[c] -= t.stillU[c] + at.faded*t.speedU[c]
		}
		known = t.ofStill + at.faded*(2*t.both+at.faded*t.ofSpeed)
	} else {
		q := f.seen(p, at)
		for k, y := range q {
			for c, x := range p.u[k*growthColumns : (k+1)*growthColumns] {
				design[c] -= y * x
			}
		}
		known = dot(q, q)
	}
	for c, x := range design {
		h[p.column(c)] += coef * x
	}
	return f.kernel(p, at, at) - known
}

// sharedVariance is the variance that what is shared gives to a sum that moves
// with it by h; h is used up.
func (f *growthFit) sharedVariance(h []float64) float64 {
	f.info.forward(h)
	return dot(h, h)
}

// spread gives the SD of each pig's table day on its day, and the variance of
// the sum of all, each times its coef.
func (f *growthFit) spread(terms []growthTerm, sds []float64) (variance float64) {
	if f.means.block.n > 0 {
		for i, t := range terms {
			_, v := f.sum(growthTerm{t.pig.alone(), t.day, 1})
			sds[i] = math.Sqrt(v)
		}
		if len(terms) == 1 && terms[0].n == 1 {
			return math.Pow(terms[0].coef*sds[0], 2)
		}
		_, variance = f.sum(terms...)
		return variance
	}
	var allRoom sharedRoom
	all := allRoom.of(len(f.theta))
	for i, t := range terms {
		var room sharedRoom
		h := room.of(len(f.theta))
		own := f.apart(t.pig, t.day, 1, h)
		variance += t.n * t.coef * t.coef * own
		for c, x := range h {
			all[c] += t.n * t.coef * x
		}
		sds[i] = math.Sqrt(math.Max(own+f.sharedVariance(h), 1e-9))
	}
	return variance + f.sharedVariance(all)
}
