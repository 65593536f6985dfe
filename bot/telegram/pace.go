package telegram

import (
	"sync"
	"time"

	"golang.org/x/time/rate"

	"troughbell/store"
)

// maxPaced bounds how many chats have a limiter of their own at once.
const maxPaced = 20_000

// pace keeps Telegram's limits: overall, in a chat, in a group.
type pace struct {
	mu     sync.Mutex
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

// take reserves a place for a message to the chat now, or says how long to wait.
func (p *pace) take(now time.Time, chat store.ChatID, group bool) time.Duration {
	p.mu.Lock()
	defer p.mu.Unlock()
	l := p.chats[chat]
	if l == nil {
		if len(p.chats) >= maxPaced {
			clear(p.chats)
		}
		l = rate.NewLimiter(rate.Limit(p.limits.ChatPerSecond), 3) // short bursts pass
		if group {
			l = rate.NewLimiter(rate.Limit(p.limits.GroupPerMinute/60), max(1, int(p.limits.GroupPerMinute/4)))
		}
		p.chats[chat] = l
	}
	r := l.ReserveN(now, 1)
	if d := r.DelayFrom(now); d > 0 {
		r.CancelAt(now)
		return d
	}
	r2 := p.all.ReserveN(now, 1)
	if d := r2.DelayFrom(now); d > 0 {
		r2.CancelAt(now)
		r.CancelAt(now)
		return d
	}
	return 0
}
