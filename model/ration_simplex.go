package model

import (
	"errors"
	"fmt"
	"sort"

	"gonum.org/v1/gonum/mat"
	"gonum.org/v1/gonum/optimize/convex/lp"
)

// mixTolerance is how far a share may miss its need by the rounding of sums.
const mixTolerance = 1e-7

// attainable finds what no mix at all can hold enough of: with only limits and
// the weight of the batch to keep, the most of one nutrient comes from filling
// up with the richest feeds first, exactly.
func (p *mixProgram) attainable() error {
	var short []Shortfall
	room := 0.0
	for _, kg := range p.most {
		room += kg
	}
	if room < p.loose*(1-mixTolerance) {
		return &Infeasible{Short: []Shortfall{{NutrientBulk, 100, 100 * (p.q.BatchKg - p.loose + room) / p.q.BatchKg}}}
	}
	for _, n := range p.needs {
		if best := p.richest(n); n.misses(best, mixTolerance) {
			short = append(short, Shortfall{n.nutrient, n.needed, best})
		}
	}
	if len(short) > 0 {
		return &Infeasible{Short: short}
	}
	return nil
}

// misses reports whether a share of the nutrient is on the wrong side of the
// need by more than a tolerance.
func (n nutrientNeed) misses(share, tolerance float64) bool {
	if n.atMost {
		return share > n.needed+tolerance
	}
	return share < n.needed-tolerance
}

// richest is the share of a nutrient that a batch can come to at best: the
// largest, of one with an upper bound the least.
func (p *mixProgram) richest(n nutrientNeed) float64 {
	order := make([]int, len(p.feeds))
	for i := range order {
		order[i] = i
	}
	sort.SliceStable(order, func(a, b int) bool {
		x, y := n.of(p.holds[order[a]]), n.of(p.holds[order[b]])
		return n.atMost && x < y || !n.atMost && x > y
	})
	sum, left := n.fixed, p.loose
	for _, i := range order {
		kg := min(p.most[i], left)
		sum += kg * n.of(p.holds[i])
		left -= kg
	}
	return sum / p.q.BatchKg
}

// solve gives the kilograms of each feed in the cheapest batch.
func (p *mixProgram) solve() ([]float64, error) {
	kg, err := p.simplex(p.needs)
	if !errors.Is(err, lp.ErrInfeasible) {
		return kg, err
	}
	// Each need can be met alone: find those without which the others can be.
	var clash []Shortfall
	for k, n := range p.needs {
		others := append(append([]nutrientNeed(nil), p.needs[:k]...), p.needs[k+1:]...)
		if _, err := p.simplex(others); err == nil {
			clash = append(clash, Shortfall{n.nutrient, n.needed, p.richest(n)})
		}
	}
	return nil, &Infeasible{Short: clash, Together: true}
}

// simplex solves the program under these needs. Amounts are shares of what is
// not fixed, so that the numbers lie near 1 whatever the batch.
func (p *mixProgram) simplex(needs []nutrientNeed) ([]float64, error) {
	var open []int // feeds that may be used at all
	for i, kg := range p.most {
		if kg > 0 {
			open = append(open, i)
		}
	}
	if len(open) == 1 && len(needs) == len(p.needs) { // attainable has shown that it does
		kg := make([]float64, len(p.feeds))
		kg[open[0]] = p.loose
		return kg, nil
	}
	// Rows: the weight, a need each with what is over, a limit each with what is
	// left of it; a limit of the whole batch binds nothing.
	var bound []int
	for k, i := range open {
		if p.most[i] < p.loose {
			bound = append(bound, k)
		}
	}
	rows, cols := 1+len(needs)+len(bound), len(open)+len(needs)+len(bound)
	a, b, c := mat.NewDense(rows, max(cols, rows), nil), make([]float64, rows), make([]float64, max(cols, rows))
	b[0] = 1
	for k, i := range open {
		a.Set(0, k, 1)
		c[k] = p.feeds[i].PerKg
	}
	for r, n := range needs {
		scale := max(n.needed, mixTolerance)
		for k, i := range open {
			a.Set(1+r, k, n.of(p.holds[i])/scale)
		}
		over := -1.0
		if n.atMost {
			over = 1
		}
		a.Set(1+r, len(open)+r, over)
		b[1+r] = (n.needed*p.q.BatchKg - n.fixed) / p.loose / scale
		if b[1+r] < 0 { // the fixed part brings enough
			b[1+r] = 0
		}
	}
	for r, k := range bound {
		a.Set(1+len(needs)+r, k, 1)
		a.Set(1+len(needs)+r, len(open)+len(needs)+r, 1)
		b[1+len(needs)+r] = p.most[open[k]] / p.loose
	}
	_, x, err := lp.Simplex(c, a, b, 1e-10, nil)
	if errors.Is(err, lp.ErrInfeasible) {
		return nil, err
	}
	if err != nil {
		return nil, fmt.Errorf("the cheapest mix could not be worked out: %w", err)
	}
	kg := make([]float64, len(p.feeds))
	for k, i := range open {
		if x[k] > mixTolerance {
			kg[i] = min(x[k]*p.loose, p.most[i])
		}
	}
	return kg, nil
}

// reasons says what the mix is held to: the needs that it only just meets, and
// the feeds at their limit.
func (p *mixProgram) reasons(kg []float64) []Reason {
	const near = 1e-5
	out := []Reason{{Code: ReasonMixFor, Q: []Quantity{{p.q.WeightKg, Kilograms}, {p.needs[0].needed, Percent}}}}
	for _, n := range p.needs {
		sum := n.fixed
		for i := range p.feeds {
			sum += kg[i] * n.of(p.holds[i])
		}
		share := sum / p.q.BatchKg
		if !n.atMost && share < n.needed*(1+near) || n.atMost && share > n.needed*(1-near) {
			unit := Percent
			if n.nutrient == NutrientEnergy {
				unit = MegajoulesPerKg
			}
			out = append(out, Reason{Code: boundBy[n.nutrient], Q: []Quantity{{n.needed, unit}}})
		}
	}
	for i, f := range p.feeds {
		if kg[i] > 0 && kg[i] >= p.most[i]*(1-near) && p.most[i] < p.loose {
			out = append(out, Reason{Code: ReasonMixAtLimit, Names: []string{f.Name}, Q: []Quantity{{100 * p.most[i] / p.q.BatchKg, Percent}}})
		}
	}
	return out
}
