package model

import (
	"math"
	"time"
)

// wallowFit is what the fills say of the wallow's loss, as the logarithm of a
// factor on the first guess, and what it holds at the moment.
type wallowFit struct {
	h              *Herd
	areaM2, depthM float64
	log, logSD     float64
	fills          int // learned from
	hose           bool
	last           *Dated[WallowFill] // latest fill
	dry            *Dated[WallowFill] // latest word of dry since then
	holdsL         float64
}

func (f *wallowFit) fullL() float64 { return f.areaM2 * f.depthM * 1000 }

// lossLD is the first guess of a day's loss.
func (f *wallowFit) lossLD(on Day) float64 {
	pigs := float64(len(f.h.Alive(on)))
	return (f.h.evaporationMMD(on)+seepageMMD)*f.areaM2 + carriedLD*pigs
}

// loss is the first guess of the loss between two moments.
func (f *wallowFit) loss(from, to float64) float64 {
	sum := 0.0
	for from < to {
		end := min(math.Floor(from)+1, to)
		sum += f.lossLD(Day(math.Floor(from))) * (end - from)
		from = end
	}
	return sum
}

// rain is the litres that told rain brought into the wallow between two moments;
// rain of a day is spread over it.
func (f *wallowFit) rain(from, to float64) float64 {
	sum := 0.0
	for from < to {
		end := min(math.Floor(from)+1, to)
		if mm := f.h.Weathers[Day(math.Floor(from))].RainMm; mm != nil {
			sum += *mm * f.areaM2 * (end - from)
		}
		from = end
	}
	return sum
}

// learn goes through the fills by the moment. Litres poured at a top-up stand
// for what was lost since the one before: a person fills to the same mark.
func (f *wallowFit) learn(at time.Time) {
	seenDry := false
	var since float64
	for i := range f.h.WallowFills {
		w := &f.h.WallowFills[i]
		if w.At.After(at) {
			break
		}
		now := wallDay(w.At)
		left := 0.0
		if f.last != nil && !seenDry {
			left = min(max(0, f.holdsL-f.loss(since, now)*math.Exp(f.log)+f.rain(since, now)), f.fullL())
		}
		if w.F.Dry {
			if f.last != nil && !seenDry {
				f.boundBy(f.holdsL+f.rain(since, now), f.loss(since, now))
			}
			seenDry, f.dry, f.holdsL, since = true, w, 0, now
			continue
		}
		poured, sd, told := f.poured(w.F)
		if told && f.last != nil && !seenDry {
			f.update(poured+f.rain(since, now), f.loss(since, now), sd)
		}
		f.holdsL = f.fullL()
		if told {
			f.holdsL = min(f.fullL(), left+poured)
			if f.last != nil && !seenDry && f.fills > 0 {
				f.holdsL = f.fullL()
			}
		}
		f.last, f.dry, seenDry, since = w, nil, false, now
	}
	switch {
	case f.last == nil && f.dry == nil:
		f.holdsL = f.fullL()
	case f.dry == nil:
		now := wallDay(at)
		f.holdsL = min(max(0, f.holdsL-f.loss(since, now)*math.Exp(f.log)+f.rain(since, now)), f.fullL())
	}
}

// poured is the water of a fill and the spread of its logarithm; told is false
// where it was only said to be topped up.
func (f *wallowFit) poured(w WallowFill) (litres, sd float64, told bool) {
	switch {
	case w.Litres != nil:
		return *w.Litres, 0.35, true
	case w.Minutes != nil:
		f.hose = true
		return *w.Minutes * hoseLMin, 0.6, true
	}
	return 0, 0, false
}

// update learns that litres made up for a guessed loss, each with a spread of
// its logarithm.
func (f *wallowFit) update(litres, guessed, sd float64) {
	if guessed < f.fullL()/100 || litres <= 0 {
		return // filled again at once: nothing was lost yet
	}
	gain := f.logSD * f.logSD / (f.logSD*f.logSD + sd*sd)
	f.log += gain * (math.Log(litres/guessed) - f.log)
	f.logSD *= math.Sqrt(1 - gain)
	f.fills++
}

// boundBy learns that at least what it held was lost: seen dry sooner than
// expected.
func (f *wallowFit) boundBy(held, guessed float64) {
	if guessed > 0 && held > 0 && math.Log(held/guessed) > f.log {
		f.update(held, guessed, 0.4)
	}
}

// dryOn is the day on which nothing is left at a factor on the guessed loss.
func (f *wallowFit) dryOn(at time.Time, factor float64) Day {
	left, day := f.holdsL, wallDay(at)
	today := DayOf(at)
	for left > 0 && day < float64(today)+wallowHorizon {
		end := math.Floor(day) + 1
		rate := f.lossLD(Day(math.Floor(day)))*factor - f.rain(math.Floor(day), math.Floor(day)+1)
		if rate <= 0 { // it rains more than is lost: the level rises, to the brim at most
			left, day = min(left-rate*(end-day), f.fullL()), end
			continue
		}
		if rate*(end-day) >= left {
			return Day(math.Floor(day + left/rate))
		}
		left -= rate * (end - day)
		day = end
	}
	return Day(math.Floor(day))
}

func (f *wallowFit) reasons(today Day, sized bool) []Reason {
	loss := f.lossLD(today) * math.Exp(f.log)
	fallCm := loss / f.areaM2 / 10
	out := []Reason{{Code: WallowLoss, On: today, Q: []Quantity{{loss, LitresPerDay}, {fallCm, Centimetres}}}}
	switch {
	case f.dry != nil:
		out = append(out, Reason{Code: WallowFoundDry, On: f.dry.On})
	case f.last != nil:
		out = append(out, Reason{Code: WallowLastFilled, On: f.last.On})
	default:
		out = append(out, Reason{Code: WallowAssumedFull, On: today})
	}
	if !sized {
		out = append(out, Reason{Code: WallowSizeAssumed, Q: []Quantity{{f.areaM2, SquareMetres}, {f.depthM, Metres}}})
	}
	if f.fills > 0 {
		out = append(out, Reason{Code: WallowLearned, Q: []Quantity{{float64(f.fills), Count}}})
	} else {
		out = append(out, Reason{Code: WallowFirstGuess, Q: []Quantity{{fallCm * 10, Count}}})
	}
	if f.hose {
		out = append(out, Reason{Code: WallowHose, Q: []Quantity{{hoseLMin, Litres}}})
	}
	return out
}
