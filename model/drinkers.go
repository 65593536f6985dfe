package model

import "math"

// Drinkers. A nipple serves ten pigs, and a pen has two at least, since one can
// jam or be guarded: Univ. of Florida IFAS, 4H410 (read, ten pigs at most); the
// two as reported in Farmers Weekly, 1998.
const (
	PigsPerNipple = 10
	LeastNipples  = 2
)

// Flow of a nipple drinker in litres a minute: 0.5 to 1.0 for all but farrowing
// sows (Prairie Hog Country, 2018, citing a reference guide of 2000; read). At
// 0.7, well set, a quarter of it is spilt (Prairie Swine Centre; read).
const (
	LeastFlowLMin = 0.5
	UsualFlowLMin = 0.7
	MostFlowLMin  = 1.0
)

// mostPigs bounds the pigs of a herd that figures are given for.
const mostPigs = 200

// NipplesFor is how many nipples so many pigs (1 to 200, else *OutOfRange)
// want, all in one pen.
func NipplesFor(pigs int) (int, error) {
	if pigs < 1 || pigs > mostPigs {
		return 0, &OutOfRange{"count", float64(pigs), 1, mostPigs}
	}
	return max(LeastNipples, (pigs+PigsPerNipple-1)/PigsPerNipple), nil
}

// FlowClass says how a drinker runs.
type FlowClass string

// The classes of flow.
const (
	FlowLow   FlowClass = "low"   // pigs drink too little
	FlowRight FlowClass = "right" // within the published band
	FlowHigh  FlowClass = "high"  // much is spilt
)

// ClassOfFlow is the class of a flow in litres a minute, measured with a jug and
// a watch, at a low barrel: flow falls with the level (0 to 20, else
// *OutOfRange).
func ClassOfFlow(litresMin float64) (FlowClass, error) {
	const most = 20
	switch {
	case !(litresMin >= 0 && litresMin <= most):
		return "", &OutOfRange{"flow_l_min", litresMin, 0, most}
	case litresMin < LeastFlowLMin:
		return FlowLow, nil
	case litresMin > MostFlowLMin:
		return FlowHigh, nil
	}
	return FlowRight, nil
}

// nippleHeights are set by weight, in cm: Prairie Swine Centre tables, from
// memory.
var nippleHeights = []struct{ weightKg, straightCm, downCm float64 }{
	{15, 35, 45}, {25, 45, 55}, {50, 55, 70}, {75, 65, 80}, {100, 70, 90},
}

// NippleHeightCm is how high a nipple is set for the smallest pig of the pen, by
// its weight (5 to 180 kg, else *OutOfRange): straight out of the wall, or with
// down pointing down at 45 degrees. As a rule it is 5 cm above that pig's
// shoulder (Prairie Swine Centre; read).
//
// Source: Prairie Swine Centre tables from 15 to 100 kg, from memory, with
// straight lines between; beyond both ends height goes with the cube root of
// the weight (computed: the table itself does, to 2 cm).
func NippleHeightCm(weightKg float64, down bool) (float64, error) {
	const leastKg, mostKg = 5, 180
	if !(weightKg >= leastKg && weightKg <= mostKg) {
		return 0, &OutOfRange{"weight_kg", weightKg, leastKg, mostKg}
	}
	height := func(i int) float64 {
		if down {
			return nippleHeights[i].downCm
		}
		return nippleHeights[i].straightCm
	}
	last := len(nippleHeights) - 1
	if weightKg <= nippleHeights[0].weightKg {
		return height(0) * math.Cbrt(weightKg/nippleHeights[0].weightKg), nil
	}
	for i := 1; i <= last; i++ {
		a, b := nippleHeights[i-1].weightKg, nippleHeights[i].weightKg
		if weightKg <= b {
			return height(i-1) + (weightKg-a)/(b-a)*(height(i)-height(i-1)), nil
		}
	}
	return height(last) * math.Cbrt(weightKg/nippleHeights[last].weightKg), nil
}
