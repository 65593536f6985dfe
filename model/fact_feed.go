package model

import "errors"

// Refill is feed poured into a feeder. Feeder is empty where only one exists
// or none was named.
type Refill struct {
	Feeder   string   `json:"feeder,omitempty"`
	FeedKg   *float64 `json:"feed_kg,omitempty"`  // poured
	Full     bool     `json:"full,omitempty"`     // it was full afterwards
	Fraction *float64 `json:"fraction,omitempty"` // of its capacity afterwards
	// FromEmpty says that the feeder was seen empty before the pour.
	FromEmpty bool `json:"from_empty,omitempty"`
}

func (Refill) Kind() Kind   { return "refill" }
func (Refill) Version() int { return 1 }

func (f Refill) Check() error {
	if f.FeedKg == nil && !f.Full && f.Fraction == nil {
		return errors.New("a refill needs an amount, or a level afterwards")
	}
	if f.FeedKg != nil && *f.FeedKg <= 0 {
		return errors.New("the feed poured must be more than nothing")
	}
	return checkFraction(f.Fraction)
}

func (f Refill) fold(h *Herd, r Record) { h.Refills = append(h.Refills, dated(f, r)) }

// FeedLevel is a level seen in a feeder, nothing filled: as a fraction of its
// capacity, as an amount, or as the days the person thinks it will last.
type FeedLevel struct {
	Feeder   string   `json:"feeder,omitempty"`
	Fraction *float64 `json:"fraction,omitempty"`
	FeedKg   *float64 `json:"feed_kg,omitempty"`
	Days     *float64 `json:"days,omitempty"`
	// Spilled says that feed was lost since the record before (tipped, spoilt, taken
	// by something else), SpilledKg how much where that was said: the pigs did not
	// eat it. It stands without a level.
	Spilled   bool     `json:"spilled,omitempty"`
	SpilledKg *float64 `json:"spilled_kg,omitempty"`
}

func (FeedLevel) Kind() Kind   { return "feed_level" }
func (FeedLevel) Version() int { return 1 }

func (f FeedLevel) Check() error {
	if f.Spilled {
		if f.Fraction != nil || f.FeedKg != nil || f.Days != nil {
			return errors.New("say what was spilled and what is left one after the other")
		}
		if f.SpilledKg != nil && *f.SpilledKg <= 0 {
			return errors.New("what was spilled must be more than nothing")
		}
		return nil
	}
	if f.SpilledKg != nil {
		return errors.New("an amount spilled needs to be said as spilled")
	}
	if f.Fraction == nil && f.FeedKg == nil && f.Days == nil {
		return errors.New("a feed level needs a fraction, an amount or days")
	}
	if f.FeedKg != nil && *f.FeedKg < 0 || f.Days != nil && *f.Days < 0 {
		return errors.New("a feed level cannot be negative")
	}
	return checkFraction(f.Fraction)
}

func (f FeedLevel) fold(h *Herd, r Record) { h.FeedLevels = append(h.FeedLevels, dated(f, r)) }

func checkFraction(f *float64) error {
	if f != nil && (*f < 0 || *f > 1) {
		return errors.New("a level lies between empty and full")
	}
	return nil
}
