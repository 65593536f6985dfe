package model

import (
	"math"
	"sort"
)

// The time scale of growth is the table's own: a pig at table day 60 weighs
// what the table says a pig of 60 days weighs, whatever its real age.
//
// From 5 to 135 kg the knots are the growth classes of NRC 2012, Nutrient
// Requirements of Swine, 11th ed., Table 16-1, with their daily gains of 0.210,
// 0.335, 0.585, 0.758, 0.900, 0.917 and 0.867 kg: from memory, cross-checked
// against that table's feed and energy columns. The start, 1.4 kg at birth and
// 5.9 kg at 21 days, is that of an Iowa State Extension fact sheet on raising
// pigs, seen in a copy; at its pace a pig weighs 5 kg at about 17 days. Above
// 135 kg the gain is made to decline further: extrapolation, no source.
var growthClasses = []struct {
	fromKg, toKg, gainKgD float64
}{
	{1.4, 5, 3.6 / 17},
	{5, 7, 0.210},
	{7, 11, 0.335},
	{11, 25, 0.585},
	{25, 50, 0.758},
	{50, 75, 0.900},
	{75, 100, 0.917},
	{100, 135, 0.867},
	{135, 150, 0.80},
	{150, 165, 0.72},
	{165, 180, 0.62},
	{180, 220, 0.40},
}

// growthKnot is a class limit on the table: day, weight and the gain there.
type growthKnot struct{ day, kg, gain float64 }

// growthKnots joins the classes into one smooth, rising curve that keeps every
// class's days: a monotone cubic through the class limits, the gain at each
// limit being the harmonic mean of its neighbours weighted by their spans
// (Fritsch and Butland 1984, from memory).
var growthKnots = func() []growthKnot {
	n := len(growthClasses)
	knots := make([]growthKnot, n+1)
	knots[0] = growthKnot{kg: growthClasses[0].fromKg, gain: growthClasses[0].gainKgD}
	for i, c := range growthClasses {
		knots[i+1] = growthKnot{day: knots[i].day + (c.toKg-c.fromKg)/c.gainKgD, kg: c.toKg, gain: c.gainKgD}
	}
	for i := 1; i < n; i++ {
		before, after := knots[i].day-knots[i-1].day, knots[i+1].day-knots[i].day
		w1, w2 := 2*after+before, after+2*before
		knots[i].gain = (w1 + w2) / (w1/growthClasses[i-1].gainKgD + w2/growthClasses[i].gainKgD)
	}
	return knots
}()

// lastTableDay is the day on which the table ends.
var lastTableDay = growthKnots[len(growthKnots)-1].day

// tableWeight is the weight in kg at a day of the table and the gain there in
// kg per table day. Beyond both ends the curve goes on as a straight line, below
// it never under half a kilogram.
func tableWeight(day float64) (kg, gain float64) {
	last := len(growthKnots) - 1
	if day >= growthKnots[last].day {
		k := growthKnots[last]
		return k.kg + (day-k.day)*k.gain, k.gain
	}
	if day < 0 {
		k := growthKnots[0]
		return math.Max(0.5, k.kg+day*k.gain), k.gain
	}
	i := sort.Search(last, func(i int) bool { return growthKnots[i+1].day > day })
	a, b := growthKnots[i], growthKnots[i+1]
	h := b.day - a.day
	x := (day - a.day) / h
	slope := (b.kg - a.kg) / h
	c2 := 3*slope - 2*a.gain - b.gain
	c3 := a.gain + b.gain - 2*slope
	return a.kg + h*x*(a.gain+x*(c2+x*c3)), a.gain + x*(2*c2+3*x*c3)
}

// tableDay is the day of the table on which a pig weighs kg.
func tableDay(kg float64) float64 {
	last := len(growthKnots) - 1
	if kg >= growthKnots[last].kg {
		return growthKnots[last].day + (kg-growthKnots[last].kg)/growthKnots[last].gain
	}
	if kg <= growthKnots[0].kg {
		return (kg - growthKnots[0].kg) / growthKnots[0].gain
	}
	i := sort.Search(last, func(i int) bool { return growthKnots[i+1].kg > kg })
	low, high := growthKnots[i].day, growthKnots[i+1].day
	day := low + (high-low)*(kg-growthKnots[i].kg)/(growthKnots[i+1].kg-growthKnots[i].kg)
	for range 30 { // Newton, held inside the class by bisection
		w, g := tableWeight(day)
		if w < kg {
			low = day
		} else {
			high = day
		}
		next := day - (w-kg)/g
		if next <= low || next >= high {
			next = (low + high) / 2
		}
		if math.Abs(next-day) < 1e-10 {
			return next
		}
		day = next
	}
	return day
}

// The weights in kilograms between which the growth table is given.
const (
	MinTableKg = 1.4
	MaxTableKg = 220.0
)

// TableDays is the days that the published growth table takes from one weight to
// another in kg, negative where the second is the lighter. Both lie between
// MinTableKg and MaxTableKg: else *OutOfRange. Above 135 kg it is extrapolated.
// Its sources stand with the table.
func TableDays(fromKg, toKg float64) (float64, error) {
	for _, kg := range []float64{fromKg, toKg} {
		if !(kg >= MinTableKg && kg <= MaxTableKg) {
			return 0, &OutOfRange{"weight_kg", kg, MinTableKg, MaxTableKg}
		}
	}
	return tableDay(toKg) - tableDay(fromKg), nil
}

// TableGain is the daily gain in kg that the published growth table gives at a
// weight in kg, with the range, error and sources of TableDays.
func TableGain(kg float64) (float64, error) {
	if !(kg >= MinTableKg && kg <= MaxTableKg) {
		return 0, &OutOfRange{"weight_kg", kg, MinTableKg, MaxTableKg}
	}
	return tableGain(kg), nil
}

// tableGain is TableGain of any weight.
func tableGain(kg float64) float64 {
	_, gain := tableWeight(tableDay(kg))
	return gain
}
