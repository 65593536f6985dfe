package model

import (
	"math"
	"time"
)

// WaterFilled gives how long the barrels would last if all of them were full at
// the moment, at the edges of WaterLeft; errors as there, and Missing "capacity"
// where a barrel's size is not known.
func (h *Herd) WaterFilled(at time.Time) (WaterLeft, error) {
	if _, err := h.WaterLeft(at); err != nil {
		return WaterLeft{}, err
	}
	s, _, _ := h.water().until(at)
	draw := h.draw()
	if err := s.pass(math.Max(wallDay(at), s.day), draw); err != nil {
		return WaterLeft{}, err
	}
	for i, b := range h.Barrels {
		if b.CapacityL == nil {
			return WaterLeft{}, &Missing{What: "capacity", Names: []string{b.Name}}
		}
		s.known[i] = true
		s.forget(s.barrels()+i, usable(*b.CapacityL, deadShare**b.CapacityL), waterFullSD**b.CapacityL)
	}
	return h.waterLeft(at, &s, draw)
}
