package telegram

import (
	"context"
	"errors"
	"strings"
	"time"

	"troughbell/bot/wording"
	"troughbell/store"
)

// noteOutcome notes what became of the call for a message, and puts its chat back
// into the lines. It is done even when the bot ends: else a message that was sent
// would go out again.
func (b *Bot) noteOutcome(sending store.Outgoing, sent string, outcome error) error {
	now := b.Now()
	var next store.Outgoing
	more := false
	err := b.Store.Write(context.Background(), func(tx *store.Tx) error {
		if err := b.settle(tx, sending.ID, sent, outcome); err != nil {
			return err
		}
		var err error
		next, more, err = tx.NextTo(sending.Chat)
		return err
	})
	if err == nil {
		b.lines.leave(store.Waiting{Chat: sending.Chat, Urgent: next.Urgent}, more, next.NotBefore, now)
	}
	return err
}

func (b *Bot) settle(tx *store.Tx, row int64, sent string, outcome error) error {
	// The row and its chat may have changed while the call was under way.
	o, ok, err := tx.OutgoingByID(row)
	if err != nil || !ok || o.State != store.Sending {
		return err
	}
	chat, err := tx.Chat(o.Chat)
	if err != nil {
		return err
	}
	return b.settleRow(tx, chat, o, sent, outcome)
}

func (b *Bot) settleRow(tx *store.Tx, chat store.Chat, o store.Outgoing, sent string, outcome error) error {
	now := b.Now()
	o.Tries++
	if outcome == nil {
		b.counts.sent.Add(1)
		o.State, o.Sent = store.Sent, sent
		return errors.Join(tx.SaveOutgoing(o), setMoment(tx, valueSent, now))
	}
	b.counts.failures.Add(1)
	b.Log.Debug("a message was not sent", "row", o.ID, "err", outcome)
	var call *callError
	if !errors.As(outcome, &call) {
		call = &callError{what: refused, err: outcome}
	}
	o.State, o.NotBefore = store.Pending, now.Add(b.pause(o.Tries-1))
	switch call.what {
	case passing, conflict, webhook:
	case unknown:
		o.Repeated = true
	case flood:
		o.NotBefore = now.Add(max(call.wait, time.Second))
	case badToken:
		b.die(ErrToken)
	case alreadyDone:
		o.State, o.Sent = store.Sent, sent
	case unreachable:
		o.State = store.Dropped
		chat.Dead = "the chat cannot be reached"
		if err := tx.SaveChat(chat); err != nil {
			return err
		}
	case migrated:
		chat.External, o.NotBefore = id(call.newChat), now
		if err := tx.SaveChat(chat); err != nil {
			return err
		}
	case gone, refused:
		if o.Kind == store.Removal {
			return b.sayAbove(tx, o)
		}
		if o.File != nil {
			return b.sendOtherwise(tx, o, outcome)
		}
		o.State = store.Dropped
		if err := b.sayAnew(tx, o, outcome); err != nil {
			return err
		}
	}
	return tx.SaveOutgoing(o)
}

// sayAnew queues an answer that was to replace an earlier one as a message of
// its own, because the earlier one cannot be changed any more. Anything else
// that Telegram refuses is our own fault, and is only logged.
func (b *Bot) sayAnew(tx *store.Tx, o store.Outgoing, outcome error) error {
	if o.Edits == "" || o.ReplyTo == "" {
		b.Log.Error("a message was refused and dropped", "row", o.ID, "kind", o.Kind, "err", outcome)
		return nil
	}
	_, err := tx.Queue(&store.Outgoing{
		Key: o.Key + ":anew", Herd: o.Herd, Chat: o.Chat, Kind: "reply", Text: o.Text, Buttons: o.Buttons,
		ReplyTo: o.ReplyTo, Quiet: o.Quiet,
	})
	return err
}

// sayAbove has a message that cannot be taken away say where its answer stands.
func (b *Bot) sayAbove(tx *store.Tx, o store.Outgoing) error {
	o.State = store.Dropped
	if err := tx.SaveOutgoing(o); err != nil {
		return err
	}
	_, err := tx.Queue(&store.Outgoing{
		Key: o.Key + ":above", Herd: o.Herd, Chat: o.Chat, Kind: "edit", Text: wording.Above(), Edits: o.Edits, Quiet: true,
	})
	return err
}

// sendOtherwise tries a photo that Telegram refuses as a document: that may have
// any size and shape. Of a document that it refuses the text goes out alone, and
// says so.
func (b *Bot) sendOtherwise(tx *store.Tx, o store.Outgoing, outcome error) error {
	if o.File.Kind == store.Photo {
		b.Log.Warn("a photo was refused; it goes out as a document", "row", o.ID, "err", outcome)
		if err := tx.SaveFileKind(o.ID, store.Document); err != nil {
			return err
		}
		o.NotBefore = b.Now()
		return tx.SaveOutgoing(o)
	}
	b.Log.Error("a file was refused and dropped", "row", o.ID, "err", outcome)
	text := strings.TrimPrefix(o.Text+"\n"+wording.FileRefused(o.File.Name), "\n")
	_, err := tx.Queue(&store.Outgoing{
		Key: o.Key + ":alone", Herd: o.Herd, Chat: o.Chat, Kind: o.Kind, Text: text, Buttons: o.Buttons,
		ReplyTo: o.ReplyTo, Quiet: o.Quiet, Told: o.Told, GoodUntil: o.GoodUntil,
	})
	if err != nil {
		return err
	}
	o.State = store.Dropped
	return tx.SaveOutgoing(o)
}
