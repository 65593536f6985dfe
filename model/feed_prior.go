package model

// What is believed of a herd's feeders before anything was seen, and how well
// things are read. Judgement unless a source stands beside it.
const (
	// appetiteSD is the spread of herds' feed use round the intake table,
	// appetite and waste in one: published groups lie 7 to 10 % below it
	// (Schinckel's pigs) and 6 to 18 % above (Lauridsen et al., 1999).
	appetiteSD = 0.15
	// appetiteDays is the time in which what was learned of a herd fades.
	appetiteDays = 730.0

	capacityKgSD = 0.05 // of a capacity given by weight, relative
	capacityLSD  = 0.08 // of one given by volume, relative
	// feedDensityKgL turns a feeder's volume into complete ground feed: 38 lb to
	// the cubic foot, from memory; ground corn alone is given as 0.60 to 0.64
	// (FAO manual S4314E, Appendix XI). It makes 280 lb of a 55 gallon drum.
	feedDensityKgL = 0.61
	impliedRoom    = 1.25 // capacity over the largest pour, where none is stated
	impliedSD      = 0.30

	shareSD     = 0.4           // of the log of a feeder's share of the use
	shareDrift2 = 0.1 * 0.1 / 7 // its variance gained a day
	pourSD      = 0.01          // of an amount poured, relative
	brimSD      = 0.02          // of "full", relative to capacity
	eyeSD       = 0.07          // of a level by eye, relative to capacity
	emptySD     = 0.02          // of "empty", relative to capacity
	kgSeenSD    = 0.10          // of kilograms judged by eye, relative
	daysSeenSD  = 0.30          // of the days a person thinks feed will last
	strange     = 2.0           // standard errors from which a span teaches less
	leftOut     = 3.0           // and from which it is said to be left out
	freshDays   = 3.0           // a first fill so soon after the pigs came found it empty
	leftBefore  = 0.2           // of capacity, in a feeder first spoken of later
	// leastCapacity is of the capacity first expected: no feeder holds less.
	leastCapacity = 0.05
)
