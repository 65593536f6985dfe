package model

import "slices"

// stallsFound gathers the weighings that show a stall, by day.
type stallsFound struct{ days []stallDay }

// stallDay is what one day's weighings show.
type stallDay struct {
	on      Day
	stalls  []GrowthStall
	worst   int // of stalls
	z       float64
	settled bool // the person stands by one of them
}

// add takes in a stall that falls short by z standard errors, with what was
// answered of it.
func (f *stallsFound) add(s GrowthStall, z float64, verdict string) {
	i := slices.IndexFunc(f.days, func(d stallDay) bool { return d.on == s.On })
	if i < 0 {
		i = len(f.days)
		f.days = append(f.days, stallDay{on: s.On})
	}
	d := &f.days[i]
	switch {
	case verdict == AsUsual:
		d.settled = true
	case verdict == LeftOut:
	default:
		if len(d.stalls) == 0 || z > d.z {
			d.worst, d.z = len(d.stalls), z
		}
		d.stalls = append(d.stalls, s)
	}
}

// list gives one stall a day, the worst, with the others named.
func (f *stallsFound) list() []GrowthStall {
	var out []GrowthStall
	for _, d := range f.days {
		if d.settled || len(d.stalls) == 0 {
			continue
		}
		s := d.stalls[d.worst]
		pigs := 0.0
		for i, o := range d.stalls {
			if i != d.worst && (o.From != s.From || len(o.Animals) == 0 || len(s.Animals) == 0 || slices.Contains(s.Animals, o.Animals[0]) || slices.Contains(s.Also, o.Animals[0])) {
				continue // it is no part of the same sentence
			}
			if i != d.worst {
				s.Also = append(s.Also, o.Animals...)
			}
			pigs++
			s.EachGainKg += (o.GainKg - s.EachGainKg) / pigs
			s.EachWantKg += (o.WantKg - s.EachWantKg) / pigs
		}
		out = append(out, s)
	}
	return out
}
