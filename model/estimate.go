package model

import "math"

// z80 is the standard normal quantile that leaves 10 % on each side.
const z80 = 1.2815515655446004

// Estimate is a quantity known as a normal distribution.
type Estimate struct {
	Mean, SD float64
}

// Quantile is the value that the quantity stays below with probability p,
// 0 < p < 1.
func (e Estimate) Quantile(p float64) float64 {
	return e.Mean + e.SD*math.Sqrt2*math.Erfinv(2*p-1)
}

// Interval is the 80 % interval of the estimate around its mean.
func (e Estimate) Interval() Interval {
	return Interval{Low: e.Mean - z80*e.SD, Mid: e.Mean, High: e.Mean + z80*e.SD}
}

// Interval is a quantity as its median and the bounds that hold it in 80 of 100
// cases.
type Interval struct {
	Low, Mid, High float64
}

// Scale multiplies all three by a factor, which must not be negative.
func (i Interval) Scale(by float64) Interval {
	return Interval{i.Low * by, i.Mid * by, i.High * by}
}

// DayInterval is a day as its median and 80 % bounds.
type DayInterval struct {
	Low, Mid, High Day
}
