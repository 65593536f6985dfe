package model

import "time"

// emptyWithin is how far apart barrels may be found empty to be one finding.
const emptyWithin = 2 * time.Hour

// isEmpty reports whether a record says that water was seen to be gone.
func isEmpty(w Water) bool { return w.Seen && w.Fraction != nil && *w.Fraction == 0 }

// emptyTogether makes one record of all barrels where each of them was found
// empty by its name in one round: that speaks of what the pigs drink, where one
// empty barrel may leak or be their favourite.
func emptyTogether(waters []Dated[Water], h *Herd) []Dated[Water] {
	var out []Dated[Water]
	var first time.Time
	found := map[*Barrel]bool{}
	for _, w := range waters {
		out = append(out, w)
		b := h.Barrel(w.F.Barrel)
		if !isEmpty(w.F) || w.F.Barrel == "" || b == nil {
			clear(found)
			continue
		}
		if w.At.Sub(first) > emptyWithin {
			clear(found)
		}
		if len(found) == 0 {
			first = w.At
		}
		found[b] = true
		if len(h.Barrels) > 1 && len(found) == len(h.Barrels) {
			for len(out) > 1 && !out[len(out)-2].At.Before(first) && isEmpty(out[len(out)-2].F) {
				out = out[:len(out)-1]
			}
			w.F.Barrel = ""
			out[len(out)-1] = w
			clear(found)
		}
	}
	return out
}

// allEmpty learns that all barrels were found empty at once: the pigs drew at
// least what stood in them. Where that is far more than was to be expected, as
// in a heat that nobody told of, it teaches no more than a strange week may.
func (s *waterState) allEmpty(barrels []*Barrel, r Record) {
	n := s.barrels()
	w, sd, names := make([]float64, 2*n), 0.0, []string(nil)
	for i, b := range barrels {
		if !s.known[i] {
			return
		}
		w[n+i] = 1
		names = append(names, b.Name)
		if b.CapacityL != nil {
			sd += waterFullSD * *b.CapacityL
		}
	}
	expected, variance := s.along(w)
	if n >= 2 {
		s.findAll(r, names, -expected, variance+sd*sd)
	}
	if s.said == LeftOut {
		for i := range n {
			s.forget(n+i, 0, 0)
		}
		return
	}
	if n < 2 || expected <= 0 || expected*expected <= variance+sd*sd {
		return // the ordinary way, barrel by barrel, says it as well
	}
	over := expected*expected/(waterSurpriseZ*waterSurpriseZ) - variance - sd*sd
	if over > 0 && s.said != AsUsual {
		s.events = append(s.events, Reason{Code: WaterDryEarly, Names: names, On: r.On})
		s.widen(n, over)
	}
	s.atMostZero(w, sd)
	for i := range n {
		s.mean[i] = max(s.mean[i], leastBarrelShare/float64(n))
		s.forget(n+i, 0, 0)
		s.early[i] = 0
	}
	s.marks++
}
