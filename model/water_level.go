package model

import "math"

// level learns that barrel i showed so many litres, give or take sd.
func (s *waterState) level(i int, litres, sd, capacity float64, b *Barrel, r Record) {
	n, dead := s.barrels(), deadShare*capacity
	stands := usable(litres, dead)
	if !s.known[i] {
		s.forget(n+i, stands, sd)
		return
	}
	expected := s.mean[n+i]
	off := stands - expected
	total := s.at(n+i, n+i) + sd*sd
	s.find(r, []string{b.Name}, s.since[i], s.took[i], off, total, stands <= 0)
	switch {
	case s.said == LeftOut:
		s.forget(n+i, stands, sd)
		s.early[i] = 0
		return
	case s.said == AsUsual:
		s.early[i] = 0
		s.learnLevel(i, stands, sd)
	case expected <= 0 && stands <= 0:
		// It ran dry some time before: nothing new.
	case off*off > waterSurpriseZ*waterSurpriseZ*total && off > 0:
		s.events = append(s.events, Reason{Code: WaterUnlogged, Names: []string{b.Name}, On: r.On})
		s.forget(n+i, stands, sd)
		s.early[i] = 0
		return
	case off < 0 && (off*off > waterSurpriseZ*waterSurpriseZ*total || stands <= 0 && off*off > total):
		if s.early[i]++; s.early[i] == 1 {
			s.events = append(s.events, Reason{Code: WaterDryEarly, Names: []string{b.Name}, On: r.On})
			s.favour(i, off, total)
			s.forget(n+i, stands, sd)
			return
		}
		s.learnLevel(i, stands, sd) // it does so again: that is how they draw
	default:
		s.early[i] = 0
		s.learnLevel(i, stands, sd)
	}
	if stands <= 0 {
		s.forget(n+i, 0, 0)
	}
}

func (s *waterState) learnLevel(i int, stands, sd float64) {
	n := s.barrels()
	w := make([]float64, 2*n)
	w[n+i] = 1
	if stands > 0 {
		s.observe(w, stands, sd)
	} else {
		s.atMostZero(w, sd) // it ran dry at some time before
	}
	s.marks++
	for j := range n {
		s.mean[j] = max(s.mean[j], leastBarrelShare/float64(n))
		s.mean[n+j] = max(s.mean[n+j], 0)
	}
}

// favour lets a barrel found low too early take a larger part of the same draw:
// one low barrel may leak or be the pigs' favourite, and says nothing yet of
// what they all drink. The draw becomes less sure, so that the cautious days
// shorten and a second such find teaches.
func (s *waterState) favour(i int, off, total float64) {
	n := s.barrels()
	off = max(off, -waterSurpriseZ*math.Sqrt(total))
	sum, shifted := s.drawFactor(), 0.0
	before := append([]float64(nil), s.mean[:n]...)
	for j := range n {
		s.mean[j] = max(s.mean[j]+s.at(j, n+i)/total*off, leastBarrelShare/float64(n))
		shifted += s.mean[j]
	}
	for j := range n {
		s.mean[j] *= sum / shifted
	}
	if s.mean[i] < before[i] { // a low barrel is never drawn from less
		copy(s.mean[:n], before)
	}
	s.spreadDraw(0.1)
}
