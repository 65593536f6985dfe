package telegram

import (
	"context"
	"errors"
	"strings"
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
	ok := b.persist(ctx, "reading the outbox", func() error { return b.recoverOutbox(ctx) })
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
				call, end := context.WithCancel(calls)
				b.calls.Store(j.row.ID, end)
				sent, err := b.deliver(call, j)
				b.calls.Delete(j.row.ID)
				end()
				b.persist(calls, "noting what was sent", func() error { return b.noteOutcome(j.row, sent, err) })
				<-slots
				wake(b.outbox)
			})
		}
		if !b.waitForMore(ctx, next) {
			return
		}
	}
}

// arrived ends the call for a message, if it is under way still: that the message
// arrived is known otherwise.
func (b *Bot) arrived(row int64) {
	if end, ok := b.calls.Load(row); ok {
		end.(context.CancelFunc)()
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

// recoverOutbox makes messages that were under way when the program ended
// pending again: they may arrive twice, which is better than not at all. Then all
// that waits joins the lines.
func (b *Bot) recoverOutbox(ctx context.Context) error {
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
		waiting, err := tx.Waiting(transport)
		b.lines.join(waiting, time.Time{})
		return err
	})
	if err == nil && count > 0 {
		b.Log.Warn("messages with an unknown outcome go out again", "count", count)
	}
	return err
}

// queued is told by the store of what waits for chats.
func (b *Bot) queued(waiting []store.Waiting) {
	b.lines.join(waiting, b.Now())
	wake(b.outbox)
}

// place is a chat whose turn it is.
type place struct {
	store.Waiting
	since time.Time // when its line began to wait

	more  bool      // something is to go to it still
	until time.Time // but not before that
}

// claim marks messages as under way, at most free of them and no more than the
// limits let out now. next is when there will be more to claim, zero where only
// a wake can tell: when nothing waits, or a call has to end first.
func (b *Bot) claim(ctx context.Context, free int) (jobs []job, next time.Time, err error) {
	now := b.Now()
	open, wait := b.pace.open(now)
	places := b.places(now, min(free, open))
	if len(places) > 0 {
		err = b.Store.Write(ctx, func(tx *store.Tx) error {
			jobs = nil
			for i := range places {
				j, ok, err := b.pick(tx, &places[i], now)
				if err != nil {
					return err
				}
				if ok {
					jobs = append(jobs, j)
				}
			}
			return nil
		})
	}
	if err != nil {
		for _, p := range places {
			b.lines.leave(p.Waiting, true, now, now)
		}
		return nil, time.Time{}, err
	}
	under := map[store.ChatID]bool{}
	for _, j := range jobs {
		under[j.chat.ID] = true
	}
	for _, p := range places {
		if !under[p.Chat] {
			b.lines.leave(p.Waiting, p.more, p.until, now)
		}
	}
	next = b.lines.ready(now)
	switch {
	case len(jobs) == free:
		return jobs, time.Time{}, nil
	case open == 0 && !next.IsZero() && next.Before(now.Add(wait)):
		next = now.Add(wait)
	}
	return jobs, next, nil
}

// places takes chats out of the lines whose turn it is, at most n of them. Those
// that are to be spared for the moment rest meanwhile.
func (b *Bot) places(now time.Time, n int) (out []place) {
	for len(out) < n {
		w, since, ok := b.lines.next(now)
		if !ok {
			break
		}
		if wait := b.pace.wait(now, w.Chat); wait > 0 {
			b.lines.leave(w, true, now.Add(wait), now)
			continue
		}
		out = append(out, place{Waiting: w, since: since})
	}
	return out
}

// pick marks the message as under way that is to go to the chat next, and drops
// what is no longer worth saying before it. false where none can go now; p then
// says what becomes of its line.
func (b *Bot) pick(tx *store.Tx, p *place, now time.Time) (j job, ok bool, err error) {
	p.more, p.until = false, now
	chat, err := tx.Chat(p.Chat)
	if errors.Is(err, store.ErrNotFound) { // gone meanwhile, and what waited for it too
		return j, false, nil
	}
	if err != nil || chat.Transport != transport {
		return j, false, err
	}
	for {
		o, found, err := tx.NextTo(p.Chat)
		if err != nil || !found {
			return j, false, err
		}
		if o.NotBefore.After(now) {
			p.more, p.until, p.Urgent = true, o.NotBefore, o.Urgent
			return j, false, nil
		}
		waited := p.since.IsZero() || now.Sub(p.since) > longWait
		dropped, err := b.judge(tx, &o, chat, now, waited)
		switch {
		case err != nil:
			return j, false, err
		case dropped:
			continue
		}
		if wait := b.pace.take(now, o.Chat, chat.Group); wait > 0 {
			p.more, p.until, p.Urgent = true, now.Add(wait), o.Urgent
			return j, false, nil
		}
		o.State = store.Sending
		if err := tx.SaveOutgoing(o); err != nil {
			return j, false, err
		}
		j, err = jobOf(tx, o, chat)
		return j, err == nil, err
	}
}

// longWait is after how long in line a nudge is looked at again before it goes.
const longWait = time.Minute

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

// judge drops a message whose turn it is where it is no longer worth saying.
func (b *Bot) judge(tx *store.Tx, o *store.Outgoing, chat store.Chat, now time.Time, waited bool) (dropped bool, err error) {
	tooOld := !o.GoodUntil.IsZero() && now.After(o.GoodUntil)
	if chat.Dead == "" && !tooOld && b.stillDue(tx, *o, now, waited) {
		needless, err := settlesNothing(tx, *o)
		if err != nil || !needless {
			return false, err
		}
	}
	o.State = store.Dropped
	if err := tx.SaveOutgoing(*o); err != nil {
		return true, err
	}
	if !tooOld || o.Told == "" {
		return true, nil
	}
	b.Log.Warn("a nudge reached nobody in time; its herd is looked at again", "row", o.ID)
	return true, b.Desk.Undelivered(tx, o.Herd, o.Told, now)
}

// settlesNothing reports whether a message was to take the buttons off one that
// after all was not sent.
func settlesNothing(tx *store.Tx, o store.Outgoing) (bool, error) {
	if !strings.HasPrefix(o.Key, settledBy) {
		return false, nil
	}
	at, err := bot.EditTarget(tx, o)
	return at == "", err
}

// stillDue reports whether a message is worth saying still: a nudge that had to
// wait may have been settled since.
func (b *Bot) stillDue(tx *store.Tx, o store.Outgoing, now time.Time, waited bool) bool {
	waited = waited || o.Tries > 0 || o.Repeated || !o.NotBefore.IsZero()
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
