package model

import "math"

// readingScatter is how much wider than usual one kind of reading scatters in
// this herd: its variance over the usual one, as the fit takes it and as the
// readings so far have it.
type readingScatter struct {
	ratio         float64
	found, counts float64
}

// What is taken of the scatter before a herd's own readings tell: scatterUsual,
// relative to readingErrors, for as much as scatterSure readings would say so. The
// fit takes more than the most likely scatter, by scatterWide over what it rests
// on, since too little errs worse than too much.
const (
	scatterUsual = 1.2
	scatterSure  = 2.0
	scatterWide  = 1.0
	scatterWild  = 6.0  // a distance squared over its variance that no reading counts for more than
	scatterStep  = 0.07 // relative change from which the fit takes a new one
)

func newReadingScatter() *readingScatter {
	s := &readingScatter{found: scatterSure * scatterUsual, counts: scatterSure}
	s.ratio = s.wide()
	return s
}

// likely is the most likely scatter by the readings so far.
func (s *readingScatter) likely() float64 { return scatterWithin(s.found / s.counts) }

// wide is the scatter that the fit takes by the readings so far.
func (s *readingScatter) wide() float64 {
	return scatterWithin(s.found / s.counts * (1 + scatterWide/s.counts))
}

func scatterWithin(ratio float64) float64 { return math.Max(0.7, math.Min(9, ratio)) }

// scatterWord is what one reading says of the scatter of its kind: the scatter,
// times the share of a reading that it counts for, and that share.
type scatterWord struct{ found, counts float64 }

// see takes in how far a reading lay from what the others say, instead of what it
// said before. The noise of a reading is only a part of the variance of that
// distance, so that one of a pig that is hardly known tells little of the noise.
// One that may be a slip counts less, and none counts for more than a wild one.
func (s *readingScatter) see(r *growthReading, off, latent float64) {
	sd := r.sd(r.kgAt) / r.gain
	total := latent + sd*sd
	part := sd * sd / total
	s.add(r, -1)
	r.said = scatterWord{s.ratio * part * math.Min(off*off/total, scatterWild), part}
	s.add(r, 1)
}

// doubt gives a reading another chance of being a slip.
func (s *readingScatter) doubt(r *growthReading, wrong float64) {
	s.add(r, -1)
	r.wrong = wrong
	s.add(r, 1)
}

func (s *readingScatter) add(r *growthReading, sign float64) {
	s.found += sign * (1 - r.wrong) * r.said.found
	s.counts += sign * (1 - r.wrong) * r.said.counts
}

// settleScatter takes the scatter of a kind of reading for what the readings have
// it, once that has moved enough. A reading that was expected widens nothing.
func (f *growthFit) settleScatter(r *growthReading, expected bool) {
	s := r.scatter
	is := s.wide()
	if !(is < s.ratio*(1-scatterStep) || !expected && is > s.ratio*(1+scatterStep)) {
		return
	}
	s.ratio = is
	for _, p := range f.pigs {
		for i := range p.block.n {
			if p.readings[i].scatter == s {
				f.retake(p, i)
				break
			}
		}
	}
	f.stale = true
}
