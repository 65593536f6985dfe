package telegram

import "sync"

const (
	// maxStrangers bounds how many are remembered, so that a crowd fills no
	// memory; beyond it nobody is answered.
	maxStrangers = 10_000
	// maxTries is how many wrong codes of one stranger are answered; the code
	// itself is too long to be found by trying.
	maxTries = 5
)

// strangers remembers, in memory only, who was told that this is private and
// how often each brought a wrong code.
type strangers struct {
	mu    sync.Mutex
	told  map[string]bool
	tries map[string]int
}

func newStrangers() *strangers {
	return &strangers{told: map[string]bool{}, tries: map[string]int{}}
}

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
