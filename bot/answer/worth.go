package answer

import (
	"strings"

	"troughbell/bot/wording"
	"troughbell/model"
)

// breakEven says at what price the pigs cover what they cost, the feed still to come
// counted in.
func breakEven(a asked) Answer {
	out := cost(a)
	n := len(a.h.Alive(a.today))
	if out.Data == nil || n == 0 {
		return out
	}
	c, err := a.h.Cost(a.now)
	if err != nil {
		return a.missing(err)
	}
	on, err := a.yieldDay()
	if err != nil {
		return a.missing(err)
	}
	y, err := a.h.Yield(on)
	if err != nil {
		return a.missing(err)
	}
	net := max(c.Forecast-c.Received, 0)
	live, err := model.BreakEven(net, y.LiveKg.Mid*float64(n))
	if err != nil {
		return a.missing(err)
	}
	hanging, err := model.BreakEven(net, y.HangingKg.Mid*float64(n))
	if err != nil {
		return a.missing(err)
	}
	each := net / float64(n)
	out.Data["break_even_per_pig"], out.Data["break_even_per_kg_live"], out.Data["break_even_per_kg_hanging"] = kg(each), kg(live), kg(hanging)
	out.Text = a.say("break_even", wording.Args{Q: []model.Quantity{wording.Cash(each), wording.Cash(hanging), wording.Cash(live)}})
	if c.UnpricedFeedKg > 0.5 {
		out.Text += "\n" + a.say("cost_unpriced", wording.Args{Q: []model.Quantity{{}, {}, {}, {}, wording.Kg(c.UnpricedFeedKg)}})
	}
	return out
}

// pigWorth says the most that a weaner may cost where it is to sell for a price: what
// is left of that after feed, and after what else was spent on each pig.
func pigWorth(a asked) Answer {
	if a.Price == nil {
		return Answer{Text: a.say("pig_worth_ask", wording.Args{})}
	}
	perKg, _, ok := a.h.FeedPrice(a.now)
	if !ok {
		return a.missing(&model.Missing{What: "spend"})
	}
	n, err := model.PlanNeeds(model.NeedsQuery{Count: 1, From: a.today, WeightKg: weanedKg, TargetKg: a.endKg()})
	if err != nil {
		return a.missing(err)
	}
	feed, other := perKg*n.FeedKg.Mid, a.otherSpent()
	most, err := model.MostForPig(*a.Price, feed+other)
	if err != nil {
		return a.missing(err)
	}
	args := wording.Args{Q: []model.Quantity{wording.Cash(*a.Price), wording.Cash(max(most, 0)), wording.Cash(feed), wording.Cash(other)}}
	code := "pig_worth"
	if most <= 0 {
		code = "pig_worth_none"
	}
	data := a.beside(cost, map[string]any{"most_for_pig": kg(most), "feed_money": kg(feed), "other_money": kg(other), "price": kg(*a.Price)})
	return Answer{Data: data, Text: a.say(code, args), Reasons: n.Reasons}
}

// otherSpent is what was spent on each pig beside feed and the pigs themselves.
func (a asked) otherSpent() float64 {
	alive := len(a.h.Alive(a.today))
	if alive == 0 {
		return 0
	}
	sum := 0.0
	for _, s := range a.h.Spends {
		what := strings.ToLower(s.F.What)
		if !s.F.Income && !strings.Contains(what, "pig") && !strings.Contains(what, "feed") && !strings.Contains(what, "weaner") {
			sum += s.F.Amount
		}
	}
	return sum / float64(alive)
}
