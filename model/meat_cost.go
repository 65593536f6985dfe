package model

import (
	"math"
	"time"
)

// Cost is what the herd has cost and will cost this season.
type Cost struct {
	Spent, Forecast float64 // money paid; the same with the feed still to buy
	// PerKgLive, PerKgHanging and PerKgPackaged are of the forecast less what was
	// received, over what the pigs that do not die give: the break-even price of
	// each. 0: unknown.
	PerKgLive, PerKgHanging, PerKgPackaged float64
	Currency                               string  // empty where none was ever named
	UnpricedFeedKg                         float64 // feed that no price was told for, left out of the sums
	Received                               float64 // from sales
	Reasons                                []Reason
}

// Cost sums what was spent and what is still to come until the target, or until
// the day on which the last pigs are booked. Feed still to buy is priced at what
// the herd paid for a kilogram so far. Money received is not taken off Spent and
// Forecast, only off the cost of a kilogram. What dead pigs cost the others
// carry. A season starts between the leaving of the last pigs before and the
// coming of its first. *Missing "spend" where nothing was ever paid.
func (h *Herd) Cost(at time.Time) (Cost, error) {
	s := h.season(DayOf(at))
	money := h.account(s, at)
	if money.entries == 0 {
		return Cost{}, &Missing{What: "spend"}
	}
	c := Cost{Spent: money.paid, Forecast: money.paid, Received: money.received, Currency: money.currency, UnpricedFeedKg: money.unpricedKg}
	c.Reasons = append(c.Reasons, Reason{Code: ReasonCostPaid, Q: []Quantity{{c.Spent, Money}}})
	if c.Received > 0 {
		c.Reasons = append(c.Reasons, Reason{Code: ReasonCostReceived, Q: []Quantity{{c.Received, Money}}})
	}
	h.addFeedAhead(&c, money, at)
	live, hanging := h.seasonMeat(s, at)
	net := c.Forecast - c.Received
	if live > 0 {
		takeHome, _ := h.learnedTakeHome()
		c.PerKgLive, c.PerKgHanging, c.PerKgPackaged = net/live, net/hanging, net/(hanging*takeHome.Mean)
	} else {
		c.Reasons = append(c.Reasons, Reason{Code: ReasonCostNoWeight})
	}
	if dead := s.dead(at); dead > 0 {
		c.Reasons = append(c.Reasons, Reason{Code: ReasonCostDead, Q: []Quantity{{float64(dead), Count}}})
	}
	if c.UnpricedFeedKg > 0 {
		c.Reasons = append(c.Reasons, Reason{Code: ReasonCostFeedUnpriced, Q: []Quantity{{c.UnpricedFeedKg, Kilograms}}})
	}
	if len(money.others) > 0 {
		c.Reasons = append(c.Reasons, Reason{Code: ReasonCostOtherMoney, Names: money.others})
	}
	return c, nil
}

// addFeedAhead adds the feed still to buy to the forecast.
func (h *Herd) addFeedAhead(c *Cost, money account, at time.Time) {
	today := DayOf(at)
	if len(h.Alive(today)) == 0 {
		return
	}
	until, ok := h.LastPigsLeave(today)
	if !ok {
		target, err := h.Target(h.TargetKg, today)
		if err != nil {
			return // no weight: the reason why no kilogram has a cost says so
		}
		until = target.Herd.Days.Mid
	}
	need, err := h.FeedNeed(at, until)
	if err != nil {
		return
	}
	onHand := max(money.boughtKg-h.pouredKg(money.season, at), 0)
	if left, err := h.FeedLeft(at); err == nil {
		onHand += left.FeedKg.Mid
	}
	buy := max(need.FeedKg.Mid-onHand, 0)
	if buy == 0 {
		return
	}
	price, ok := h.feedPrice(money)
	if !ok {
		c.UnpricedFeedKg += buy
		return
	}
	c.Forecast += buy * price
	c.Reasons = append(c.Reasons, Reason{Code: ReasonCostFeedAhead, On: until, Q: []Quantity{{buy, Kilograms}, {price, Money}}})
}

// feedPrice is what a kilogram of feed costs: by the recipe where each of its
// ingredients has a price, else the mean of all priced purchases.
func (h *Herd) feedPrice(money account) (float64, bool) {
	if m, ok := h.Recipe(); ok {
		var sum float64
		all := true
		for _, name := range sortedKeys(m.Ingredients) {
			p := money.priced[name]
			if p.kg <= 0 {
				all = false
				break
			}
			sum += m.Ingredients[name] * p.amount / p.kg
		}
		if all && m.BatchKg() > 0 {
			return sum / m.BatchKg(), true
		}
	}
	var kg, amount float64
	for _, name := range sortedKeys(money.priced) {
		kg, amount = kg+money.priced[name].kg, amount+money.priced[name].amount
	}
	if kg <= 0 {
		return 0, false
	}
	return amount / kg, true
}

// pouredKg is the feed poured into feeders in the season.
func (h *Herd) pouredKg(s Season, at time.Time) float64 {
	var sum float64
	for _, r := range h.Refills {
		if s.holds(r.On) && !r.At.After(at) && r.F.FeedKg != nil {
			sum += *r.F.FeedKg
		}
	}
	return sum
}

// seasonMeat is the live and the hanging weight that the season's pigs give:
// those butchered as they were, the living at the weight they are fed to.
func (h *Herd) seasonMeat(s Season, at time.Time) (liveKg, hangingKg float64) {
	dressing, _ := h.learnedDressing()
	hung := map[*Animal]float64{}
	for _, g := range h.Gones {
		if pigs, each, ok := h.hungEach(g); ok {
			for _, a := range pigs {
				hung[a] = each
			}
		}
	}
	today := DayOf(at)
	end, booked := h.LastPigsLeave(today)
	for _, a := range s.Pigs {
		switch {
		case a.Gone == nil || a.Gone.At.After(at):
			kg := h.TargetKg
			if booked {
				w, err := h.MeanWeight([]*Animal{a}, end)
				if err != nil {
					continue
				}
				kg = w.WeightKg.Mid
			} else if w, err := h.MeanWeight([]*Animal{a}, today); err != nil {
				continue
			} else {
				kg = math.Max(kg, w.WeightKg.Mid)
			}
			liveKg, hangingKg = liveKg+kg, hangingKg+kg*dressing.Mean
		case a.Gone.F.How == Butchered:
			kg := hung[a]
			if w, err := h.MeanWeight([]*Animal{a}, a.Gone.On); err == nil {
				liveKg += w.WeightKg.Mid
				if kg == 0 {
					kg = w.WeightKg.Mid * dressing.Mean
				}
			} else {
				liveKg += kg / dressing.Mean
			}
			hangingKg += kg
		}
	}
	return liveKg, hangingKg
}
