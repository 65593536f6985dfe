package telegram

import (
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"strconv"
	"time"

	tgbotapi "github.com/go-telegram-bot-api/telegram-bot-api/v5"

	"troughbell/bot"
	"troughbell/store"
)

// Names of the values that the poll keeps.
const (
	valueOffset = "telegram.offset"
	valueSeen   = "telegram.seen" // when the poll was answered last, Unix seconds
)

// offsetStands is how long a kept offset is worth sending: after a week of
// silence the server may count its updates anew, from anywhere.
const offsetStands = 6 * 24 * time.Hour

// wanted is the kinds of updates asked for; the server remembers it, so it goes
// along with every call.
const wanted = `["message","edited_message","callback_query","my_chat_member"]`

// pollMost is how many updates a poll brings at most.
const pollMost = 100

// conflictsBeforeGivingUp is how many polls in a row another copy may end.
const conflictsBeforeGivingUp = 12

// emptyPause is the pause after a poll that came back empty at once.
const emptyPause = 200 * time.Millisecond

// poll asks for updates, and asks for the next ones only after those it got are
// in the inbox and committed: what the server forgets, we have.
func (b *Bot) poll(ctx context.Context, up chan<- struct{}) {
	polling := trouble{bot: b, what: "polling"}
	conflicts := 0
	for seconds := 0; ctx.Err() == nil; { // the first poll finds out whether polling works
		began := b.Now()
		got, err := b.pollOnce(ctx, seconds)
		switch {
		case err == nil:
			// A server that holds no poll is not to be asked without a pause.
			if got == 0 && seconds > 0 && b.Now().Sub(began) < time.Second {
				sleep(ctx, emptyPause)
			}
			if seconds == 0 {
				close(up)
				seconds = pollSeconds
			}
			conflicts = 0
			polling.passed()
			continue
		case ctx.Err() != nil:
			return
		}
		var wait time.Duration
		var call *callError
		if errors.As(err, &call) {
			wait = call.wait
			switch call.what {
			case badToken:
				b.die(ErrToken)
				return
			case webhook:
				b.removeWebhook(ctx)
			case conflict:
				if conflicts++; conflicts >= conflictsBeforeGivingUp {
					b.die(ErrOther)
					return
				}
				err = ErrOther
			}
		}
		sleep(ctx, max(wait, polling.failed(err)))
	}
}

func (b *Bot) removeWebhook(ctx context.Context) {
	b.Log.Warn("a webhook is set for this bot; removing it, keeping what waits")
	_, err := b.client.call(ctx, "deleteWebhook", tgbotapi.Params{"drop_pending_updates": "false"}, sendLimit)
	if err != nil {
		b.Log.Warn("the webhook could not be removed", "err", err)
	}
}

// pollOnce makes one getUpdates call, which waits so many seconds for something
// to come, keeps what it brings, and says how much that was.
func (b *Bot) pollOnce(ctx context.Context, seconds int) (int, error) {
	params := tgbotapi.Params{"timeout": strconv.Itoa(seconds), "limit": strconv.Itoa(pollMost), "allowed_updates": wanted}
	if err := b.Store.Read(ctx, func(tx *store.Tx) error {
		if err := b.distress.learn(tx); err != nil {
			return err
		}
		kept, err := tx.Values(valueOffset, valueSeen)
		if err != nil || kept[0] == "" {
			return err
		}
		seen, err := readMoment(kept[1])
		if err == nil && b.Now().Sub(seen) < offsetStands {
			params["offset"] = kept[0]
		}
		return err
	}); err != nil {
		return 0, err
	}
	result, err := b.client.call(ctx, "getUpdates", params, pollLimit)
	if err != nil {
		return 0, err
	}
	var raws []json.RawMessage
	if err := json.Unmarshal(result, &raws); err != nil {
		return 0, fmt.Errorf("getUpdates: %w", err)
	}
	err = b.keep(ctx, raws)
	var problem *store.Problem
	if errors.As(err, &problem) {
		b.tellWaiting(ctx, raws)
	}
	return len(raws), err
}

// keep has updates handled, as many in a transaction as its time lets, until all
// are committed. What is not when it ends comes again with the next poll.
func (b *Bot) keep(ctx context.Context, raws []json.RawMessage) error {
	ahead := b.lookAhead(ctx, raws)
	defer ahead.over()
	span := roundSpan
	if len(raws) == pollMost {
		span = longSpan
	}
	for {
		n, err := b.keepSome(ctx, raws, span, ahead)
		if err != nil {
			return err
		}
		b.counts.updates.Add(uint64(n))
		ahead.handled(n)
		if raws = raws[n:]; len(raws) == 0 {
			return nil
		}
		if ctx.Err() != nil {
			return ctx.Err()
		}
	}
}

// keepSome has some of the updates handled in one transaction, and notes with the
// last of them what to ask for next. Where the handling meets a fault of the store
// they are put into the inbox: the answering meets the fault again, and tells of it.
func (b *Bot) keepSome(ctx context.Context, raws []json.RawMessage, span time.Duration, ahead *ahead) (n int, err error) {
	n, fault, err := b.keepRound(ctx, &round{bot: b, span: span, together: true}, raws, ahead)
	if fault != nil { // what fails is to harm no other
		n, fault, err = b.keepRound(ctx, &round{bot: b, span: span}, raws, ahead)
	}
	if fault == nil {
		return n, err
	}
	err = b.Store.Write(ctx, func(tx *store.Tx) error {
		if err := b.receive(tx, raws, ahead); err != nil {
			return err
		}
		return b.noteKept(tx, raws)
	})
	if err == nil {
		wake(b.inbox)
	}
	return len(raws), err
}

// keepRound is keepSome, in a round of one kind; fault is that of the handling.
func (b *Bot) keepRound(ctx context.Context, r *round, raws []json.RawMessage, ahead *ahead) (n int, fault, err error) {
	err = b.Store.Write(ctx, func(tx *store.Tx) error {
		if n, fault = r.take(tx, raws, ahead); fault != nil || n < len(raws) {
			return fault
		}
		return b.noteKept(tx, raws)
	})
	r.over(err)
	return n, fault, err
}

// receive puts updates into the inbox.
func (b *Bot) receive(tx *store.Tx, raws []json.RawMessage, ahead *ahead) error {
	now := b.Now()
	for i, raw := range raws {
		a, ok, err := b.arrive(tx, raw, now, ahead.of(i))
		if err == nil && ok {
			_, err = tx.Receive(a.in)
		}
		if err != nil {
			return err
		}
	}
	return nil
}

// arrival is an update that came in.
type arrival struct {
	in   store.Incoming
	u    update
	from speaker
	// first says that no other version of the message came before it.
	first bool
	// ahead is what it leads to, where that was worked out ahead.
	ahead *bot.Foreseen
}

// arrive reads an update, unless it was seen ahead; false for one that is not to be
// kept. One that we cannot read must not stop the rest.
func (b *Bot) arrive(tx *store.Tx, raw json.RawMessage, now time.Time, seen *sight) (a arrival, ok bool, err error) {
	a.ahead = seen.f
	if seen.u != nil {
		a.u, ok = *seen.u, true
	} else {
		a.u, ok, err = readUpdate(raw)
	}
	if err != nil {
		number, unnumbered := updateID(raw)
		b.Log.Error("an update cannot be read", "update", number, "err", err)
		return a, false, unnumbered
	}
	if !ok {
		return a, false, nil
	}
	off := false
	if a.from, off, err = b.turnedOff(tx, a.u, now, seen); err != nil || off {
		return a, false, err
	}
	if raw, err = coarse(raw); err != nil {
		return a, false, err
	}
	a.in = store.Incoming{Key: a.u.key, Chat: a.u.chat, Raw: raw, At: now}
	return a, true, nil
}

// noteKept notes what to ask for after these updates: what follows the last of
// them, even where ids begin anew and are lower. It is done for all that a poll
// brought at once: the server forgets all ids below.
func (b *Bot) noteKept(tx *store.Tx, raws []json.RawMessage) error {
	if len(raws) > 0 {
		last, err := updateID(raws[len(raws)-1])
		if err != nil {
			return err
		}
		if err := tx.SetValue(valueOffset, strconv.FormatInt(last+1, 10)); err != nil {
			return err
		}
	}
	return setMoment(tx, valueSeen, b.Now())
}

// updateID is the number of an update, whatever else it holds.
func updateID(raw json.RawMessage) (int64, error) {
	var head struct {
		ID int64 `json:"update_id"`
	}
	if err := json.Unmarshal(raw, &head); err != nil {
		return 0, fmt.Errorf("getUpdates: %w", err)
	}
	return head.ID, nil
}
