package model

import "time"

// deadShare is the part of a barrel below its nipples, as a share of what it
// holds: common practice for a nipple set just above the bottom, no source.
const deadShare = 0.05

// How far a mark on a barrel is off.
const (
	waterFullSD  = 0.02 // of capacity
	waterLevelSD = 0.06 // of capacity, a level judged by eye

	waterPouredSD    = 0.05 // of the litres poured
	waterUnsizedSD   = 0.20 // of the litres standing in a barrel of unknown size
	waterSurpriseZ   = 2.5  // beyond so many standard errors a level speaks of something else
	barrelHabit      = 8.0  // pigs' habits between barrels are known as from so many pigs
	waterDriftSD     = 0.02 // a day, of the herd's draw and of each share
	leastBarrelShare = 0.02
)

// waterState is what is known of draw and levels at a moment: for n barrels the
// first n quantities are each one's part of the herd's draw as a factor on the
// published draw, the next n what stands above its nipples in litres.
type waterState struct {
	gaussian
	day    float64 // days and their parts, by the wall clock
	known  []bool  // the level was ever told
	since  []time.Time
	early  []int // times in a row found lower than could be
	marks  int   // levels that the draw was learned from
	events []Reason
	took   []float64 // litres drawn from each, as expected, since its level was last told
	finds  []waterFind
	said   string // what was answered to a question about the record at hand
}

func (s *waterState) barrels() int { return len(s.known) }

func (s *waterState) clone() waterState {
	c := *s
	c.gaussian = s.gaussian.clone()
	c.known = append([]bool(nil), s.known...)
	c.since = append([]time.Time(nil), s.since...)
	c.early = append([]int(nil), s.early...)
	c.events = s.events[:len(s.events):len(s.events)]
	c.took = append([]float64(nil), s.took...)
	c.finds = s.finds[:len(s.finds):len(s.finds)]
	return c
}

// newWaterState spreads the draw over the barrels by their nipples where they
// are all told, else evenly.
func newWaterState(barrels []*Barrel, day float64) waterState {
	n := len(barrels)
	s := waterState{
		gaussian: newGaussian(2 * n), day: day, known: make([]bool, n),
		since: make([]time.Time, n), early: make([]int, n), took: make([]float64, n),
	}
	share, total := make([]float64, n), 0.0
	for i, b := range barrels {
		if b.Nipples == nil || *b.Nipples < 1 {
			for j := range share {
				share[j] = 1
			}
			total = float64(n)
			break
		}
		share[i] = float64(*b.Nipples)
		total += share[i]
	}
	for i := range n {
		s.mean[i] = share[i] / total
	}
	s.spreadDraw(waterDrawSD)
	s.spreadShares(1 / (barrelHabit + 1))
	return s
}

// spreadDraw makes the herd's whole draw less sure, each barrel alike.
func (s *waterState) spreadDraw(sd float64) {
	n := s.barrels()
	for i := range n {
		for j := range n {
			s.cov[i*2*n+j] += sd * sd * s.mean[i] * s.mean[j]
		}
	}
}

// spreadShares makes the parts less sure while their sum stays as sure as it is.
func (s *waterState) spreadShares(by float64) {
	n, total := s.barrels(), s.drawFactor()
	for i := range n {
		for j := range n {
			v := -s.mean[i] * s.mean[j]
			if i == j {
				v += s.mean[i] * total
			}
			s.cov[i*2*n+j] += by * v
		}
	}
}

// drawFactor is the herd's draw as a factor on the published one.
func (s *waterState) drawFactor() float64 {
	sum := 0.0
	for i := range s.barrels() {
		sum += s.mean[i]
	}
	return sum
}

// usable is what stands above the nipples of a barrel that shows so many litres.
// The lowest litres count by half, so that a dry barrel shows none.
func usable(litres, dead float64) float64 {
	if litres < 2*dead {
		return max(0, litres) / 2
	}
	return litres - dead
}

// shown is the inverse of usable.
func shown(usable, dead float64) float64 { return usable + min(usable, dead) }
