package model

import "math"

// meetMean takes in the next reading of several pigs.
func (f *growthFit) meetMean() {
	m := &f.means
	i := m.block.n
	r := &m.readings[i]
	parts := m.parts[i]
	terms := make([]growthTerm, len(parts))
	total, expected := 0.0, 0.0
	for k := range parts {
		part := &parts[k]
		day, variance := f.stand(part.pig, r.day)
		part.table = firstPlace(day, variance, r.kg)
		kg, gain := tableWeight(part.table)
		total += part.n * kg / float64(len(r.pigs))
		expected += part.n * (kg + gain*(day-part.table)) / float64(len(r.pigs))
		terms[k] = growthTerm{part.alikePigs, r.day, gain / float64(len(r.pigs))}
	}
	_, variance := f.sum(terms...)
	bias, sure := f.bias(r.err, total)
	expected += total * bias
	variance += total * total * sure * sure
	sd := r.sd(total)
	odds := slipOdds(r.kg-expected, variance, sd, slipSD*total, r.err.wrong)
	r.wrong = odds / (1 + odds)
	m.block.n++
	f.stale = true
	f.placeMean(i)
	if off := r.kg - expected; off*off > centralHalf*centralHalf*(variance+sd*sd) {
		f.judgeMeans()
		for j := range i + 1 {
			f.placeMean(j)
		}
	}
}

// placeMean places the parts of a reading where the fit has the pigs.
func (f *growthFit) placeMean(i int) {
	f.settle()
	parts := f.means.parts[i]
	for k := range parts {
		parts[k].table, _ = f.sum(growthTerm{parts[k].pig.alone(), f.means.readings[i].day, 1})
	}
	f.stale = true
}

// judgeMeans weighs up slips among the readings of several pigs together.
func (f *growthFit) judgeMeans() {
	f.settle()
	m := &f.means
	n, cols := m.block.n, len(f.rhs)
	inv := m.block.inverse()
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
			kg += part.n * w / float64(len(r.pigs))
		}
		odds[i] = slipOdds(e/precision, math.Max(0, 1/precision-r.noiseKg2(kg)), r.sd(kg), slipSD*kg, r.err.wrong)
		if r.wrong < 0.9 {
			sum += odds[i]
		}
	}
	for i := range n {
		r := &m.readings[i]
		if r.wrong < 0.9 {
			r.wrong = odds[i] / sum
		} else {
			r.wrong = odds[i] / (1 + odds[i])
		}
	}
	f.stale = true
}
