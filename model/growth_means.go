package model

import "slices"

// growthMeans is the block of the readings of several pigs together. Its rows are
// the readings taken in so far.
type growthMeans struct {
	readings []growthReading
	parts    [][]growthPart
	block    lower
	v        []float64
	u        []float64 // a row of all shared unknowns for each reading
}

// growthPart is the part of some pigs that are alike in a mean: how the mean moves
// with the table day of each, and what is known of that.
type growthPart struct {
	alikePigs
	coef  float64
	table float64
	at    growthMoment
	same  []*growthPart // the pigs' parts in the earlier means and this one, nil where they have none

	// As the pig's own readings have it.
	q       []float64 // its readings seen from there
	with    []float64 // covariance with each of same
	mean    float64   // table day, shared things at nought
	design  growthDesign
	edition int // of the pig's block for which these hold
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
				p.like, o.like.liked = o.like, true
				break
			}
		}
	}
}

// prepareMeans makes room for the readings of several pigs.
func (f *growthFit) prepareMeans() {
	m := &f.means
	n, cols := len(m.readings), len(f.theta)
	m.block.a = make([]float64, n*(n+1)/2)
	m.v, m.u = make([]float64, n), make([]float64, n*cols)
	m.parts = make([][]growthPart, n)
	for i, r := range m.readings {
		pigs := make([]*growthPig, len(r.pigs))
		for k, j := range r.pigs {
			pigs[k] = f.pigs[j]
		}
		for _, a := range alike(pigs) {
			m.parts[i] = append(m.parts[i], growthPart{alikePigs: a, at: f.moment(a.pig, r.day), edition: -1, with: make([]float64, i+1)})
		}
		for k := range m.parts[i] {
			part := &m.parts[i][k]
			for j := range i + 1 {
				part.same = append(part.same, m.part(j, part.pig))
			}
		}
	}
}

// part is the part in reading i of the pig and those like it, nil if it has none.
func (m *growthMeans) part(i int, p *growthPig) *growthPart {
	k, ok := slices.BinarySearchFunc(m.parts[i], p.like.animal.Number, func(part growthPart, number int) int {
		return part.pig.like.animal.Number - number
	})
	if !ok {
		return nil
	}
	return &m.parts[i][k]
}

// solveMeans solves the block of readings of several pigs together, each pig's
// own readings known.
func (f *growthFit) solveMeans() {
	m := &f.means
	n, cols := m.block.n, len(f.theta)
	for i := range n {
		r := &m.readings[i]
		pigs := float64(len(r.pigs))
		mean, u := r.kg, m.u[i*cols:(i+1)*cols]
		clear(u)
		row := m.block.row(i)
		clear(row)
		total := 0.0
		for k := range m.parts[i] {
			part := &m.parts[i][k]
			p := part.pig
			f.refresh(part, i)
			kg, gain := tableWeight(part.table)
			part.coef = gain / pigs
			share := part.n / pigs
			total += kg * share
			mean -= (kg + gain*(part.mean-part.table)) * share
			for c, x := range part.design {
				u[p.column(c)] += part.n * part.coef * x
			}
			for j, o := range part.same {
				if o != nil {
					row[j] += part.n * part.coef * o.coef * part.with[j]
				}
			}
		}
		r.err.lean(u, total, total)
		m.v[i] = mean
		row[i] += r.noiseKg2(total)
	}
	m.block.factor()
	m.block.forward(m.v[:n])
	m.block.forwardRows(m.u[:n*cols], cols)
}

// refresh brings a part of reading i up to its pig's own readings.
func (f *growthFit) refresh(part *growthPart, i int) {
	p := part.pig
	if part.edition == p.edition {
		return
	}
	part.edition = p.edition
	part.q = f.seen(p, part.at)
	part.mean, part.design = f.prior(p, f.means.readings[i].day)
	for k, q := range part.q {
		part.mean += q * p.v[k]
		for c, x := range p.u[k*growthColumns : (k+1)*growthColumns] {
			part.design[c] -= q * x
		}
	}
	for j, o := range part.same {
		if o != nil {
			part.with[j] = f.kernel(p, part.at, o.at) - dot(part.q, o.q)
		}
	}
}

// tellMeans adds what readings of several pigs say of the shared unknowns to
// their precision.
func (f *growthFit) tellMeans() {
	m := &f.means
	cols := len(f.theta)
	for i := range m.block.n {
		u := m.u[i*cols : (i+1)*cols]
		for a := range cols {
			row := f.info.row(a)
			for b := range a + 1 {
				row[b] += u[a] * u[b]
			}
			f.theta[a] += u[a] * m.v[i]
		}
	}
}
