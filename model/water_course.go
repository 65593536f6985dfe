package model

import (
	"math"
	"time"
)

// WaterCourse gives the level of each barrel at the moments, which may lie ahead:
// there nothing more is filled. Moments before anything was said of a barrel are
// left out of its course. Errors as of [Herd.WaterLeft] where no moment is left.
func (h *Herd) WaterCourse(at []time.Time) ([]LevelCourse, error) {
	if len(h.Barrels) == 0 {
		return nil, &Missing{What: "barrels"}
	}
	f := h.water()
	if f.err != nil {
		return nil, f.err
	}
	draw := h.draw()
	out := make([]LevelCourse, len(h.Barrels))
	var lacks error = &Missing{What: "water_level", Names: barrelNames(h.Barrels)}
	any := false
	for _, t := range at {
		s, noSize, ok := f.until(t)
		if len(noSize) > 0 {
			lacks = &Missing{What: "capacity", Names: noSize}
			continue
		}
		if !ok {
			continue
		}
		if err := s.pass(max(wallDay(t), s.day), draw); err != nil {
			return nil, err
		}
		if h.openWaterAlarm(t) != nil {
			for i := range s.barrels() {
				s.forget(s.barrels()+i, 0, 0)
			}
		}
		for i, b := range h.Barrels {
			if !s.known[i] {
				continue
			}
			capacity, dead := math.Inf(1), 0.0
			if b.CapacityL != nil {
				capacity, dead = *b.CapacityL, deadShare**b.CapacityL
				out[i].Capacity = capacity
			}
			any = true
			out[i].Name = b.Name
			out[i].At, out[i].Level = append(out[i].At, t), append(out[i].Level, s.levelNow(i, dead, capacity))
		}
	}
	if !any {
		return nil, lacks
	}
	return knownCourses(out), nil
}
