package model

import "errors"

// Expected is pigs that are to come on a day: what was ordered, no fact of the
// herd yet. Count is 0 where it was not said; Cancelled takes it back.
type Expected struct {
	Day       Day  `json:"day,omitempty"`
	Count     int  `json:"count,omitempty"`
	Cancelled bool `json:"cancelled,omitempty"`
}

func (Expected) Kind() Kind   { return "expected" }
func (Expected) Version() int { return 1 }

func (e Expected) Check() error {
	switch {
	case e.Count < 0:
		return errors.New("at least one pig is to come")
	case e.Day == 0 && !e.Cancelled:
		return errors.New("say on which day the pigs come")
	}
	return nil
}

func (e Expected) fold(h *Herd, r Record) { h.Expecteds = append(h.Expecteds, dated(e, r)) }

// earlyDays is by how much pigs may come before the day they were ordered for.
const earlyDays = 21

// Coming is the pigs that are still to come on or after a day: by the latest word
// on it, unless pigs came about then.
func (h *Herd) Coming(on Day) (Expected, bool) {
	n := len(h.Expecteds)
	if n == 0 {
		return Expected{}, false
	}
	last := h.Expecteds[n-1]
	if last.F.Cancelled || last.F.Day < on {
		return Expected{}, false
	}
	for _, g := range h.Groups {
		if g.ArriveAt.After(last.At) && g.Arrived >= last.F.Day-earlyDays {
			return Expected{}, false
		}
	}
	return last.F, true
}
