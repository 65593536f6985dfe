package model

import "math"

// wet reports whether pigs still get water from the barrel.
func (s *waterState) wet(i int) bool { return s.known[i] && s.mean[s.barrels()+i] > 0 }

// toWet is by how much the pigs draw more from the barrels that still hold
// water, since they walk on from the dry ones; 0 where all are dry.
func (s *waterState) toWet() float64 {
	wet := 0.0
	for i := range s.barrels() {
		if s.wet(i) {
			wet += s.mean[i]
		}
	}
	if wet <= 0 {
		return 0
	}
	return s.drawFactor() / wet
}

// pass lets the pigs draw until the day, as far as there is water.
func (s *waterState) pass(until float64, draw *herdDraw) error {
	if until > s.day {
		s.spreadDraw(waterDriftSD * math.Sqrt(until-s.day))
		s.spreadShares(waterDriftSD * waterDriftSD * (until - s.day))
	}
	for s.day < until {
		d, err := draw.on(Day(math.Floor(s.day)))
		if err != nil {
			return err
		}
		to := min(math.Floor(s.day)+1, until)
		s.drain(d, to)
	}
	return nil
}

// drain draws a day's published draw until a moment of the same day.
func (s *waterState) drain(d dayDraw, to float64) {
	n, rate := s.barrels(), d.litres
	for s.day < to {
		more := s.toWet()
		if more == 0 || rate <= 0 {
			break
		}
		step := to - s.day
		first := -1
		for i := range n {
			if s.wet(i) {
				if lasts := s.mean[n+i] / (s.mean[i] * more * rate); lasts <= step {
					step, first = lasts, i
				}
			}
		}
		for i := range n {
			if s.wet(i) {
				s.takeOff(i, more*rate*step, more*d.airSD*step, step)
			}
		}
		if first >= 0 {
			s.forget(n+first, 0, 0)
		}
		s.day += step
		if first < 0 {
			break
		}
	}
	s.day = to
}

// airHangs is for how many days warmth that nobody told of stays on the same side
// of its guess: days hang together, and a place is warmer than another.
const airHangs = 5.0

// takeOff draws the published litres, times the barrel's factor, off it. air is
// the error of the litres by a warmth that is not known.
func (s *waterState) takeOff(i int, litres, air, days float64) {
	n := s.barrels()
	w := make([]float64, 2*n)
	w[n+i], w[i] = 1, -litres
	stray := 0.0
	if days > 0 { // nearly independent from day to day
		stray = s.mean[i] * math.Sqrt((waterDaySD*waterDaySD*litres*litres+airHangs*air*air)/days)
	}
	s.took[i] += min(s.mean[i]*litres, s.mean[n+i])
	s.replace(n+i, w, stray)
	s.mean[n+i] = max(0, s.mean[n+i])
}
