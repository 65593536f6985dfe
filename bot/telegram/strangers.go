package telegram

import (
	"sync"
	"time"

	"golang.org/x/time/rate"

	"troughbell/store"
)

const (
	// maxStrangers bounds how many are remembered, so that a crowd fills no
	// memory; beyond it nobody is answered.
	maxStrangers = 10_000
	// maxTries is how many wrong codes of one stranger are answered; the code
	// itself is too long to be found by trying.
	maxTries = 5

	// What strangers send is looked at no faster than this, over all of them and
	// from each; the rest is turned off unread, so that a crowd delays no household.
	strangersPerSecond, strangersBurst = 10, 200
	strangerEvery, strangerBurst       = 5 * time.Second, 20
)

// strangers remembers, in memory only, who was told that this is private and
// how often each brought a wrong code.
type strangers struct {
	mu    sync.Mutex
	told  map[string]bool
	tries map[string]int
	all   *rate.Limiter
	each  map[string]*rate.Limiter
}

func newStrangers() *strangers {
	return &strangers{
		told: map[string]bool{}, tries: map[string]int{},
		all: rate.NewLimiter(strangersPerSecond, strangersBurst), each: map[string]*rate.Limiter{},
	}
}

// lets reports whether an update of a sender that nobody knows is looked at. A
// code waits for its own sender only: who was invited gets in past a crowd.
func (s *strangers) lets(sender string, code bool, now time.Time) bool {
	s.mu.Lock()
	defer s.mu.Unlock()
	l := s.each[sender]
	if l == nil {
		if len(s.each) >= maxStrangers { // the quiet ones are as good as new
			clear(s.each)
		}
		l = rate.NewLimiter(rate.Every(strangerEvery), strangerBurst)
		s.each[sender] = l
	}
	return l.AllowN(now, 1) && (code || s.all.AllowN(now, 1))
}

// turnedOff reports whether an update is of a stranger, in a chat that is none of
// ours, beyond what is let in: nothing of it is kept then. Else it gives who
// the sender was found to be. To look at it once more counts no more.
func (b *Bot) turnedOff(tx *store.Tx, u update, now time.Time, seen *sight) (from speaker, off bool, err error) {
	from, err = speakerOf(tx, u.sender)
	if err != nil || isOurs(from.private) {
		return from, false, err
	}
	if u.chat != u.sender {
		if c, _, err := tx.FindChat(transport, u.chat); err != nil || isOurs(c) {
			return from, false, err
		}
	}
	if seen.off == nil {
		code, _ := codeIn(u.text)
		off = !b.strangers.lets(u.sender, code != "", now)
		seen.off = &off
		if off {
			b.counts.turnedOff.Add(1)
		}
	}
	return from, *seen.off, nil
}

func isOurs(c store.Chat) bool { return c.Person != 0 || c.Herd != 0 }

// met reports whether the sender is to be told that this is private: once.
func (s *strangers) met(sender string) bool {
	s.mu.Lock()
	defer s.mu.Unlock()
	if s.told[sender] || len(s.told) >= maxStrangers {
		return false
	}
	s.told[sender] = true
	return true
}

// tried reports whether the sender is to be told that a code is wrong.
func (s *strangers) tried(sender string) bool {
	s.mu.Lock()
	defer s.mu.Unlock()
	if s.tries[sender] >= maxTries || s.tries[sender] == 0 && len(s.tries) >= maxStrangers {
		return false
	}
	s.tries[sender]++
	return true
}
