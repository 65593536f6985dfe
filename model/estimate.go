package model

import "math"

// z80 is the standard normal quantile that leaves 10 % on each side.
const z80 = 1.2815515655446004

// Estimate is a quantity known as a normal distribution.
type Estimate struct {
	Mean, SD float64
}

// Quantile is the value that the quantity stays below with probability p, above 0
// and below 1: else *OutOfRange.
func (e Estimate) Quantile(p float64) (float64, error) {
	if !(p > 0 && p < 1) {
		return 0, &OutOfRange{"probability", p, 0, 1}
	}
	return e.Mean + e.SD*math.Sqrt2*math.Erfinv(2*p-1), nil
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

// Scale multiplies all three by a factor; a negative one turns the interval
// round, so that it nests still. What is not a number stays one.
func (i Interval) Scale(by float64) Interval {
	if by < 0 {
		return Interval{i.High * by, i.Mid * by, i.Low * by}
	}
	return Interval{i.Low * by, i.Mid * by, i.High * by}
}

// DayInterval is a day as its median and 80 % bounds.
type DayInterval struct {
	Low, Mid, High Day
}
