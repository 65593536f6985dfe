package model

import (
	"math"
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
		f := &waterFit{draw: newHerdDraw(h)}
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
	for _, w := range seenFirst(h.Waters) {
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

// barrelMark is what a text says of one barrel, in litres that it shows.
type barrelMark struct {
	poured, after, seen *float64
	needsSize           bool // full, or a fraction
	settles             bool // the level is known afterwards, whatever it was
}

// markOn reads a text for one of the barrels it speaks of. Litres said of
// several together are shared out by their size.
func markOn(w Water, b *Barrel, all []*Barrel, of int) barrelMark {
	var m barrelMark
	m.needsSize = w.Full || w.Fraction != nil && *w.Fraction > 0
	m.settles = w.Full || w.Fraction != nil || w.Seen
	level := w.Fraction
	if w.Full && level == nil {
		level = Float(1)
	}
	if level != nil {
		showing := 0.0
		if b.CapacityL != nil {
			showing = *level * *b.CapacityL
		}
		m.after = &showing
	}
	if w.Litres != nil {
		litres := *w.Litres * shareOfFill(b, all, of)
		if w.Seen {
			m.after = &litres
		} else {
			m.poured = &litres
		}
	}
	if w.Seen {
		m.seen, m.after = m.after, nil
	}
	return m
}

func shareOfFill(b *Barrel, all []*Barrel, of int) float64 {
	if of == 1 {
		return 1
	}
	total := 0.0
	for _, x := range all {
		if x.CapacityL == nil {
			return 1 / float64(of)
		}
		total += *x.CapacityL
	}
	return *b.CapacityL / total
}

// mark learns what a text says of barrel i.
func (s *waterState) mark(i int, m barrelMark, b *Barrel, r Record) {
	n, capacity := s.barrels(), 0.0
	if b.CapacityL != nil {
		capacity = *b.CapacityL
	}
	dead := deadShare * capacity
	switch {
	case m.seen != nil:
		s.level(i, *m.seen, readingSD(*m.seen, capacity), capacity, b, r)
	case m.after != nil:
		if m.poured != nil {
			before := max(0, *m.after-*m.poured)
			s.level(i, before, readingSD(*m.after, capacity)+waterPouredSD**m.poured, capacity, b, r)
		}
		s.forget(n+i, usable(*m.after, dead), readingSD(*m.after, capacity))
	case m.poured != nil:
		s.pour(i, *m.poured, capacity, b, r)
	}
	s.known[i], s.since[i] = true, r.At
}

func readingSD(litres, capacity float64) float64 {
	switch {
	case capacity == 0:
		return waterUnsizedSD * litres
	case litres <= 0 || litres >= capacity:
		return waterFullSD * capacity
	}
	return waterLevelSD * capacity
}

// pour adds litres. What does not fit shows that the level was lower before.
func (s *waterState) pour(i int, litres, capacity float64, b *Barrel, r Record) {
	n, dead := s.barrels(), deadShare*capacity
	if !s.known[i] { // counted from dry: less would be there only if it was
		s.forget(n+i, usable(litres, dead), waterPouredSD*litres)
		if capacity > 0 {
			s.mean[n+i] = min(s.mean[n+i], capacity-dead)
		}
		return
	}
	before := shown(s.mean[n+i], dead)
	if capacity > 0 && before+litres > capacity {
		s.level(i, max(0, capacity-litres), waterLevelSD*capacity, capacity, b, r)
		s.forget(n+i, capacity-dead, waterFullSD*capacity)
		return
	}
	if before == 0 && dead > 0 {
		s.forget(n+i, usable(litres, dead), waterPouredSD*litres)
		return
	}
	s.mean[n+i] += litres
	s.widen(n+i, waterPouredSD*waterPouredSD*litres*litres)
}

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
	switch {
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
	s.observe(w, stands, sd)
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
