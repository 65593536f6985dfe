package telegram

import (
	"context"
	"errors"
	"fmt"

	"troughbell/bot"
	"troughbell/bot/wording"
	"troughbell/store"
)

// answer takes messages from the inbox, the oldest first, each in one
// transaction: what it says is kept, its answer queued and it is marked as
// handled, or none of that.
func (b *Bot) answer(ctx context.Context) {
	var wait backoff
	for {
		select {
		case <-ctx.Done():
			return
		case <-b.inbox:
		}
		for ctx.Err() == nil {
			more, err := b.answerOne()
			if err != nil {
				b.Log.Error("a message cannot be handled now; trying again", "err", err)
				if !sleep(ctx, wait.next()) {
					return
				}
				continue
			}
			wait = backoff{}
			if !more {
				break
			}
			wake(b.outbox)
		}
	}
}

// answerOne handles the oldest message. It is not cut off by the end of the
// bot: a transaction under way is finished. The error is the store's; a message
// that is itself at fault is marked so, and never stops the queue.
func (b *Bot) answerOne() (more bool, err error) {
	ctx := context.Background()
	var in store.Incoming
	var herd store.HerdID
	var fault error
	var after []func()
	err = b.Store.Write(ctx, func(tx *store.Tx) error {
		var err error
		if in, more, err = tx.NextIncoming(); err != nil || !more {
			return err
		}
		u, ok, err := readUpdate(in.Raw)
		if err != nil || !ok {
			return tx.Handled(in.ID, fmt.Sprint("cannot be read: ", err))
		}
		h := &handling{bot: b, tx: tx, u: u}
		fault = h.guarded()
		herd, after = h.herd, h.after
		if fault != nil {
			return fault
		}
		if h.stranger { // nothing of a stranger is kept
			return tx.DropIncoming(in.ID)
		}
		return tx.Handled(in.ID, "")
	})
	if err == nil {
		for _, f := range after {
			f()
		}
		return more, nil
	}
	b.Desk.Forget(herd)
	var trouble *store.Problem
	if fault == nil || errors.As(err, &trouble) { // the store's trouble: the message waits
		return more, err
	}
	return more, b.setAside(ctx, in, fault)
}

// setAside marks a message that cannot be handled, and says so to its sender.
func (b *Bot) setAside(ctx context.Context, in store.Incoming, fault error) error {
	b.Log.Error("a message was set aside", "message", in.Key, "err", fault)
	return b.Store.Write(ctx, func(tx *store.Tx) error {
		u, ok, err := readUpdate(in.Raw)
		if err == nil && ok {
			c, found, err := tx.FindChat("telegram", u.chat)
			if err != nil {
				return err
			}
			if found && c.Herd != 0 {
				o := store.Outgoing{
					Key: "fault:" + in.Key, Herd: c.Herd, Chat: c.ID, Kind: "reply",
					Text: wording.Fault(), ReplyTo: u.message,
				}
				if _, err := tx.Queue(&o); err != nil {
					return err
				}
			}
		}
		return tx.Handled(in.ID, fault.Error())
	})
}

// handling is one update on its way, inside its transaction.
type handling struct {
	bot *Bot
	tx  *store.Tx
	u   update

	chat     store.Chat
	member   store.Member
	herd     store.HerdID
	stranger bool
	after    []func() // to be done once it is committed
}

// guarded handles the update; a panic is its fault, not the bot's end.
func (h *handling) guarded() (err error) {
	defer func() {
		if r := recover(); r != nil {
			err = fmt.Errorf("panic: %v", r)
		}
	}()
	return h.handle()
}

func (h *handling) handle() error {
	switch u := h.u; {
	case u.newChat != "":
		return h.migrate()
	case u.member != "":
		return h.reach()
	}
	if ok, err := h.admit(); err != nil || !ok {
		return err
	}
	if h.u.query != "" {
		return h.press()
	}
	text, toUs := h.address()
	if !toUs {
		return nil
	}
	m := bot.Message{
		Herd: h.herd, Chat: h.chat.ID, From: h.member, ID: h.u.message, Text: text,
		At: h.u.at, Edit: h.u.edit, Medium: h.u.medium,
	}
	if err := h.replyTo(&m); err != nil {
		return err
	}
	return h.hear(m)
}

// hear has a message answered.
func (h *handling) hear(m bot.Message) error {
	out, err := h.bot.Desk.Handle(h.tx, m)
	if err != nil {
		return err
	}
	return h.bot.Desk.Queue(h.tx, m, out)
}

// replyTo finds what a reply speaks of: a message of the person's, or through
// the bot's answer the message it answered, or a nudge.
func (h *handling) replyTo(m *bot.Message) error {
	if h.u.replyTo == "" {
		return nil
	}
	if !h.u.toBot {
		m.ReplyTo = h.u.replyTo
		return nil
	}
	o, ok, err := h.tx.OutgoingBySent(h.chat.ID, h.u.replyTo)
	if err != nil || !ok {
		return err
	}
	m.ReplyTo, m.ReplyNudge = o.ReplyTo, o.Told
	return nil
}

// address says what of a text is for us. In private all is; in a group only
// commands, replies to the bot and mentions of it are.
func (h *handling) address() (text string, toUs bool) {
	word, name, rest, isCommand := command(h.u.text)
	if isCommand {
		if name != "" && !equalName(name, h.bot.userName()) {
			return "", false
		}
		return wording.CommandText(word, rest), true
	}
	if !h.u.group {
		return h.u.text, true
	}
	if h.u.toBot {
		return h.u.text, true
	}
	if rest, ok := withoutMention(h.u.text, h.bot.userName()); ok {
		return rest, true
	}
	return "", false
}
