package model

import (
	"math"
	"time"
)

// BarrelLeft is what one water barrel holds and for how long.
type BarrelLeft struct {
	Name                    string
	Since                   time.Time
	Litres                  Interval
	UseLD                   Interval
	Days, LowDays, EdgeDays float64
	EdgeAt, LikelyAt        time.Time
}

// WaterLeft is what the barrels hold together. Days and its edges are those of
// all barrels together: pigs walk from a dry one to the next. Days is likely,
// LowDays the 10 % edge, EdgeDays the 2 % edge; none is more than a year.
type WaterLeft struct {
	Litres, UseLD           Interval
	Days, LowDays, EdgeDays float64
	EdgeAt, LikelyAt        time.Time
	Barrels                 []BarrelLeft
	Reasons                 []Reason
}

// WaterLeft gives what the barrels hold at the moment and for how long, from
// fills and levels seen, the pigs' weights and the heat told or guessed for the
// days ahead. Missing "pigs", "weight", "barrels", "water_level" or "capacity".
func (h *Herd) WaterLeft(at time.Time) (WaterLeft, error) {
	today := DayOf(at)
	if len(h.Barrels) == 0 {
		return WaterLeft{}, &Missing{What: "barrels"}
	}
	if len(h.Alive(today)) == 0 {
		return WaterLeft{}, &Missing{What: "pigs"}
	}
	f := h.water()
	if f.err != nil {
		return WaterLeft{}, f.err
	}
	s, noSize, ok := f.until(at)
	if len(noSize) > 0 {
		return WaterLeft{}, &Missing{What: "capacity", Names: noSize}
	}
	if !ok {
		return WaterLeft{}, &Missing{What: "water_level", Names: barrelNames(h.Barrels)}
	}
	draw := h.draw()
	if err := s.pass(max(wallDay(at), s.day), draw); err != nil {
		return WaterLeft{}, err
	}
	alarm := h.openWaterAlarm(at)
	if alarm != nil {
		for i := range s.barrels() {
			s.forget(s.barrels()+i, 0, 0)
		}
	}
	w, err := h.waterLeft(at, &s, draw)
	if err != nil {
		return WaterLeft{}, err
	}
	w.Reasons = h.waterReasons(at, &s, w, alarm)
	return w, nil
}

func barrelNames(barrels []*Barrel) []string {
	names := make([]string, len(barrels))
	for i, b := range barrels {
		names[i] = b.Name
	}
	return names
}

func (h *Herd) waterLeft(at time.Time, s *waterState, draw *herdDraw) (WaterLeft, error) {
	walk, err := s.walk(draw)
	if err != nil {
		return WaterLeft{}, err
	}
	n := s.barrels()
	now := s.toWet()
	today, err := draw.on(DayOf(at))
	if err != nil {
		return WaterLeft{}, err
	}
	var w WaterLeft
	all, pull := make([]float64, 2*n), make([]float64, 2*n)
	holds, most := 0.0, 0.0
	for i, b := range h.Barrels {
		one, drawn := make([]float64, 2*n), make([]float64, 2*n)
		drawn[i], pull[i] = 1, 1
		if s.known[i] {
			one[n+i], all[n+i] = 1, 1
		}
		capacity := math.Inf(1)
		if b.CapacityL != nil {
			capacity = *b.CapacityL
		}
		dead := 0.0
		if b.CapacityL != nil {
			dead = deadShare * capacity
		}
		level := s.levelNow(i, dead, capacity)
		use := Interval{}
		if s.wet(i) {
			use = s.factor(drawn).Scale(now * today.litres)
		}
		left := BarrelLeft{Name: b.Name, Since: s.since[i], Litres: level, UseLD: use}
		left.Days, left.LowDays, left.EdgeDays = walk.lasts(s, one, drawn, true)
		left.LikelyAt, left.EdgeAt = after(at, left.Days), after(at, left.EdgeDays)
		w.Barrels = append(w.Barrels, left)
		holds += level.Mid
		most += capacity
	}
	_, spread := s.along(all)
	sd := math.Sqrt(spread)
	w.Litres = Interval{max(0, holds-z80*sd), holds, min(most, holds+z80*sd)}
	w.UseLD = s.factor(pull).Scale(today.litres)
	w.Days, w.LowDays, w.EdgeDays = walk.lasts(s, all, pull, false)
	w.LikelyAt, w.EdgeAt = after(at, w.Days), after(at, w.EdgeDays)
	return w, nil
}

// levelNow is what barrel i shows.
func (s *waterState) levelNow(i int, dead, capacity float64) Interval {
	n := s.barrels()
	stands, sd := s.mean[n+i], math.Sqrt(max(0, s.at(n+i, n+i)))
	return Interval{
		Low:  shown(max(0, stands-z80*sd), dead),
		Mid:  shown(stands, dead),
		High: min(capacity, shown(stands+z80*sd, dead)),
	}
}

// factor is the 80 % interval of a sum of draw factors.
func (s *waterState) factor(w []float64) Interval {
	mean, variance := s.along(w)
	sd := math.Sqrt(variance + waterDaySD*waterDaySD*mean*mean)
	return Interval{max(0, mean-z80*sd), mean, mean + z80*sd}
}

func after(at time.Time, days float64) time.Time {
	return at.Add(time.Duration(days * 24 * float64(time.Hour)))
}
