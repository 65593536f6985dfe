package model

import "math"

// gaussian is a joint normal distribution of a few quantities, with the
// operations that learning from feeders needs. A linear functional is given by
// its weights, one for each quantity.
type gaussian struct {
	mean []float64
	cov  []float64 // row by row
}

func newGaussian(n int) gaussian {
	return gaussian{mean: make([]float64, n), cov: make([]float64, n*n)}
}

func (g gaussian) clone() gaussian {
	return gaussian{append([]float64(nil), g.mean...), append([]float64(nil), g.cov...)}
}

func (g gaussian) at(i, j int) float64 { return g.cov[i*len(g.mean)+j] }

// along gives mean and variance of a linear functional.
func (g gaussian) along(w []float64) (mean, variance float64) {
	n := len(g.mean)
	for i, wi := range w {
		if wi == 0 {
			continue
		}
		mean += wi * g.mean[i]
		for j, wj := range w {
			variance += wi * wj * g.cov[i*n+j]
		}
	}
	return mean, max(variance, 0)
}

// settle gives a linear functional a new mean and a new variance, and moves all
// that goes with it.
func (g gaussian) settle(w []float64, toMean, toVariance float64) {
	n := len(g.mean)
	mean, variance := g.along(w)
	if variance <= 0 {
		return
	}
	with := make([]float64, n)
	for i := range n {
		for j, wj := range w {
			with[i] += g.cov[i*n+j] * wj
		}
	}
	for i := range n {
		with[i] /= variance // never its square, which might be no number
	}
	for i := range n {
		g.mean[i] += with[i] * (toMean - mean)
		for j := range n {
			g.cov[i*n+j] -= with[i] * with[j] * (variance - toVariance)
		}
	}
}

// observe learns that the functional was read as value with an error of sd.
func (g gaussian) observe(w []float64, value, sd float64) {
	mean, variance := g.along(w)
	total := variance + sd*sd
	if total <= 0 {
		return
	}
	g.settle(w, mean+variance/total*(value-mean), variance*sd*sd/total)
}

// atMostZero learns that the functional, read with an error of sd, is not above
// zero: the first two moments of the normal distribution cut off there.
func (g gaussian) atMostZero(w []float64, sd float64) {
	mean, variance := g.along(w)
	total := math.Sqrt(variance + sd*sd)
	if variance <= 0 || total <= 0 {
		return
	}
	z := -mean / total
	ratio := densityOverMass(z)
	g.settle(w, mean-variance/total*ratio, variance-variance*variance/(total*total)*ratio*(ratio+z))
}

// replace makes quantity i the functional plus a fresh error of sd.
func (g gaussian) replace(i int, w []float64, sd float64) {
	n := len(g.mean)
	mean, variance := g.along(w)
	with := make([]float64, n)
	for j := range n {
		for k, wk := range w {
			with[j] += wk * g.cov[k*n+j]
		}
	}
	g.mean[i] = mean
	for j := range n {
		g.cov[i*n+j], g.cov[j*n+i] = with[j], with[j]
	}
	g.cov[i*n+i] = variance + sd*sd
}

// forget makes quantity i a value with an error of sd that goes with nothing.
func (g gaussian) forget(i int, value, sd float64) {
	n := len(g.mean)
	for j := range n {
		g.cov[i*n+j], g.cov[j*n+i] = 0, 0
	}
	g.mean[i], g.cov[i*n+i] = value, sd*sd
}

// widen adds a variance to quantity i alone.
func (g gaussian) widen(i int, variance float64) {
	g.cov[i*len(g.mean)+i] += max(variance, 0)
}

// rectify makes quantity i what is left of it where nothing can lie below zero:
// the exact first two moments of the larger of it and zero.
func (g gaussian) rectify(i int) {
	n := len(g.mean)
	mean, sd := g.mean[i], math.Sqrt(max(g.cov[i*n+i], 0))
	if sd == 0 {
		g.mean[i] = max(mean, 0)
		return
	}
	a := mean / sd
	if a > 6 {
		return
	}
	mass, density := normalMass(a), normalDensity(a)
	first := max(mean*mass+sd*density, 0)
	second := (mean*mean+sd*sd)*mass + mean*sd*density
	for j := range n {
		g.cov[i*n+j] *= mass
		g.cov[j*n+i] = g.cov[i*n+j]
	}
	g.mean[i], g.cov[i*n+i] = first, max(second-first*first, 0)
}

func normalDensity(z float64) float64 { return math.Exp(-z*z/2) / math.Sqrt(2*math.Pi) }

func normalMass(z float64) float64 { return math.Erfc(-z/math.Sqrt2) / 2 }

// densityOverMass is the normal density at z over the mass below z.
func densityOverMass(z float64) float64 {
	if z < -6 { // the quotient of two tiny numbers, by its asymptotic series
		z2 := z * z
		return -z / (1 - 1/z2 + 3/(z2*z2) - 15/(z2*z2*z2))
	}
	return normalDensity(z) / normalMass(z)
}
