package store

import (
	"regexp"
	"sync"
)

// mostSpeakers is how many speakers are remembered.
const mostSpeakers = 20_000

// speakers remembers who speaks in which chat, from one change of the people and
// their chats to the next: there are few, and each text asks for it twice. One
// process writes the file, so each change is known.
type speakers struct {
	mu      sync.Mutex
	changes int64
	of      map[speakerKey]speaker
}

type speakerKey struct{ transport, external string }

type speaker struct {
	chat   Chat
	member Member
}

// changesPeople finds the statements that change what is remembered.
var changesPeople = regexp.MustCompile(`^(INSERT INTO|UPDATE|DELETE FROM) (chat|member|person)\b`)

// count is how many changes there were.
func (s *speakers) count() int64 {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.changes
}

// changed forgets all: a transaction that changed it is over.
func (s *speakers) changed() {
	s.mu.Lock()
	defer s.mu.Unlock()
	s.changes++
	s.of = nil
}

// get gives what is remembered, to a transaction that began after so many changes.
func (s *speakers) get(k speakerKey, changes int64) (speaker, bool) {
	s.mu.Lock()
	defer s.mu.Unlock()
	if changes != s.changes {
		return speaker{}, false
	}
	one, ok := s.of[k]
	return one, ok
}

// keep remembers what such a transaction found. Which others are forgotten where it
// is too much is left to chance.
func (s *speakers) keep(k speakerKey, one speaker, changes int64) {
	s.mu.Lock()
	defer s.mu.Unlock()
	if changes != s.changes {
		return
	}
	if s.of == nil {
		s.of = map[speakerKey]speaker{}
	}
	for other := range s.of {
		if len(s.of) < mostSpeakers {
			break
		}
		delete(s.of, other)
	}
	s.of[k] = one
}

// PeopleAsOf tells by a number whether people and chats may have changed since another
// transaction; false where that is not known.
func (tx *Tx) PeopleAsOf() (int64, bool) {
	return tx.peopleAsOf, tx.speakers != nil && !tx.c.changedPeople
}
