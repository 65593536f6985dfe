// Package forecast asks a weather service what the coming days bring. It knows
// one service, MET Norway's Locationforecast, which serves the whole world, wants
// no key, and lets its data be used under CC BY 4.0 by whoever says who they are
// (terms of service read at api.met.no).
package forecast

import (
	"context"
	"maps"
	"slices"
	"time"

	"troughbell/model"
)

// Source tells the coming days of a place, as days of the zone. Days of which too
// little is known are left out.
type Source interface {
	Days(ctx context.Context, at model.Place, zone *time.Location) ([]model.ForecastDay, error)
}

// A day's high is known where the afternoon is, its low where the night is.
// Hours of the local day; hours from the start to before the end must be there.
const (
	highFrom, highUntil = 11, 18
	lowFrom, lowUntil   = 1, 8
)

// Hour is the air at one moment as a service forecasts it.
type Hour struct {
	At    time.Time
	TempC float64
	RhPct *float64
}

// ByDay sums hours up by the local days of the zone, in their order. A day has a
// high only where every hour of its afternoon is there, and a low only where
// every hour of its night is: the top of half an afternoon would play a danger
// down. A day with neither is left out.
func ByDay(hours []Hour, zone *time.Location) []model.ForecastDay {
	type sum struct {
		seen      [24]bool
		high, low *Hour
	}
	sums := map[model.Day]*sum{}
	for i := range hours {
		h := &hours[i]
		local := h.At.In(zone)
		day := model.DayOf(local)
		s := sums[day]
		if s == nil {
			s = &sum{}
			sums[day] = s
		}
		s.seen[local.Hour()] = true
		if s.high == nil || h.TempC > s.high.TempC {
			s.high = h
		}
		if s.low == nil || h.TempC < s.low.TempC {
			s.low = h
		}
	}
	var out []model.ForecastDay
	for _, day := range slices.Sorted(maps.Keys(sums)) {
		s := sums[day]
		d := model.ForecastDay{On: day}
		if whole(s.seen, highFrom, highUntil) {
			d.HighC, d.RhPct = model.Float(s.high.TempC), s.high.RhPct
		}
		if whole(s.seen, lowFrom, lowUntil) {
			d.LowC = model.Float(s.low.TempC)
		}
		if d.HighC != nil || d.LowC != nil {
			out = append(out, d)
		}
	}
	return out
}

// whole reports whether every hour is there. An hour that the clocks skip in
// spring is asked of nobody: it lies before lowUntil, so one may be missing.
func whole(seen [24]bool, from, until int) bool {
	missing := 0
	for h := from; h < until; h++ {
		if !seen[h] {
			missing++
		}
	}
	return missing == 0 || missing == 1 && until == lowUntil
}
