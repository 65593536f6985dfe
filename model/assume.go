package model

import "time"

// Assumption is a what-if: so many more or fewer pigs, another target, so many
// days of no visit.
type Assumption struct {
	CountDelta int
	TargetKg   *float64
	SkipDays   int
}

// Assume is the herd as it would be from the day on under the assumption; h
// stays as it is. Pigs that are added come on that day, of the age and weight of
// the latest group; of those taken away, pigs without names go first, then the
// latest come. What was learned of the herd stays. SkipDays changes nothing here:
// it moves the visit that the caller asks about.
func (h *Herd) Assume(a Assumption, on Day) *Herd {
	c := *h
	c.figures = &figures{}
	c.assumed = h
	if a.TargetKg != nil {
		c.TargetKg = *a.TargetKg
	}
	switch {
	case a.CountDelta > 0:
		c.addPigs(a.CountDelta, on)
	case a.CountDelta < 0:
		c.takePigs(-a.CountDelta, on)
	}
	return &c
}

// latestGroup is the group that came last and still has pigs on the day, else
// the last that came; nil if none ever did.
func (h *Herd) latestGroup(on Day) *Group {
	alive := h.Alive(on)
	if len(alive) > 0 {
		return alive[len(alive)-1].Group
	}
	if n := len(h.Groups); n > 0 {
		return h.Groups[n-1]
	}
	return nil
}

func (h *Herd) addPigs(n int, on Day) {
	g := &Group{Arrived: on, ArriveAt: on.At(0, h.location())}
	if like := h.latestGroup(on); like != nil {
		g.Name, g.Born = like.Name, like.Born
		var mates []*Animal
		for _, a := range h.Alive(on) {
			if a.Group == like {
				mates = append(mates, a)
			}
		}
		if w, err := h.assumed.MeanWeight(mates, on); err == nil && len(mates) > 0 {
			g.WeightKg = Float(w.WeightKg.Mid)
		} else if like.WeightKg != nil {
			g.WeightKg = Float(*like.WeightKg)
		}
	}
	animals := append([]*Animal(nil), h.Animals...)
	for range n {
		p := &Animal{Number: len(animals), Group: g}
		g.Pigs = append(g.Pigs, p)
		animals = append(animals, p)
	}
	h.Animals, h.Groups = animals, append(append([]*Group(nil), h.Groups...), g)
}

// takePigs takes n pigs away. Every pig and group is copied, so that those of
// the real herd keep what they are.
func (h *Herd) takePigs(n int, on Day) {
	pigs := map[*Animal]*Animal{}
	groups := map[*Group]*Group{}
	for i, g := range h.Groups {
		c := *g
		if i == 0 {
			h.Groups = append([]*Group(nil), h.Groups...)
		}
		groups[g], h.Groups[i] = &c, &c
		c.Pigs = nil
	}
	animals := make([]*Animal, len(h.Animals))
	for i, a := range h.Animals {
		c := *a
		c.Group = groups[a.Group]
		c.Group.Pigs = append(c.Group.Pigs, &c)
		pigs[a], animals[i] = &c, &c
	}
	h.Animals = animals
	swap := func(old []*Animal) []*Animal {
		out := make([]*Animal, len(old))
		for i, a := range old {
			out[i] = pigs[a]
		}
		return out
	}
	h.Moves = append([]Moved(nil), h.Moves...)
	for i := range h.Moves {
		h.Moves[i].Pigs = swap(h.Moves[i].Pigs)
	}
	h.Treatments = append([]Given(nil), h.Treatments...)
	for i := range h.Treatments {
		h.Treatments[i].Pigs = swap(h.Treatments[i].Pigs)
	}
	leave := func(named bool) {
		for i := len(animals) - 1; i >= 0 && n > 0; i-- {
			if a := animals[i]; (a.Name != "") == named && a.Group.Arrived <= on && (a.Gone == nil || a.Gone.On > on) {
				gone := dated(Gone{Count: 1, How: Sold}, Record{ID: "assumed", On: on, At: on.At(0, h.location())})
				a.Gone = &gone
				n--
			}
		}
	}
	leave(false)
	leave(true)
}

// location is the zone that the herd's records are in.
func (h *Herd) location() *time.Location {
	if h.Last.IsZero() {
		return time.UTC
	}
	return h.Last.Location()
}
