package model

import "math"

// lastsTogether gives how many days all feeders together last at an edge so many
// standard errors on the careful side: pigs walk from an empty one to the next,
// so that how they share them does not matter.
func (o *outlook) lastsTogether(edge float64) (float64, error) {
	w := make([]float64, o.f.size())
	for _, i := range o.there {
		if o.g.mean[placeLevel(i)] > 0 {
			w[placeLevel(i)] = 1
		}
	}
	level, _ := o.g.along(w)
	if level <= 0 {
		return 0, nil
	}
	appetite := math.Exp(o.g.mean[placeAppetite])
	margin := func(taken, noise, extra float64) float64 {
		use := appetite * taken
		if edge == likely {
			return level - use
		}
		w[placeAppetite] = -use
		_, variance := o.g.along(w)
		return level - use - edge*math.Sqrt(variance+appetite*appetite*noise+use*use*extra*extra)
	}
	taken, noise, extra := 0.0, 0.0, 0.0
	left := margin(0, 0, 0)
	if left <= 0 {
		return 0, nil
	}
	for at := o.x; at < o.x+furthest; {
		end := math.Floor(at) + 1
		use, err := o.f.use.on(Day(math.Floor(at)))
		if err != nil {
			return 0, err
		}
		if edge != likely {
			if extra, err = o.f.use.grown(o.x, at); err != nil {
				return 0, err
			}
		}
		after := margin(taken+(end-at)*use.kg, noise+(end-at)*use.noise, extra)
		if after <= 0 {
			return at - o.x + (end-at)*left/(left-min(after, -1e-12)), nil
		}
		taken, noise, left, at = taken+(end-at)*use.kg, noise+(end-at)*use.noise, after, end
	}
	return furthest, nil
}
