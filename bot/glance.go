package bot

import (
	"context"
	"time"

	"troughbell/model"
	"troughbell/schedule"
	"troughbell/store"
)

// glance is what is due for a herd, worked out ahead of the transaction that notes
// it: the clock's transactions are then short, and who texts meanwhile hardly waits.
type glance struct {
	herd     *model.Herd
	now      time.Time
	downFrom time.Time
	due      []schedule.Nudge
	again    time.Time
}

// decide works out what is due for a herd.
func decide(s *State, now, downFrom time.Time) *glance {
	g := &glance{herd: s.Herd, now: now, downFrom: downFrom}
	if downFrom.IsZero() {
		g.due, g.again = schedule.Decide(s.Herd, now.In(s.Zone))
	} else {
		g.due, g.again = schedule.DecideAfter(s.Herd, now.In(s.Zone), downFrom.In(s.Zone))
	}
	return g
}

// decided is decide, or the same by a glance; nil: there was none. It counts only
// where the herd was not made anew since.
func (g *glance) decided(s *State, now, downFrom time.Time) *glance {
	if g != nil && g.herd == s.Herd && g.now.Equal(now) && g.downFrom.Equal(downFrom) {
		return g
	}
	return decide(s, now, downFrom)
}

// glanceAt works out what is due for herds, beside the transactions of others. A
// herd that is not among what it gives is looked at without.
func (c *Clock) glanceAt(ctx context.Context, herds []int64, now time.Time) map[store.HerdID]*glance {
	glances := map[store.HerdID]*glance{}
	// What fails here is met again, and told of, where the herd is looked at.
	_ = c.Store.Read(ctx, func(tx *store.Tx) error {
		for _, herd := range herds {
			s, err := c.Desk.State(tx, store.HerdID(herd))
			if err != nil {
				continue
			}
			if !s.Row.LookAgain.After(now) {
				glances[s.Row.ID] = decide(s, now, c.outage(s.Row))
			}
		}
		return nil
	})
	return glances
}
