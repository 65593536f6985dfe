package model

import (
	"math"
	"sync"
)

// Water drunk per feed eaten, by the warmth of the day. At 7 to 22 Celsius pigs
// of 21 to 73 kg drank 2.1 to 2.7 litres per kg of feed, at 30 to 33 Celsius
// 2.8 to 5.0 (A note on the consumption of water by the growing pig, Animal
// Science 13(3), 1971, abstract). The straight line between the two bands is
// this program's own choice.
const (
	coolRatioLKg  = 2.4
	ratioRiseLKgC = 0.158
	warmFromC     = 22.0
	mostRatioLKg  = 5.0
)

// NippleWaste is the share of the water drawn at a well-set nipple that is
// never drunk: 25 % (Prairie Swine Centre newsletter on nipple drinkers), 29 %
// in a running trial (Revista Brasileira de Zootecnia); farms reach 40 to 60 %.
const NippleWaste = 0.25

// WaterPerFeed is the water a pig drinks per kilogram of feed it eats, in
// litres, at the mean air temperature of the day's warmer half (-60 to 60
// Celsius; outside *OutOfRange). The trials cover 7 to 33 Celsius; below it the
// cool figure holds, above it the line runs on to 5.0 at most.
func WaterPerFeed(daytimeC float64) (float64, error) {
	if !(daytimeC >= -60 && daytimeC <= 60) {
		return 0, &OutOfRange{"daytime_c", daytimeC, -60, 60}
	}
	return waterPerFeed(daytimeC), nil
}

func waterPerFeed(daytimeC float64) float64 {
	return min(coolRatioLKg+ratioRiseLKgC*max(0, daytimeC-warmFromC), mostRatioLKg)
}

// DrawnWater is the water that leaves a nipple drinker for litresDrunk, with
// NippleWaste spilt. litresDrunk must not be negative: else *OutOfRange.
func DrawnWater(litresDrunk float64) (float64, error) {
	if !(litresDrunk >= 0 && litresDrunk <= 1e6) {
		return 0, &OutOfRange{"litres_drunk", litresDrunk, 0, 1e6}
	}
	return litresDrunk / (1 - NippleWaste), nil
}

// drawnLD is what one pig draws in a day before anything is learned of the herd.
// Appetite is taken as on a mild day: to lower it in heat would promise water
// that may not be there.
func drawnLD(kg float64, sex Sex, daytimeC float64) float64 {
	eaten := feedUseKgD(kg, sex, 0) * (1 - FeederWaste)
	return eaten * waterPerFeed(daytimeC) / (1 - NippleWaste)
}

// PigDrawLD is the water in litres that one pig of a weight (5 to 180 kg) draws in a
// day at the mean air temperature of the day's warmer half (-60 to 60 Celsius),
// what is spilt at a nipple counted in; else *OutOfRange. The herd's own draw, once
// learned, is that of [Herd.WaterLeft].
func PigDrawLD(weightKg, daytimeC float64) (float64, error) {
	const leastKg, mostKg = 5, 180
	switch {
	case !(weightKg >= leastKg && weightKg <= mostKg):
		return 0, &OutOfRange{"weight_kg", weightKg, leastKg, mostKg}
	case !(daytimeC >= -60 && daytimeC <= 60):
		return 0, &OutOfRange{"daytime_c", daytimeC, -60, 60}
	}
	return drawnLD(weightKg, "", daytimeC), nil
}

const (
	// waterDrawSD is the spread of a herd's draw about the published one, as a share:
	// herd averages range from 60 to 117 ml per kg of pig and day (Journal of
	// Swine Health and Production 31(1), 2023).
	waterDrawSD = 0.25
	// waterDaySD is how much one day's draw strays from the herd's own: judgement.
	waterDaySD = 0.15
	// guessedAirSDC and toldAirSDC are how far a day turns out from what was
	// guessed or told, in Celsius: judgement. A guess errs by some 4 from day to
	// day, and by as much from place to place.
	guessedAirSDC = 5.5
	toldAirSDC    = 1.5
)

// herdDraw gives the litres that the herd draws on a day, as published, from
// weights taken once a week and joined by straight lines.
type herdDraw struct {
	h       *Herd
	mu      sync.Mutex
	weights map[Day]map[*Animal]float64
	days    map[Day]dayDraw
}

// dayDraw is a day's draw and the standard error that its unknown warmth gives.
type dayDraw struct{ litres, airSD float64 }

func newHerdDraw(h *Herd) *herdDraw {
	return &herdDraw{h: h, weights: map[Day]map[*Animal]float64{}, days: map[Day]dayDraw{}}
}

// draw is the herd's own, so that a day is worked out once.
func (h *Herd) draw() *herdDraw {
	return h.figures.draw.get(func() *herdDraw { return newHerdDraw(h) })
}

func (d *herdDraw) on(day Day) (dayDraw, error) {
	d.mu.Lock()
	defer d.mu.Unlock()
	if known, ok := d.days[day]; ok {
		return known, nil
	}
	air := d.h.Air(day)
	t, sd := air.DaytimeC(), toldAirSDC
	if air.Guessed {
		sd = guessedAirSDC
	}
	feed := 0.0
	for _, a := range d.h.Alive(day) {
		kg, err := d.kg(a, day)
		if err != nil {
			return dayDraw{}, err
		}
		feed += drawnLD(kg, a.Sex, 0) / coolRatioLKg
	}
	out := dayDraw{
		litres: feed * expectedWaterPerFeed(t, sd),
		airSD:  feed * (waterPerFeed(t+sd) - waterPerFeed(t-sd)) / 2,
	}
	d.days[day] = out
	return out, nil
}

// expectedWaterPerFeed is the mean of waterPerFeed where the warmth is known with
// a standard error only, by the three-point rule for a normal distribution: a
// hot day takes more than a cool one saves.
func expectedWaterPerFeed(daytimeC, sd float64) float64 {
	side := sd * math.Sqrt(3)
	return (waterPerFeed(daytimeC-side) + 4*waterPerFeed(daytimeC) + waterPerFeed(daytimeC+side)) / 6
}

func (d *herdDraw) kg(a *Animal, day Day) (float64, error) {
	from := day - (day%7+7)%7
	before, ok, err := d.weighed(a, from)
	if err != nil {
		return 0, err
	}
	after, ok2, err := d.weighed(a, from+7)
	if err != nil {
		return 0, err
	}
	if ok && ok2 {
		share := float64(day-from) / 7
		return before*(1-share) + after*share, nil
	}
	kg, ok, err := d.weighed(a, day) // it came or went within the week
	if err == nil && !ok {
		err = &Missing{What: "weight"}
	}
	return kg, err
}

func (d *herdDraw) weighed(a *Animal, day Day) (float64, bool, error) {
	kgs, ok := d.weights[day]
	if !ok {
		kgs = map[*Animal]float64{}
		if alive := d.h.Alive(day); len(alive) > 0 {
			weights, err := d.h.medianWeights(alive, day)
			if err != nil {
				return 0, false, err
			}
			kgs = byPig(weights)
		}
		d.weights[day] = kgs
	}
	kg, ok := kgs[a]
	return kg, ok && !math.IsNaN(kg), nil
}
