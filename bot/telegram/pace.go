package telegram

import (
	"math"
	"time"

	"golang.org/x/time/rate"

	"troughbell/store"
)

const (
	// maxPaced bounds how many chats have a limiter of their own at once.
	maxPaced = 20_000
	// chatBurst is how many messages a chat takes at once after a silence: the
	// answers to a morning's texts that reached the phone's network together.
	// Telegram lets short bursts pass (its bots FAQ); where not, it says so.
	chatBurst  = 10
	groupBurst = 5
)

// pace keeps Telegram's limits: overall, in a chat, in a group. It serves one
// goroutine.
type pace struct {
	limits Limits
	all    *rate.Limiter
	chats  map[store.ChatID]*rate.Limiter
}

func newPace(l Limits) *pace {
	return &pace{
		limits: l,
		all:    rate.NewLimiter(rate.Limit(l.PerSecond), max(1, int(l.PerSecond))),
		chats:  map[store.ChatID]*rate.Limiter{},
	}
}

// open says how many messages may go out now over all chats; where none may,
// how long until one may.
func (p *pace) open(now time.Time) (n int, wait time.Duration) {
	tokens := p.all.TokensAt(now)
	if tokens >= 1 {
		return int(tokens), 0
	}
	return 0, until(p.all, now)
}

// wait is how long a message to the chat has to wait for its own chat's sake, as
// far as is known without asking what kind of chat it is.
func (p *pace) wait(now time.Time, chat store.ChatID) time.Duration {
	l := p.chats[chat]
	if l == nil {
		return 0
	}
	return until(l, now)
}

// until is how long until a limiter lets one out.
func until(l *rate.Limiter, now time.Time) time.Duration {
	missing := 1 - l.TokensAt(now)
	return max(0, time.Duration(math.Ceil(missing/float64(l.Limit())*float64(time.Second))))
}

// take takes a place for a message to the chat now, or says how long it has to
// wait for its own chat's sake. There must be room over all chats; see open.
func (p *pace) take(now time.Time, chat store.ChatID, group bool) time.Duration {
	l := p.of(chat, group)
	r := l.ReserveN(now, 1)
	if d := r.DelayFrom(now); d > 0 {
		r.CancelAt(now)
		return d
	}
	p.all.ReserveN(now, 1)
	return 0
}

func (p *pace) of(chat store.ChatID, group bool) *rate.Limiter {
	l := p.chats[chat]
	if l != nil {
		return l
	}
	if len(p.chats) >= maxPaced {
		clear(p.chats)
	}
	l = rate.NewLimiter(rate.Limit(p.limits.ChatPerSecond), chatBurst)
	if group {
		l = rate.NewLimiter(rate.Limit(p.limits.GroupPerMinute/60), groupBurst)
	}
	p.chats[chat] = l
	return l
}
