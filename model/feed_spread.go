package model

import "math"

// spread is the relative standard error that use has on a day from not knowing
// the pigs' weights. It changes slowly: each week of days shares one.
func (u *herdUse) spread(d Day) (float64, error) {
	pigs := u.alive(d)
	if len(pigs) == 0 {
		return 0, nil
	}
	if week := d - d%knotStep; u.turn(week) == u.turn(d) {
		d = week
	}
	u.mu.Lock()
	defer u.mu.Unlock()
	if have, ok := u.spreads[d]; ok {
		return have, nil
	}
	mean, err := u.weigh.MeanWeight(pigs, d)
	if err != nil {
		return 0, err
	}
	var spread float64
	if m := mean.WeightKg; m.Mid > 0 {
		spread = useByWeight * (m.High - m.Low) / (2 * z80 * m.Mid)
	}
	u.spreads[d] = spread
	return spread, nil
}

// grown is how much wider, relatively, use is known at a later moment than at
// one now, for the weights alone; what is wrong with them now the appetite has
// taken up.
func (u *herdUse) grown(now, later float64) (float64, error) {
	a, err := u.spread(Day(math.Floor(now)))
	if err != nil {
		return 0, err
	}
	b, err := u.spread(Day(math.Floor(later)))
	if err != nil {
		return 0, err
	}
	return math.Sqrt(max(b*b-a*a, 0)), nil
}

// useByWeight is by how many percent use rises where weight rises by one: the
// power of weight in an open data set of 72 pigs (Lauridsen et al., J. Anim.
// Sci. 77:906-916, 1999; computed).
const useByWeight = 0.65

// weekSpread is the relative variance of one week's feed of so many pigs round
// what their weights let expect, weeks being nearly independent: a fit to 21,
// 15, 10, 8 and 6 % for 1, 2, 4, 8 and 16 pigs, found in the same open data set
// (computed).
func weekSpread(pigs int) float64 { return 0.0432/float64(pigs) + 0.0009 }
