package model

import (
	"math"
	"time"
)

// What is taken of a wallow whose size or loss nobody told. No published size
// per pig was found; seepage cannot be looked up for one hole and is replaced by
// the herd's own fills. Judgement, no source.
const (
	wallowM2PerPig  = 1.0
	wallowDepthM    = 0.2
	seepageMMD      = 5.0  // a floor puddled by pigs
	carriedLD       = 3.0  // mud carried out by one pig in a day
	hoseLMin        = 15.0 // a garden hose, about 4 gallons a minute
	wallowSpread    = 0.6  // of the logarithm of the loss before any fill
	wallowDaySpread = 0.2  // of the logarithm that stays: rain and days differ
	wallowHorizon   = 120  // days
)

// WallowLeft says when the wallow will be dry. Rain counts where it was told or
// forecast; what was not told puts the day off.
type WallowLeft struct {
	Dry     DayInterval
	LossLD  Interval // litres a day
	FillL   float64  // to bring it back to its depth, likely
	Reasons []Reason
}

// WallowLeft gives the day on which the wallow is dry; today where it is dry
// already. Missing "wallow" where none was set up and none ever filled, "pigs"
// where neither its size nor any pig is known.
func (h *Herd) WallowLeft(at time.Time) (WallowLeft, error) {
	if h.Wallow == nil && len(h.WallowFills) == 0 {
		return WallowLeft{}, &Missing{What: "wallow"}
	}
	today := DayOf(at)
	f := wallowFit{h: h, logSD: wallowSpread}
	var sized bool
	if f.areaM2, f.depthM, sized = h.wallowSize(today); f.areaM2 == 0 {
		return WallowLeft{}, &Missing{What: "pigs"}
	}
	f.learn(at)
	w := WallowLeft{Reasons: f.reasons(today, sized)}
	sd := math.Hypot(f.logSD, wallowDaySpread)
	slow, fast := math.Exp(f.log-z80*sd), math.Exp(f.log+z80*sd)
	w.LossLD = Interval{slow, math.Exp(f.log), fast}.Scale(f.lossLD(today))
	w.Dry = DayInterval{Low: f.dryOn(at, fast), Mid: f.dryOn(at, math.Exp(f.log)), High: f.dryOn(at, slow)}
	w.FillL = f.fullL() - f.holdsL
	return w, nil
}

// wallowSize is the wallow's area and depth as set up, else by the pigs; told
// says that both were set up. An area of 0 says that nothing is known.
func (h *Herd) wallowSize(today Day) (areaM2, depthM float64, told bool) {
	areaM2, depthM = wallowM2PerPig*float64(len(h.Alive(today))), wallowDepthM
	if h.Wallow == nil {
		return areaM2, depthM, false
	}
	told = h.Wallow.AreaM2 != nil && h.Wallow.DepthM != nil
	if h.Wallow.AreaM2 != nil {
		areaM2 = *h.Wallow.AreaM2
	}
	if h.Wallow.DepthM != nil {
		depthM = *h.Wallow.DepthM
	}
	return areaM2, depthM, told
}

// WallowLossMMD is the fall of a wallow's level in mm a day, from evaporation and
// seepage (both in mm a day, not negative), the mud that pigs carry out in
// litres a day and the area in square metres (more than nothing). Outside:
// *OutOfRange. One litre on one square metre is one millimetre.
func WallowLossMMD(evaporationMMD, seepageMMD, carriedLD, areaM2 float64) (float64, error) {
	for _, v := range []struct {
		name  string
		value float64
	}{{"evaporation_mm_d", evaporationMMD}, {"seepage_mm_d", seepageMMD}, {"carried_l_d", carriedLD}} {
		if !(v.value >= 0 && v.value <= 1e5) {
			return 0, &OutOfRange{v.name, v.value, 0, 1e5}
		}
	}
	if !(areaM2 > 0 && areaM2 <= 1e6) {
		return 0, &OutOfRange{"area_m2", areaM2, 0, 1e6}
	}
	return evaporationMMD + seepageMMD + carriedLD/areaM2, nil
}
