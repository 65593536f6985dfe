package model

import "slices"

// growthMeans is the block of the readings of several pigs together.
type growthMeans struct {
	readings []growthReading
	parts    [][]growthPart
	block    lower
	v        []float64
	u        []float64 // a row of all shared unknowns for each reading
}

// growthPart is one pig's part in a mean: how the mean moves with the pig's
// table day, and the pig's own readings seen from there.
type growthPart struct {
	pig   int
	coef  float64
	table float64
	at    growthMoment
	q     []float64
}

// pairAlike finds the pigs that cannot be told apart: of one batch, never
// weighed by themselves nor sick, and in the same weighings of several.
func (f *growthFit) pairAlike() {
	in := make([][]int, len(f.pigs))
	for i, r := range f.means.readings {
		for _, j := range r.pigs {
			in[j] = append(in[j], i)
		}
	}
	for i, p := range f.pigs {
		p.like = p
		if len(p.readings) > 0 || len(p.spells) > 0 {
			continue
		}
		for j, o := range f.pigs[:i] {
			if o.group == p.group && len(o.readings) == 0 && len(o.spells) == 0 && slices.Equal(in[i], in[j]) {
				p.like = o.like
				break
			}
		}
	}
}

// solveMeans solves the block of readings of several pigs together, each pig's
// own readings known.
func (f *growthFit) solveMeans() {
	m := &f.means
	n, cols := len(m.readings), len(f.rhs)
	if n == 0 {
		return
	}
	first := m.parts == nil
	if first {
		m.parts = make([][]growthPart, n)
	}
	m.block, m.v, m.u = newLower(n), make([]float64, n), make([]float64, n*cols)
	for i := range m.readings {
		r := &m.readings[i]
		share := 1 / float64(len(r.pigs))
		mean, u := r.kg, m.u[i*cols:(i+1)*cols]
		total := 0.0
		for k, j := range r.pigs {
			p := f.pigs[j]
			at := f.moment(p, r.day)
			if first {
				m.parts[i] = append(m.parts[i], growthPart{pig: j, table: r.table})
			}
			part := &m.parts[i][k]
			kg, gain := tableWeight(part.table)
			part.coef, part.at, part.q = gain*share, at, f.seen(p, at)
			total += kg * share
			prior, days := f.prior(p, r.day)
			mean -= (kg + gain*(prior+dot(part.q, p.v)-part.table)) * share
			for c, x := range growthDesign(days) {
				for k, q := range part.q {
					x -= q * p.u[k*growthColumns+c]
				}
				u[p.column(c)] += part.coef * x
			}
		}
		if r.err.column != biasNone {
			u[r.err.column] += total
		}
		m.v[i] = mean
		row := m.block.row(i)
		for j := range i + 1 {
			row[j] = f.shared(m.parts[i], m.parts[j])
		}
		row[i] += r.noise(total, 1)
	}
	m.block.factor()
	m.block.forward(m.v)
	m.block.forwardRows(m.u, cols)
	for i := range n {
		u := m.u[i*cols : (i+1)*cols]
		for a := range cols {
			row := f.loose.row(a)
			for b := range a + 1 {
				row[b] += u[a] * u[b]
			}
			f.rhs[a] += u[a] * m.v[i]
		}
	}
}

// shared is the covariance of two means through the pigs that are in both.
func (f *growthFit) shared(a, b []growthPart) float64 {
	s := 0.0
	j := 0
	for i := range a {
		for j < len(b) && b[j].pig < a[i].pig {
			j++
		}
		if j < len(b) && b[j].pig == a[i].pig {
			s += a[i].coef * b[j].coef * (f.kernel(f.pigs[a[i].pig], a[i].at, b[j].at) - dot(a[i].q, b[j].q))
		}
	}
	return s
}
