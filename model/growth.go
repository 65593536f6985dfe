package model

// growthFit is what the herd's weighings say of its growth.
type growthFit struct{}

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
// "pigs" or "weight" where nothing is known to start from.
func (h *Herd) Weights(on Day) ([]PigWeight, error) { panic("growth") }

// MeanWeight is the mean weight of the given pigs on the day, with the interval
// of the mean (pigs of one herd err together).
func (h *Herd) MeanWeight(pigs []*Animal, on Day) (PigWeight, error) { panic("growth") }

// ExpectReading is what a reading of the pig on the day would show if it were
// right: the forecast widened by the error of the way it is measured (ByScale,
// ByTape, ByEye). It judges whether a number can be what was said.
func (h *Herd) ExpectReading(a *Animal, on Day, by string) (Estimate, error) { panic("growth") }

// TargetDay is when a weight is reached.
type TargetDay struct {
	Days    DayInterval
	Already bool // reached on or before today
}

// TargetFigure is when the herd reaches a weight.
type TargetFigure struct {
	TargetKg float64
	Herd     TargetDay   // median day on which the mean of the herd reaches it
	Groups   []TargetDay // for each of Herd.Groups that has living pigs, in order
	Animals  map[*Animal]TargetDay
	Reasons  []Reason
}

// Target gives the days on which herd, groups and pigs reach targetKg, seen
// from today. Already there: today.
func (h *Herd) Target(targetKg float64, today Day) (TargetFigure, error) { panic("growth") }
