package model

import "errors"

const (
	// PigDaysPerHa is what a hectare bears in one go, in pig-days at
	// MeanPigKg: 37 pigs for 14 weeks, the rate that kept most cover on
	// bermudagrass (Effects of Growing-Finishing Pig Stocking Rates on
	// Bermudagrass, Animals 10(9), 2020; pig-days computed). 1,470 an acre.
	PigDaysPerHa = 3630.0
	// MeanPigKg is the weight of the pig in PigDaysPerHa: the middle of 18-36 to
	// 118-126 kg in that trial (computed).
	MeanPigKg = 75.0
	// moveDefaultDays is the stay in a pen of unknown size: common practice, no
	// source.
	moveDefaultDays = 14
	// restDays is the rest after which a pen bears its full load again: common
	// practice for grass, no source. Worm eggs outlast it by years.
	restDays = 45
	// moveHorizonDays ends the search for the day: no pig stays so long.
	moveHorizonDays = 400
)

// PenPigDays is what a pen of an area in square metres (more than nothing, up
// to 1e9; outside *OutOfRange) bears before it should rest, in pig-days at
// MeanPigKg.
func PenPigDays(areaM2 float64) (float64, error) {
	if !(areaM2 > 0 && areaM2 <= 1e9) {
		return 0, &OutOfRange{"area_m2", areaM2, 0, 1e9}
	}
	return areaM2 / 1e4 * PigDaysPerHa, nil
}

// MoveDue gives when the pigs should leave their pen: of several pens in use,
// the first. Missing "pen" where no pen is known, "pigs" where no pig is.
func (h *Herd) MoveDue(today Day) (Due, error) {
	if len(h.Alive(today)) == 0 {
		return Due{}, &Missing{What: "pigs"}
	}
	if len(h.Pens) == 0 {
		return Due{}, &Missing{What: "pen"}
	}
	var best *Due
	for _, p := range h.Pens {
		var pigs []*Animal
		for _, a := range h.Alive(today) {
			if h.CurrentPen(a) == p {
				pigs = append(pigs, a)
			}
		}
		if len(pigs) == 0 {
			continue
		}
		d, err := h.leavePen(p, pigs, today)
		if err != nil {
			return Due{}, err
		}
		if best == nil || d.On < best.On {
			best = &d
		}
	}
	if best == nil {
		return Due{}, &Missing{What: "pen"}
	}
	return *best, nil
}

// leavePen is the day on which the pigs have used up what the pen bears.
func (h *Herd) leavePen(p *Pen, pigs []*Animal, today Day) (Due, error) {
	since := h.inPenSince(p, pigs)
	d := Due{Pigs: pigs, Pen: p, Reasons: []Reason{{
		Code: MoveSince, Names: []string{p.Name}, On: since, Q: []Quantity{{float64(max(0, today-since)), Days}},
	}}}
	wet := h.wetDays(p.Soil, since-restDays, max(today, since)+wetLookback)
	if p.AreaM2 == nil {
		worn := 0.0
		for d.On = since; worn < moveDefaultDays; d.On++ {
			worn += wear(wet[d.On])
		}
		d.Reasons = append(d.Reasons, Reason{
			Code: MoveDefaultDays, Names: []string{p.Name},
			Q: []Quantity{{moveDefaultDays, Days}},
		})
		d.addWet(p, wet, since)
		h.addRest(&d, today)
		return d, nil
	}
	bears, err := PenPigDays(*p.AreaM2)
	if err != nil {
		return Due{}, err
	}
	load := 0.0
	for day := since - restDays; day < since; day++ { // an earlier stay counts until the pen has rested
		var there []*Animal
		for _, a := range h.Alive(day) {
			if h.penOn(a, day) == p {
				there = append(there, a)
			}
		}
		more, err := h.penLoad(there, day)
		if err != nil {
			return Due{}, err
		}
		load += more * wear(wet[day])
	}
	soFar := load
	for d.On = since; load < bears && d.On < since+moveHorizonDays; d.On++ {
		more, err := h.penLoad(pigs, d.On)
		if err != nil {
			return Due{}, err
		}
		if load += more * wear(wet[d.On]); d.On < today {
			soFar = load
		}
	}
	d.Reasons = append(d.Reasons, Reason{
		Code: MoveLoad, Names: []string{p.Name},
		Q: []Quantity{{soFar, Count}, {bears, Count}},
	})
	d.addWet(p, wet, since)
	h.addRest(&d, today)
	return d, nil
}

// wear is how many days a day on the ground counts for.
func wear(wet bool) float64 {
	if wet {
		return wetWear
	}
	return 1
}

// addWet says how many days of the stay were wet.
func (d *Due) addWet(p *Pen, wet map[Day]bool, since Day) {
	n := 0
	for day := since; day < d.On; day++ {
		if wet[day] {
			n++
		}
	}
	if n > 0 {
		d.Reasons = append(d.Reasons, Reason{Code: MoveWet, Names: []string{p.Name}, Q: []Quantity{{float64(n), Count}}})
	}
}

// penLoad is the pig-days at MeanPigKg that the pigs make on the day. A pig of
// unknown weight counts as one.
func (h *Herd) penLoad(pigs []*Animal, on Day) (float64, error) {
	if len(pigs) == 0 {
		return 0, nil
	}
	weights, err := h.medianWeights(h.Alive(on), on)
	var missing *Missing
	if err != nil && !errors.As(err, &missing) {
		return 0, err
	}
	kg := byPig(weights)
	load := 0.0
	for _, a := range pigs {
		if a.Group.Arrived > on || a.Gone != nil && a.Gone.On <= on {
			continue
		}
		if w, ok := kg[a]; ok {
			load += w / MeanPigKg
		} else {
			load++
		}
	}
	return load, nil
}
