package season

import (
	"math"
	"math/rand/v2"
	"time"

	"troughbell/model"
)

// air is the weather of one day.
type air struct{ highC, lowC float64 }

func (a air) meanC() float64 { return (a.highC + a.lowC) / 2 }

// climate is a place by its yearly mean, its swing and its daily range, in
// Celsius: invented places from the cool sea to the hot inland.
type climate struct {
	name                 string
	mean, swing, rangeC  float64 // of the year's means; between a day's low and high
	heatWaves            float64 // chance that a summer week begins one
	waveDays, waveWarmer float64
}

var climates = []climate{
	{"coast", 10, 7, 7, 0.05, 4, 6},
	{"plain", 10, 13, 11, 0.12, 5, 7},
	{"south", 17, 9, 11, 0.15, 6, 6},
}

// hotDayC is the high from which a day counts as one of a heat wave.
const hotDayC = 31.0

// weather draws the days: a sine through the year, days that hang together, and
// heat waves in the warm half.
func (c climate) weather(rng *rand.Rand, from model.Day, days int) []air {
	out := make([]air, days)
	departure, wave := 0.0, 0.0
	for i := range out {
		of := float64((from+model.Day(i)).At(12*60, time.UTC).YearDay()) - 201
		mean := c.mean + c.swing*math.Cos(2*math.Pi*of/365.25)
		departure = 0.7*departure + 2.2*rng.NormFloat64()
		if wave > 0 {
			wave--
		} else if mean > c.mean+c.swing/2 && rng.Float64() < c.heatWaves/7 {
			wave = c.waveDays * (0.5 + rng.Float64())
		}
		today := mean + departure
		if wave > 0 {
			today += c.waveWarmer
		}
		span := c.rangeC * around(rng, 0.2)
		out[i] = air{today + span/2, today - span/2}
	}
	return out
}

// Heat takes from growth and feed what it took from pigs of 66 kg moved from 22
// to 32 Celsius: a quarter of the gain and 19 % of the feed (pair-feeding trial,
// J. Anim. Sci. 2020, PMC7772945, abstract read), in proportion to the degrees.
func heatGrowth(meanC float64) float64 { return max(0.5, 1-0.025*max(0, meanC-22)) }
func heatFeed(meanC float64) float64   { return max(0.6, 1-0.019*max(0, meanC-22)) }

// forecastSD is how far a forecast of a day's high or low is off, in Celsius, a
// day ahead; it grows with the days: common practice, no source.
const forecastSD = 1.5

// foresee brings the program what a weather service would say of the next days.
func (k *keeper) foresee(s stop) {
	d := k.farm.day(s.at)
	var days []model.ForecastDay
	for ahead := 1; ahead <= 2; ahead++ {
		a := k.farm.herd.air[d+ahead]
		days = append(days, model.ForecastDay{
			On:    k.farm.herd.from + model.Day(d+ahead),
			HighC: model.Float(a.highC + forecastSD*math.Sqrt(float64(ahead))*k.rng.NormFloat64()),
			LowC:  model.Float(a.lowC + forecastSD*math.Sqrt(float64(ahead))*k.rng.NormFloat64() - 1),
		})
	}
	k.sky(s.at, days)
}
