package wording

import "troughbell/model"

// Effects that say when the target is reached.
const (
	finish    = "finish"     // by the pigs that came
	reached   = "reached"    // it is already
	targetDay = "target_day" // by all, where the target was set
)

// settingEffects says when the next round is, or the day of a new target.
func (v Voice) settingEffects(s model.Setting) []Effect {
	switch s.Key {
	case model.SetChore, model.SetHour, model.SetEve:
		return []Effect{{Code: "next_round", At: v.Herd.NextRoundTold(v.Now)}}
	case model.SetPlace:
		switch {
		case s.Text == "":
			return nil
		case v.Forecasts:
			return []Effect{{Code: "forecast_on"}}
		}
		return []Effect{{Code: "forecast_none"}}
	case model.SetTarget:
		t, err := v.Herd.Target(v.Herd.TargetKg, v.today())
		if err != nil {
			return nil
		}
		if t.Herd.Already {
			return []Effect{{Code: reached, Q: []model.Quantity{Kg(t.TargetKg)}}}
		}
		return []Effect{{Code: targetDay, On: t.Herd.Days.Mid, Window: t.Herd.Days}}
	}
	return nil
}

// stockEffects says the price of a purchase by weight.
func stockEffects(s model.Stock) []Effect {
	if s.Amount == nil || s.FeedKg == nil || *s.FeedKg <= 0 || s.Counted {
		return nil
	}
	return []Effect{{Code: "price", Q: []model.Quantity{Cash(*s.Amount / *s.FeedKg)}}}
}
