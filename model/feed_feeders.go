package model

import (
	"math"
	"strings"
	"time"
)

// meetFeeders lists the feeders set up, and those that only records speak of.
func (f *feedFit) meetFeeders() {
	inf := math.Inf(1)
	for _, s := range f.h.Feeders {
		f.feeders = append(f.feeders, newFeederBelief(*s, inf))
	}
	for _, s := range f.h.retired {
		if len(f.spoken(s.Name, math.Inf(-1))) > 0 {
			continue // it is there again
		}
		f.feeders = append(f.feeders, newFeederBelief(s.Feeder, wallDays(s.at)))
	}
	for _, r := range f.h.Refills {
		f.meet(r.F.Feeder, r.At, r.F.FeedKg)
	}
	for _, r := range f.h.FeedLevels {
		f.meet(r.F.Feeder, r.At, r.F.FeedKg)
	}
	for _, b := range f.feeders {
		if b.capacitySD == 0 { // not stated: only a pour or an amount seen speaks of it
			b.capacityKg *= impliedRoom
			b.capacitySD = impliedSD * b.capacityKg
		}
	}
}

func newFeederBelief(s Feeder, until float64) *feederBelief {
	b := &feederBelief{name: s.Name, from: math.Inf(1), until: until}
	switch {
	case s.CapacityKg != nil:
		b.capacityKg, b.capacitySD = *s.CapacityKg, capacityKgSD**s.CapacityKg
	case s.CapacityL != nil:
		kg := *s.CapacityL * feedDensityKgL
		b.capacityKg, b.capacitySD = kg, capacityLSD*kg
	}
	return b
}

// meet takes note that a record at a moment speaks of a feeder and an amount.
func (f *feedFit) meet(name string, at time.Time, kg *float64) {
	among := f.spoken(name, wallDays(at))
	if len(among) == 0 {
		f.feeders = append(f.feeders, newFeederBelief(Feeder{Name: nameOr(name, "feeder")}, math.Inf(1)))
		among = []int{len(f.feeders) - 1}
	}
	for _, i := range among {
		b := f.feeders[i]
		b.from = min(b.from, wallDays(at))
		if b.capacitySD == 0 && kg != nil {
			b.capacityKg = max(b.capacityKg, *kg/float64(len(among)))
		}
	}
}

// spoken lists the feeders that a record means by a name at a moment; no name
// is every feeder there.
func (f *feedFit) spoken(name string, x float64) []int {
	var out []int
	for i, b := range f.feeders {
		if x < b.until && (name == "" || strings.EqualFold(b.name, name)) {
			out = append(out, i)
		}
	}
	return out
}

func (f *feedFit) lackingCapacity() []string {
	var names []string
	for _, b := range f.feeders {
		if b.capacityKg <= 0 && !math.IsInf(b.from, 1) {
			names = append(names, b.name)
		}
	}
	return names
}

// eating lists the feeders there at a moment that pigs eat from.
func (f *feedFit) eating(x float64) []int {
	var out []int
	for i, b := range f.feeders {
		if b.from <= x && x < b.until {
			out = append(out, i)
		}
	}
	return out
}
