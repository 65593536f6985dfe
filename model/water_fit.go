package model

import (
	"sort"
	"time"
)

// waterFit is what the herd's fills and levels say of its draw and its barrels:
// the state after each of them.
type waterFit struct {
	states []waterState
	at     []time.Time
	noSize [][]string // barrels whose size is needed to know their level, after each
	draw   *herdDraw
	err    error
}

func (h *Herd) water() *waterFit {
	return h.figures.water.get(func() *waterFit {
		f := &waterFit{draw: h.draw()}
		f.err = f.learn(h)
		return f
	})
}

// wallDay counts days and their parts by the wall clock, so that a clock change
// is no draw.
func wallDay(t time.Time) float64 {
	return float64(DayOf(t)) + (float64(MinuteOf(t))+float64(t.Second())/60)/(24*60)
}

func (f *waterFit) learn(h *Herd) error {
	if len(h.Barrels) == 0 {
		return nil
	}
	var s *waterState
	noSize := map[string]bool{}
	for _, w := range emptyTogether(seenFirst(h.Waters), h) {
		var marked []int
		for i, b := range h.Barrels {
			if w.F.Barrel == "" || h.Barrel(w.F.Barrel) == b {
				marked = append(marked, i)
			}
		}
		if len(marked) == 0 {
			continue // of a barrel that is no longer there
		}
		day := wallDay(w.At)
		if s == nil {
			first := newWaterState(h.Barrels, day)
			s = &first
		}
		if err := s.pass(day, f.draw); err != nil {
			return err
		}
		s.day = max(s.day, day)
		s.said = h.verdict(w.ID)
		if isEmpty(w.F) && len(marked) == len(h.Barrels) {
			s.allEmpty(h.Barrels, w.Record)
		}
		for _, i := range marked {
			b := h.Barrels[i]
			m := markOn(w.F, b, h.Barrels, len(marked))
			if m.needsSize && b.CapacityL == nil {
				noSize[b.Name] = true
				continue
			}
			if m.settles {
				delete(noSize, b.Name)
			}
			s.mark(i, m, b, w.Record)
		}
		f.states = append(f.states, s.clone())
		f.at = append(f.at, w.At)
		f.noSize = append(f.noSize, sortedKeys(noSize))
	}
	return nil
}

// seenFirst puts a level that was looked at before a fill of the same moment:
// "was empty, filled it" is one text.
func seenFirst(waters []Dated[Water]) []Dated[Water] {
	out := append([]Dated[Water](nil), waters...)
	sort.SliceStable(out, func(i, j int) bool {
		if !out[i].At.Equal(out[j].At) {
			return out[i].At.Before(out[j].At)
		}
		return out[i].F.Seen && !out[j].F.Seen
	})
	return out
}

// until gives the state after the last fill or level told by the moment.
func (f *waterFit) until(at time.Time) (s waterState, noSize []string, ok bool) {
	i := sort.Search(len(f.at), func(i int) bool { return f.at[i].After(at) })
	if i == 0 {
		return waterState{}, nil, false
	}
	return f.states[i-1].clone(), f.noSize[i-1], true
}
