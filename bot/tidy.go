package bot

import (
	"context"
	"time"

	"troughbell/model"
	"troughbell/store"
)

// How long texts are kept that nothing needs any more: those of messages sent,
// and messages that came in and could not be handled. What a text was read as
// stays with the herd.
const (
	sentDays   = 60
	failedDays = 30
)

// tidy takes out texts that are too old to be kept, once a day.
func (c *Clock) tidy(ctx context.Context, now time.Time) error {
	today := model.DayOf(now.UTC())
	c.mu.Lock()
	done := c.tidied == today
	c.mu.Unlock()
	if done {
		return nil
	}
	if err := c.Store.Tidy(ctx, now, store.Keeping{Sent: sentDays, Failed: failedDays}); err != nil {
		return err
	}
	c.mu.Lock()
	c.tidied = today
	c.mu.Unlock()
	return nil
}
