package model

import "math"

// judge asks of every reading how likely it is a slip - a number misread, or put
// to the wrong pig - given all the other readings. A slip then hardly counts;
// a clean reading costs nothing.
func (f *growthFit) judge(last bool) {
	for _, p := range f.pigs {
		f.judgePig(p)
	}
	f.judgeMeans()
	f.judgeStarts()
	for _, s := range f.scatter {
		s.settle(last)
	}
}

// readingScatter is how much wider than usual one kind of reading scatters in
// this herd: its variance over the usual one, and what this round says of it.
type readingScatter struct {
	ratio             float64
	found, allowedFor float64
	count             float64 // of readings that are no slips
}

// The scatter that is usual before a herd's own readings tell, relative to
// readingErrors, and how many readings it counts for.
const (
	scatterUsual = 1.2
	scatterSure  = 2.0
)

// see takes in one reading: residual and precision are its entries of A^-1 r and
// A^-1, noise its variance in the fit. Were the noise right, found would equal
// allowedFor in the mean (the score of the restricted likelihood). A reading
// that may be a slip counts less, and none counts for more than a wild one.
func (s *readingScatter) see(residual, precision, noise, wrong float64) {
	s.found += (1 - wrong) * noise * math.Min(residual*residual, 6*precision)
	s.allowedFor += (1 - wrong) * noise * precision
	s.count += 1 - wrong
}

// settle moves the ratio to where found and allowed-for meet, the usual scatter
// weighed in. At last the most likely variance is made the expected one, which is
// the larger the fewer readings it was learned from.
func (s *readingScatter) settle(last bool) {
	s.ratio *= (scatterSure*scatterUsual/s.ratio + s.found) / (scatterSure + s.allowedFor)
	s.ratio = math.Max(0.7, math.Min(9, s.ratio))
	if sure := scatterSure + s.count; last && sure > 3 {
		s.ratio *= sure / (sure - 2)
	}
	s.found, s.allowedFor, s.count = 0, 0, 0
}

// judgePig weighs up "none of this pig's readings is a slip" against "this one
// is", for each. A reading already found a slip stands apart.
func (f *growthFit) judgePig(p *growthPig) {
	n := len(p.readings)
	if n == 0 {
		return
	}
	inv := p.block.inverse(f.scratch)
	f.scratch = inv.a
	residual, spread := f.leftOut(p, inv)
	odds := make([]float64, n)
	sum := 1.0
	for i := range p.readings {
		r := &p.readings[i]
		kg, gain := tableWeight(r.table)
		noise := r.noise(kg, gain)
		latent := math.Max(0, spread[i]-noise)
		odds[i] = r.slipOdds(residual[i], latent, kg, gain)
		if r.wrong < 0.9 {
			sum += odds[i]
		}
	}
	for i := range p.readings {
		r := &p.readings[i]
		if r.wrong < 0.9 {
			r.wrong = odds[i] / sum
		} else {
			r.wrong = odds[i] / (1 + odds[i])
		}
		kg, gain := tableWeight(r.table)
		r.scatter.see(residual[i]/spread[i], 1/spread[i], r.noise(kg, gain), r.wrong)
	}
}

// slipOdds is the odds that a reading that lies so far from what the others say
// is a slip; residual and latent variance in table days.
func (r *growthReading) slipOdds(residual, latent, kg, gain float64) float64 {
	sd := r.sd(kg) / gain
	slip := slipSD * kg / gain
	right := latent + sd*sd
	wrong := right + slip*slip
	e := residual * residual
	// A chance so slim cannot be told from none.
	exponent := math.Min(0.5*e*(1/right-1/wrong), 60)
	return r.err.wrong / (1 - r.err.wrong) * math.Sqrt(right/wrong) * math.Exp(exponent)
}

// leftOut gives, for each reading of a pig, its distance from what all other
// readings of the herd say, and the variance of that distance: from the inverse
// of the block with the shared unknowns in it, A. The distance is (A^-1 r)_i over
// (A^-1)_ii and its variance 1 / (A^-1)_ii. In the whitened block that inverse is
// 1 - u P^-1 u', P the precision of the shared unknowns, and A^-1 r is what is
// left once they are fitted.
func (f *growthFit) leftOut(p *growthPig, inv lower) (residual, spread []float64) {
	n := len(p.readings)
	residual, spread = make([]float64, n), make([]float64, n)
	h := make([]float64, f.loose.n)
	for i := range n {
		clear(h)
		precision, e := 0.0, p.w[i]
		for k := i; k < n; k++ {
			l := inv.row(k)[i]
			precision += l * l
			for c := range growthColumns {
				h[p.column(c)] += l * p.u[k*growthColumns+c]
			}
		}
		f.info.forward(h)
		precision = math.Max(precision-dot(h, h), 1e-12)
		residual[i], spread[i] = e/precision, 1/precision
	}
	return residual, spread
}

// judgeMeans weighs up slips among the readings of several pigs together.
func (f *growthFit) judgeMeans() {
	m := &f.means
	n, cols := len(m.readings), len(f.rhs)
	if n == 0 {
		return
	}
	inv := m.block.inverse(nil)
	h, z := make([]float64, cols), make([]float64, n)
	for k := range n {
		z[k] = m.v[k] - dot(m.u[k*cols:(k+1)*cols], f.theta)
	}
	odds := make([]float64, n)
	sum := 1.0
	for i := range n {
		r := &m.readings[i]
		clear(h)
		precision, e := 0.0, 0.0
		for k := i; k < n; k++ {
			l := inv.row(k)[i]
			precision += l * l
			e += l * z[k]
			for c := range cols {
				h[c] += l * m.u[k*cols+c]
			}
		}
		f.info.forward(h)
		precision = math.Max(precision-dot(h, h), 1e-12)
		kg := 0.0
		for _, part := range m.parts[i] {
			w, _ := tableWeight(part.table)
			kg += w / float64(len(m.parts[i]))
		}
		odds[i] = r.slipOdds(e/precision, math.Max(0, 1/precision-r.noise(kg, 1)), kg, 1)
		if r.wrong < 0.9 {
			sum += odds[i]
		}
	}
	for i := range m.readings {
		r := &m.readings[i]
		if r.wrong < 0.9 {
			r.wrong = odds[i] / sum
		} else {
			r.wrong = odds[i] / (1 + odds[i])
		}
	}
}

// judgeStarts widens what was said of a group on arrival where weighings
// contradict it: the tail of Student's t on startTail degrees of freedom.
func (f *growthFit) judgeStarts() {
	e := make([]float64, len(f.theta))
	for k, g := range f.groups {
		if !g.guessed {
			continue
		}
		clear(e)
		i := sharedColumns + 2*k
		e[i] = 1
		f.info.forward(e)
		said := 1 / (g.sd * g.sd * g.doubt * g.doubt)
		known := 1 / dot(e, e)
		if known-said < 1e-9 {
			continue // nothing else is known of the start
		}
		others := 1 / (known - said)
		off := g.mean - others*(f.theta[i]*known-g.mean*said)
		surprise := off * off / (g.sd*g.sd + others)
		g.doubt = math.Sqrt(math.Max(1, (startTail+surprise)/(startTail+1)))
	}
}
