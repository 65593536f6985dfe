package model

import "math"

// waterHorizonDays ends the walk ahead: no barrel lasts longer.
const waterHorizonDays = 365.0

// waterWalk is the published draw ahead, piece by piece, until the likely end of
// all water.
type waterWalk []waterPiece

// waterPiece is a span with one rate: within one day, between the moments at
// which barrels likely run dry.
type waterPiece struct {
	days, rate, airSD float64 // length; litres a day as published; its error by the unknown warmth
	toWet             float64 // how much more the barrels still wet are drawn from
}

func (s *waterState) walk(draw *herdDraw) (waterWalk, error) {
	ahead := s.clone()
	var w waterWalk
	start := ahead.day
	for ahead.toWet() > 0 && ahead.day < start+waterHorizonDays {
		d, err := draw.on(Day(math.Floor(ahead.day)))
		if err != nil {
			return nil, err
		}
		to := math.Floor(ahead.day) + 1
		for ahead.day < to && ahead.toWet() > 0 {
			p := waterPiece{days: ahead.untilDry(d.litres, to-ahead.day), rate: d.litres, airSD: d.airSD, toWet: ahead.toWet()}
			ahead.drainMeans(p)
			w = append(w, p)
		}
	}
	return w, nil
}

// untilDry is the time until the next barrel likely runs dry, at most within.
func (s *waterState) untilDry(rate, within float64) float64 {
	n, more := s.barrels(), s.toWet()
	for i := range n {
		if s.wet(i) && rate > 0 {
			within = min(within, s.mean[n+i]/(s.mean[i]*more*rate))
		}
	}
	return within
}

// drainMeans lets the likely levels fall over a piece; what is left of a rounding
// error counts as dry.
func (s *waterState) drainMeans(p waterPiece) {
	n := s.barrels()
	for i := range n {
		if s.wet(i) {
			if s.mean[n+i] -= s.mean[i] * p.toWet * p.rate * p.days; s.mean[n+i] < 1e-9 {
				s.mean[n+i] = 0
			}
		}
	}
	s.day += p.days
}

// Standard normal quantiles of the edges: 10 % and 2 %.
const (
	lowZ  = z80
	edgeZ = 2.0537489106318225
)

// lasts gives the days until what holds (a sum of levels) is used up by what
// draws (a sum of factors): likely, at the 10 % and at the 2 % edge. toWet says
// that the draw of dry barrels moves on to this one.
func (w waterWalk) lasts(s *waterState, holds, draws []float64, toWet bool) (likely, low, edge float64) {
	have, haveVar := s.along(holds)
	if have <= 0 {
		return 0, 0, 0
	}
	factor, factorVar := s.along(draws)
	both := 0.0
	for i, h := range holds {
		for j, d := range draws {
			if h != 0 && d != 0 {
				both += h * d * s.at(i, j)
			}
		}
	}
	// margin is the standardized margin once drawn litres, with variances by the
	// unknown warmth and by the days' straying, are gone. They grow with the days as
	// they do in pass: that a day goes by of which nothing is told moves no edge.
	margin := func(drawn, air, stray float64) float64 {
		left := have - factor*drawn
		v := haveVar - 2*drawn*both + drawn*drawn*factorVar + factor*factor*(air+stray)
		if v <= 0 {
			return math.Copysign(math.Inf(1), left)
		}
		return left / math.Sqrt(v)
	}
	reach := func(z float64) float64 {
		if margin(0, 0, 0) <= z {
			return 0
		}
		days, drawn, air, stray := 0.0, 0.0, 0.0, 0.0
		for _, p := range w {
			rate := p.rate
			if toWet {
				rate *= p.toWet
			}
			scale := rate / max(p.rate, 1e-12)
			at := func(t float64) float64 {
				return margin(drawn+rate*t, air+airHangs*p.airSD*scale*p.airSD*scale*t, stray+waterDaySD*waterDaySD*rate*rate*t)
			}
			if at(p.days) <= z {
				from, to := 0.0, p.days
				for range 40 {
					if mid := (from + to) / 2; at(mid) <= z {
						to = mid
					} else {
						from = mid
					}
				}
				return days + to
			}
			days += p.days
			drawn += rate * p.days
			air += airHangs * p.airSD * scale * p.airSD * scale * p.days
			stray += waterDaySD * waterDaySD * rate * rate * p.days
		}
		return days
	}
	likely, low, edge = reach(0), reach(lowZ), reach(edgeZ)
	low = min(low, likely)
	return likely, low, min(edge, low)
}
