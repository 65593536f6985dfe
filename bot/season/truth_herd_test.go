package season

import (
	"math"
	"math/rand/v2"

	"troughbell/model"
)

// pig is one pig's truth, day by day from its arrival.
type pig struct {
	name  string
	kg    []float64 // at the start of the day
	feed  []float64 // kg that leave the feeder in the day
	water []float64 // litres that leave the barrels in the day
	sick  int       // first day off feed; -1: never
	well  int       // first day well again
	dies  int       // day it is found dead; -1: never
}

// herd is what nobody tells the program.
type herd struct {
	from model.Day
	days int
	pigs []*pig
	air  []air
}

const (
	sickGrowth, sickFeed = 0.3, 0.4 // of a healthy pig's
	feedDaySD            = 0.08     // of a herd's day, days hanging together by half
	waterDaySD           = 0.10
)

// newHerd lives the pigs through the season, each on the record of a real pig
// drawn for it.
func newHerd(rng *rand.Rand, recs []grown, g grower, pigs, days int, from model.Day, sky climate) *herd {
	h := &herd{from: from, days: days, air: sky.weather(rng, from, days)}
	speed := g.speed * around(rng, g.sd)
	waste := 1 + 0.12*rng.Float64() // at the feeder, over the records': farms waste 2 to 20 % (Ontario Ministry of Agriculture, read)
	drinkers := herdWaterLow + (herdWaterHigh-herdWaterLow)*rng.Float64()
	begin := 14 * rng.Float64() // days into the records
	lives := make([]life, pigs)
	for i := range lives {
		lives[i] = newLife(recs[rng.IntN(len(recs))], rng)
		p := &pig{name: pigNames[i], sick: -1, well: -1, dies: -1}
		if rng.Float64() < 0.06 {
			p.sick = 10 + rng.IntN(days/2)
			p.well = p.sick + 3 + rng.IntN(6)
		}
		if pigs > 2 && rng.Float64() < 0.015 {
			p.dies = 20 + rng.IntN(days/3)
		}
		h.pigs = append(h.pigs, p)
	}
	clocks := make([]float64, pigs)
	for i := range clocks {
		clocks[i] = begin
	}
	feedDay, waterDay := 0.0, 0.0
	for d := range days {
		feedDay = 0.5*feedDay + feedDaySD*math.Sqrt(0.75)*rng.NormFloat64()
		waterDay = 0.5*waterDay + waterDaySD*math.Sqrt(0.75)*rng.NormFloat64()
		for i, p := range h.pigs {
			kg, feed := lives[i].at(clocks[i])
			if p.dies >= 0 && d >= p.dies {
				kg, feed = 0, 0
			}
			pace := speed * heatGrowth(h.air[d].meanC())
			feed *= math.Pow(speed, eatsLess) * heatFeed(h.air[d].meanC()) * waste * math.Exp(feedDay)
			if p.sick >= 0 && d >= p.sick && d < p.well {
				pace *= sickGrowth
				feed *= sickFeed
			}
			p.kg = append(p.kg, kg)
			p.feed = append(p.feed, feed)
			p.water = append(p.water, waterOf(kg, h.air[d])*drinkers*math.Exp(waterDay))
			clocks[i] += pace
		}
	}
	return h
}

func waterOf(kg float64, a air) float64 {
	if kg <= 0 {
		return 0
	}
	return waterLD(kg, a)
}

// alive lists the pigs there on a day.
func (h *herd) alive(d int) []*pig {
	var out []*pig
	for _, p := range h.pigs {
		if p.dies < 0 || d < p.dies {
			out = append(out, p)
		}
	}
	return out
}

// meanKg is the mean weight of the pigs there on a day.
func (h *herd) meanKg(d int) float64 {
	sum, n := 0.0, 0
	for _, p := range h.alive(d) {
		sum += p.kg[d]
		n++
	}
	return sum / float64(n)
}

// reaches is the first day on which the herd's mean is at the target.
func (h *herd) reaches(kg float64) (int, bool) {
	for d := range h.days {
		if h.meanKg(d) >= kg {
			return d, true
		}
	}
	return 0, false
}

func (h *herd) feedOn(d int) float64 {
	sum := 0.0
	for _, p := range h.pigs {
		sum += p.feed[min(d, h.days-1)]
	}
	return sum
}

func (h *herd) waterOn(d int) float64 {
	sum := 0.0
	for _, p := range h.pigs {
		sum += p.water[min(d, h.days-1)]
	}
	return sum
}

// pigNames are invented.
var pigNames = []string{
	"Dot", "Tank", "Mabel", "Fig", "Plum", "Moss", "Bean", "Clover", "Rufus", "Nettle",
	"Otis", "Hazel", "Juno", "Wren", "Bramble", "Sorrel", "Pepper", "Olive", "Thistle", "Acorn",
}
