package model

import "math"

// Standard normal quantiles of the edges that figures give.
const (
	likely       = 0.0
	lowEdge      = z80                // 10 % of cases lie beyond
	cautiousEdge = 2.0537489106318225 // 2 % do: guards the pigs
)

// furthest is how many days ahead feed is followed; what lasts longer is given
// as so long.
const furthest = 400.0

// outlook follows feeders ahead from a belief at a moment. Level, appetite and
// the pigs' weights err jointly; day-to-day use strays with the days.
type outlook struct {
	f     *feedFit
	g     gaussian
	x     float64 // wall days
	now   dayUse
	there []int // feeders that pigs eat from
	taken []float64
	noise []float64
	w     []float64 // reused
}

func (f *feedFit) look(g gaussian, x float64) (*outlook, error) {
	now, err := f.use.on(Day(math.Floor(x)))
	if err != nil {
		return nil, err
	}
	if now.lacks != nil {
		return nil, now.lacks
	}
	n := len(f.feeders)
	return &outlook{f: f, g: g, x: x, now: now, there: f.eating(x), taken: make([]float64, n), noise: make([]float64, n), w: make([]float64, f.size())}, nil
}

// lasts gives for each feeder how many days it lasts at an edge so many standard
// errors on the careful side. A feeder that has run dry leaves its share to the
// others.
func (o *outlook) lasts(edge float64) ([]float64, error) {
	days := make([]float64, len(o.f.feeders))
	margin := make([]float64, len(o.f.feeders))
	clear(o.taken)
	clear(o.noise)
	var open []int
	for _, i := range o.there {
		if margin[i] = o.margin(i, o.taken[i], o.noise[i], 0, edge); margin[i] > 0 {
			open = append(open, i)
		}
	}
	at := o.x
	for len(open) > 0 && at < o.x+furthest {
		end := math.Floor(at) + 1
		use, err := o.f.use.on(Day(math.Floor(at)))
		if err != nil {
			return nil, err
		}
		share, extra := o.f.shares(o.g, open), 0.0
		if edge != likely {
			if extra, err = o.f.use.grown(o.x, at); err != nil {
				return nil, err
			}
		}
		// The day ends early where a feeder runs dry in it.
		first, dry := end, -1
		for k, i := range open {
			after := o.margin(i, o.taken[i]+share[k]*(end-at)*use.kg, o.noise[i]+share[k]*share[k]*(end-at)*use.noise, extra, edge)
			if after <= 0 {
				if t := at + (end-at)*max(margin[i], 0)/(max(margin[i], 0)-min(after, -1e-12)); dry < 0 || t < first {
					first, dry = t, k
				}
			}
		}
		for k, i := range open {
			o.taken[i] += share[k] * (first - at) * use.kg
			o.noise[i] += share[k] * share[k] * (first - at) * use.noise
			margin[i] = o.margin(i, o.taken[i], o.noise[i], extra, edge)
		}
		at = first
		if dry >= 0 {
			days[open[dry]] = at - o.x
			open = append(open[:dry:dry], open[dry+1:]...)
		}
	}
	for _, i := range open {
		days[i] = furthest
	}
	return days, nil
}

// margin is what is left in feeder i once so much was taken at an appetite of
// 1, on the careful side by so many standard errors. extra is the relative
// spread that use has gained on the way from not knowing the weights.
func (o *outlook) margin(i int, taken, noise, extra, edge float64) float64 {
	appetite := math.Exp(o.g.mean[placeAppetite])
	left := o.g.mean[placeLevel(i)] - appetite*taken
	if edge == likely {
		return left
	}
	return left - edge*o.spread(placeLevel(i), i, taken, noise, extra)
}

// spread is the standard error of what is at a place of the belief (level or
// capacity of feeder i) less what will be taken from the feeder.
func (o *outlook) spread(place, i int, taken, noise, extra float64) float64 {
	w := o.w
	clear(w)
	w[place] = 1
	appetite := math.Exp(o.g.mean[placeAppetite])
	use := appetite * taken
	w[placeAppetite] -= use
	if len(o.there) > 1 {
		share := o.f.shares(o.g, o.there)
		for k, j := range o.there {
			w[placeShare(j)] += use * share[k]
		}
		w[placeShare(i)] -= use
	}
	_, variance := o.g.along(w)
	return math.Sqrt(variance + appetite*appetite*noise + use*use*extra*extra)
}
