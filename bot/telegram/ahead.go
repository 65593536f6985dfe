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
	sights := a.sights
	b.wg.Go(func() {
		// What fails here is met again, and told of, where the text is handled.
		_ = b.Store.Read(ctx, func(tx *store.Tx) error {
			met := map[string]bool{}
			for i := 1; i < len(raws); i++ {
				s := &sights[i]
				s.once.Do(func() { b.foresee(tx, raws[i], met, s) })
			}
			return nil
		})
	})
	return a
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

// foresee works out what an update leads to, where it is a plain text of somebody
// of a household in their private chat, the first of that chat.
func (b *Bot) foresee(tx *store.Tx, raw json.RawMessage, met map[string]bool, s *sight) {
	defer func() { _ = recover() }() // the handling meets it again, and says so
	u, ok, err := readUpdate(raw)
	if err != nil || !ok {
		return
	}
	s.u = &u
	if met[u.chat] || !u.plain() {
		return
	}
	met[u.chat] = true
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
