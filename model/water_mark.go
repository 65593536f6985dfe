package model

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
	if m.settles {
		s.took[i] = 0
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
