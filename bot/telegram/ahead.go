package telegram

import (
	"context"
	"encoding/json"
	"sync"

	"troughbell/bot"
	"troughbell/store"
)

// ahead works out what texts lead to while those before them are handled, on
// another processor where there is one: the transaction then waits for the disk
// and for little else. What it cannot foresee the handling works out by itself.
type ahead struct {
	sights []sight // of each update that is not handled yet
}

type sight struct {
	once sync.Once // for who comes first: the handling or the look ahead
	u    *update   // as it was read; nil: it was not looked at
	f    *bot.Foreseen
	off  *bool // whether it was turned off as a stranger's; nil: that was not asked yet
}

// lookAhead begins to look at updates. The first is not looked at: it is handled
// right away.
func (b *Bot) lookAhead(ctx context.Context, raws []json.RawMessage) *ahead {
	a := &ahead{sights: make([]sight, len(raws))}
	if len(raws) < 2 {
		return a
	}
	l := looking{bot: b, raws: raws, sights: a.sights, next: 1, met: map[string]bool{}}
	for range min(lookers, len(raws)-1) {
		b.wg.Go(func() {
			// What fails here is met again, and told of, where the text is handled.
			_ = b.Store.Read(ctx, func(tx *store.Tx) error {
				for l.one(tx) {
					continue
				}
				return nil
			})
		})
	}
	return a
}

// lookers is how many look ahead at once. To look at a text takes longer than to
// handle it then: while the handling waits for one, the next is looked at.
const lookers = 2

// looking is the looking at updates, one after the other.
type looking struct {
	bot    *Bot
	raws   []json.RawMessage
	sights []sight

	mu   sync.Mutex // held until it is known of whom the next is
	next int
	met  map[string]bool // chats
}

// one looks at the next update; false where none is left.
func (l *looking) one(tx *store.Tx) bool {
	l.mu.Lock()
	known := sync.OnceFunc(l.mu.Unlock)
	defer known()
	i := l.next
	if i == len(l.raws) {
		return false
	}
	l.next++
	s := &l.sights[i]
	s.once.Do(func() {
		defer func() { _ = recover() }() // the handling meets it again, and says so
		u, ok := l.text(l.raws[i], s)
		known()
		if ok {
			l.bot.foresee(tx, u, s)
		}
	})
	return true
}

// text reads an update; false where it is not the first plain text of its chat.
func (l *looking) text(raw json.RawMessage, s *sight) (update, bool) {
	u, ok, err := readUpdate(raw)
	if err != nil || !ok { // the handling meets it again, and says so
		return u, false
	}
	s.u = &u
	if l.met[u.chat] || !u.plain() {
		return u, false
	}
	l.met[u.chat] = true
	return u, true
}

// of gives what was seen of the update of that number, and has it looked at no more.
func (a *ahead) of(i int) *sight {
	s := &a.sights[i]
	s.once.Do(func() {})
	return s
}

// handled says that so many more updates are handled.
func (a *ahead) handled(n int) { a.sights = a.sights[n:] }

// over has nothing more looked at.
func (a *ahead) over() {
	for i := range a.sights {
		a.of(i)
	}
}

// foresee works out what a plain text leads to, where it is of somebody of a household
// in their private chat.
func (b *Bot) foresee(tx *store.Tx, u update, s *sight) {
	h := handling{bot: b, tx: tx, u: u}
	if ok, err := h.knows(); err != nil || !ok {
		return
	}
	if f, err := b.Desk.Foresee(tx, h.message()); err == nil {
		s.f = f
	}
}

// plain reports whether an update is a text and nothing else, in a private chat.
func (u update) plain() bool {
	_, _, _, command := bot.Command(u.text)
	return u.text != "" && u.chat == u.sender && !u.edit && u.replyTo == "" && u.file.id == "" && u.query == "" && !command
}

// knows finds who speaks where, of a text that is plain.
func (h *handling) knows() (bool, error) {
	from, err := speakerOf(h.tx, h.u.sender)
	if err != nil || from.member == nil {
		return false, err
	}
	h.chat, h.herd, h.member = from.private, from.private.Herd, *from.member
	return true, nil
}
