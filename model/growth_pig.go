package model

// prepare computes once what no round changes.
func (f *growthFit) prepare(p *growthPig) {
	n := len(p.readings)
	p.block, p.own = newLower(n), newLower(n)
	p.v, p.w, p.u = make([]float64, n), make([]float64, n), make([]float64, n*growthColumns)
	p.moments = make([]growthMoment, n)
	for i := range n {
		p.moments[i] = f.moment(p, p.readings[i].day)
		row := p.own.row(i)
		for j := range i + 1 {
			row[j] = f.kernel(p, p.moments[j], p.moments[i])
		}
	}
}

// solvePig solves the block of one pig's own readings and adds what it says of
// the shared unknowns.
func (f *growthFit) solvePig(p *growthPig) {
	n := len(p.readings)
	if n == 0 {
		return
	}
	if p.v == nil {
		f.prepare(p)
	}
	for i := range p.readings {
		r := &p.readings[i]
		kg, gain := tableWeight(r.table)
		mean, days := f.prior(p, r.day)
		p.v[i] = r.table + (r.kg-kg)/gain - mean
		u := p.u[i*growthColumns : (i+1)*growthColumns]
		clear(u)
		u[0], u[sharedColumns], u[sharedColumns+1] = days, 1, days
		if r.err.column != biasNone {
			u[r.err.column] = kg / gain
		}
		row, own := p.block.row(i), p.own.row(i)
		for j := range i + 1 {
			o := &p.readings[j]
			row[j] = own[j]
			if r.err.shape > 0 && o.by == r.by {
				okg, ogain := tableWeight(o.table)
				row[j] += r.err.shape * r.err.shape * kg / gain * okg / ogain
			}
		}
		row[i] += r.noise(kg, gain)
	}
	p.block.factor()
	p.block.forward(p.v)
	p.block.forwardRows(p.u, growthColumns)
	for a := range growthColumns {
		ca := p.column(a)
		for b := range a + 1 {
			s := 0.0
			for i := range n {
				s += p.u[i*growthColumns+a] * p.u[i*growthColumns+b]
			}
			f.loose.row(ca)[p.column(b)] += s
		}
		s := 0.0
		for i := range n {
			s += p.u[i*growthColumns+a] * p.v[i]
		}
		f.rhs[ca] += s
	}
}
