package model

import "math"

// PigWeight is a pig's weight and gain on a day.
type PigWeight struct {
	Animal   *Animal
	On       Day
	WeightKg Interval
	GainKgD  Interval
	Reasons  []Reason
}

// Weights gives weight and gain of each pig alive on the day, in the order of
// arrival. The day may lie before, between or after the weighings. Missing
// "pigs" or "weight" where nothing is known to start from; pigs of a group of
// which nothing is known are left out where another group's are known.
func (h *Herd) Weights(on Day) ([]PigWeight, error) {
	pigs, err := h.growing(h.Alive(on))
	if err != nil {
		return nil, err
	}
	f := h.growth()
	f.mu.Lock()
	defer f.mu.Unlock()
	told, ok := f.told[on]
	if !ok {
		known := map[*growthPig]PigWeight{}
		for _, p := range pigs {
			w, ok := known[p.like]
			if !ok || p.animal.Name != "" { // its reasons name it
				w = f.weight([]*growthPig{p}, on)
				known[p.like] = w
			}
			w.Animal = p.animal
			told = append(told, w)
		}
		f.told[on] = told
	}
	return append([]PigWeight(nil), told...), nil
}

// MeanWeight is the mean weight of the given pigs on the day, with the interval
// of the mean (pigs of one herd err together). Missing "pigs" or "weight" as in
// Weights.
func (h *Herd) MeanWeight(pigs []*Animal, on Day) (PigWeight, error) {
	known, err := h.growing(pigs)
	if err != nil {
		return PigWeight{}, err
	}
	return h.growth().weight(known, on), nil
}

// ExpectReading is what a reading of the pig on the day would show, in kg, if it
// were right: the forecast widened by the error of the way it is measured
// (ByScale, ByTape, ByEye; another word counts as ByScale). It judges whether a number can be what was said; for
// a tape compare the weight that the girth stands for. Missing "weight" where
// nothing is known of the pig.
func (h *Herd) ExpectReading(a *Animal, on Day, by string) (Estimate, error) {
	pigs, err := h.growing([]*Animal{a})
	if err != nil {
		return Estimate{}, err
	}
	f := h.growth()
	day, variance := f.stand(pigs[0], f.within(pigs[0], on))
	return f.expect(day, variance, by), nil
}

// speed is a group's speed of growth relative to the table, and its SD.
func (f *growthFit) speed(group int) (mean, sd float64) {
	e := make([]float64, len(f.theta))
	own := sharedColumns + 2*group + 1
	e[0], e[own] = 1, 1
	f.info.forward(e)
	return 1 + f.theta[0] + f.theta[own], math.Sqrt(dot(e, e))
}

// growing gives the fitted pigs of which something is known.
func (h *Herd) growing(pigs []*Animal) ([]*growthPig, error) {
	if len(pigs) == 0 {
		return nil, &Missing{What: "pigs"}
	}
	f := h.growth()
	var out []*growthPig
	var names []string
	for _, a := range pigs {
		p := f.pigs[a.Number]
		switch {
		case f.groups[p.group].known:
			out = append(out, p)
		case a.Name != "":
			names = append(names, a.Name)
		}
	}
	if len(out) == 0 {
		return nil, &Missing{What: "weight", Names: names}
	}
	return out, nil
}

// within is the day as the fit counts it, no earlier than the pig's path begins.
func (f *growthFit) within(p *growthPig, on Day) float64 {
	return math.Max(float64(on), f.groups[p.group].day)
}

// gainDays is the span about a day over which gain is told.
const gainDays = 5

// weight gives the mean weight and gain of pigs on a day.
func (f *growthFit) weight(pigs []*growthPig, on Day) PigWeight {
	kinds := alike(pigs)
	curve := f.state(kinds, on)
	s := curve.onTheScale()
	terms := make([]growthTerm, 0, 2*len(kinds))
	gain, share := 0.0, 1/float64(len(pigs))
	for i, a := range kinds {
		from := math.Max(float64(on)-gainDays, f.groups[a.pig.group].day)
		to := from + 2*gainDays
		_, slope := tableWeight(s.days[i])
		terms = append(terms,
			growthTerm{a, to, slope * share / (2 * gainDays)},
			growthTerm{a, from, -slope * share / (2 * gainDays)})
		before, _ := tableWeight(f.path(a.pig, from))
		after, _ := tableWeight(f.path(a.pig, to))
		gain += a.n * (after - before) * share / (2 * gainDays)
	}
	_, variance := f.sum(terms...)
	return PigWeight{
		On:       on,
		WeightKg: Interval{Low: s.at(-z80), Mid: s.at(0), High: s.at(z80)},
		GainKgD:  Estimate{gain, math.Sqrt(variance)}.Interval(),
		Reasons:  f.reasons(pigs, on, curve),
	}
}

// growthState is where pigs stand on a day: the table day of each kind, its SD,
// and how much less their mean strays than one of them does.
type growthState struct {
	kinds     []alikePigs
	days, sds []float64
	together  float64
	terms     []growthTerm
}

// place is where on the table a pig stands on a day. After the last reading it
// does not go back: a spell of loss fades into standing still, then growth.
func (f *growthFit) place(p *growthPig, day float64) float64 {
	mean := f.path(p, day)
	if n := len(p.readings); n > 0 && p.readings[n-1].day < day {
		mean = math.Max(mean, p.readings[n-1].table)
	}
	return mean
}

// median is the mean of the pigs' median weights on a day.
func (f *growthFit) median(kinds []alikePigs, on Day) float64 {
	sum, pigs := 0.0, 0.0
	for _, a := range kinds {
		kg, _ := tableWeight(f.place(a.pig, f.within(a.pig, on)))
		sum += a.n * kg
		pigs += a.n
	}
	return sum / pigs
}

// state gives where pigs stand on a day.
func (f *growthFit) state(kinds []alikePigs, on Day) growthState {
	var s growthState
	f.stateInto(&s, kinds, on)
	return s
}

// stateInto is state into what was used before.
func (f *growthFit) stateInto(s *growthState, kinds []alikePigs, on Day) {
	n := len(kinds)
	if cap(s.terms) < n {
		room := make([]float64, 2*n)
		s.days, s.sds, s.terms = room[:n:n], room[n:], make([]growthTerm, n)
	}
	s.kinds, s.together = kinds, 1
	pigs := 0.0
	for i, a := range kinds {
		day := f.within(a.pig, on)
		s.days[i] = f.place(a.pig, day)
		_, gain := tableWeight(s.days[i])
		s.terms[i] = growthTerm{a, day, gain}
		pigs += a.n
	}
	variance := f.spread(s.terms, s.sds)
	if pigs > 1 {
		sum := 0.0
		for i, t := range s.terms {
			sum += t.n * t.coef * s.sds[i]
		}
		s.together = math.Min(1, math.Sqrt(variance+f.common(s.terms))/sum)
	}
}

// common is the variance that several pigs' straying in common since the last
// reading adds to a sum of their table days. The fit takes pigs to stray each on
// its own, so that what they did in common up to then stands in their readings,
// and what they will do is added here.
func (f *growthFit) common(terms []growthTerm) float64 {
	last, sum, pigs := 0.0, 0.0, 0.0
	for _, t := range terms {
		if n := len(t.pig.readings); n > 0 {
			last = math.Max(last, t.pig.readings[n-1].day)
		}
		sum += t.n * t.coef
		pigs += t.n
	}
	for _, r := range f.means.readings {
		last = math.Max(last, math.Min(r.day, terms[0].day))
	}
	last = math.Max(last, f.groups[terms[0].pig.group].day)
	days := math.Max(0, terms[0].day-last)
	since := strayed(days, faded(days), faded(days))
	return strayedTogether * strayedTogether * since * sum * sum * (1 - 1/pigs)
}

// onTheScale widens the state by what a scale shows about a pig's own curve: gut
// fill and posture, which are part of what a pig weighs on a day.
func (s growthState) onTheScale() growthState {
	w := growthState{kinds: s.kinds, days: s.days, sds: make([]float64, len(s.sds)), together: 1}
	curve, wide, own, pigs := 0.0, 0.0, 0.0, 0.0 // kg
	for i, day := range s.days {
		n := s.kinds[i].n
		kg, gain := tableWeight(day)
		scatter := readingErrors[ByScale].sd(kg)
		w.sds[i] = math.Hypot(s.sds[i], scatter/gain)
		curve += n * gain * s.sds[i]
		wide += n * gain * w.sds[i]
		own += n * scatter * scatter
		pigs += n
	}
	if pigs > 1 {
		own += strayedTogether * strayedTogether * own * (pigs - 1)
	}
	w.together = math.Min(1, math.Hypot(s.together*curve, math.Sqrt(own))/wide)
	return w
}

// at is the mean weight of the pigs z standard deviations from its median.
func (s growthState) at(z float64) float64 {
	sum, pigs := 0.0, 0.0
	for i, day := range s.days {
		kg, _ := tableWeight(day + z*s.together*s.sds[i])
		sum += s.kinds[i].n * kg
		pigs += s.kinds[i].n
	}
	return sum / pigs
}
