package model

import "math"

// prepare makes room for a pig's readings.
func (f *growthFit) prepare(p *growthPig) {
	n := len(p.readings)
	if n == 0 {
		return
	}
	half := n * (n + 1) / 2
	room := make([]float64, 3*half+n*(2+growthColumns))
	cut := func(n int) []float64 {
		part := room[:n:n]
		room = room[n:]
		return part
	}
	p.block.a, p.inverse.a, p.own.a = cut(half), cut(half), cut(half)
	p.v, p.w, p.u = cut(n), cut(n), cut(n*growthColumns)
	p.moments = make([]growthMoment, n)
	for i := range p.readings {
		p.moments[i] = f.moment(p, p.readings[i].day)
	}
}

// approach fills the next row of a pig's block with the covariance of its path,
// seen through the rows above, and gives where the pig stands at that reading by
// all that was taken in so far.
func (f *growthFit) approach(p *growthPig) (mean, variance float64) {
	i := p.block.n
	own := p.own.row(i)
	for j := range own {
		own[j] = f.kernel(p, p.moments[j], p.moments[i])
	}
	q := p.block.row(i)
	copy(q, own)
	p.block.forward(q[:i])
	if f.means.block.n > 0 {
		return f.stand(p, p.readings[i].day)
	}
	f.settle()
	return f.seenFrom(p, p.readings[i].day, own[i], q[:i])
}

// takeIn adds the reading that was approached to the pig's block, as it was
// placed and judged.
func (f *growthFit) takeIn(p *growthPig) {
	i := p.block.n
	p.block.n, p.inverse.n, p.own.n = i+1, i+1, i+1
	if p.readings[i].err.shape > 0 {
		f.solveCovariance(p, i)
	}
	f.finishRow(p, i)
	f.tell(p, i, 1)
}

// retake solves a pig's block anew from reading i on, after it was placed or
// judged anew.
func (f *growthFit) retake(p *growthPig, from int) {
	for i := from; i < p.block.n; i++ {
		f.tell(p, i, -1)
		f.solveCovariance(p, i)
		f.finishRow(p, i)
		f.tell(p, i, 1)
	}
}

// solveCovariance solves the covariance of a reading with the earlier ones, given
// the rows above.
func (f *growthFit) solveCovariance(p *growthPig, i int) {
	r := &p.readings[i]
	row := p.block.row(i)
	copy(row, p.own.row(i))
	if shape := r.err.shape; shape > 0 {
		lever := shape * shape * r.kgAt / r.gain
		for j := range i + 1 {
			if o := &p.readings[j]; o.by == r.by {
				row[j] += lever * o.kgAt / o.gain * alikeShape(o.kgAt, r.kgAt)
			}
		}
	}
	lower{i, p.block.a}.forward(row[:i])
}

// finishRow solves the rest of a row of a pig's block, where its covariance is
// solved.
func (f *growthFit) finishRow(p *growthPig, i int) {
	r := &p.readings[i]
	row := p.block.row(i)
	q := row[:i]
	left := row[i] + r.noise() - dot(q, q)
	scale := 1 / math.Sqrt(math.Max(left, 1e-12))
	row[i] = 1 / scale

	mean, u := f.prior(p, r.day)
	v := r.table + (r.kg-r.kgAt)/r.gain - mean
	r.err.lean(u[:], r.kgAt, r.kgAt/r.gain)
	inverse := p.inverse.row(i)
	clear(inverse)
	for j, x := range q {
		v -= x * p.v[j]
		for c, y := range p.u[j*growthColumns : (j+1)*growthColumns] {
			u[c] -= x * y
		}
		for k, y := range p.inverse.row(j) {
			inverse[k] -= x * y
		}
	}
	p.v[i] = v * scale
	for c, x := range u {
		p.u[i*growthColumns+c] = x * scale
	}
	for k := range inverse {
		inverse[k] *= scale
	}
	inverse[i] = scale
}

// tell adds what a row of a pig's block says of the shared unknowns, times sign.
func (f *growthFit) tell(p *growthPig, i int, sign float64) {
	f.stale = true
	p.edition++
	u, v := p.u[i*growthColumns:(i+1)*growthColumns], p.v[i]
	for a, x := range u {
		if x == 0 {
			continue
		}
		x *= sign
		ca := p.column(a)
		row := f.loose.row(ca)
		for b, y := range u[:a+1] {
			row[p.column(b)] += x * y
		}
		f.rhs[ca] += x * v
	}
}
