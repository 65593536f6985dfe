package model

import (
	"sort"
	"strings"
	"time"
)

// CostPart is what went, or will go, into one thing.
type CostPart struct {
	What  string  // as the person named it; CostFeed, CostButcher, or empty: not said
	Spent float64 // so far
	Ahead float64 // still to come
}

// What of a [CostPart] that is not the person's own word.
const (
	CostFeed    = "feed"
	CostButcher = "butcher"
)

// CostParts splits the season's money of [Herd.Cost] by what it went into, the
// largest first: their sums are its Spent and Forecast. Feed is all that was
// bought for the shed, with what is still to buy. Missing "spend" where nothing
// was ever paid.
func (h *Herd) CostParts(at time.Time) ([]CostPart, Cost, error) {
	c, err := h.Cost(at)
	if err != nil {
		return nil, Cost{}, err
	}
	s := h.season(DayOf(at))
	money := h.account(s, at)
	mine := func(currency string) bool { return currency == "" || currency == money.currency }
	of := map[string]float64{}
	for _, p := range h.Spends {
		if s.holds(p.On) && !p.At.After(at) && mine(p.F.Currency) && !p.F.Income {
			of[strings.ToLower(strings.TrimSpace(p.F.What))] += p.F.Amount
		}
	}
	for _, p := range h.Stocks {
		if s.holds(p.On) && !p.At.After(at) && !p.F.Counted && p.F.Amount != nil && mine(p.F.Currency) {
			of[CostFeed] += *p.F.Amount
		}
	}
	for _, g := range h.Gones {
		if s.holds(g.On) && !g.At.After(at) && g.F.Amount != nil && mine(g.F.Currency) && g.F.How != Sold {
			of[CostButcher] += *g.F.Amount
		}
	}
	ahead := max(c.Forecast-c.Spent, 0)
	if ahead > 0 {
		of[CostFeed] += 0 // there, though nothing was bought of it yet
	}
	out := make([]CostPart, 0, len(of))
	for _, what := range sortedKeys(of) {
		p := CostPart{What: what, Spent: of[what]}
		if what == CostFeed {
			p.Ahead = ahead
		}
		out = append(out, p)
	}
	sort.SliceStable(out, func(i, j int) bool { return out[i].Spent+out[i].Ahead > out[j].Spent+out[j].Ahead })
	return out, c, nil
}

// SeasonPigs counts the pigs that the season's money is for: those that came in
// it and did not die.
func (h *Herd) SeasonPigs(at time.Time) int {
	s := h.season(DayOf(at))
	return len(s.Pigs) - s.dead(at)
}
