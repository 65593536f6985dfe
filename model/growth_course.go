package model

import "sort"

// WeightSeen is a weighing as the growth of the pigs is learned from it.
type WeightSeen struct {
	On   Day
	Kg   float64 // of each pig, or the mean of several
	By   string  // ByScale, ByTape or ByEye
	Mean bool    // of several pigs together
	Pigs []*Animal
}

// WeightsSeen lists the herd's weighings in the order they were made, a tape
// reading as the weight that it stands for. What the person has said was read
// wrong is left out.
func (h *Herd) WeightsSeen() []WeightSeen {
	var out []WeightSeen
	for _, w := range h.Weighings {
		if h.verdict(w.ID) == LeftOut {
			continue
		}
		kg, by, _ := w.F.stands()
		pigs := h.weighed(w)
		all := len(w.F.Animals) == 1 && w.F.Animals[0] == All
		out = append(out, WeightSeen{On: w.On, Kg: kg, By: by, Mean: all && len(pigs) > 1, Pigs: pigs})
	}
	return out
}

// stands is the weight in kg that a weighing stands for, how it was come by, and
// whether a tape was within the published formulas.
func (w Weigh) stands() (kg float64, by string, within bool) {
	switch {
	case w.GirthCm > 0:
		e, within := ReadTape(w.GirthCm, w.LengthCm)
		return e.Mean, ByTape, within
	case w.By == "":
		return w.WeightKg, ByScale, true
	}
	return w.WeightKg, w.By, true
}

// PigCourse is what a pig weighed, and will weigh, day by day.
type PigCourse struct {
	Animal *Animal
	On     []Day
	Kg     []Interval // 80 %, of the weight a scale would show
}

// WeightCourse gives the weights of each pig on the days of the list on which it
// is there, in the order of arrival. Pigs of which nothing is known are left
// out. Missing "pigs" or "weight" where no pig is left.
func (h *Herd) WeightCourse(days []Day) ([]PigCourse, error) {
	of := map[*Animal]*PigCourse{}
	var lacks error
	for _, on := range days {
		weights, err := h.Weights(on)
		if err != nil { // a day on which nothing is known of any pig
			lacks = err
			continue
		}
		for _, w := range weights {
			c := of[w.Animal]
			if c == nil {
				c = &PigCourse{Animal: w.Animal}
				of[w.Animal] = c
			}
			c.On, c.Kg = append(c.On, on), append(c.Kg, w.WeightKg)
		}
	}
	out := make([]PigCourse, 0, len(of))
	for _, c := range of {
		out = append(out, *c)
	}
	sort.Slice(out, func(i, j int) bool { return out[i].Animal.Number < out[j].Animal.Number })
	if len(out) == 0 {
		if lacks == nil {
			lacks = &Missing{What: "pigs"}
		}
		return nil, lacks
	}
	return out, nil
}
