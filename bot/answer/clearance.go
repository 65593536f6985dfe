package answer

import (
	"time"

	"troughbell/model"
)

// clearance is when a number of pigs is clear of every withdrawal.
type clearance struct {
	known   bool      // the days of every product are known
	at      time.Time // the last of them is clear; zero where none was treated
	treated []*model.Animal
	unknown []*model.Animal
	reasons []model.Reason
}

func (a asked) clearance(pigs []*model.Animal) clearance {
	of := map[*model.Animal]bool{}
	for _, p := range pigs {
		of[p] = true
	}
	c := clearance{known: true}
	for _, w := range a.h.Withdrawal(a.now) {
		if !of[w.Animal] || !w.Treated {
			continue
		}
		c.reasons = append(c.reasons, w.Reasons...)
		if !w.Known {
			c.known = false
			c.unknown = append(c.unknown, w.Animal)
			continue
		}
		if w.ClearAt.After(a.now) {
			c.treated = append(c.treated, w.Animal)
		}
		if w.ClearAt.After(c.at) {
			c.at = w.ClearAt
		}
	}
	return c
}

// loadMoment is when the pigs of a booking must be clear at the latest: its
// hour, else the beginning of its day.
func (a asked) loadMoment(b model.Booked) time.Time {
	minute := 0
	if b.Minute != nil {
		minute = *b.Minute
	}
	return b.Day.At(minute, a.now.Location())
}

func moments(t, now time.Time) []time.Time {
	if t.IsZero() {
		return nil
	}
	return []time.Time{t.In(now.Location())}
}
