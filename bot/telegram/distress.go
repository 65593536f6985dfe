package telegram

import (
	"context"
	"encoding/json"
	"errors"
	"slices"
	"sync"
	"time"

	tgbotapi "github.com/go-telegram-bot-api/telegram-bot-api/v5"

	"troughbell/bot/wording"
	"troughbell/store"
)

const (
	// distressAgain is how long a chat is not told again: a disk that is full may
	// take a little now and then.
	distressAgain = 12 * time.Hour
	distressTries = 20
	// lastWords is how long the program stays to tell that it ends.
	lastWords = 15 * time.Second
)

// distress is what is needed to tell people, past the outbox, that the database
// fails: all of it in memory.
type distress struct {
	mu        sync.Mutex
	operators []string             // their private chats, as last read
	asOf      int64                // how often people and chats had changed then
	kept      bool                 // asOf is known
	told      map[string]time.Time // when a chat was told last
	ending    sync.Once
}

// learn reads who the operators are, for when it cannot be read.
func (d *distress) learn(tx *store.Tx) error {
	asOf, known := tx.PeopleAsOf()
	if known && d.learnt(asOf) {
		return nil
	}
	chats, err := tx.OperatorChats()
	if err != nil {
		return err
	}
	var operators []string
	for _, c := range chats {
		if c.Transport == transport && c.Dead == "" {
			operators = append(operators, c.External)
		}
	}
	d.mu.Lock()
	defer d.mu.Unlock()
	d.operators, d.asOf, d.kept = operators, asOf, known
	return nil
}

func (d *distress) learnt(asOf int64) bool {
	d.mu.Lock()
	defer d.mu.Unlock()
	return d.kept && d.asOf == asOf
}

// known is the operators' chats.
func (d *distress) known() []string {
	d.mu.Lock()
	defer d.mu.Unlock()
	return slices.Clone(d.operators)
}

// turn reports whether the chat is to be told now, and notes that it is.
func (d *distress) turn(chat string, now time.Time) bool {
	d.mu.Lock()
	defer d.mu.Unlock()
	if at, ok := d.told[chat]; ok && now.Sub(at) < distressAgain {
		return false
	}
	if d.told == nil {
		d.told = map[string]time.Time{}
	}
	d.told[chat] = now
	return true
}

// Report is told of a trouble with the database that another part of the program
// met. What passes is left to the bot's own parts, which meet it too.
func (b *Bot) Report(p *store.Problem) {
	if ends(p) {
		b.alarm(p)
	}
}

// ends reports whether to go on would lose what comes in: it would be kept in a
// file that is no longer the one, or is not to be for long.
func ends(p *store.Problem) bool {
	switch p.Code {
	case store.Damaged, store.NotDatabase, store.Newer, store.Replaced:
		return true
	}
	return false
}

// alarm tells the operator that the database fails, if that is for people to put
// right, and ends the bot where it must not go on: what people text then waits
// at Telegram.
func (b *Bot) alarm(p *store.Problem) {
	text := wording.DatabaseFails(string(p.Code))
	switch {
	case p.Code == store.Busy, p.Code == store.Locked: // passes by itself
	case ends(p):
		b.distress.ending.Do(func() { b.endWith(p, text) })
	default:
		b.tellOperators(text)
	}
}

// TellFault tells the operators, of a Bot that was not started, that the database
// cannot be written.
func (b *Bot) TellFault(ctx context.Context, p *store.Problem) error {
	if err := b.Store.Read(ctx, b.distress.learn); err != nil {
		return err
	}
	for _, chat := range b.distress.known() {
		b.tellPast(ctx, chat, wording.DatabaseFails(string(p.Code)))
	}
	return nil
}

// PutBack tells the operator that the database was deleted while in use and
// was put back whole.
func (b *Bot) PutBack() {
	b.Log.Warn("the database file was deleted or moved while in use; it was put back whole")
	b.tellOperators(wording.DatabasePutBack())
}

// tellOperators tells those whose turn it is.
func (b *Bot) tellOperators(text string) {
	for _, chat := range b.distress.known() {
		if b.distress.turn(chat, b.Now()) {
			b.wg.Go(func() { b.tellPast(b.graced, chat, text) })
		}
	}
}

// endWith ends the bot at once, and the program once the operator was told.
func (b *Bot) endWith(p *store.Problem, text string) {
	b.stop()
	chats := b.distress.known()
	b.wg.Go(func() {
		ctx, cancel := context.WithTimeout(context.Background(), lastWords)
		defer cancel()
		for _, chat := range chats {
			b.tellPast(ctx, chat, text)
		}
		b.die(p)
	})
}

// tellPast says something in a chat that cannot be queued, until it was said
// once.
func (b *Bot) tellPast(ctx context.Context, chat, text string) {
	for try := range distressTries {
		_, err := b.client.call(ctx, "sendMessage", tgbotapi.Params{"chat_id": chat, "text": text}, sendLimit)
		var call *callError
		switch {
		case err == nil:
			return
		case !errors.As(err, &call), call.what != passing && call.what != flood:
			b.Log.Warn("that the database fails could not be told", "err", err)
			return
		}
		if !sleep(ctx, max(call.wait, b.pause(try))) {
			return
		}
	}
}

// tellWaiting tells the people whose messages cannot be kept, and so wait at
// Telegram, that they do: those who are known, as far as that can be read.
func (b *Bot) tellWaiting(ctx context.Context, raws []json.RawMessage) {
	operators := b.distress.known()
	var chats []string
	err := b.Store.Read(ctx, func(tx *store.Tx) error {
		for _, raw := range raws {
			u, ok, err := readUpdate(raw)
			if err != nil || !ok || u.group || u.member != "" || slices.Contains(operators, u.chat) || slices.Contains(chats, u.chat) {
				continue
			}
			c, found, err := tx.FindChat(transport, u.chat)
			if err != nil {
				return err
			}
			if found && c.Person != 0 && c.Herd != 0 {
				chats = append(chats, u.chat)
			}
		}
		return nil
	})
	if err != nil { // then they are not told; what failed before says why
		return
	}
	for _, chat := range chats {
		if b.distress.turn(chat, b.Now()) {
			b.wg.Go(func() { b.tellPast(b.graced, chat, wording.DatabaseWaits()) })
		}
	}
}
