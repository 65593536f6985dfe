package telegram

import (
	"context"
	"errors"
	"math/rand/v2"
	"time"

	"troughbell/store"
)

// theDatabase is what the log calls a store that cannot be read or written,
// whoever met it: a full disk is one trouble, not one for each part of the bot.
const theDatabase = "the database"

// trouble is a thing that may fail for a while: it is tried again after pauses
// that grow, and the log tells of its beginning and its end, not of each try.
type trouble struct {
	bot   *Bot
	what  string // as the log's sentence names it
	tries int
}

// failed notes a failure and gives how long to wait.
func (t *trouble) failed(err error) time.Duration {
	what := t.what
	var problem *store.Problem
	if errors.As(err, &problem) {
		what = theDatabase
	}
	if _, known := t.bot.troubles.LoadOrStore(what, true); !known {
		t.bot.Log.Warn(what+" fails; trying again until it works", "err", err)
		if problem != nil {
			t.bot.alarm(problem)
		}
	}
	d := t.bot.pause(t.tries)
	t.tries++
	return d
}

// passed notes that it works.
func (t *trouble) passed() {
	if t.tries == 0 {
		return
	}
	t.tries = 0
	for _, what := range []string{t.what, theDatabase} {
		if _, known := t.bot.troubles.LoadAndDelete(what); known {
			t.bot.Log.Info(what + " works again")
		}
	}
}

// persist does f again and again until it works; false if ctx ended before.
func (b *Bot) persist(ctx context.Context, what string, f func() error) bool {
	t := trouble{bot: b, what: what}
	for {
		err := f()
		if err == nil {
			t.passed()
			return true
		}
		if !sleep(ctx, t.failed(err)) {
			return false
		}
	}
}

// maxDoublings keeps the doubled pause far from overflowing.
const maxDoublings = 16

// Pause is how long to wait after the failure that so many others went before.
// A part of it is chance, so that many chats do not come back all at once.
func (l Limits) Pause(before int) time.Duration {
	d := min(l.FirstPause<<min(before, maxDoublings), l.LongestPause)
	return d - time.Duration(rand.Int64N(int64(d)/4+1))
}

func (b *Bot) pause(before int) time.Duration { return b.Limits.Pause(before) }

// sleep waits, and reports whether it was for the whole span.
func sleep(ctx context.Context, d time.Duration) bool {
	t := time.NewTimer(d)
	defer t.Stop()
	select {
	case <-ctx.Done():
		return false
	case <-t.C:
		return true
	}
}
