package schedule

import (
	"math"

	"troughbell/model"
)

// coldBetween tells of a cold night on the evening before it, from told or
// forecast weather only.
func coldBetween(v *view) []need {
	var out []need
	for _, d := range []model.Day{v.day, v.day + 1} {
		w, forecast, _ := v.h.WeatherOf(d)
		if w.LowC == nil {
			continue
		}
		l := Line{
			About: aboutCold, Topic: "cold:freeze", Grade: Welfare, Code: CodeColdFreeze, On: d,
			Earliest: v.evening(v.day), Latest: v.end,
			Q:       []model.Quantity{{Value: *w.LowC, Unit: model.Celsius}},
			Reasons: []model.Reason{weatherReason(d, *w.LowC, forecast)},
		}
		if frost, err := model.ClassOfFrost(*w.LowC); err == nil && frost == model.FrostHard {
			out = append(out, need{Line: l, token: token("freeze", d), quiet: sameVisit})
		}
		m, err := v.f.MeanWeight(v.pigs, d)
		if err != nil {
			continue
		}
		if least := bornCold(m.WeightKg.Mid); *w.LowC < least {
			l.Topic, l.Code = "cold:night", CodeColdNight
			l.Q = append(l.Q[:1:1], model.Quantity{Value: least, Unit: model.Celsius}, model.Quantity{Value: m.WeightKg.Mid, Unit: model.Kilograms})
			out = append(out, need{Line: l, token: token(aboutCold, d), quiet: sameVisit})
		}
	}
	return out
}

// weatherReason is where a temperature comes from.
func weatherReason(on model.Day, c float64, forecast bool) model.Reason {
	code := ReasonWeatherTold
	if forecast {
		code = ReasonForecast
	}
	return model.Reason{Code: code, On: on, Q: []model.Quantity{{Value: c, Unit: model.Celsius}}}
}

// bornCold is the night low that pigs of the weight bear on dry bedding, in °C.
func bornCold(weightKg float64) float64 {
	low, err := model.NightLowBorneC(min(max(weightKg, 1), 220), true)
	if err != nil { // never inside these bounds
		return math.Inf(-1)
	}
	return low
}
