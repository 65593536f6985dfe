package season

import "math"

// A pig uses 60 to 117 ml of water a day for each kilogram of its weight,
// spilled water included, the average differing between studies (Little et al.,
// J. Swine Health Prod. 31(1), 2023, read). Here a pig of 20 kg uses the most of
// it and one of 120 kg the least, in between along a power of the weight
// (computed). Sixty males from 44 kg on used 7.98 l, half as much again, so that
// herds are drawn between the two.
const (
	mostLKg, lightKg  = 0.117, 20.0
	leastLKg, heavyKg = 0.060, 120.0
)

var waterPower = math.Log(leastLKg/mostLKg) / math.Log(heavyKg/lightKg)

// herdWaterLow and herdWaterHigh bound the factor by which a herd's drinkers
// make it use more than the equation.
const herdWaterLow, herdWaterHigh = 0.9, 1.55

// waterLD is the litres that a pig uses in a day, drunk and spilled.
func waterLD(kg float64, a air) float64 {
	return kg * mostLKg * math.Pow(kg/lightKg, waterPower) * heatWater(a.highC)
}

// heatWater is how much more is drawn on a warm day, by its high: nothing below
// 21 Celsius, a fifth above it, half above 27, twice from 32 on (common practice
// of keepers, no source), joined up.
func heatWater(highC float64) float64 {
	steps := []struct{ c, by float64 }{{18, 1}, {24, 1.2}, {29.5, 1.5}, {34, 2}}
	if highC <= steps[0].c {
		return 1
	}
	for i := 1; i < len(steps); i++ {
		if a, b := steps[i-1], steps[i]; highC <= b.c {
			return a.by + (b.by-a.by)*(highC-a.c)/(b.c-a.c)
		}
	}
	return steps[len(steps)-1].by
}
