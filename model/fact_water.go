package model

import "errors"

// Water is a water barrel filled, or with Seen its level only looked at.
// Barrel is empty for all of them alike.
type Water struct {
	Barrel   string   `json:"barrel,omitempty"`
	Full     bool     `json:"full,omitempty"`
	Litres   *float64 `json:"litres,omitempty"` // poured; with Seen: standing in it
	Fraction *float64 `json:"fraction,omitempty"`
	Seen     bool     `json:"seen,omitempty"`
}

func (Water) Kind() Kind   { return "water" }
func (Water) Version() int { return 1 }

func (w Water) Check() error {
	if !w.Full && w.Litres == nil && w.Fraction == nil {
		return errors.New("water needs an amount or a level")
	}
	if w.Litres != nil && *w.Litres < 0 {
		return errors.New("water cannot be less than nothing")
	}
	return checkFraction(w.Fraction)
}

func (w Water) fold(h *Herd, r Record) { h.Waters = append(h.Waters, dated(w, r)) }

// WallowFill is water run into the wallow: an amount, minutes of hose, or
// neither, which means topped up to its depth. Dry says it was seen dry,
// nothing filled.
type WallowFill struct {
	Litres  *float64 `json:"litres,omitempty"`
	Minutes *float64 `json:"minutes,omitempty"`
	Dry     bool     `json:"dry,omitempty"`
}

func (WallowFill) Kind() Kind   { return "wallow" }
func (WallowFill) Version() int { return 1 }

func (w WallowFill) Check() error {
	if w.Litres != nil && *w.Litres <= 0 || w.Minutes != nil && *w.Minutes <= 0 {
		return errors.New("what went into the wallow must be more than nothing")
	}
	return nil
}

func (w WallowFill) fold(h *Herd, r Record) { h.WallowFills = append(h.WallowFills, dated(w, r)) }
