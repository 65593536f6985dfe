package bot

import (
	"context"
	"fmt"
	"slices"
	"strconv"
	"sync"
	"time"

	"troughbell/schedule"
	"troughbell/store"
)

// Clock has herds looked at when their time comes: the desk of the dispatcher,
// over the store.
type Clock struct {
	Store *store.Store
	Desk  *Desk
	// Queued is called when something was put into the outbox.
	Queued func()

	mu       sync.Mutex
	downFrom time.Time             // since when nobody looked
	wokeAt   time.Time             // until when
	caughtUp map[store.HerdID]bool // herds that were told of it, or need not be
}

var _ schedule.Desk = (*Clock)(nil)

// valueAlive is the name of the value that says when the program last ran.
const valueAlive = "clock.alive"

// DueHerds implements schedule.Desk.
func (c *Clock) DueHerds(ctx context.Context, now time.Time, limit int) (out []int64, err error) {
	err = c.Store.Read(ctx, func(tx *store.Tx) error {
		ids, err := tx.Due(now, limit)
		for _, id := range ids {
			out = append(out, int64(id))
		}
		return err
	})
	return out, err
}

// Look implements schedule.Desk.
func (c *Clock) Look(ctx context.Context, herd int64, now time.Time) error {
	id := store.HerdID(herd)
	queued := false
	err := c.Store.Write(ctx, func(tx *store.Tx) error {
		row, err := tx.Herd(id)
		if err != nil || row.LookAgain.After(now) {
			return err
		}
		down := c.outage(row)
		pushes, err := c.Desk.Look(tx, id, now, down)
		if err != nil {
			return err
		}
		queued = len(pushes) > 0
		c.noteCaughtUp(id, pushes, down)
		return c.Desk.QueuePushes(tx, id, pushes)
	})
	if err != nil {
		c.Desk.Forget(id)
		return err
	}
	if queued && c.Queued != nil {
		c.Queued()
	}
	return nil
}

// outage is since when nobody looked at the herd, zero if it was looked at in
// time or was told of the outage.
func (c *Clock) outage(row store.HerdRow) time.Time {
	c.mu.Lock()
	defer c.mu.Unlock()
	told, looked := c.caughtUp[row.ID]
	inTime := row.LookAgain.After(c.wokeAt) && !looked // nothing fell due in it
	if c.downFrom.IsZero() || told || inTime {
		return time.Time{}
	}
	return c.downFrom
}

// noteCaughtUp notes whether the herd was told of the outage; in quiet hours it
// is told later.
func (c *Clock) noteCaughtUp(id store.HerdID, pushes []Push, down time.Time) {
	if down.IsZero() {
		return
	}
	c.mu.Lock()
	defer c.mu.Unlock()
	told := slices.ContainsFunc(pushes, func(p Push) bool { return slices.Contains(p.Nudge.About(), "catch_up") })
	c.caughtUp[id] = told || c.wokeAt.Sub(c.downFrom) < 2*time.Hour
}

// Woke implements schedule.Desk: it finds out since when the program was off.
func (c *Clock) Woke(ctx context.Context, from, now time.Time) error {
	if from.IsZero() {
		err := c.Store.Read(ctx, func(tx *store.Tx) error {
			v, err := tx.Value(valueAlive)
			if err != nil || v == "" {
				return err
			}
			n, err := strconv.ParseInt(v, 10, 64)
			if err != nil {
				return fmt.Errorf("when the program last ran: %w", err)
			}
			from = time.Unix(n, 0)
			return nil
		})
		if err != nil {
			return err
		}
	}
	c.mu.Lock()
	defer c.mu.Unlock()
	c.downFrom, c.wokeAt, c.caughtUp = from, now, map[store.HerdID]bool{}
	return nil
}

// Alive implements schedule.Desk.
func (c *Clock) Alive(ctx context.Context, now time.Time) error {
	return c.Store.Write(ctx, func(tx *store.Tx) error {
		return tx.SetValue(valueAlive, strconv.FormatInt(now.Unix(), 10))
	})
}
