package model

import (
	"errors"
	"slices"
)

// Sex is a pig's sex in the trade's words; empty where it was not said.
type Sex string

// The sexes.
const (
	Barrow Sex = "barrow"
	Gilt   Sex = "gilt"
	Boar   Sex = "boar"
	Sow    Sex = "sow"
)

// Arrive is a group of pigs of one age come to the herd. Animals holds their
// names where they have any, Sexes one for each pig in the order of Animals,
// or in the order said.
type Arrive struct {
	Count    int      `json:"count"`
	Animals  []string `json:"animals,omitempty"`
	Sexes    []Sex    `json:"sexes,omitempty"`
	WeightKg *float64 `json:"weight_kg,omitempty"` // each
	Born     *Day     `json:"born,omitempty"`
	Group    string   `json:"group,omitempty"` // what the person calls the group
}

func (Arrive) Kind() Kind   { return "arrive" }
func (Arrive) Version() int { return 1 }

func (a Arrive) Check() error {
	switch {
	case a.Count < 1:
		return errors.New("an arrival needs at least one pig")
	case a.Count > 200:
		return errors.New("troughbell is made for small herds, up to 200 pigs at once")
	case len(a.Animals) > a.Count || len(a.Sexes) > a.Count:
		return errors.New("an arrival names more pigs than came")
	case a.WeightKg != nil && *a.WeightKg <= 0:
		return errors.New("a weight must be more than nothing")
	}
	return nil
}

func (a Arrive) fold(h *Herd, r Record) { h.addArrival(a, r) }

// How a pig left.
const (
	Died      = "died"
	Sold      = "sold"
	Butchered = "butchered"
)

// Gone is pigs that left the herd, or what became of them at the butcher's.
// HangingKg is per animal, or a total where Animals is All.
type Gone struct {
	Animals    []string `json:"animals,omitempty"`
	Count      int      `json:"count,omitempty"`
	How        string   `json:"how"`
	HangingKg  *float64 `json:"hanging_kg,omitempty"`
	PackagedKg *float64 `json:"packaged_kg,omitempty"`
	Amount     *float64 `json:"amount,omitempty"`
	Currency   string   `json:"currency,omitempty"`
}

func (Gone) Kind() Kind   { return "gone" }
func (Gone) Version() int { return 1 }

func (g Gone) Check() error {
	switch g.How {
	case Died, Sold, Butchered:
	default:
		return errors.New("a pig leaves by dying, by sale or to the butcher")
	}
	if len(g.Animals) == 0 && g.Count == 0 {
		return errors.New("say which pig left, or how many")
	}
	return nil
}

func (g Gone) fold(h *Herd, r Record) { h.addGone(g, r) }

// Booked is an appointment with the butcher. A booking replaces an earlier one
// of the same day; Cancelled takes it away.
type Booked struct {
	Day       Day  `json:"day"`
	Minute    *int `json:"minute,omitempty"` // after midnight
	Count     int  `json:"count,omitempty"`  // 0: all
	Cancelled bool `json:"cancelled,omitempty"`
	// Animals are the pigs by name, where the person said which; Count is then
	// their number.
	Animals []string `json:"animals,omitempty"`
}

// MayTake reports whether the pig may go to the appointment: it names no pigs, or
// this one, or the pig has no name to tell it by.
func (b Booked) MayTake(p *Animal) bool {
	return len(b.Animals) == 0 || p.Name == "" || slices.Contains(b.Animals, p.Name)
}

func (Booked) Kind() Kind   { return "booked" }
func (Booked) Version() int { return 1 }
func (b Booked) Check() error {
	if b.Count < 0 {
		return errors.New("a booking is for at least one pig")
	}
	return nil
}

func (b Booked) fold(h *Herd, r Record) { h.addBooking(b, r) }

// AwayFrom is a span of days, both included, in which the person is not there.
type AwayFrom struct {
	From Day `json:"from"`
	To   Day `json:"to"`
}

func (AwayFrom) Kind() Kind   { return "away" }
func (AwayFrom) Version() int { return 1 }

func (a AwayFrom) Check() error {
	if a.To < a.From {
		return errors.New("the day of coming back lies before the day of leaving")
	}
	return nil
}

func (a AwayFrom) fold(h *Herd, r Record) { h.Aways = append(h.Aways, dated(a, r)) }

// Spend is money paid, or with Income money received, in the currency's major
// unit.
type Spend struct {
	Amount   float64 `json:"amount"`
	Currency string  `json:"currency,omitempty"` // ISO 4217
	What     string  `json:"what,omitempty"`
	Income   bool    `json:"income,omitempty"`
}

func (Spend) Kind() Kind   { return "spend" }
func (Spend) Version() int { return 1 }

func (s Spend) Check() error {
	if s.Amount <= 0 {
		return errors.New("an amount of money must be more than nothing")
	}
	return nil
}

func (s Spend) fold(h *Herd, r Record) {
	h.Spends = append(h.Spends, dated(s, r))
	if h.Currency == "" { // the first money spoken of is the herd's, until it says otherwise
		h.Currency = s.Currency
	}
}
