package model

import (
	"errors"
	"fmt"
	"math"
	"time"
)

// Forecast is what a weather service expected of some days, as fetched at the
// record's moment.
type Forecast struct {
	Days []ForecastDay `json:"days"`
}

// ForecastDay is one day of a forecast. Nil is not given.
type ForecastDay struct {
	On    Day      `json:"on"`
	HighC *float64 `json:"high_c,omitempty"`
	LowC  *float64 `json:"low_c,omitempty"`
	RhPct *float64 `json:"rh_pct,omitempty"` // at the hour of the high
}

func (Forecast) Kind() Kind   { return "forecast" }
func (Forecast) Version() int { return 1 }

func (f Forecast) Check() error {
	if len(f.Days) == 0 {
		return errors.New("a forecast needs a day")
	}
	for _, d := range f.Days {
		if d.On == 0 {
			return errors.New("a day of a forecast needs its date")
		}
		if err := d.weather().Check(); err != nil {
			return fmt.Errorf("forecast of %s: %w", d.On, err)
		}
	}
	return nil
}

func (d ForecastDay) weather() Weather {
	return Weather{HighC: d.HighC, LowC: d.LowC, RhPct: d.RhPct}
}

// fold keeps the latest word on each part of each day: a forecast made at noon
// no longer tells of the night before.
func (f Forecast) fold(h *Herd, r Record) {
	h.ForecastAt = r.At
	for _, d := range f.Days {
		have := h.forecasts[d.On]
		have.take(d.weather())
		h.forecasts[d.On] = have
	}
}

// take takes what the other weather gives in place of what is there.
func (w *Weather) take(o Weather) {
	if o.HighC != nil {
		w.HighC = o.HighC
	}
	if o.LowC != nil {
		w.LowC = o.LowC
	}
	if o.RhPct != nil {
		w.RhPct = o.RhPct
	}
	if o.RainMm != nil {
		w.RainMm = o.RainMm
	}
	w.Rained = w.Rained || o.Rained
}

// HighToldAt is when a person last told the high of the day on that day itself;
// zero where none did.
func (h *Herd) HighToldAt(on Day) time.Time { return h.highTold[on] }

// WeatherOf is what is known of a day's weather: what was told, and for the
// rest what was forecast. forecast says that its temperature is a forecast, of
// the high where there is one. ok is false where nothing is known.
func (h *Herd) WeatherOf(on Day) (w Weather, forecast, ok bool) {
	told, said := h.Weathers[on]
	expected, foreseen := h.forecasts[on]
	if told.HighC != nil && told.RhPct == nil && expected.HighC != nil && expected.RhPct != nil {
		// The forecast's humidity belongs to the forecast's high: the same
		// moisture in warmer air is less.
		rh := min(100, *expected.RhPct*saturationKPa(*expected.HighC)/saturationKPa(*told.HighC))
		expected.RhPct = &rh
	}
	w = expected
	w.take(told)
	switch {
	case w.HighC != nil:
		forecast = told.HighC == nil
	case w.LowC != nil:
		forecast = told.LowC == nil
	}
	return w, forecast, said || foreseen
}

// What of a new forecast is worth keeping: common practice, no source.
const (
	newsC     = 1.0
	newsRhPct = 10.0
)

// ForecastNews is those of the days on which a forecast says something that the
// herd's forecasts do not say already, to about a degree.
func (h *Herd) ForecastNews(days []ForecastDay) []ForecastDay {
	differs := func(have, now *float64, by float64) bool {
		return now != nil && (have == nil || math.Abs(*now-*have) >= by)
	}
	var out []ForecastDay
	for _, d := range days {
		have := h.forecasts[d.On]
		if differs(have.HighC, d.HighC, newsC) || differs(have.LowC, d.LowC, newsC) || differs(have.RhPct, d.RhPct, newsRhPct) {
			out = append(out, d)
		}
	}
	return out
}
