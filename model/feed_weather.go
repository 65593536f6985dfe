package model

// quiniouIntakeGD is the free intake of a pig in grams a day by mean air
// temperature and body weight: Quiniou, Dubois and Noblet, Livest. Prod. Sci.
// 63:245-253, 2000, for 12 to 29 °C and 30 to 90 kg.
func quiniouIntakeGD(meanC, weightKg float64) float64 {
	t, w := meanC, weightKg
	return -1264 + 117*t - 2.40*t*t + 73.6*w - 0.26*w*w - 0.95*t*w
}

const (
	mildC           = 20.0 // below it heat takes nothing from the appetite
	heatTakesAtMost = 0.25
	// What a wallow gives back of the appetite that heat takes: judgement, no
	// figure was found.
	wallowGivesBack = 0.5
	// Cold without dry bedding asks for more feed: about 5 % at freezing, after
	// Lopez et al., J. Anim. Sci., who saw 5.7 % more between -5 and 8 °C.
	coldC      = 5.0
	coldFeedBy = 0.05
)

// WeatherFeedFactor scales a day's feed by the day's mean air temperature: below
// 1 in heat, above it in frost. Between 5 and 20 °C it is 1. Heat is the
// published equation of Quiniou et al. (2000) held against itself at 20 °C,
// weight held to its 30 to 90 kg and temperature to its 29 °C, a quarter at
// most; a wallow gives half of it back (judgement). meanC lies between -60 and 60,
// weightKg between 1 and 220: else *OutOfRange.
func WeatherFeedFactor(meanC, weightKg float64, wallow bool) (float64, error) {
	const leastKg, mostKg = 1, 220
	switch {
	case !(meanC >= -60 && meanC <= 60):
		return 0, &OutOfRange{"mean_c", meanC, -60, 60}
	case !(weightKg >= leastKg && weightKg <= mostKg):
		return 0, &OutOfRange{"weight_kg", weightKg, leastKg, mostKg}
	}
	return weatherFactor(meanC, weightKg, wallow), nil
}

// weatherFactor is WeatherFeedFactor of any weight.
func weatherFactor(meanC, weightKg float64, wallow bool) float64 {
	switch {
	case meanC > mildC:
		w := min(max(weightKg, 30), 90)
		takes := 1 - quiniouIntakeGD(min(meanC, 29), w)/quiniouIntakeGD(mildC, w)
		takes = min(max(takes, 0), heatTakesAtMost)
		if wallow {
			takes *= 1 - wallowGivesBack
		}
		return 1 - takes
	case meanC < coldC:
		return 1 + coldFeedBy*min((coldC-meanC)/coldC, 1)
	}
	return 1
}

// weatherFeedFactor is WeatherFeedFactor on a day of which a temperature was
// told or forecast, else 1: a guess takes no feed from the pigs.
func (h *Herd) weatherFeedFactor(d Day, weightKg float64) float64 {
	air := h.Air(d)
	if air.Guessed {
		return 1
	}
	return weatherFactor(air.MeanC(), weightKg, h.hasWallow(d))
}

// hasWallow reports whether the pigs have a wallow on the day: one set up, or
// one topped up in the month before.
func (h *Herd) hasWallow(d Day) bool {
	if h.Wallow != nil {
		return true
	}
	for _, f := range h.WallowFills {
		if f.On <= d && d-f.On <= 30 {
			return true
		}
	}
	return false
}
