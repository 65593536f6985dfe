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
		"per_kg_live": kg(c.PerKgLive), "currency": c.Currency, "unpriced_feed_kg": kg(c.UnpricedFeedKg),
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
	if c.UnpricedFeedKg > 0.5 {
		text += "\n" + a.say("cost_unpriced", args)
	}
	return Answer{Data: data, Text: text, Reasons: c.Reasons}
}
