package model

import "math"

// startOf sets what is known of where a group stood when it came.
func (f *growthFit) startOf(k int, from *Group) {
	g := f.groups[k]
	g.mean, g.sd = openStartDay, openStartSD
	first, sum, n := math.Inf(1), 0.0, 0.0
	read := func(r *growthReading) {
		g.known = true
		g.day = math.Min(g.day, r.day)
		if first = math.Min(first, r.day); r.day <= float64(from.Arrived)+3 {
			sum, n = sum+r.kg, n+1
		}
	}
	for _, p := range f.pigs {
		for i := range p.readings {
			if p.group == k {
				read(&p.readings[i])
			}
		}
	}
	for i := range f.means.readings {
		for _, j := range f.means.readings[i].pigs {
			if f.pigs[j].group == k {
				read(&f.means.readings[i])
				break
			}
		}
	}
	if n > 0 {
		g.weanKg = sum / n
		g.mean = tableDay(g.weanKg)
	}
	early := float64(from.Arrived) - g.day // days weighed before they came
	switch {
	case from.WeightKg != nil:
		day := tableDay(*from.WeightKg)
		_, gain := tableWeight(day)
		g.mean, g.sd = day-early, math.Hypot(guessedStartSD**from.WeightKg+0.3, 0.2*early)/gain
		g.weanKg = *from.WeightKg
		g.known, g.guessed = true, true
	case from.Born != nil && g.day >= float64(*from.Born):
		age := g.day - float64(*from.Born)
		g.mean, g.sd = age, math.Max(ageStartFloor, ageStartSD*age)
		if n == 0 {
			g.weanKg, _ = tableWeight(age)
		}
		g.known, g.guessed = true, true
	}
	if early > 0 || from.Born != nil && int(from.Arrived-*from.Born) > weanedByAge || g.weanKg == 0 {
		g.weanKg = weanedNoneKg
	}
}

// collectSpells reads the spells of sickness.
func (f *growthFit) collectSpells(h *Herd) {
	for _, s := range h.Sicks {
		day := float64(s.On)
		for _, a := range resolve(s.F.Animals, h.aliveAt(s.At)) {
			p := f.pigs[a.Number]
			last := len(p.spells) - 1
			running := last >= 0 && p.spells[last].to >= day
			switch {
			case running && s.F.Well:
				p.spells[last].to = day
			case running:
				p.spells[last].to = day + sickDays
			case !s.F.Well:
				p.spells = append(p.spells, growthSpell{day, day + sickDays})
			}
		}
	}
}
