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
	day, variance := f.sum(growthTerm{pigs[0], f.within(pigs[0], on), 1})
	kg, gain := tableWeight(day)
	e, ok := readingErrors[by]
	if !ok {
		by = ByScale
		e = readingErrors[by]
	}
	if by == ByTape && (kg < girthLine(tapeLowCm) || kg > girthLine(tapeHighCm)) {
		e = readingErrors[byTapeBeyond]
	}
	own := math.Hypot(e.sd(kg)*math.Sqrt(f.scatter[by].ratio), e.shape*kg)
	bias, sure := 0.0, 0.0
	if e.column != biasNone {
		bias, sure = f.bias(e.column)
	}
	return Estimate{
		Mean: kg * (1 + bias),
		SD:   math.Sqrt(gain*gain*variance + own*own + kg*kg*sure*sure),
	}, nil
}

// bias is the learned bias of a kind of reading and its SD, relative.
func (f *growthFit) bias(column int) (mean, sd float64) {
	e := make([]float64, len(f.theta))
	e[column] = 1
	f.info.forward(e)
	return f.theta[column], math.Sqrt(dot(e, e))
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
	curve := f.state(pigs, on)
	s := curve.onTheScale()
	terms := make([]growthTerm, 0, 2*len(pigs))
	gain, share := 0.0, 1/float64(len(pigs))
	for i, p := range pigs {
		from := math.Max(float64(on)-gainDays, f.groups[p.group].day)
		to := from + 2*gainDays
		_, slope := tableWeight(s.days[i])
		terms = append(terms,
			growthTerm{p, to, slope * share / (2 * gainDays)},
			growthTerm{p, from, -slope * share / (2 * gainDays)})
		before, _ := tableWeight(f.path(p, from))
		after, _ := tableWeight(f.path(p, to))
		gain += (after - before) * share / (2 * gainDays)
	}
	_, variance := f.sum(terms...)
	return PigWeight{
		On:       on,
		WeightKg: Interval{Low: s.at(-z80), Mid: s.at(0), High: s.at(z80)},
		GainKgD:  Estimate{gain, math.Sqrt(variance)}.Interval(),
		Reasons:  f.reasons(pigs, on, curve),
	}
}

// growthState is where pigs stand on a day: the table day of each, its SD, and
// how much less their mean strays than one of them does.
type growthState struct {
	days, sds []float64
	together  float64
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
func (f *growthFit) median(pigs []*growthPig, on Day) float64 {
	sum, known := 0.0, map[*growthPig]float64{}
	for _, p := range pigs {
		kg, ok := known[p.like]
		if !ok {
			kg, _ = tableWeight(f.place(p, f.within(p, on)))
			known[p.like] = kg
		}
		sum += kg
	}
	return sum / float64(len(pigs))
}

// state gives where pigs stand on a day.
func (f *growthFit) state(pigs []*growthPig, on Day) growthState {
	s := growthState{days: make([]float64, len(pigs)), together: 1}
	terms := make([]growthTerm, len(pigs))
	seen := map[*growthPig]int{}
	for i, p := range pigs {
		day := f.within(p, on)
		if j, ok := seen[p.like]; ok {
			s.days[i] = s.days[j]
		} else {
			s.days[i] = f.place(p, day)
			seen[p.like] = i
		}
		_, gain := tableWeight(s.days[i])
		terms[i] = growthTerm{p, day, gain}
	}
	sds, variance := f.spread(terms)
	s.sds = sds
	if len(pigs) > 1 {
		sum := 0.0
		for i, t := range terms {
			sum += t.coef * sds[i]
		}
		s.together = math.Min(1, math.Sqrt(variance+f.common(terms))/sum)
	}
	return s
}

// common is the variance that several pigs' straying in common since the last
// reading adds to a sum of their table days. The fit takes pigs to stray each on
// its own, so that what they did in common up to then stands in their readings,
// and what they will do is added here.
func (f *growthFit) common(terms []growthTerm) float64 {
	last, sum := 0.0, 0.0
	for _, t := range terms {
		if n := len(t.pig.readings); n > 0 {
			last = math.Max(last, t.pig.readings[n-1].day)
		}
		sum += t.coef
	}
	for _, r := range f.means.readings {
		last = math.Max(last, math.Min(r.day, terms[0].day))
	}
	last = math.Max(last, f.groups[terms[0].pig.group].day)
	days := math.Max(0, terms[0].day-last)
	since := strayed(days, faded(days), faded(days))
	return strayedTogether * strayedTogether * since * sum * sum * (1 - 1/float64(len(terms)))
}

// onTheScale widens the state by what a scale shows about a pig's own curve: gut
// fill and posture, which are part of what a pig weighs on a day.
func (s growthState) onTheScale() growthState {
	w := growthState{days: s.days, sds: make([]float64, len(s.sds)), together: 1}
	curve, wide, own := 0.0, 0.0, 0.0 // kg
	for i, day := range s.days {
		kg, gain := tableWeight(day)
		scatter := readingErrors[ByScale].sd(kg)
		w.sds[i] = math.Hypot(s.sds[i], scatter/gain)
		curve += gain * s.sds[i]
		wide += gain * w.sds[i]
		own += scatter * scatter
	}
	if n := float64(len(s.days)); n > 1 {
		own += strayedTogether * strayedTogether * own * (n - 1)
	}
	w.together = math.Min(1, math.Hypot(s.together*curve, math.Sqrt(own))/wide)
	return w
}

// at is the mean weight of the pigs z standard deviations from its median.
func (s growthState) at(z float64) float64 {
	sum := 0.0
	for i, day := range s.days {
		kg, _ := tableWeight(day + z*s.together*s.sds[i])
		sum += kg
	}
	return sum / float64(len(s.days))
}
