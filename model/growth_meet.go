package model

import "math"

// centralHalf is how many SDs either way hold half of a normal distribution,
// with a little to spare.
const centralHalf = 0.6745 + 0.005

// stand gives mean and variance of a pig's table day on a day, by all that was
// taken in so far.
func (f *growthFit) stand(p *growthPig, day float64) (mean, variance float64) {
	f.settle()
	if f.means.block.n > 0 {
		return f.sum(growthTerm{p.alone(), day, 1})
	}
	at := f.moment(p, day)
	return f.seenFrom(p, day, f.kernel(p, at, at), f.seen(p, at))
}

// seenFrom gives mean and variance of a pig's table day on a day, from the
// variance of its own path there and its covariance with the pig's readings, seen
// through their block; no weighings of several pigs.
func (f *growthFit) seenFrom(p *growthPig, day, own float64, q []float64) (mean, variance float64) {
	mean, design := f.prior(p, day)
	for k, y := range q {
		mean += y * p.v[k]
		for c, x := range p.u[k*growthColumns : (k+1)*growthColumns] {
			design[c] -= y * x
		}
	}
	var room sharedRoom
	h := room.of(len(f.theta))
	for c, x := range design {
		h[p.column(c)] = x
	}
	mean += dot(h, f.theta)
	return mean, math.Max(own-dot(q, q)+f.sharedVariance(h), 1e-9)
}

// expect is what a reading shows, if it is right, of a pig that stands at a day
// of the table.
func (f *growthFit) expect(day, variance float64, by string) Estimate {
	kg, gain := tableWeight(day)
	e, ok := readingErrors[by]
	if !ok {
		by = ByScale
		e = readingErrors[by]
	}
	if by == ByTape && (kg < girthLine(tapeLowCm) || kg > girthLine(tapeHighCm)) {
		e = readingErrors[byTapeBeyond]
	}
	own := math.Hypot(e.sd(kg)*math.Sqrt(f.scatter[by].likely()), e.shape*kg)
	bias, sure := f.bias(e, kg)
	return Estimate{
		Mean: kg * (1 + bias),
		SD:   math.Sqrt(gain*gain*variance + own*own + kg*kg*sure*sure),
	}
}

// ahead are the days after a reading on which a pig's place is held against what
// it was.
var ahead = [...]float64{0, 7, 30, 90}

// meet takes in the next reading of a pig. A reading outside the central half of
// what was expected makes the pig's earlier ones be placed and judged anew by it;
// one inside does so only where an earlier one is doubted, and only if that leaves
// the pig's place no less sure than it was.
func (f *growthFit) meet(p *growthPig) {
	r := &p.readings[p.block.n]
	mean, variance := f.approach(p)
	e := f.expect(mean, variance, r.by)
	expected := math.Abs(r.kg-e.Mean) <= centralHalf*e.SD
	doubts := p.doubts()
	var was [len(ahead)]float64
	if expected && doubts {
		for i, days := range ahead {
			_, was[i] = f.stand(p, r.day+days)
		}
	}
	f.judgeNew(r, mean, variance)
	f.takeIn(p)
	switch {
	case !expected:
		f.rejudge(p, true)
		f.judgeStart(p.group)
	case doubts:
		before := append([]growthReading(nil), p.readings[:p.block.n]...)
		f.rejudge(p, false)
		for i, days := range ahead {
			if _, is := f.stand(p, r.day+days); is > was[i] {
				copy(p.readings, before)
				f.retake(p, 0)
				break
			}
		}
	}
	f.settleScatter(r, expected)
}

// doubtful is how likely a slip a reading is that is worth judging anew where
// nothing surprises.
const doubtful = 0.2

// doubts reports whether a reading of the pig is held for a likely slip.
func (p *growthPig) doubts() bool {
	for i := range p.block.n {
		if p.readings[i].wrong > doubtful {
			return true
		}
	}
	return false
}

// judgeNew places a reading on the table and asks how likely it is a slip, by
// where the pig was expected.
func (f *growthFit) judgeNew(r *growthReading, mean, variance float64) {
	r.place(firstPlace(mean, variance, r.kg))
	for range 2 {
		bias, sure := f.bias(r.err, r.kgAt)
		lever := r.kgAt / r.gain
		latent := variance + lever*lever*(sure*sure+r.err.shape*r.err.shape)
		off := r.table + (r.kg-r.kgAt*(1+bias))/r.gain - mean
		odds := r.slipOdds(off, latent)
		r.scatter.doubt(r, odds/(1+odds))
		r.scatter.see(r, off, latent)
		r.place(mean + variance/(latent+r.noise())*off)
	}
}

// firstPlace is a place on the table from which a reading may be taken for
// straight: where the pig was expected, or where the reading has it if little was
// known.
func firstPlace(mean, variance, kg float64) float64 {
	const little = 225.0 // table days squared
	if variance < little/4 {
		return mean
	}
	read := math.Max(0, math.Min(lastTableDay, tableDay(kg)))
	return mean + variance/(variance+little)*(read-mean)
}
