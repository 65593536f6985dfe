package model

import (
	"math"
	"time"
)

// FeedFill is what a feeder took until it was full, against what it was expected
// to take.
type FeedFill struct {
	Record   string // its ID
	Feeder   string
	At       time.Time
	TookKg   float64
	Expected Interval // kg
	// Since is when the feeder was full before, UsedKg what left it since; zero
	// where it is not known to have been full.
	Since  time.Time
	UsedKg float64
	// Closed says that the two were full to full, far enough apart to be judged, with
	// pigs that had settled in.
	Closed bool
	// Before and After are the herd's appetite as a factor on the published table, as
	// it was believed before the fill and with what it taught.
	Before, After float64
	// SDKg is the standard error of what it was expected to take.
	SDKg float64
	// Strange says that it took so much or so little that the span before it
	// teaches less of the herd: beyond 2 standard errors.
	Strange bool
}

// FeedFills lists the fills to the brim whose amount was told and of which
// something could be expected, in the order of time: none of a feeder's first
// fill, none that found the feeder empty. It is empty where the herd's weights
// or a capacity are unknown.
func (h *Herd) FeedFills() []FeedFill {
	if len(h.Refills) == 0 {
		return nil
	}
	return append([]FeedFill(nil), h.feeding().fills...)
}

// WantKg is what was expected to have left the feeder since it was full.
func (f FeedFill) WantKg() float64 { return f.UsedKg - f.TookKg + f.Expected.Mid }

// taught takes down what the record at hand has taught of the appetite.
func (f *feedFit) taught(g gaussian, record string) {
	for i := len(f.fills) - 1; i >= 0 && f.fills[i].Record == record; i-- {
		f.fills[i].After = math.Exp(g.mean[placeAppetite])
	}
}

// tookToFill holds a pour that filled a feeder against the room that was
// expected in it.
func (f *feedFit) tookToFill(g gaussian, i int, kg float64, e feedEvent) {
	if f.feeders[i].from >= e.x {
		return
	}
	w := f.levelUnder(i, 1)
	short, variance := g.along(w)
	sd := math.Sqrt(variance + math.Pow(brimSD*g.mean[placeCapacity(i)], 2))
	room := Estimate{-short, sd}.Interval()
	fill := FeedFill{
		Record: e.record.ID, Feeder: f.feeders[i].name, At: e.record.At, TookKg: kg, SDKg: sd,
		Expected: Interval{max(room.Low, 0), max(room.Mid, 0), room.High},
		Strange:  math.Abs(kg+short) > strange*sd,
	}
	if s := f.spans[i]; !s.at.IsZero() {
		fill.Since, fill.UsedKg = s.at, s.pouredKg+kg
	}
	fill.Closed = f.judged(fill)
	fill.Before = math.Exp(g.mean[placeAppetite])
	fill.After = fill.Before
	f.fills = append(f.fills, fill)
}
