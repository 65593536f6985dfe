package model

import (
	"math"
	"strings"
)

// AssumedRhPct is the relative humidity used for a hot hour where none was
// told, in percent: common practice, no source.
const AssumedRhPct = 60.0

// DayAir is the air of one day as the figures use it.
type DayAir struct {
	HighC, LowC float64
	RhPct       float64
	RhAssumed   bool // no humidity was told: RhPct comes from the night's low, or is AssumedRhPct
	HighTold    bool // the high was told or forecast, not derived
	Forecast    bool // what was told was fetched ahead of the day
	Guessed     bool // neither high nor low is known: the season's normal
}

// MeanC is the mean of the day's 24 hours.
func (d DayAir) MeanC() float64 { return (d.HighC + d.LowC) / 2 }

// DaytimeC is the mean of the warmer half of the day, when pigs eat and drink
// most: a sine between low and high spends its upper half 2/pi of the half
// range above its mean (computed).
func (d DayAir) DaytimeC() float64 { return d.MeanC() + (d.HighC-d.LowC)/math.Pi }

// dailyRangeC is taken between low and high where only one is told: common
// practice for open country in the temperate zones, no source.
const dailyRangeC = 10.0

// carryOver is how much of a day's departure from the normal is left a day
// later; reachDays is how far it is followed. Common practice, no source.
const (
	carryOver = 0.7
	reachDays = 7
)

// Air is the weather of the day: told, else forecast, else a guess from the
// season and the nearest day within a week that was told. A guess is never
// used to call danger.
func (h *Herd) Air(on Day) DayAir {
	w, forecast, _ := h.WeatherOf(on)
	air := DayAir{RhPct: AssumedRhPct, RhAssumed: true}
	if w.RhPct != nil {
		air.RhPct, air.RhAssumed = *w.RhPct, false
	}
	switch {
	case w.HighC != nil && w.LowC != nil:
		air.HighC, air.LowC = *w.HighC, min(*w.LowC, *w.HighC)
		if air.RhAssumed {
			air.RhPct = humidityOfLow(air.HighC, air.LowC)
		}
	case w.HighC != nil:
		air.HighC, air.LowC = *w.HighC, *w.HighC-dailyRangeC
	case w.LowC != nil:
		air.HighC, air.LowC = *w.LowC+dailyRangeC, *w.LowC
	default:
		mean := h.normalMeanC(on) + h.departureC(on)
		air.HighC, air.LowC, air.Guessed = mean+dailyRangeC/2, mean-dailyRangeC/2, true
		return air
	}
	air.HighTold, air.Forecast = w.HighC != nil, forecast
	return air
}

// humidityOfLow is the relative humidity at the day's high, in percent, where the
// night cooled to its dew point: FAO-56 (1998), from memory: the dew point near
// the night's low (eq. 48), saturation pressure by eq. 11. It runs a little high
// in dry country, which is the cautious side.
func humidityOfLow(highC, lowC float64) float64 {
	return 100 * saturationKPa(lowC) / saturationKPa(highC)
}

func saturationKPa(c float64) float64 { return 0.6108 * math.Exp(17.27*c/(c+237.3)) }

// departureC is what the nearest told day within a week lets one expect the
// day to differ from its normal.
func (h *Herd) departureC(on Day) float64 {
	if len(h.Weathers) == 0 && len(h.forecasts) == 0 {
		return 0
	}
	for gap := Day(1); gap <= reachDays; gap++ {
		for _, d := range []Day{on - gap, on + gap} {
			w, _, _ := h.WeatherOf(d)
			var mean float64
			switch {
			case w.HighC != nil && w.LowC != nil:
				mean = (*w.HighC + *w.LowC) / 2
			case w.HighC != nil:
				mean = *w.HighC - dailyRangeC/2
			case w.LowC != nil:
				mean = *w.LowC + dailyRangeC/2
			default:
				continue
			}
			return (mean - h.normalMeanC(d)) * math.Pow(carryOver, float64(gap))
		}
	}
	return 0
}

// normalMeanC is a rough normal of the day's mean: a sine through the year for
// mid latitudes, warmest in the third week of July in the north and of January,
// milder, in the south. A guess with no source.
func (h *Herd) normalMeanC(on Day) float64 {
	mean, swing, warmest := 11.0, 12.0, 201.0
	if h.southern() {
		mean, swing, warmest = 15, 7, 20
	}
	return mean + swing*math.Cos(2*math.Pi*(float64(on.yearDay())-warmest)/365.25)
}

func (d Day) yearDay() int { return d.utc().YearDay() }

// Latitudes taken where none is known, in degrees: the middle of the
// pig-keeping temperate zone in either half of the world. A guess.
const (
	assumedLatitudeNorth = 42.0
	assumedLatitudeSouth = -35.0
)

// latitudeDeg is the latitude taken for the sun: that of the place, else one
// assumed, for a time zone tells at best the half of the world.
func (h *Herd) latitudeDeg() float64 {
	if h.Place != nil {
		return max(-MaxLatitudeDeg, min(MaxLatitudeDeg, h.Place.LatDeg))
	}
	if h.southern() {
		return assumedLatitudeSouth
	}
	return assumedLatitudeNorth
}

// southernZones begin the names of time zones south of the equator.
var southernZones = []string{
	"Australia/", "Antarctica/", "America/Argentina/", "America/Buenos_Aires",
	"America/Sao_Paulo", "America/Santiago", "America/Punta_Arenas",
	"America/Montevideo", "America/Asuncion", "America/La_Paz", "America/Lima",
	"America/Campo_Grande", "America/Cuiaba", "America/Bahia", "America/Recife",
	"Africa/Johannesburg", "Africa/Harare", "Africa/Maputo", "Africa/Windhoek",
	"Africa/Gaborone", "Africa/Lusaka", "Africa/Maseru", "Africa/Mbabane",
	"Africa/Blantyre", "Africa/Luanda", "Africa/Dar_es_Salaam", "Indian/Antananarivo",
	"Indian/Mauritius", "Indian/Reunion", "Pacific/Auckland", "Pacific/Chatham",
	"Pacific/Fiji", "Pacific/Noumea", "Pacific/Port_Moresby", "Asia/Jakarta", "Asia/Dili",
	"NZ",
}

func (h *Herd) southern() bool {
	if h.Place != nil {
		return h.Place.LatDeg < 0
	}
	for _, z := range southernZones {
		if strings.HasPrefix(h.Zone, z) {
			return true
		}
	}
	return false
}
