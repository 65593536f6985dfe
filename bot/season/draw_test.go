package season

import (
	"math/rand/v2"
	"time"

	"troughbell/model"
)

// setting is a season as it is drawn from its number: the same number gives the
// same season.
type setting struct {
	number int
	zone   string
	grower grower
	sky    climate
	target float64
	farm   *farm
	keeper *keeper
	truth  int // day on which the herd's mean reaches the target
}

// longestSeason is how many days a season is drawn for.
const longestSeason = 260

var zones = []struct{ said, iana string }{
	{"eastern time", "America/New_York"},
	{"central time", "America/Chicago"},
	{"Europe/Berlin", "Europe/Berlin"},
	{"Europe/London", "Europe/London"},
}

func drawSeason(number int, recs []grown) *setting {
	rng := rand.New(rand.NewPCG(uint64(number), 20260411))
	zone := zones[rng.IntN(len(zones))]
	loc, err := time.LoadLocation(zone.iana)
	if err != nil {
		panic(err)
	}
	from := model.DateDay(2026, time.March, 1) + model.Day(rng.IntN(150))
	s := &setting{number: number, zone: zone.said, grower: growers[number%len(growers)], sky: climates[rng.IntN(len(climates))]}
	pigs := 2 + rng.IntN(7)
	if rng.Float64() < 0.35 {
		pigs = 9 + rng.IntN(12)
	}
	h := newHerd(rng, recs, s.grower, pigs, longestSeason, from, s.sky)
	s.target = 100 + 5*float64(rng.IntN(5))
	s.farm = &farm{herd: h, loc: loc, now: from.At(9*60, loc), feed: dryness{name: "feed"}, water: dryness{name: "water"}}
	for {
		var ok bool
		if s.truth, ok = h.reaches(s.target); ok && s.truth < longestSeason-20 {
			break
		}
		s.target -= 5
	}
	s.farm.feeders = drawFeeders(rng, h, s.truth)
	s.farm.barrels = drawBarrels(rng, h, s.truth)
	s.farm.losses = drawLosses(rng, s.farm, s.truth)
	k := &keeper{
		rng: rng, farm: s.farm, slot: from + model.Day(s.truth+2+rng.IntN(8)),
		told: map[int]bool{}, asks: map[int]int{}, guesses: map[int]guess{}, forgot: map[string]string{},
		fills: fills{map[int]bool{}, map[int]bool{}},
	}
	k.habits = drawHabits(rng, number, zone.iana)
	k.shape = shape{local: mostLocal * rng.Float64()}
	for range h.pigs {
		k.shape.pigs = append(k.shape.pigs, around(rng, bodySD))
	}
	for _, ahead := range horizons {
		if d := s.truth - ahead; d > 14 {
			k.asks[d] = ahead
		}
	}
	k.setUp(zone.said, s.target)
	k.plan()
	s.keeper = k
	return s
}

// horizons are the days ahead of the truth on which the keeper asks.
var horizons = []int{60, 30, 14}

func drawHabits(rng *rand.Rand, number int, zone string) habits {
	h := habits{
		lazy: number%3 == 2, brim: rng.Float64() < 0.4, us: zone[0] == 'A',
		talks: rng.Float64() < 0.4, shares: rng.Float64() < 0.4, shed: rng.Float64() < 0.35, pens: rng.Float64() < 0.5, wallow: rng.Float64() < 0.3,
		scoop: around(rng, 0.03), hour: 7, chores: []time.Weekday{time.Saturday},
	}
	switch rng.IntN(4) {
	case 0:
		h.scale = true
	case 1:
		h.checks = true
	}
	switch rng.IntN(5) {
	case 0:
		h.chores = []time.Weekday{time.Sunday}
	case 1:
		h.chores = []time.Weekday{time.Wednesday, time.Sunday}
	}
	return h
}

var (
	feederNames = []string{"red hopper", "gray hopper", "blue hopper"}
	barrelNames = []string{"shed", "oak", "road", "gate", "hill", "pond"}
)

// drawFeeders gives the herd feeders that hold from half a week to three weeks
// of what it eats when half grown.
func drawFeeders(rng *rand.Rand, h *herd, truth int) []*vessel {
	n := 1
	if len(h.pigs) > 4 {
		n += rng.IntN(3)
	}
	week := 0.0
	for d := truth / 2; d < truth/2+7; d++ {
		week += h.feedOn(d)
	}
	all := week * (0.6 + 2.0*rng.Float64())
	var out []*vessel
	for i := range n {
		told := float64(int(all/float64(n)/10)+1) * 10
		out = append(out, &vessel{name: feederNames[i], told: told, holds: told * around(rng, 0.05), likes: around(rng, 0.25)})
	}
	return out
}

// drawBarrels gives the herd water for four days to two weeks when it is half
// grown, in barrels of 55 gallons where that takes no more than six.
func drawBarrels(rng *rand.Rand, h *herd, truth int) []*vessel {
	all := h.waterOn(truth/2) * (4 + 10*rng.Float64())
	size := 208.0
	n := int(all/size) + 1
	if n > len(barrelNames) {
		n = 2 + rng.IntN(3)
		size = float64(int(all/float64(n)/100)+1) * 100
	}
	var out []*vessel
	for i := range n {
		holds := size * 0.95 * around(rng, 0.03) // what stands above the nipple
		out = append(out, &vessel{name: barrelNames[i], told: size, holds: holds, likes: around(rng, 0.3)})
	}
	return out
}

// drawLosses puts a spill of feed or a leak of water into some seasons.
func drawLosses(rng *rand.Rand, f *farm, truth int) []loss {
	if rng.Float64() > 0.3 {
		return nil
	}
	day := f.herd.from + model.Day(20+rng.IntN(max(1, truth-25)))
	l := loss{at: day.At(60*rng.IntN(24), f.loc), of: f.feeders[0], part: 0.3 + 0.5*rng.Float64()}
	if rng.Float64() < 0.5 {
		l.of, l.part = f.barrels[rng.IntN(len(f.barrels))], 1
	}
	return []loss{l}
}
