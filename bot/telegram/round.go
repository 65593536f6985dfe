package telegram

import (
	"encoding/json"
	"errors"
	"time"

	"troughbell/bot"
	"troughbell/bot/wording"
	"troughbell/store"
)

// What of the inbox shares a transaction, and with it a wait for the disk: no
// more than lets others write soon.
const (
	roundMessages = 100
	roundSpan     = 5 * time.Millisecond
	// longSpan is that of a round while more wait at Telegram than a poll brings: what
	// comes then waits for those before it, and they are through sooner.
	longSpan = 4 * roundSpan
)

// round is the messages that are handled in one transaction, each by itself: what
// fails takes no other message with it.
type round struct {
	bot *Bot
	// together says that what comes in is undone with all the others where it fails,
	// which costs nothing where nothing does: then it is taken again, each by itself.
	together bool

	span  time.Duration  // 0: roundSpan
	file  *bot.Upload    // that a message waited for; nil: none
	herds []store.HerdID // of the messages handled
	after []func()       // to be done once it is committed
}

// isOver reports whether a round that began at the moment is to end.
func (r *round) isOver(began time.Time) bool {
	return r.bot.Now().Sub(began) >= max(r.span, roundSpan)
}

// take handles updates as they came in, after what waits in the inbox, and says
// how many of them the round had time for.
func (r *round) take(tx *store.Tx, raws []json.RawMessage, ahead *ahead) (int, error) {
	began := r.bot.Now()
	if more, err := r.handle(tx, roundMessages); more || err != nil {
		return 0, err
	}
	for i, raw := range raws {
		if err := r.takeOne(tx, raw, began, ahead.of(i)); err != nil {
			return i, err
		}
		if r.isOver(began) {
			return i + 1, nil
		}
	}
	return len(raws), nil
}

func (r *round) takeOne(tx *store.Tx, raw json.RawMessage, now time.Time, seen *sight) error {
	a, ok, err := r.bot.arrive(tx, raw, now, seen)
	if err != nil || !ok {
		return err
	}
	taken, others, err := tx.TakeIn(&a.in, a.u.versions())
	if err != nil || !taken {
		return err
	}
	a.first = !others
	_, err = r.handleOne(tx, a)
	return err
}

// handle handles messages that wait in the inbox, the oldest first, at most so
// many, and reports whether more wait. The error is the store's; a message that is
// itself at fault is marked so, and never stops the queue.
func (r *round) handle(tx *store.Tx, most int) (more bool, err error) {
	began := r.bot.Now()
	for range most {
		in, found, err := tx.NextIncoming()
		if err != nil || !found {
			return false, err
		}
		if err := r.handleWaiting(tx, in); err != nil {
			return true, err
		}
		if r.isOver(began) {
			break
		}
	}
	return true, nil
}

// handleWaiting handles a message of the inbox.
func (r *round) handleWaiting(tx *store.Tx, in store.Incoming) error {
	u, ok, err := readUpdate(in.Raw)
	switch {
	case err != nil:
		return tx.SetAside(in, err.Error())
	case !ok:
		return tx.SetAside(in, "it says nothing")
	}
	if whole, err := r.handleOne(tx, arrival{in: in, u: u}); err != nil || !whole {
		return err
	}
	return tx.Handled(in.ID)
}

// handleOne handles an update that has a row in the inbox; whole says that nothing
// is left to be done about that row.
func (r *round) handleOne(tx *store.Tx, a arrival) (whole bool, err error) {
	in := a.in
	h := handling{bot: r.bot, tx: tx, u: a.u, row: in.ID, from: a.from, first: a.first, ahead: a.ahead, fetched: r.file}
	fault, err := r.try(tx, &h)
	r.herds = append(r.herds, h.herd)
	switch {
	case err != nil:
		return false, err
	case fault != nil:
		r.bot.Desk.Forget(h.herd)
		var trouble *store.Problem
		if errors.As(fault, &trouble) {
			return false, fault
		}
		return false, r.setAside(tx, in, a.u, fault)
	}
	r.after = append(r.after, h.after...)
	switch {
	case h.gone:
		return false, nil
	case h.drop:
		return false, tx.DropIncoming(in.ID)
	case h.await:
		return false, tx.AwaitFile(in)
	}
	return true, nil
}

// try has an update handled. What fails is undone by itself, except in a round in
// which all is: then err is what failed.
func (r *round) try(tx *store.Tx, h *handling) (fault, err error) {
	if r.together {
		return nil, h.guarded()
	}
	return tx.Try(h.guarded)
}

// setAside marks a message that cannot be handled, and says so to its sender if
// it came from a herd's chat.
func (r *round) setAside(tx *store.Tx, in store.Incoming, u update, fault error) error {
	r.after = append(r.after, func() {
		r.bot.Log.Error("a message was set aside", "message", in.Key, "err", fault)
	})
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
	return tx.SetAside(in, fault.Error())
}

// over is called when the transaction has ended, with its error.
func (r *round) over(err error) {
	if err != nil {
		r.undo()
		return
	}
	for _, do := range r.after {
		do()
	}
}

// undo forgets what was handled: it was not committed.
func (r *round) undo() {
	for _, herd := range r.herds {
		r.bot.Desk.Forget(herd)
	}
	r.herds, r.after = nil, nil
}
