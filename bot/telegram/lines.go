package telegram

import (
	"sync"
	"time"

	"troughbell/store"
)

// lines is who waits for messages: each chat is a line of its own, from which
// one message at a time goes out. The chats take turns, one message a turn, so
// that a flood in one of them delays the others by no more than its share; those
// for which a danger waits go before all others.
type lines struct {
	mu      sync.Mutex
	of      map[store.ChatID]*line // those for which something waits, or is under way
	dangers []turn
	others  []turn
	resting map[store.ChatID]time.Time // not before that
	turns   int                        // given so far
}

// line is one chat's.
type line struct {
	since  time.Time // when it began to wait; zero: before the program started
	urgent bool      // a danger is in it
	turn   int       // its number where its turn comes, else 0
	news   bool      // something came while a call was under way
}

// turn is a chat's place among those whose turn comes. It holds while its number
// is the line's.
type turn struct {
	chat   store.ChatID
	number int
}

func newLines() *lines {
	return &lines{of: map[store.ChatID]*line{}, resting: map[store.ChatID]time.Time{}}
}

// join notes that something waits for chats since the moment.
func (l *lines) join(waiting []store.Waiting, since time.Time) {
	l.mu.Lock()
	defer l.mu.Unlock()
	for _, w := range waiting {
		one, known := l.of[w.Chat]
		if !known {
			one = &line{since: since}
			l.of[w.Chat] = one
		}
		raised := w.Urgent && !one.urgent
		one.urgent = one.urgent || w.Urgent
		_, rests := l.resting[w.Chat]
		switch {
		case known && !rests && one.turn == 0:
			one.news = true
		case !known, rests, raised: // what it rested for may have gone, or stand behind now
			l.give(w.Chat, one)
		}
	}
}

// give gives a chat its turn after those that have one.
func (l *lines) give(chat store.ChatID, one *line) {
	delete(l.resting, chat)
	l.turns++
	one.turn = l.turns
	to := &l.others
	if one.urgent {
		to = &l.dangers
	}
	*to = append(*to, turn{chat, one.turn})
}

// next takes the chat whose turn it is out of the lines, until leave; false if
// there is none. since is when its line began to wait.
func (l *lines) next(now time.Time) (w store.Waiting, since time.Time, ok bool) {
	l.mu.Lock()
	defer l.mu.Unlock()
	for chat, at := range l.resting {
		if !at.After(now) {
			l.give(chat, l.of[chat])
		}
	}
	for _, from := range []*[]turn{&l.dangers, &l.others} {
		for len(*from) > 0 {
			t := (*from)[0]
			*from = (*from)[1:]
			if one := l.of[t.chat]; one != nil && one.turn == t.number {
				w = store.Waiting{Chat: t.chat, Urgent: one.urgent}
				one.turn, one.urgent = 0, false
				return w, one.since, true
			}
		}
	}
	return w, since, false
}

// leave puts a chat that was taken out back into the lines, to rest until the
// moment; for good if no more waits in it.
func (l *lines) leave(w store.Waiting, more bool, until, now time.Time) {
	l.mu.Lock()
	defer l.mu.Unlock()
	one := l.of[w.Chat]
	danger := one.urgent && !w.Urgent // came meanwhile
	one.urgent = one.urgent || w.Urgent
	switch {
	case !more && !one.news:
		delete(l.of, w.Chat)
	case until.After(now) && !danger:
		l.resting[w.Chat] = until
	default:
		l.give(w.Chat, one)
	}
	one.news = false
}

// ready says when a chat will have its turn: now where one has it, zero where
// none waits.
func (l *lines) ready(now time.Time) (at time.Time) {
	l.mu.Lock()
	defer l.mu.Unlock()
	if len(l.dangers)+len(l.others) > 0 {
		return now
	}
	for _, rest := range l.resting {
		if at.IsZero() || rest.Before(at) {
			at = rest
		}
	}
	return at
}
