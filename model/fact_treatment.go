package model

import "errors"

// Treatment is a product given to pigs. The withdrawal days come from the label
// or the vet; nil means unknown, and unknown is never clear.
type Treatment struct {
	Animals        []string `json:"animals"`
	Product        string   `json:"product,omitempty"`
	WithdrawalDays *int     `json:"withdrawal_days,omitempty"`
}

func (t Treatment) Check() error {
	if len(t.Animals) == 0 {
		return errors.New("a treatment needs the pigs that got it")
	}
	if t.WithdrawalDays != nil && (*t.WithdrawalDays < 0 || *t.WithdrawalDays > 365) {
		return errors.New("withdrawal days lie between 0 and 365; read them off the label")
	}
	return nil
}

// Worm is a treatment against worms.
type Worm struct{ Treatment }

func (Worm) Kind() Kind   { return "worm" }
func (Worm) Version() int { return 1 }

func (w Worm) fold(h *Herd, r Record) {
	h.Worms = append(h.Worms, dated(w, r))
	h.addTreatment(w.Treatment, r)
}

// Treat is any other treatment.
type Treat struct{ Treatment }

func (Treat) Kind() Kind   { return "treat" }
func (Treat) Version() int { return 1 }

func (t Treat) fold(h *Herd, r Record) { h.addTreatment(t.Treatment, r) }
