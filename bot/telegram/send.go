package telegram

import (
	"context"
	"time"

	"troughbell/bot"
	"troughbell/store"
)

// job is a message on its way out.
type job struct {
	row   store.Outgoing
	chat  store.Chat
	edits string // the message that it replaces; empty: none
	// below says that what it replaces is the text below a file.
	below bool
	file  []byte // what the file of the row holds
}

// send empties the outbox at the pace Telegram takes it, to several chats at
// once: a chat whose calls hang or that is flooded holds up no other. A row is
// marked as under way before its call, so that after a crash it is known which
// outcomes are not. ctx ends the sending, calls the calls under way.
func (b *Bot) send(ctx, calls context.Context) {
	ok := b.persist(ctx, "reading the outbox", func() error { return b.recoverUnknown(ctx) })
	if !ok {
		return
	}
	slots := make(chan struct{}, b.Limits.AtOnce)
	reading := trouble{bot: b, what: "reading the outbox"}
	for {
		jobs, next, err := b.claim(ctx, cap(slots)-len(slots))
		if ctx.Err() != nil && err != nil {
			return
		}
		if err != nil {
			next = b.Now().Add(reading.failed(err))
		} else {
			reading.passed()
		}
		for _, j := range jobs {
			slots <- struct{}{}
			b.wg.Go(func() {
				sent, err := b.deliver(calls, j)
				b.persist(calls, "noting what was sent", func() error { return b.noteOutcome(j, sent, err) })
				<-slots
				wake(b.outbox)
			})
		}
		if !b.waitForMore(ctx, next) {
			return
		}
	}
}

// waitForMore waits until something was put into the outbox, a call ended, or
// the moment came, if there is one; false if the bot ends.
func (b *Bot) waitForMore(ctx context.Context, at time.Time) bool {
	var due <-chan time.Time
	if !at.IsZero() {
		timer := time.NewTimer(at.Sub(b.Now()))
		defer timer.Stop()
		due = timer.C
	}
	select {
	case <-ctx.Done():
		return false
	case <-b.outbox:
	case <-due:
	}
	return true
}

// recoverUnknown makes messages that were under way when the program ended
// pending again: they may arrive twice, which is better than not at all.
func (b *Bot) recoverUnknown(ctx context.Context) error {
	count := 0
	err := b.Store.Write(ctx, func(tx *store.Tx) error {
		rows, err := tx.Sending(transport)
		if err != nil {
			return err
		}
		for _, o := range rows {
			o.State, o.Repeated = store.Pending, true
			if err := tx.SaveOutgoing(o); err != nil {
				return err
			}
		}
		count = len(rows)
		return nil
	})
	if err == nil && count > 0 {
		b.Log.Warn("messages with an unknown outcome go out again", "count", count)
	}
	return err
}

// claim marks messages as under way, at most free of them and no more than the
// limits let out now. next is when there will be more to claim, zero where only
// a wake can tell: when nothing waits, or a call has to end first.
func (b *Bot) claim(ctx context.Context, free int) (jobs []job, next time.Time, err error) {
	now := b.Now()
	open, wait := b.pace.open(now)
	switch {
	case free == 0:
		return nil, time.Time{}, nil
	case open == 0:
		return nil, now.Add(wait), nil
	}
	err = b.Store.Write(ctx, func(tx *store.Tx) error {
		due, err := tx.ToSend(transport, now, min(free, open))
		if err != nil {
			return err
		}
		for _, o := range due {
			chat, err := tx.Chat(o.Chat)
			if err != nil {
				return err
			}
			if err := b.judge(tx, &o, chat, now); err != nil {
				return err
			}
			if o.State != store.Sending {
				continue
			}
			j, err := jobOf(tx, o, chat)
			if err != nil {
				return err
			}
			jobs = append(jobs, j)
		}
		if len(jobs) == free {
			return nil
		}
		at, ok, err := tx.NextSend(transport)
		if ok && !at.After(now) { // a chat's next one, or one beyond the limit
			at = now
		}
		if ok {
			next = at
		}
		return err
	})
	if err != nil {
		return nil, time.Time{}, err
	}
	return jobs, next, nil
}

// jobOf brings together what the call for a message needs.
func jobOf(tx *store.Tx, o store.Outgoing, chat store.Chat) (j job, err error) {
	j = job{row: o, chat: chat}
	if j.edits, err = bot.EditTarget(tx, o); err != nil {
		return j, err
	}
	if j.edits != "" {
		earlier, ok, err := tx.OutgoingBySent(o.Chat, j.edits)
		j.below = ok && earlier.File != nil
		return j, err
	}
	if o.File != nil {
		j.file, err = tx.FileBytes(o.ID)
	}
	return j, err
}

// judge decides what becomes of a message whose turn it is: it goes out, waits
// for its chat's sake, or is dropped as no longer worth saying.
func (b *Bot) judge(tx *store.Tx, o *store.Outgoing, chat store.Chat, now time.Time) error {
	tooOld := !o.GoodUntil.IsZero() && now.After(o.GoodUntil)
	switch {
	case chat.Dead != "", tooOld, !b.stillDue(tx, *o, now):
		o.State = store.Dropped
	default:
		if wait := b.pace.take(now, o.Chat, chat.Group); wait > 0 {
			o.NotBefore = now.Add(wait)
			break
		}
		o.State = store.Sending
	}
	if err := tx.SaveOutgoing(*o); err != nil {
		return err
	}
	if !tooOld || o.Told == "" {
		return nil
	}
	b.Log.Warn("a nudge reached nobody in time; its herd is looked at again", "row", o.ID)
	return b.Desk.Undelivered(tx, o.Herd, o.Told, now)
}

// stillDue reports whether a message is worth saying still: a nudge that had to
// wait may have been settled since.
func (b *Bot) stillDue(tx *store.Tx, o store.Outgoing, now time.Time) bool {
	waited := o.Tries > 0 || o.Repeated || !o.NotBefore.IsZero()
	if o.Kind != "nudge" || !waited {
		return true
	}
	due, err := b.Desk.StillDue(tx, o.Herd, o.Told, now)
	if err != nil { // rather a nudge too many than one too few
		b.Log.Error("a nudge that waited cannot be looked at again; it goes out", "row", o.ID, "err", err)
		return true
	}
	return due
}
