package model

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// cut gives mass, mean and variance of a normal distribution weighted by w, by
// summing it up finely.
func cut(mean, sd float64, w func(x float64) float64) (first, variance float64) {
	var mass, sum, square float64
	for i := -8000; i <= 8000; i++ {
		z := float64(i) / 1000
		x := mean + sd*z
		p := math.Exp(-z*z/2) * w(x)
		mass, sum, square = mass+p, sum+p*x, square+p*x*x
	}
	first = sum / mass
	return first, square/mass - first*first
}

func TestGaussianBoundIsTheCutDistribution(t *testing.T) {
	for _, c := range []struct{ mean, sd, soft float64 }{
		{0, 1, 0.5}, {2, 1, 0.5}, {-2, 1, 0.5}, {3, 2, 0.1}, {-5, 1, 0.2}, {1, 0.3, 1},
	} {
		g := newGaussian(1)
		g.forget(0, c.mean, c.sd)
		g.atMostZero([]float64{1}, c.soft)
		mean, variance := cut(c.mean, c.sd, func(x float64) float64 { return normalMass(-x / c.soft) })
		require.InDelta(t, mean, g.mean[0], 1e-3, "%+v", c)
		require.InDelta(t, variance, g.at(0, 0), 1e-3, "%+v", c)
	}
}

func TestGaussianRectifiedHasItsMoments(t *testing.T) {
	for _, c := range []struct{ mean, sd float64 }{{0, 1}, {1, 1}, {-1, 1}, {-4, 1}, {30, 3}, {2, 5}} {
		g := newGaussian(2)
		g.forget(0, c.mean, c.sd)
		g.replace(1, []float64{1, 0}, 0) // a copy, wholly correlated
		g.rectify(0)
		var mass, sum, square, with float64
		for i := -8000; i <= 8000; i++ {
			z := float64(i) / 1000
			x := c.mean + c.sd*z
			p, y := math.Exp(-z*z/2), math.Max(x, 0)
			mass, sum, square, with = mass+p, sum+p*y, square+p*y*y, with+p*y*x
		}
		mean := sum / mass
		require.InDelta(t, mean, g.mean[0], 1e-3, "%+v", c)
		require.InDelta(t, square/mass-mean*mean, g.at(0, 0), 1e-2, "%+v", c)
		require.InDelta(t, with/mass-mean*c.mean, g.at(0, 1), 1e-2, "%+v", c)
	}
	g := newGaussian(1)
	g.mean[0] = -3
	g.rectify(0)
	require.Zero(t, g.mean[0])
}

func TestGaussianLearnsAsTheBookSays(t *testing.T) {
	g := newGaussian(2)
	g.forget(0, 10, 3)
	g.forget(1, 5, 4)
	g.observe([]float64{1, 1}, 20, 0) // the sum is 20, not 15
	require.InDelta(t, 10+9.0/25*5, g.mean[0], 1e-12)
	require.InDelta(t, 5+16.0/25*5, g.mean[1], 1e-12)
	require.InDelta(t, 9-81.0/25, g.at(0, 0), 1e-12)
	require.InDelta(t, -9*16.0/25, g.at(0, 1), 1e-12)
	mean, variance := g.along([]float64{1, 1})
	require.InDelta(t, 20, mean, 1e-12)
	require.InDelta(t, 0, variance, 1e-9)
}

func TestGaussianDensityOverMassJoinsItsSeries(t *testing.T) {
	require.InEpsilon(t, densityOverMass(-5.9999999), densityOverMass(-6.0000001), 1e-3)
	require.InDelta(t, 100.01, densityOverMass(-100), 0.01)
	require.InDelta(t, 0, densityOverMass(40), 1e-12)
}

// Whatever is learned in whatever order, variances stay what variances are.
func TestGaussianStaysADistribution(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		const n = 4
		g := newGaussian(n)
		for i := range n {
			g.forget(i, rapid.Float64Range(-100, 100).Draw(t, "mean"), rapid.Float64Range(0, 50).Draw(t, "sd"))
		}
		weights := func() []float64 {
			w := make([]float64, n)
			for i, quarters := range rapid.SliceOfN(rapid.IntRange(-8, 8), n, n).Draw(t, "weights") {
				w[i] = float64(quarters) / 4
			}
			return w
		}
		for range rapid.IntRange(1, 20).Draw(t, "steps") {
			i := rapid.IntRange(0, n-1).Draw(t, "place")
			sd := rapid.Float64Range(0.01, 20).Draw(t, "error")
			switch rapid.SampledFrom([]string{"observe", "bound", "rectify", "replace", "forget", "widen"}).Draw(t, "what") {
			case "observe":
				g.observe(weights(), rapid.Float64Range(-200, 200).Draw(t, "value"), sd)
			case "bound":
				g.atMostZero(weights(), sd)
			case "rectify":
				g.rectify(i)
			case "replace":
				w := weights()
				w[i] = 0
				g.replace(i, w, sd)
			case "forget":
				g.forget(i, 0, sd)
			case "widen":
				g.widen(i, sd)
			}
			w := weights()
			_, variance := g.along(w)
			require.False(t, math.IsNaN(variance) || math.IsInf(variance, 0))
			var scale float64
			for k := range n {
				require.False(t, math.IsNaN(g.mean[k]))
				require.GreaterOrEqual(t, g.at(k, k), -1e-6)
				scale += w[k] * w[k] * math.Abs(g.at(k, k))
				for l := range n {
					require.InDelta(t, g.at(k, l), g.at(l, k), 1e-6*(1+scale+math.Abs(g.at(k, l))))
				}
			}
		}
	})
}
