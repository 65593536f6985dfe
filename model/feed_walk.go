package model

import "math"

// advance carries the belief from one moment to a later one: pigs eat.
func (f *feedFit) advance(g gaussian, from, to float64) error {
	for x := from; x < to; {
		end := to
		there := f.eating(x)
		if len(there) != 1 { // one may run dry and pigs turn to the others: day by day
			end = min(to, math.Floor(x)+1)
		}
		for _, b := range f.feeders {
			for _, turn := range []float64{b.from, b.until} {
				if turn > x && turn < end {
					end = turn
				}
			}
		}
		kg, noise, err := f.use.over(x, end)
		if err != nil {
			return err
		}
		f.drift(g, end-x)
		if len(there) > 0 && kg > 0 {
			f.eat(g, f.withFeed(g, there), kg, noise)
		}
		x = end
	}
	return nil
}

// drift lets what was learned fade with time.
func (f *feedFit) drift(g gaussian, days float64) {
	n := len(g.mean)
	keep := math.Exp(-days / appetiteDays)
	g.mean[placeAppetite] *= keep
	for j := range n {
		g.cov[placeAppetite*n+j] *= keep
		g.cov[j*n+placeAppetite] *= keep
	}
	g.widen(placeAppetite, (1-keep*keep)*appetiteSD*appetiteSD)
	if len(f.feeders) > 1 {
		for i := range f.feeders {
			g.widen(placeShare(i), min(shareDrift2*days, max(shareSD*shareSD-g.at(placeShare(i), placeShare(i)), 0)))
		}
	}
}

// withFeed leaves out the feeders that are likely dry, unless all are: pigs walk
// from a dry one to the next.
func (f *feedFit) withFeed(g gaussian, there []int) []int {
	var out []int
	for _, i := range there {
		if g.mean[placeLevel(i)] > 0 {
			out = append(out, i)
		}
	}
	if len(out) == 0 {
		return there
	}
	return out
}

// shares gives the part of the herd's use that each of the feeders takes. They
// sum to 1.
func (f *feedFit) shares(g gaussian, of []int) []float64 {
	out := make([]float64, len(of))
	var sum float64
	for k, i := range of {
		out[k] = math.Exp(g.mean[placeShare(i)])
		sum += out[k]
	}
	for k := range out {
		out[k] /= sum
	}
	return out
}

// eat takes a herd's use, at an appetite of 1, from the feeders named. Levels
// may go below zero: so far has feed been wanted since the feeder ran dry.
func (f *feedFit) eat(g gaussian, from []int, kg, noise float64) {
	n := len(g.mean)
	appetite := math.Exp(g.mean[placeAppetite])
	use := appetite * kg
	share := f.shares(g, from)
	step := make([]float64, n*n)
	for i := range n {
		step[i*n+i] = 1
	}
	for k, i := range from {
		row := step[placeLevel(i)*n:]
		row[placeAppetite] -= share[k] * use
		for l, j := range from {
			row[placeShare(j)] += use * share[k] * share[l]
		}
		row[placeShare(i)] -= use * share[k]
	}
	g.transform(step)
	for k, i := range from {
		g.mean[placeLevel(i)] -= share[k] * use
		for l, j := range from {
			g.cov[placeLevel(i)*n+placeLevel(j)] += share[k] * share[l] * appetite * appetite * noise
		}
	}
}
