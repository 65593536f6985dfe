package model

import "errors"

// How a weight came about.
const (
	ByScale = "scale"
	ByTape  = "tape"
	ByEye   = "eye" // the person's own estimate
)

// Weigh is a weight or a tape reading of one or several pigs: of each of them
// alike, or, with All, the mean of the herd.
type Weigh struct {
	Animals  []string `json:"animals"`
	WeightKg float64  `json:"weight_kg,omitempty"`
	By       string   `json:"by,omitempty"` // of WeightKg: ByScale or ByEye
	GirthCm  float64  `json:"girth_cm,omitempty"`
	LengthCm float64  `json:"length_cm,omitempty"`
}

func (Weigh) Kind() Kind   { return "weigh" }
func (Weigh) Version() int { return 1 }

func (w Weigh) Check() error {
	switch {
	case w.WeightKg == 0 && w.GirthCm == 0:
		return errors.New("a weighing needs a weight or a girth")
	case w.WeightKg < 0 || w.GirthCm < 0 || w.LengthCm < 0:
		return errors.New("a weight, girth or length cannot be negative")
	case w.WeightKg != 0 && w.GirthCm != 0:
		return errors.New("a weighing is by weight or by tape, not both")
	}
	return nil
}

func (w Weigh) fold(h *Herd, r Record) { h.Weighings = append(h.Weighings, dated(w, r)) }
