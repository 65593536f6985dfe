package schedule

import "troughbell/model"

// What pigs bear at night by weight: without dry bedding, and how much less with
// it (common practice, no source). Between the weights it is linear.
var coldBorne = []struct{ weightKg, lowC float64 }{{23, 10}, {45, 4.4}, {91, -1}}

const (
	beddingC = 7.0  // dry straw is worth so many degrees
	freezeC  = -4.0 // nipples and hoses freeze hard
)

// coldBetween tells of a cold night on the evening before it, from told weather
// only.
func coldBetween(v *view) []need {
	var out []need
	for _, d := range []model.Day{v.day, v.day + 1} {
		w, ok := v.h.Weathers[d]
		if !ok || w.LowC == nil {
			continue
		}
		l := Line{
			About: aboutCold, Topic: "cold:freeze", Grade: Welfare, Code: CodeColdFreeze, On: d,
			Earliest: v.evening(v.day), Latest: v.end,
			Q:       []model.Quantity{{Value: *w.LowC, Unit: model.Celsius}},
			Reasons: []model.Reason{{Code: ReasonWeatherTold, On: d, Q: []model.Quantity{{Value: *w.LowC, Unit: model.Celsius}}}},
		}
		if *w.LowC <= freezeC {
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

// bornCold is the night low that pigs of the weight bear on dry bedding, in °C.
func bornCold(weightKg float64) float64 {
	t := coldBorne
	low := t[len(t)-1].lowC
	for i := range t {
		if weightKg > t[i].weightKg {
			continue
		}
		low = t[i].lowC
		if i > 0 {
			a, b := t[i-1], t[i]
			low = a.lowC + (b.lowC-a.lowC)*(weightKg-a.weightKg)/(b.weightKg-a.weightKg)
		}
		break
	}
	return low - beddingC
}
