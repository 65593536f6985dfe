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

	FirstPause   time.Duration // after a failure, doubled after each further one; 1 s
	LongestPause time.Duration // 1 minute
	Grace        time.Duration // for a call under way when the bot is stopped; 1 s
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
	orDefault(&c.Limits.PerSecond, 25)
	orDefault(&c.Limits.ChatPerSecond, 1)
	orDefault(&c.Limits.GroupPerMinute, 20)
	orDefault(&c.Limits.AtOnce, 8)
	orDefault(&c.Limits.FirstPause, time.Second)
	orDefault(&c.Limits.LongestPause, time.Minute)
	orDefault(&c.Limits.Grace, time.Second)
	return c
}

func orDefault[T int | float64 | time.Duration](v *T, to T) {
	if *v <= 0 {
		*v = to
	}
}
