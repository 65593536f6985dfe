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
	n, m := len(g.mean), len(from)
	appetite := math.Exp(g.mean[placeAppetite])
	use := appetite * kg
	share := f.shares(g, from)
	// How what is taken from each feeder answers to appetite and shares, and how
	// that goes with all the rest.
	buffer := make([]float64, 2*m*n)
	slope, with := buffer[:m*n], buffer[m*n:]
	for k, i := range from {
		row := slope[k*n : (k+1)*n]
		row[placeAppetite] = -share[k] * use
		for l, j := range from {
			row[placeShare(j)] += use * share[k] * share[l]
		}
		row[placeShare(i)] -= use * share[k]
		for c, by := range row {
			if by != 0 {
				for j := range n {
					with[k*n+j] += by * g.cov[c*n+j]
				}
			}
		}
	}
	for k, i := range from {
		level := placeLevel(i)
		g.mean[level] -= share[k] * use
		for j := range n {
			g.cov[level*n+j] += with[k*n+j]
			g.cov[j*n+level] += with[k*n+j]
		}
		for l, j := range from {
			both := share[k] * share[l] * appetite * appetite * noise
			for c, by := range slope[l*n : (l+1)*n] {
				both += with[k*n+c] * by
			}
			g.cov[level*n+placeLevel(j)] += both
		}
	}
}
