package bot

import (
	"context"
	"errors"
	"fmt"
	"slices"
	"strconv"
	"sync"
	"time"

	"troughbell/model"
	"troughbell/schedule"
	"troughbell/store"
)

// Clock has herds looked at when their time comes: the desk of the dispatcher,
// over the store.
type Clock struct {
	Store *store.Store
	Desk  *Desk

	mu       sync.Mutex
	downFrom time.Time             // since when nobody looked
	wokeAt   time.Time             // until when
	caughtUp map[store.HerdID]bool // herds that were told of it, or need not be
	tidied   model.Day             // when texts were last taken out that are too old to be kept
}

var _ schedule.Desk = (*Clock)(nil)

// Serving is the role under which the bot's process holds its database.
const Serving = "serve"

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

// Look implements schedule.Desk. The herds share a transaction; where it fails,
// each of them gets its own, so that one herd takes no other down.
func (c *Clock) Look(ctx context.Context, herds []int64, now time.Time) map[int64]error {
	err := c.lookAt(ctx, herds, now)
	if err == nil {
		return nil
	}
	if len(herds) == 1 {
		return map[int64]error{herds[0]: err}
	}
	failed := map[int64]error{}
	for _, herd := range herds {
		if err := c.lookAt(ctx, []int64{herd}, now); err != nil {
			failed[herd] = err
		}
	}
	return failed
}

// look is what a herd was found to need at a look.
type look struct {
	herd   store.HerdID
	down   time.Time
	pushes []Push
}

// lookAt looks at the herds in one transaction: at all of them or at none.
func (c *Clock) lookAt(ctx context.Context, herds []int64, now time.Time) error {
	var looks []look
	glances := c.glanceAt(ctx, herds, now)
	err := c.Store.Write(ctx, func(tx *store.Tx) error {
		for _, herd := range herds {
			l, err := c.lookIn(tx, store.HerdID(herd), now, glances[store.HerdID(herd)])
			if err != nil {
				return err
			}
			looks = append(looks, l)
		}
		return nil
	})
	if err != nil {
		for _, herd := range herds {
			c.Desk.Forget(store.HerdID(herd))
		}
		return err
	}
	for _, l := range looks {
		c.noteCaughtUp(l.herd, l.pushes, l.down)
	}
	return nil
}

// lookIn looks at one herd in the transaction, if its time has come.
func (c *Clock) lookIn(tx *store.Tx, id store.HerdID, now time.Time, g *glance) (look, error) {
	row, err := tx.Herd(id)
	if errors.Is(err, store.ErrNotFound) { // it was deleted since it was found to be due
		return look{herd: id}, nil
	}
	if err != nil || row.LookAgain.After(now) {
		return look{herd: id}, err
	}
	l := look{herd: id, down: c.outage(row)}
	if l.pushes, err = c.Desk.look(tx, row, now, l.down, g); err != nil {
		return look{}, err
	}
	return l, c.Desk.QueuePushes(tx, id, l.pushes)
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
		err := c.Store.Read(ctx, func(tx *store.Tx) (err error) {
			from, err = LastRound(tx)
			return err
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

// LastRound is when the program last noted that it goes through the herds, as it
// does every ten minutes; zero: never.
func LastRound(tx *store.Tx) (time.Time, error) {
	v, err := tx.Value(valueAlive)
	if err != nil || v == "" {
		return time.Time{}, err
	}
	n, err := strconv.ParseInt(v, 10, 64)
	if err != nil {
		return time.Time{}, fmt.Errorf("when the program last ran: %w", err)
	}
	return time.Unix(n, 0), nil
}

// Alive implements schedule.Desk. Files that waited too long go by the way.
func (c *Clock) Alive(ctx context.Context, now time.Time) error {
	err := c.Store.Write(ctx, func(tx *store.Tx) error {
		if err := tx.DropOldUploads(now); err != nil {
			return err
		}
		return tx.SetValue(valueAlive, strconv.FormatInt(now.Unix(), 10))
	})
	return errors.Join(err, c.Store.Scrub(ctx), c.tidy(ctx, now))
}
