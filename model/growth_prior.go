package model

import "math"

// What is taken for known of pigs in general, before a herd has said anything.
// Speeds are relative to the table: 1 is a table day for every real day.
//
// The mean speed is the table's own, and is not fitted to any one herd: a mean
// fitted to one set of pigs fails on the next. The table stands for lean pigs in
// good health, outdoor crosses grow at 0.7 to 1.0 of it and good hybrids at 1.1,
// so the herd's speed is left wide instead. Nor does sex change it: barrows gained
// 956 and gilts 919 g a day in one set of commercial pigs (Midwest ASAS 2014,
// abstract read), 2 % either way where a pig's own speed strays by 18 %, and no
// data at hand could tell whether that holds outdoors.
const (
	herdSpeedSD  = 0.11 // lasting from batch to batch: feed, land, breed
	groupSpeedSD = 0.08 // of one batch about its herd

	// A pig's own speed starts at its batch's, strays and fades back: daily gain
	// over eleven weeks varies by 10 % between pigs (Lauridsen et al. 1999,
	// computed from the published data set), which this gives, while early speed
	// says little about later speed.
	pigSpeedSD   = 0.18
	pigSpeedDays = 25.0

	// The part of what strays that the pigs of a herd have in common: a week's
	// weather, a batch of feed, a weighing before or after the meal. Judgement: it
	// brings the errors of herd means in line with those of pigs.
	strayedTogether = 0.4

	// Pigs of a batch differ by some 15 % in weight (Tolosa et al. 2021, read), a
	// week of growth either way.
	pigStartDays = 6.0

	// Where nothing is said of the start, the first weighing tells it.
	openStartDay   = 60.0
	openStartSD    = 60.0
	ageStartSD     = 0.12 // of the age, in table days; common practice, no source
	ageStartFloor  = 4.0
	startTail      = 2.0  // degrees of freedom: an arrival weight may be far off
	guessedStartSD = 0.10 // of the weight said on arrival; common practice, no source

	// Pigs fresh from the sow stand still for a while: the table overshoots them
	// by about 2.5 kg in the first two weeks, six table days of their growth.
	// Common practice, no published source; fades out between 8 and 14 kg.
	weanedLagDays  = 6.0
	weanedOverDays = 14.0
	weanedFullKg   = 8.0
	weanedNoneKg   = 14.0
	weanedByAge    = 56 // days; an older pig was weaned long ago

	// A sick pig grows at about half its speed, give or take; without a word that
	// it is well again a spell counts for a week. Judgement, no source.
	sickSlow   = 0.5
	sickSlowSD = 0.3
	sickDays   = 7
)

// What all pigs of a herd share. The biases are which error a reading shares with
// others of its kind, besides its own.
const (
	biasTape      = iota + 1 // columns of the shared unknowns; 0 is the herd's speed
	biasTapeSlope            // over the logarithm of weight
	biasEye
	biasHanging
	heatSlow // how much heat slows, off heatGainPerFeed
	sharedColumns
	biasNone = -1
)

// readingError is how a kind of reading errs: SD is hypot(kg, rel of the
// weight) for one reading; bias is the SD of what the whole herd's readings
// share, shape of what one pig's readings share, both relative; wrong is the
// chance of a slip, a number misread or put to the wrong pig.
type readingError struct {
	kg, rel, bias, shape, wrong float64
	column                      int
}

// The errors of readings. Scale: gut fill and posture, some 2 kg about a pig's
// own curve at 25 to 100 kg (Lauridsen et al. 1999, computed). Tape: the
// 3.6 kg or 4.1 % of tape.go, parted into the reading, the pig's shape and the
// breed's shape. Eye: no figure was
// found; common practice. Hanging: dressing 72 % with a spread of some 2.5
// points and an empty gut; common practice.
var readingErrors = map[string]*readingError{
	ByScale:      {kg: 0.85, rel: 0.02, wrong: 0.03, column: biasNone},
	ByTape:       {kg: 1.8, rel: 0.022, bias: tapeLevelSD, shape: 0.02, wrong: 0.03, column: biasTape},
	ByEye:        {kg: 1, rel: 0.08, bias: 0.06, wrong: 0.03, column: biasEye},
	byTapeBeyond: {kg: 1, rel: 0.08, bias: tapeLevelSD, shape: 0.03, wrong: 0.03, column: biasTape},
	byHanging:    {kg: 1, rel: 0.04, bias: 0.025, wrong: 0.03, column: biasHanging},
}

// What is not said to be a way of weighing: byHanging is a live weight worked
// back from a hanging weight, byTapeBeyond the error of a girth outside the range
// of the Kansas State line.
const (
	byHanging        = "hanging"
	byTapeBeyond     = "tape beyond"
	dressingFraction = 0.72
)

// slipSD is the size of a slip, relative to the weight.
const slipSD = 0.3

func (e readingError) sd(kg float64) float64 { return math.Hypot(e.kg, e.rel*kg) }

// faded is how far a pig's own speed of the first day has faded after so many.
func faded(days float64) float64 { return math.Exp(-math.Max(0, days) / pigSpeedDays) }

// fadedDays is faded for whole days.
var fadedDays = func() (days [730]float64) {
	for i := range days {
		days[i] = faded(float64(i))
	}
	return days
}()

// fadedAfter is faded, looked up for whole days.
func fadedAfter(days float64) float64 {
	if i := int(days); i >= 0 && i < len(fadedDays) && float64(i) == days {
		return fadedDays[i]
	}
	return faded(days)
}

// strayed is the covariance of the table days that a pig's own speed has added
// after a and after b days, 0 <= a <= b, where ea and eb are a and b faded: the
// integral of an Ornstein-Uhlenbeck process that starts at nought.
func strayed(a, ea, eb float64) float64 {
	const variance = pigSpeedSD * pigSpeedSD * pigSpeedDays * pigSpeedDays
	stationary := 2*a/pigSpeedDays + ea + eb - 1 - eb/ea
	return variance * (stationary - (1-ea)*(1-eb))
}

// strayedLater parts strayed of the moment a and any later b: it is still plus
// speed times what b has faded to.
func strayedLater(a growthMoment) (still, speed float64) {
	const variance = pigSpeedSD * pigSpeedSD * pigSpeedDays * pigSpeedDays
	return variance * 2 * (a.days/pigSpeedDays + a.faded - 1), variance * (2 - 1/a.faded - a.faded)
}

// weanedLag is the table days lost by fresh weaners of the given weight, days
// after they came.
func weanedLag(kg, days float64) float64 {
	part := (weanedNoneKg - kg) / (weanedNoneKg - weanedFullKg)
	part = math.Max(0, math.Min(1, part))
	return weanedLagDays * part * math.Max(0, math.Min(1, days/weanedOverDays))
}
