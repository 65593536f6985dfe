package model

import (
	"sort"
	"time"
)

// season is a run of days with pigs, and what belongs to it.
type season struct {
	from Day // first day whose money counts
	to   Day // last
	pigs []*Animal
}

// Money for pigs is paid before they come, the butcher's after they are gone.
const paidAfterDays = 60

// endless stands for the end of a season that goes on.
const endless = Day(1 << 30)

// season finds the season of the day: the one whose pigs are there, else the
// latest before it, else the whole life of the herd.
func (h *Herd) season(on Day) season {
	type run struct{ from, to Day }
	var runs []run
	animals := append([]*Animal(nil), h.Animals...)
	sort.SliceStable(animals, func(i, j int) bool { return animals[i].Group.Arrived < animals[j].Group.Arrived })
	for _, a := range animals {
		end := endless
		if a.Gone != nil {
			end = a.Gone.On
		}
		if n := len(runs); n > 0 && a.Group.Arrived <= runs[n-1].to {
			runs[n-1].to = max(runs[n-1].to, end)
			continue
		}
		runs = append(runs, run{a.Group.Arrived, end})
	}
	s := season{from: -endless, to: endless, pigs: h.Animals}
	best := -1
	for i, r := range runs {
		if r.from <= on || i == 0 {
			best = i
		}
	}
	if best < 0 {
		return s
	}
	r := runs[best]
	s.pigs = nil
	for _, a := range h.Animals {
		if a.Group.Arrived >= r.from && a.Group.Arrived <= r.to {
			s.pigs = append(s.pigs, a)
		}
	}
	// Between two seasons money belongs to the earlier one for two months, and to
	// the later one from then on, or from its first pig on.
	if best > 0 {
		s.from = min(runs[best-1].to+paidAfterDays+1, r.from)
	}
	if best+1 < len(runs) {
		s.to = min(r.to+paidAfterDays, runs[best+1].from-1)
	}
	return s
}

func (s season) holds(d Day) bool { return s.from <= d && d <= s.to }

// dead counts the season's pigs that died by the moment.
func (s season) dead(at time.Time) int {
	n := 0
	for _, a := range s.pigs {
		if a.Gone != nil && a.Gone.F.How == Died && !a.Gone.At.After(at) {
			n++
		}
	}
	return n
}

// account is the money of a season.
type account struct {
	season         season
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
func (h *Herd) account(s season, at time.Time) account {
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
