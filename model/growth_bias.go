package model

import "math"

// What a tape's error is over weight. A girth formula that is made for other pigs
// errs by another share at another weight: against the Kansas State line, the
// line of 223 finishers (J. Anim. Sci. meeting abstract) reads 3 % more at 34 kg
// and 6 % more at 106 kg, that of 400 smallholder pigs (Kabululu, PLoS ONE 18(12)
// e0295433, 2023) 3 and 23 % less, the cube rule of ReadTape 15 and 9 % less (all
// abstracts read, the shares computed). So the herd's bias is a level at
// tapeMiddleKg and a slope over the logarithm of weight, and one check on light
// pigs says less of heavy ones. Over a unit of that logarithm the slopes of these
// lines are 0.8 of what their levels are (root mean squares, computed), and level
// and slope together come to 5 % in the mean over the trial's range (judgement).
const (
	tapeLevelSD  = 0.0465
	tapeSlopeSD  = 0.037
	tapeMiddleKg = 53.0 // of the Kansas State trial's range, on that scale
	tapeLeastKg  = 22.7 // its ends, beyond which the bias is taken to stay
	tapeMostKg   = 123.8
)

// tapeLean is where a weight lies over which the tape's bias has its slope.
func tapeLean(kg float64) float64 {
	return math.Log(math.Max(tapeLeastKg, math.Min(tapeMostKg, kg)) / tapeMiddleKg)
}

// lean puts into a row of the shared unknowns how a reading of kg moves with the
// bias of its kind, by so many units for each part of one.
func (e *readingError) lean(row []float64, kg, by float64) {
	if e.column == biasNone {
		return
	}
	row[e.column] += by
	if e.column == biasTape {
		row[biasTapeSlope] += by * tapeLean(kg)
	}
}

// bias is the learned bias of a kind of reading at a weight and its SD, relative.
func (f *growthFit) bias(e *readingError, kg float64) (mean, sd float64) {
	if e.column == biasNone {
		return 0, 0
	}
	var room sharedRoom
	row := room.of(len(f.theta))
	e.lean(row, kg, 1)
	mean = dot(row, f.theta)
	return mean, math.Sqrt(f.sharedVariance(row))
}

// alikeShape is the correlation of what a pig's shape makes of two of its girths,
// by the weights it had: it loses all but a part in e when the weight changes by
// a factor of e. Judgement, no source.
func alikeShape(a, b float64) float64 {
	return math.Min(a, b) / math.Max(a, b)
}
