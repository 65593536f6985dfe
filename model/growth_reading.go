package model

import (
	"math"
	"strings"
	"time"
)

// growthReading is one thing known of weight: of one pig, or the mean of
// several. It counts for its day, whatever the hour: between morning and evening
// a pig weighs some 3 kg more or less by gut fill (Liu et al., Biosyst. Eng. 2023,
// abstract read), which is in the scatter of a scale; the growth of half a day,
// 0.2 to 0.45 kg, adds less than a twentieth to its variance.
type growthReading struct {
	day     float64
	kg      float64
	by      string
	err     *readingError
	scatter *readingScatter // of its kind in this herd
	pigs    []int           // of a mean; nil for one pig
	wrong   float64         // how likely it is a slip, seen from all the others

	table      float64 // where on the table the fit puts the pig that day
	kgAt, gain float64 // weight and gain there

	said scatterWord // what it says of the scatter of its kind
}

func (f *growthFit) reading(on Day, kg float64, by string) growthReading {
	return growthReading{scatter: f.scatter[by], day: float64(on), kg: kg, by: by, err: readingErrors[by]}
}

// place puts the reading to a day of the table.
func (r *growthReading) place(table float64) {
	r.table = table
	r.kgAt, r.gain = tableWeight(table)
}

// noise is the variance of a reading in table days, a slip allowed for.
func (r *growthReading) noise() float64 {
	return r.noiseKg2(r.kgAt) / (r.gain * r.gain)
}

// noiseKg2 is the variance of a reading of so many kg, in kg squared, a slip
// allowed for.
func (r *growthReading) noiseKg2(kg float64) float64 {
	right := r.sd(kg)
	right *= right
	wrong := right + slipSD*slipSD*kg*kg
	return 1 / ((1-r.wrong)/right + r.wrong/wrong)
}

// sd is the standard deviation of a reading's own error in kg, as such readings
// scatter in this herd.
func (r *growthReading) sd(kg float64) float64 {
	return r.err.sd(kg) * math.Sqrt(r.scatter.ratio)
}

// surelyRight is the chance of a slip that is left of a reading that looked like
// one and that the person stands by.
const surelyRight = 1e-6

// collect reads the herd's weighings and hanging weights into the fit, in the
// order in which they were made.
func (f *growthFit) collect(h *Herd) {
	hung := f.hung(h)
	for _, w := range h.Weighings {
		for len(hung) > 0 && hung[0].at.Before(w.At) {
			hung = f.addFirst(hung)
		}
		if h.verdict(w.ID) == LeftOut {
			continue // the person has said that it was read wrong
		}
		kg, by, within := w.F.stands()
		r := f.reading(w.On, kg, by)
		if !within {
			r.err = readingErrors[byTapeBeyond]
		}
		if h.verdict(w.ID) == AsUsual { // the person stands by it
			right := *r.err
			right.wrong = surelyRight
			r.err = &right
		}
		f.add(h.weighed(w), r, len(w.F.Animals) == 1 && w.F.Animals[0] == All)
	}
	for len(hung) > 0 {
		hung = f.addFirst(hung)
	}
}

// hungReading is a live weight worked back from a hanging weight.
type hungReading struct {
	growthReading
	at   time.Time
	pigs []*Animal
	mean bool
}

func (f *growthFit) addFirst(hung []hungReading) []hungReading {
	f.add(hung[0].pigs, hung[0].growthReading, hung[0].mean)
	return hung[1:]
}

// hung reads the hanging weights.
func (f *growthFit) hung(h *Herd) []hungReading {
	var out []hungReading
	for _, g := range h.Gones {
		if g.F.HangingKg == nil || g.F.How == Died {
			continue
		}
		pigs := h.hung(g)
		if len(pigs) == 0 {
			continue
		}
		all := len(g.F.Animals) > 0 && g.F.Animals[0] == All
		kg := *g.F.HangingKg / dressingFraction
		if all { // a total; else it is per animal
			kg /= float64(len(pigs))
		}
		out = append(out, hungReading{f.reading(pigs[0].Gone.On, kg, byHanging), g.At, pigs, all || len(g.F.Animals) == 0})
	}
	return out
}

// add puts a reading to each of the pigs, or as their mean.
func (f *growthFit) add(pigs []*Animal, r growthReading, mean bool) {
	if r.kg <= 0 || math.IsNaN(r.kg) || math.IsInf(r.kg, 0) {
		return // no pig weighs that: checked when it was recorded
	}
	f.weighed = f.weighed || len(pigs) > 0
	if mean && len(pigs) > 1 {
		for _, a := range pigs {
			r.pigs = append(r.pigs, a.Number)
		}
		f.means.readings = append(f.means.readings, r)
		f.events = append(f.events, nil)
		return
	}
	for _, a := range pigs {
		p := f.pigs[a.Number]
		if p.readings == nil {
			p.readings = make([]growthReading, 0, 24) // a season of weeks
		}
		p.readings = append(p.readings, r)
		f.events = append(f.events, p)
	}
}

// weighed lists the pigs that a weighing speaks of: the living, or for a day
// before they came or after they went, the latest of that name.
func (h *Herd) weighed(w Dated[Weigh]) []*Animal {
	if len(w.F.Animals) == 0 || len(w.F.Animals) == 1 && w.F.Animals[0] == All {
		if among := h.aliveAt(w.At); len(among) > 0 {
			return among
		}
		return h.Alive(w.On)
	}
	pigs := make([]*Animal, 0, len(w.F.Animals))
	for _, n := range w.F.Animals {
		if a := h.named(n, w.At); a != nil {
			pigs = append(pigs, a)
		}
	}
	return pigs
}

// named finds the latest pig of a name that lives at the moment, else the latest
// of that name; nil if there is none.
func (h *Herd) named(name string, at time.Time) *Animal {
	var latest *Animal
	for i := len(h.Animals) - 1; i >= 0; i-- {
		a := h.Animals[i]
		if a.Name == "" || !strings.EqualFold(a.Name, name) {
			continue
		}
		if !a.Group.ArriveAt.After(at) && (a.Gone == nil || a.Gone.At.After(at)) {
			return a
		}
		if latest == nil {
			latest = a
		}
	}
	return latest
}

// hung lists the pigs that a hanging weight speaks of.
func (h *Herd) hung(g Dated[Gone]) []*Animal {
	var same, earlier []*Animal
	for _, a := range h.Animals {
		switch {
		case a.Gone == nil || a.Gone.F.How != g.F.How || a.Gone.At.After(g.At):
		case a.Gone.ID == g.ID && a.Gone.At.Equal(g.At):
			same = append(same, a)
		case len(earlier) > 0 && a.Gone.On > earlier[0].Gone.On:
			earlier = []*Animal{a}
		case len(earlier) == 0 || a.Gone.On == earlier[0].Gone.On:
			earlier = append(earlier, a)
		}
	}
	if len(g.F.Animals) > 0 && g.F.Animals[0] != All {
		var pigs []*Animal
		for _, n := range g.F.Animals {
			if a := h.Animal(n); a != nil && a.Gone != nil {
				pigs = append(pigs, a)
			}
		}
		return pigs
	}
	if len(same) > 0 {
		return same
	}
	return earlier
}
