package model

import "time"

// feedSince is what went into a feeder since it was last full; At is zero where
// it is not known to have been full, or something else came between.
type feedSince struct {
	at       time.Time
	pouredKg float64
}

// poured takes in a pour.
func (s *feedSince) poured(r Refill, part float64, at time.Time) {
	switch {
	case r.Full:
		*s = feedSince{at: at}
	case r.FeedKg == nil, r.FromEmpty:
		*s = feedSince{}
	default:
		s.pouredKg += *r.FeedKg * part
	}
}

// feedFind is a feeder found empty, with what was expected in it, in kg.
type feedFind struct {
	feeder   int
	record   Record
	expected Estimate
	since    feedSince
}

// foundEmpty takes down that a feeder was found empty. From then on it is not
// known to have been full.
func (f *feedFit) foundEmpty(i int, expected Estimate, e feedEvent) {
	if f.feeders[i].from < e.x {
		f.finds = append(f.finds, feedFind{i, e.record, expected, f.spans[i]})
	}
	f.spans[i] = feedSince{}
}

// heed follows what was answered to a question about the record: a span that is
// left out says nothing of the pigs, whatever it ends with.
func (f *feedFit) heed(g gaussian, of []int, e feedEvent) {
	verdict := f.h.verdict(e.record.ID)
	f.usual = verdict == AsUsual
	if verdict != LeftOut {
		return
	}
	for _, i := range of {
		capacity := g.mean[placeCapacity(i)]
		g.widen(placeLevel(i), capacity*capacity)
	}
}
