package model

import (
	"math"
	"sort"
	"time"
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
	spans   []feedSince // one a feeder: what it took since it was full
	finds   []feedFind
	usual   bool  // the record at hand was said to be as usual, strange as it is
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
	f.spans = make([]feedSince, len(f.feeders))
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
