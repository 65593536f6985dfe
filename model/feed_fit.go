package model

import (
	"math"
	"sort"
	"strings"
	"time"
)

// What is believed of a herd's feeders before anything was seen, and how well
// things are read. Judgement unless a source stands beside it.
const (
	// appetiteSD is the spread of herds' feed use round the intake table,
	// appetite and waste in one: published groups lie 7 to 10 % below it
	// (Schinckel's pigs) and 6 to 18 % above (Lauridsen et al., 1999).
	appetiteSD = 0.15
	// appetiteDays is the time in which what was learned of a herd fades.
	appetiteDays = 730.0

	capacityKgSD = 0.05 // of a capacity given by weight, relative
	capacityLSD  = 0.08 // of one given by volume, relative
	// feedDensityKgL turns a feeder's volume into complete ground feed: 38 lb to
	// the cubic foot, from memory; ground corn alone is given as 0.60 to 0.64
	// (FAO manual S4314E, Appendix XI). It makes 280 lb of a 55 gallon drum.
	feedDensityKgL = 0.61
	impliedRoom    = 1.25 // capacity over the largest pour, where none is stated
	impliedSD      = 0.30

	shareSD     = 0.4           // of the log of a feeder's share of the use
	shareDrift2 = 0.1 * 0.1 / 7 // its variance gained a day
	pourSD      = 0.01          // of an amount poured, relative
	brimSD      = 0.02          // of "full", relative to capacity
	eyeSD       = 0.07          // of a level by eye, relative to capacity
	emptySD     = 0.02          // of "empty", relative to capacity
	kgSeenSD    = 0.10          // of kilograms judged by eye, relative
	daysSeenSD  = 0.30          // of the days a person thinks feed will last
	strange     = 2.0           // standard errors from which a span teaches less
	leftOut     = 3.0           // and from which it is said to be left out
	freshDays   = 3.0           // a first fill so soon after the pigs came found it empty
	leftBefore  = 0.2           // of capacity, in a feeder first spoken of later
	// leastCapacity is of the capacity first expected: no feeder holds less.
	leastCapacity = 0.05
)

// feedFit is what the records say of the feeders: the joint belief after each
// record about the herd's appetite and each feeder's level, capacity and share.
type feedFit struct {
	h       *Herd
	use     *herdUse
	feeders []*feederBelief
	steps   []feedStep
	odd     []oddSpan
	fills   []FeedFill
	err     error // weights missing, or a capacity
}

// feederBelief is one feeder as the fit knows it.
type feederBelief struct {
	name       string
	capacityKg float64 // expected at first
	capacitySD float64
	from       float64 // wall days of the first record of it; +Inf: none
	until      float64 // wall days at which it was taken away; +Inf: still there
}

// feedStep is the belief right after a record.
type feedStep struct {
	x     float64
	g     gaussian
	marks []feedMark // one a feeder
}

// feedMark is the latest record of a feeder's level.
type feedMark struct {
	said bool
	at   time.Time
	seen time.Time // when its level was last seen, not only feed poured; zero: never
}

// oddSpan is a span whose use was too strange to learn from in full.
type oddSpan struct {
	feeder string
	on     Day
	at     time.Time
}

// Places in the joint belief: the log of the appetite, then three a feeder.
const placeAppetite = 0

func placeLevel(i int) int    { return 1 + 3*i }
func placeCapacity(i int) int { return 2 + 3*i }
func placeShare(i int) int    { return 3 + 3*i }

func (f *feedFit) size() int { return 1 + 3*len(f.feeders) }

// feeding gives the fit of the herd's feed records.
func (h *Herd) feeding() *feedFit {
	return h.figures.feed.get(func() *feedFit { return fitFeed(h, h) })
}

// fitFeed walks through the records of feed in their order.
func fitFeed(h *Herd, w weigher) *feedFit {
	f := &feedFit{h: h, use: newHerdUse(h, w)}
	f.meetFeeders()
	if lacking := f.lackingCapacity(); len(lacking) > 0 {
		f.err = &Missing{What: "capacity", Names: lacking}
		return f
	}
	g := f.prior()
	marks := make([]feedMark, len(f.feeders))
	x := math.Inf(-1)
	for _, e := range f.events() {
		if !math.IsInf(x, -1) {
			if f.err = f.advance(g, x, max(x, e.x)); f.err != nil {
				return f
			}
		}
		x = max(x, e.x)
		if f.err = f.learn(g, marks, e, x); f.err != nil {
			return f
		}
		f.steps = append(f.steps, feedStep{x, g.clone(), append([]feedMark(nil), marks...)})
	}
	return f
}

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

// prior is the belief before the first record.
func (f *feedFit) prior() gaussian {
	g := newGaussian(f.size())
	g.widen(placeAppetite, appetiteSD*appetiteSD)
	for i, b := range f.feeders {
		g.mean[placeCapacity(i)] = b.capacityKg
		g.widen(placeCapacity(i), b.capacitySD*b.capacitySD)
		if b.capacityKg > 0 {
			g.mean[placeShare(i)] = math.Log(b.capacityKg)
		}
		g.widen(placeShare(i), shareSD*shareSD)
	}
	return g
}

// feedEvent is one record that speaks of feeders.
type feedEvent struct {
	x      float64
	record Record
	fact   Fact
}

// events lists what speaks of feeders in the order of time; at one moment what
// was seen comes before what was poured.
func (f *feedFit) events() []feedEvent {
	var out []feedEvent
	for _, l := range f.h.FeedLevels {
		out = append(out, feedEvent{wallDays(l.At), l.Record, l.F})
	}
	for _, a := range f.h.Alarms {
		if a.F.What == AlarmNoFeed && !a.F.Over {
			out = append(out, feedEvent{wallDays(a.At), a.Record, a.F})
		}
	}
	for _, r := range f.h.Refills {
		out = append(out, feedEvent{wallDays(r.At), r.Record, r.F})
	}
	sort.SliceStable(out, func(i, j int) bool { return out[i].record.At.Before(out[j].record.At) })
	return out
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
