package model_test

import (
	"math"
	"math/rand/v2"
	"sort"
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

// score gathers the errors of forecasts.
type score struct {
	errs    []float64 // absolute
	covered int
	spread  bool // intervals were given
	perPig  map[string][]float64
}

func (s *score) add(pig string, truth float64, i model.Interval) {
	if s.perPig == nil {
		s.perPig = map[string][]float64{}
	}
	e := math.Abs(truth - i.Mid)
	s.errs = append(s.errs, e)
	s.perPig[pig] = append(s.perPig[pig], e)
	s.spread = s.spread || i.High > i.Low
	if truth >= i.Low && truth <= i.High {
		s.covered++
	}
}

// mae is the mean absolute error, NaN of nothing.
func (s *score) mae() float64 {
	sum := 0.0
	for _, e := range s.errs {
		sum += e
	}
	return sum / float64(len(s.errs))
}

func (s *score) coverage() float64 { return 100 * float64(s.covered) / float64(len(s.errs)) }

func (s *score) join(o score) {
	s.errs = append(s.errs, o.errs...)
	s.covered += o.covered
	s.spread = s.spread || o.spread
	if s.perPig == nil {
		s.perPig = map[string][]float64{}
	}
	for n, e := range o.perPig {
		s.perPig[n] = append(s.perPig[n], e...)
	}
}

// interval is the 95 % bootstrap interval of the mean error, drawing whole pigs.
func (s *score) interval() (low, high float64) {
	var names []string
	for n := range s.perPig {
		names = append(names, n)
	}
	sort.Strings(names)
	rng := rand.New(rand.NewPCG(1, 2))
	means := make([]float64, 1000)
	for b := range means {
		sum, n := 0.0, 0
		for range names {
			for _, e := range s.perPig[names[rng.IntN(len(names))]] {
				sum, n = sum+e, n+1
			}
		}
		means[b] = sum / float64(n)
	}
	sort.Float64s(means)
	return means[25], means[974]
}

// row is one line of the table that the forecast tests print.
type row struct {
	name              string
	two, four, ninety score
}

func (r row) report(t testing.TB) {
	if r.four.spread {
		low, high := r.four.interval()
		t.Logf("%-34s %4.2f kg %5.1f %%  | %4.2f kg [%4.2f, %4.2f] %5.1f %%  | %5.2f d %5.1f %%", r.name,
			r.two.mae(), r.two.coverage(), r.four.mae(), low, high, r.four.coverage(), r.ninety.mae(), r.ninety.coverage())
		return
	}
	low, high := r.four.interval()
	t.Logf("%-34s %4.2f kg        | %4.2f kg [%4.2f, %4.2f]        | %5.2f d", r.name,
		r.two.mae(), r.four.mae(), low, high, r.ninety.mae())
}

func head(t testing.TB, pigs int) {
	t.Logf("%d pigs, each forecast from weeks 3, 5 and 7; mean absolute error, coverage of the 80 %% interval", pigs)
	t.Logf("%-34s 2 weeks ahead  | 4 weeks ahead [95 %% bootstrap]  | day of 90 kg", "")
}

// need asserts what the forecast promises.
func (r row) need(t *testing.T, fourKg, days float64) {
	t.Helper()
	r.report(t)
	require.LessOrEqual(t, r.four.mae(), fourKg, "%s: four weeks ahead", r.name)
	require.LessOrEqual(t, r.ninety.mae(), days, "%s: day of 90 kg", r.name)
	require.GreaterOrEqual(t, r.four.coverage(), 72.0, "%s: four weeks ahead", r.name)
	require.LessOrEqual(t, r.four.coverage(), 88.0, "%s: four weeks ahead", r.name)
	require.GreaterOrEqual(t, r.ninety.coverage(), 72.0, "%s: day of 90 kg", r.name)
	require.LessOrEqual(t, r.ninety.coverage(), 88.0, "%s: day of 90 kg", r.name)
}
