package model

import (
	"slices"
	"sort"
)

// BookedPigs is the pigs that an appointment is for, as things stand: of those
// alive today and not booked for an earlier day, the heaviest on its day, as
// many as it says; all of them where it gives no number. Pigs of no known
// weight come last.
func (h *Herd) BookedPigs(b Booked, today Day) []*Animal {
	pigs := h.Alive(today)
	var kg map[*Animal]float64
	if weights, err := h.medianWeights(h.Alive(b.Day), b.Day); err == nil {
		kg = byPig(weights)
	}
	sort.SliceStable(pigs, func(i, j int) bool { return kg[pigs[i]] > kg[pigs[j]] })
	if len(b.Animals) > 0 {
		return slices.DeleteFunc(pigs, func(p *Animal) bool { return !slices.Contains(b.Animals, p.Name) })
	}
	named := func(p *Animal) bool { // whom another appointment names
		return slices.ContainsFunc(h.Bookings, func(other Dated[Booked]) bool {
			return other.F.Day >= today && other.F.Day != b.Day && slices.Contains(other.F.Animals, p.Name)
		})
	}
	pigs = slices.DeleteFunc(pigs, named)
	for _, other := range h.Bookings {
		if d := other.F.Day; d >= today && d < b.Day && len(other.F.Animals) == 0 {
			gone := other.F.Count
			if gone == 0 {
				gone = len(pigs)
			}
			pigs = pigs[min(gone, len(pigs)):]
		}
	}
	if b.Count > 0 {
		pigs = pigs[:min(b.Count, len(pigs))]
	}
	return pigs
}

// GoneAsBooked is the leaving of the pigs of an appointment that are still there.
// sure is false where a number was booked out of more pigs with names: then it names
// the heaviest, and nobody said that they are the ones.
func (h *Herd) GoneAsBooked(b Booked) (g Gone, sure bool) {
	g = Gone{How: Butchered}
	left, unnamed := 0, 0
	for _, a := range h.onDay(b.Day) {
		if a.Gone == nil {
			left++
			if a.Name == "" {
				unnamed++
			}
		}
	}
	goes := slices.DeleteFunc(h.BookedPigs(b, b.Day), func(p *Animal) bool { return p.Gone != nil })
	switch {
	case len(goes) == 0 || len(goes) == left:
		g.Animals = []string{All}
		return g, true
	case unnamed == left:
		g.Count = len(goes)
		return g, true
	}
	for _, p := range goes {
		if p.Name == "" {
			return Gone{How: Butchered, Count: len(goes)}, false
		}
		g.Animals = append(g.Animals, p.Name)
	}
	return g, len(b.Animals) > 0
}
