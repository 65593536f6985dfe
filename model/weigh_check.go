package model

// weighCheckPart is the part of the target from which a check of the tape on a
// scale holds for the target's weight: the logarithm of 1.5, 0.4, times what the
// bias may slope leaves less than 2 % open. Judgement.
const weighCheckPart = 2.0 / 3

// tapeCheckDue says that the tape should be held against the scale again on the
// day, and against what it was held last. Only where the person has both: some
// living pig was taped, and some was put on a scale.
func (h *Herd) tapeCheckDue(pigs []*Animal, on Day) (Reason, bool) {
	f := h.growth()
	taped := false
	var scale *growthReading
	see := func(r *growthReading) {
		switch {
		case r.by == ByTape:
			taped = true
		case r.by == ByScale && (scale == nil || r.day >= scale.day):
			scale = r
		}
	}
	of := map[int]bool{}
	for _, a := range pigs {
		of[a.Number] = true
		p := f.pigs[a.Number]
		for i := range p.readings {
			see(&p.readings[i])
		}
	}
	for i := range f.means.readings {
		r := &f.means.readings[i]
		for _, j := range r.pigs {
			if of[j] {
				see(r)
				break
			}
		}
	}
	enough := weighCheckPart * h.TargetKg
	if !taped || scale == nil || scale.kg >= enough {
		return Reason{}, false
	}
	w, err := h.MeanWeight(pigs, on)
	if err != nil || w.WeightKg.Mid < enough {
		return Reason{}, false
	}
	return Reason{Code: ReasonWeighCheck, On: Day(scale.day), Q: []Quantity{{scale.kg, Kilograms}}}, true
}
