package model

// penOn is the pen the pig was in at the end of the day: that of its latest
// move by then, else the one said to be in use, else the only one; nil where
// none is known.
func (h *Herd) penOn(a *Animal, on Day) *Pen {
	for i := len(h.Moves) - 1; i >= 0; i-- {
		if h.Moves[i].On > on {
			continue
		}
		for _, p := range h.Moves[i].Pigs {
			if p == a {
				return h.Moves[i].Pen
			}
		}
	}
	for _, p := range h.Pens {
		if p.InUse {
			return p
		}
	}
	if len(h.Pens) == 1 {
		return h.Pens[0]
	}
	return nil
}

// inPenSince is the day on which the first of the pigs came into the pen they
// are in: by a move, else when the pen was said to be in use or the pig came,
// whichever is later.
func (h *Herd) inPenSince(p *Pen, pigs []*Animal) Day {
	var first Day
	for i, a := range pigs {
		since, moved := h.movedIn(p, a)
		if !moved {
			since = a.Group.Arrived
			if !p.Since.IsZero() {
				since = max(since, DayOf(p.Since))
			}
		}
		if i == 0 || since < first {
			first = since
		}
	}
	return first
}

// movedIn is the day of the move that brought the pig into the pen, the first of
// several in a row.
func (h *Herd) movedIn(p *Pen, a *Animal) (day Day, moved bool) {
	for i := len(h.Moves) - 1; i >= 0; i-- {
		for _, x := range h.Moves[i].Pigs {
			if x != a {
				continue
			}
			if h.Moves[i].Pen != p {
				return day, moved
			}
			day, moved = h.Moves[i].On, true
		}
	}
	return day, moved
}

// addRest says how long pens should rest and which of the others has rested
// longest; a pen never used, since the first pigs came.
func (h *Herd) addRest(d *Due, today Day) {
	var rested *Pen
	var longest Day
	for _, p := range h.Pens {
		if p == d.Pen {
			continue
		}
		left, used := h.leftOn(p, today)
		if !used {
			left = h.Animals[0].Group.Arrived
		}
		if rest := today - left; rest > longest || !used && rest == longest {
			rested, longest = p, rest
		}
	}
	d.Reasons = append(d.Reasons, Reason{Code: MoveRest, Q: []Quantity{{restDays, Days}}})
	if rested != nil {
		d.Reasons = append(d.Reasons, Reason{
			Code: MoveRested, Names: []string{rested.Name},
			Q: []Quantity{{float64(longest), Days}},
		})
	}
}

// leftOn is the last day on which a pig stood in the pen; false where none ever
// did.
func (h *Herd) leftOn(p *Pen, today Day) (last Day, used bool) {
	if len(h.Animals) == 0 {
		return 0, false
	}
	for day := today; day >= h.Animals[0].Group.Arrived; day-- {
		for _, a := range h.Alive(day) {
			if h.penOn(a, day) == p {
				return day, true
			}
		}
	}
	return 0, false
}
