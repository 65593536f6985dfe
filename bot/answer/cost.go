package answer

import (
	"troughbell/bot/wording"
	"troughbell/model"
)

// cost says what the herd has cost and will cost.
func cost(a asked) Answer {
	c, err := a.h.Cost(a.now)
	if err != nil {
		return a.missing(err)
	}
	if c.Currency == "" {
		c.Currency = a.v.Currency()
	}
	data := map[string]any{
		"spent": kg(c.Spent), "forecast": kg(c.Forecast), "per_kg_hanging": kg(c.PerKgHanging),
		"per_kg_live": kg(c.PerKgLive), "per_kg_packaged": kg(c.PerKgPackaged), "currency": c.Currency, "unpriced_feed_kg": kg(c.UnpricedFeedKg),
	}
	args := wording.Args{Q: []model.Quantity{
		wording.Cash(c.Spent), wording.Cash(c.Forecast), wording.Cash(c.PerKgHanging), wording.Cash(c.PerKgLive),
		wording.Kg(c.UnpricedFeedKg),
	}}
	code := "cost"
	if len(a.h.Alive(a.today)) == 0 {
		code = "cost_over"
	}
	text := a.say(code, args)
	gain, gainReasons := a.feedPerGain(data)
	switch {
	case c.UnpricedFeedKg > 0.5:
		text += "\n" + a.say("cost_unpriced", args)
	case gain != "":
		text += "\n" + gain
	}
	c.Reasons = append(c.Reasons, gainReasons...)
	return Answer{Data: data, Text: text, Reasons: c.Reasons}
}

// feedPerGain adds the feed that goes for a kilogram of gain, and says it.
func (a asked) feedPerGain(data map[string]any) (string, []model.Reason) {
	f, err := a.h.FeedPerGain(a.now)
	if err != nil { // too early, or no weight: the cost stands without
		return "", nil
	}
	data["feed_per_gain"], data["feed_per_gain_low"], data["feed_per_gain_high"] = kg(f.Ratio.Mid), kg(f.Ratio.Low), kg(f.Ratio.High)
	q := func(x float64) model.Quantity { return model.Quantity{Value: to(x, 10), Unit: model.Ratio} }
	args := wording.Args{Q: []model.Quantity{q(f.Ratio.Mid), q(f.Ratio.Low), q(f.Ratio.High)}}
	if f.Cost > 0 {
		data["feed_cost_per_kg_gain"] = kg(f.Cost)
		args.Q = append(args.Q, wording.Cash(f.Cost))
	}
	return a.say("feed_per_gain", args), f.Reasons
}
