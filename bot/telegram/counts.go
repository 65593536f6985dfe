package telegram

import "sync/atomic"

// counts is what has happened since the start, for who watches the bot.
type counts struct{ updates, turnedOff, sent, failures atomic.Uint64 }

// Counts is how many updates came, how many of them were of strangers and turned
// off unread, how many messages Telegram took and how many calls for one failed.
func (b *Bot) Counts() (updates, turnedOff, sent, failures uint64) {
	c := &b.counts
	return c.updates.Load(), c.turnedOff.Load(), c.sent.Load(), c.failures.Load()
}
