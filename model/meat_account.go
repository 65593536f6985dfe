package model

import "time"

// holds reports whether the day's money is the season's.
func (s Season) holds(d Day) bool { return s.PaidFrom <= d && d <= s.PaidTo }

// dead counts the season's pigs that died by the moment.
func (s Season) dead(at time.Time) int {
	n := 0
	for _, a := range s.Pigs {
		if a.Gone != nil && a.Gone.F.How == Died && !a.Gone.At.After(at) {
			n++
		}
	}
	return n
}

// account is the money of a season.
type account struct {
	season         Season
	currency       string
	others         []string // currencies that are not summed
	paid, received float64
	entries        int // payments of any kind
	priced         map[string]pricedFeed
	boughtKg       float64
	unpricedKg     float64
}

// pricedFeed is what was bought of an ingredient at a price.
type pricedFeed struct{ kg, amount float64 }

// account sums the money of the season up to the moment, in the herd's currency,
// or in that of the first amount that names one.
func (h *Herd) account(s Season, at time.Time) account {
	a := account{season: s, currency: h.Currency, priced: map[string]pricedFeed{}}
	other := map[string]bool{}
	mine := func(currency string) bool {
		if currency == "" {
			return true
		}
		if a.currency == "" {
			a.currency = currency
		}
		if currency != a.currency {
			other[currency] = true
		}
		return currency == a.currency
	}
	for _, p := range h.Spends {
		switch {
		case !s.holds(p.On) || p.At.After(at) || !mine(p.F.Currency):
		case p.F.Income:
			a.received += p.F.Amount
		default:
			a.paid += p.F.Amount
			a.entries++
		}
	}
	for _, p := range h.Stocks {
		if s.holds(p.On) && !p.At.After(at) && !p.F.Counted {
			a.bought(h, p.F, p.F.Amount != nil && mine(p.F.Currency))
		}
	}
	for _, g := range h.Gones {
		switch {
		case !s.holds(g.On) || g.At.After(at) || g.F.Amount == nil || !mine(g.F.Currency):
		case g.F.How == Sold:
			a.received += *g.F.Amount
		default: // the butcher's bill, or the renderer's
			a.paid += *g.F.Amount
			a.entries++
		}
	}
	a.others = sortedKeys(other)
	return a
}

// bought takes in a purchase of feed, with or without a price.
func (a *account) bought(h *Herd, p Stock, priced bool) {
	var kg float64
	switch {
	case p.FeedKg != nil:
		kg = *p.FeedKg
	case p.Count != nil:
		kg = *p.Count * h.Sizes["bag"] // 0 where the bag's size is not known
	}
	a.boughtKg += kg
	if !priced {
		a.unpricedKg += kg
		return
	}
	a.paid += *p.Amount
	a.entries++
	if kg > 0 {
		f := a.priced[p.Ingredient]
		a.priced[p.Ingredient] = pricedFeed{f.kg + kg, f.amount + *p.Amount}
	}
}
