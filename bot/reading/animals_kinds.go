package reading

import "troughbell/model"

func (r *reader) addGroup(g *model.Group, add func(int16)) {
	for p := range r.alive {
		if r.pigs[p].Group == g {
			add(int16(p))
		}
	}
}

func (r *reader) addSex(it *item, add func(int16)) {
	for p := range r.alive {
		switch sex := r.pigs[p].Sex; {
		case it.is(sBarrow) && (sex == model.Barrow || sex == model.Boar && (it.s == "boys" || it.s == "males")),
			it.is(sGilt) && (sex == model.Gilt || sex == model.Sow && (it.s == "girls" || it.s == "females")),
			it.is(sBoar) && sex == model.Boar, it.is(sSow) && sex == model.Sow:
			add(int16(p))
		}
	}
}

// ageGroup is the youngest or the oldest of several groups of living pigs; nil
// where all are of one age.
func (r *reader) ageGroup(youngest bool) *model.Group {
	var best *model.Group
	groups := 0
	age := func(g *model.Group) model.Day {
		if g.Born != nil {
			return *g.Born
		}
		return g.Arrived
	}
	for _, g := range r.c.Herd.Groups {
		lives := false
		for p := range r.alive {
			if r.pigs[p].Group == g {
				lives = true
				break
			}
		}
		if !lives {
			continue
		}
		groups++
		if best == nil || youngest && age(g) > age(best) || !youngest && age(g) < age(best) {
			best = g
		}
	}
	if groups < 2 {
		return nil
	}
	return best
}
