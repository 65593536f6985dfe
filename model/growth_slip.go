package model

import "math"

// slipOdds is the odds that a reading that lies so far from what the others say
// is a slip - a number misread, or put to the wrong pig; off and latent variance
// in table days.
func (r *growthReading) slipOdds(off, latent float64) float64 {
	return slipOdds(off, latent, r.sd(r.kgAt)/r.gain, slipSD*r.kgAt/r.gain, r.err.wrong)
}

// slipOdds is the odds of a slip of SD slip against a right reading of SD sd.
func slipOdds(off, latent, sd, slip, chance float64) float64 {
	right := latent + sd*sd
	wrong := right + slip*slip
	// A chance so slim cannot be told from none.
	exponent := math.Min(0.5*off*off*(1/right-1/wrong), 60)
	return chance / (1 - chance) * math.Sqrt(right/wrong) * math.Exp(exponent)
}

// What a reading has to move by before its pig's block is solved anew.
const (
	movedDays  = 1.0
	movedWrong = 0.005
)

// rejudge places a pig's readings anew and asks of each how likely it is a slip,
// given all the others: "none of them is" against "this one is". One already
// found a slip stands apart.
func (f *growthFit) rejudge(p *growthPig, surprise bool) {
	n := p.block.n
	if n < 2 {
		return
	}
	f.settle()
	f.weigh(p)
	var oddsRoom, tableRoom [32]float64
	odds, table := oddsRoom[:0], tableRoom[:0]
	sum := 1.0
	for i := range n {
		r := &p.readings[i]
		off, spread := f.leftOut(p, i)
		latent := math.Max(0, spread-r.noise())
		o := r.slipOdds(off, latent)
		if surprise {
			r.scatter.see(r, off, latent)
		}
		if r.wrong < 0.9 {
			sum += o
		}
		odds, table = append(odds, o), append(table, f.placeOf(p, i))
	}
	from := n
	for i := n - 1; i >= 0; i-- {
		r := &p.readings[i]
		wrong := odds[i] / (1 + odds[i])
		if r.wrong < 0.9 {
			wrong = odds[i] / sum
		}
		if math.Abs(wrong-r.wrong) > movedWrong {
			r.scatter.doubt(r, wrong)
			from = i
		}
		if math.Abs(table[i]-r.table) > movedDays {
			r.place(table[i])
			from = i
		}
	}
	f.retake(p, from)
}

// placeOf is where on the table the fit puts a pig on the day of its reading i,
// but for what weighings of several pigs say of it alone.
func (f *growthFit) placeOf(p *growthPig, i int) float64 {
	day := p.readings[i].day
	mean, design := f.prior(p, day)
	mean += f.shared(p, design)
	for j, x := range p.own.row(i) {
		mean += x * p.w[j]
	}
	for j := i + 1; j < p.block.n; j++ {
		mean += p.own.row(j)[i] * p.w[j]
	}
	return mean
}

// leftOut gives the distance of a pig's reading from what all other readings of
// the herd say, and the variance of that distance: from the inverse of the block
// with the shared unknowns in it, A. The distance is (A^-1 r)_i over (A^-1)_ii and
// its variance 1 / (A^-1)_ii. In the whitened block that inverse is 1 - u P^-1 u',
// P the precision of the shared unknowns, and A^-1 r is what is left once they
// are fitted.
func (f *growthFit) leftOut(p *growthPig, i int) (off, spread float64) {
	precision := 0.0
	var design growthDesign
	for k := i; k < p.block.n; k++ {
		l := p.inverse.row(k)[i]
		precision += l * l
		for c, x := range p.u[k*growthColumns : (k+1)*growthColumns] {
			design[c] += l * x
		}
	}
	var room sharedRoom
	h := room.of(len(f.theta))
	for c, x := range design {
		h[p.column(c)] = x
	}
	precision = math.Max(precision-f.sharedVariance(h), 1e-12)
	return p.w[i] / precision, 1 / precision
}

// judgeStart widens what was said of a group on arrival where weighings
// contradict it: the tail of Student's t on startTail degrees of freedom.
func (f *growthFit) judgeStart(group int) {
	g := f.groups[group]
	if !g.guessed {
		return
	}
	f.settle()
	i := sharedColumns + 2*group
	e := make([]float64, len(f.theta))
	e[i] = 1
	known := 1 / f.sharedVariance(e)
	said := 1 / (g.sd * g.sd * g.doubt * g.doubt)
	if known-said < 1e-9 {
		return // nothing else is known of the start
	}
	others := 1 / (known - said)
	off := g.mean - others*(f.theta[i]*known-g.mean*said)
	surprise := off * off / (g.sd*g.sd + others)
	doubt := math.Sqrt(math.Max(1, (startTail+surprise)/(startTail+1)))
	if math.Abs(doubt-g.doubt) < 0.02*g.doubt {
		return
	}
	g.doubt = doubt
	change := 1/(g.sd*g.sd*doubt*doubt) - said
	f.loose.row(i)[i] += change
	f.rhs[i] += change * g.mean
	f.stale = true
}
