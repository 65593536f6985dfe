package wording

import (
	"strings"

	"troughbell/bot/reading"
	"troughbell/model"
)

// weighEffects says the weight that a tape means, and the gain since the pig
// was last weighed.
func (v Voice) weighEffects(e reading.Entry, w model.Weigh) []Effect {
	var out []Effect
	est, ok := weightOf(w)
	if !ok {
		return nil
	}
	if w.GirthCm > 0 {
		i := est.Interval()
		out = append(out, Effect{Code: "tape_weight", Q: []model.Quantity{Kg(i.Mid), Kg(i.Low), Kg(i.High)}})
	}
	if before, on, ok := v.weighedBefore(w.Animals, e.On); ok {
		days := float64(e.On - on)
		gain := est.Mean - before.Mean
		code := "gained"
		if gain < 0 {
			code, gain = "lost", -gain
		}
		out = append(out, Effect{Code: code, On: on, Q: []model.Quantity{Kg(gain), Days(days), KgD(gain / days)}})
	}
	return out
}

// weightOf is the weight that a weighing means by itself.
func weightOf(w model.Weigh) (model.Estimate, bool) {
	var est model.Estimate
	var err error
	switch {
	case w.WeightKg > 0:
		return model.Estimate{Mean: w.WeightKg}, true
	case w.LengthCm > 0:
		est, err = model.WeightFromTape(w.GirthCm, w.LengthCm)
	default:
		est, err = model.WeightFromGirth(w.GirthCm)
	}
	return est, err == nil
}

// weighedBefore finds the latest weighing of just these pigs on an earlier day.
func (v Voice) weighedBefore(animals []string, on model.Day) (model.Estimate, model.Day, bool) {
	for i := len(v.Herd.Weighings) - 1; i >= 0; i-- {
		w := v.Herd.Weighings[i]
		if w.On >= on || !coversSame(w.F.Animals, animals) {
			continue
		}
		if est, ok := weightOf(w.F); ok {
			return est, w.On, true
		}
	}
	return model.Estimate{}, 0, false
}

// coversSame reports whether a weighing speaks of every one of the pigs named.
// The herd's mean speaks only of the herd.
func coversSame(have, want []string) bool {
	for _, n := range want {
		found := false
		for _, h := range have {
			found = found || strings.EqualFold(h, n)
		}
		if !found {
			return false
		}
	}
	return len(have) > 0 && len(want) > 0
}
