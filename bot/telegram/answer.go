package telegram

import (
	"context"
	"errors"

	"troughbell/bot/wording"
	"troughbell/store"
)

// answer takes messages from the inbox, the oldest first, each in one
// transaction: what it says is kept, its answer queued and it is marked as
// handled, or none of that. While the store fails the message waits.
func (b *Bot) answer(ctx context.Context) {
	handling := trouble{bot: b, what: "handling a message"}
	for {
		more, err := b.answerOne()
		switch {
		case err != nil:
			if !sleep(ctx, handling.failed(err)) {
				return
			}
			continue
		case more:
			handling.passed()
			if ctx.Err() == nil {
				continue
			}
			return
		}
		handling.passed()
		select {
		case <-ctx.Done():
			return
		case <-b.inbox:
		}
	}
}

// answerOne handles the oldest message. It is not cut off by the end of the
// bot: a transaction under way is finished. The error is the store's; a message
// that is itself at fault is marked so, and never stops the queue.
func (b *Bot) answerOne() (more bool, err error) {
	ctx := context.Background()
	var in store.Incoming
	var h handling
	var fault error
	err = b.Store.Write(ctx, func(tx *store.Tx) error {
		var err error
		if in, more, err = tx.NextIncoming(); err != nil || !more {
			return err
		}
		u, ok, err := readUpdate(in.Raw)
		switch {
		case err != nil:
			return tx.Handled(in.ID, err.Error())
		case !ok:
			return tx.Handled(in.ID, "it says nothing")
		}
		h = handling{bot: b, tx: tx, u: u, row: in.ID}
		if fault = h.guarded(); fault != nil {
			return fault
		}
		if h.drop {
			return tx.DropIncoming(in.ID)
		}
		return tx.Handled(in.ID, "")
	})
	if err == nil {
		for _, say := range h.after {
			say()
		}
		return more, nil
	}
	b.Desk.Forget(h.herd)
	var trouble *store.Problem
	if fault == nil || errors.As(err, &trouble) {
		return more, err
	}
	return more, b.setAside(ctx, in, fault)
}

// setAside marks a message that cannot be handled, and says so to its sender if
// it came from a herd's chat.
func (b *Bot) setAside(ctx context.Context, in store.Incoming, fault error) error {
	b.Log.Error("a message was set aside", "message", in.Key, "err", fault)
	return b.Store.Write(ctx, func(tx *store.Tx) error {
		u, _, err := readUpdate(in.Raw)
		if err != nil {
			return tx.Handled(in.ID, fault.Error())
		}
		c, found, err := tx.FindChat(transport, u.chat)
		if err != nil {
			return err
		}
		if !found || c.Herd == 0 {
			return tx.DropIncoming(in.ID)
		}
		o := store.Outgoing{
			Key: "fault:" + in.Key, Herd: c.Herd, Chat: c.ID, Kind: "reply",
			Text: wording.Fault(), ReplyTo: u.message, Quiet: true,
		}
		if _, err := tx.Queue(&o); err != nil {
			return err
		}
		return tx.Handled(in.ID, fault.Error())
	})
}
