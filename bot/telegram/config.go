package telegram

import (
	"log/slog"
	"time"

	"troughbell/bot"
	"troughbell/store"
)

const transport = "telegram"

// Config is what a Bot runs with.
type Config struct {
	Store  *store.Store
	Desk   *bot.Desk
	Log    *slog.Logger
	Token  string
	API    string         // base address of the Bot API server; empty: the public one
	Zone   *time.Location // of a herd until it states its own; nil: UTC
	Limits Limits
	Now    func() time.Time // nil: the clock
}

// Limits of sending and of waiting. A field that is zero takes its default.
type Limits struct {
	PerSecond      float64 // messages over all chats; 25, of the 30 that Telegram takes
	ChatPerSecond  float64 // messages in one chat; 1
	GroupPerMinute float64 // messages in one group; 20
	AtOnce         int     // calls under way at once, each to another chat; 8

	// Patience is how long a person waits before the chat says that an answer is
	// under way; half a second.
	Patience time.Duration

	FirstPause   time.Duration // after a failure, doubled after each further one; 1 s
	LongestPause time.Duration // 1 minute
	Grace        time.Duration // for a call under way when the bot is stopped; 1 s
}

// Hasty is the limits made so many times as fast, the pauses after a failure
// too: for a Bot API server that is a test's own, and passes nothing on.
func Hasty(times float64) Limits {
	l := Limits{}.withDefaults()
	l.PerSecond *= times
	l.ChatPerSecond *= times
	l.GroupPerMinute *= times
	l.FirstPause = time.Duration(float64(l.FirstPause) / times)
	l.LongestPause = time.Duration(float64(l.LongestPause) / times)
	return l
}

func (c Config) withDefaults() Config {
	if c.API == "" {
		c.API = PublicAPI
	}
	if c.Zone == nil {
		c.Zone = time.UTC
	}
	if c.Now == nil {
		c.Now = time.Now
	}
	c.Limits = c.Limits.withDefaults()
	return c
}

func (l Limits) withDefaults() Limits {
	orDefault(&l.PerSecond, 25)
	orDefault(&l.ChatPerSecond, 1)
	orDefault(&l.GroupPerMinute, 20)
	orDefault(&l.AtOnce, 8)
	orDefault(&l.Patience, 500*time.Millisecond)
	orDefault(&l.FirstPause, time.Second)
	orDefault(&l.LongestPause, time.Minute)
	orDefault(&l.Grace, time.Second)
	return l
}

func orDefault[T int | float64 | time.Duration](v *T, to T) {
	if *v <= 0 {
		*v = to
	}
}
