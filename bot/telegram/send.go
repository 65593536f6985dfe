package telegram

import (
	"context"
	"encoding/json"
	"errors"
	"strconv"
	"time"

	tgbotapi "github.com/go-telegram-bot-api/telegram-bot-api/v5"

	"troughbell/store"
)

// sendBatch is how many chats are served before the outbox is asked again.
const sendBatch = 30

// send empties the outbox at the pace Telegram takes it. A row is marked as
// under way before its call, so that after a crash it is known which outcomes
// are not.
func (b *Bot) send(ctx context.Context) {
	b.recover(ctx)
	var wait backoff
	for {
		next, err := b.sendDue(ctx)
		if ctx.Err() != nil {
			return
		}
		d := time.Hour
		switch {
		case err != nil:
			b.Log.Error("the outbox cannot be read; trying again", "err", err)
			d = wait.next()
		case !next.IsZero():
			d = max(next.Sub(b.Now()), 10*time.Millisecond)
			wait = backoff{}
		default:
			wait = backoff{}
		}
		timer := time.NewTimer(d)
		select {
		case <-ctx.Done():
			timer.Stop()
			return
		case <-b.outbox:
		case <-timer.C:
		}
		timer.Stop()
	}
}

// recover makes messages that were under way when the program ended pending
// again: they may arrive twice, which is better than not at all.
func (b *Bot) recover(ctx context.Context) {
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
		if len(rows) > 0 {
			b.Log.Warn("messages with an unknown outcome go out again", "count", len(rows))
		}
		return nil
	})
	if err != nil && ctx.Err() == nil {
		b.Log.Error("messages under way cannot be read", "err", err)
	}
}

// sendDue sends what may go out now and gives when to come back.
func (b *Bot) sendDue(ctx context.Context) (next time.Time, err error) {
	for ctx.Err() == nil {
		var rows []store.Outgoing
		var groups map[store.ChatID]bool
		err := b.Store.Write(ctx, func(tx *store.Tx) error {
			var err error
			rows, groups, err = b.claim(tx)
			return err
		})
		if err != nil {
			return time.Time{}, err
		}
		if len(rows) == 0 {
			return b.nextSend(ctx)
		}
		for _, o := range rows {
			if err := b.sendOne(o, groups[o.Chat]); err != nil {
				return time.Time{}, err
			}
		}
	}
	return time.Time{}, nil
}

// claim marks messages as under way that the limits let out now; one that must
// wait gets a time not to go out before.
func (b *Bot) claim(tx *store.Tx) (rows []store.Outgoing, groups map[store.ChatID]bool, err error) {
	now := b.Now()
	due, err := tx.ToSend(transport, now, sendBatch)
	if err != nil {
		return nil, nil, err
	}
	groups = map[store.ChatID]bool{}
	for _, o := range due {
		c, err := tx.Chat(o.Chat)
		if err != nil {
			return nil, nil, err
		}
		switch {
		case c.Transport != transport:
			continue // shown by a terminal
		case c.Dead != "" || !o.GoodUntil.IsZero() && now.After(o.GoodUntil):
			o.State = store.Dropped
		default:
			if o.Kind == "nudge" && o.Tries > 0 {
				still, err := b.Desk.StillDue(tx, o.Herd, o.Told, now)
				if err != nil {
					return nil, nil, err
				}
				if !still {
					o.State = store.Dropped
					break
				}
			}
			if wait := b.pace.take(now, o.Chat, c.Group); wait > 0 {
				o.NotBefore = now.Add(wait)
				break
			}
			o.State = store.Sending
			groups[o.Chat] = c.Group
			rows = append(rows, o)
		}
		if err := tx.SaveOutgoing(o); err != nil {
			return nil, nil, err
		}
	}
	return rows, groups, nil
}

func (b *Bot) nextSend(ctx context.Context) (next time.Time, err error) {
	err = b.Store.Read(ctx, func(tx *store.Tx) error {
		at, ok, err := tx.NextSend(transport)
		if ok {
			next = at
		}
		return err
	})
	return next, err
}

// sendOne makes the call for one message and notes its outcome. The end of the
// bot does not cut the call off.
func (b *Bot) sendOne(o store.Outgoing, group bool) error {
	ctx := context.Background()
	var chat store.Chat
	if err := b.Store.Read(ctx, func(tx *store.Tx) (err error) {
		chat, err = tx.Chat(o.Chat)
		return err
	}); err != nil {
		return err
	}
	sent, cerr := b.deliver(ctx, chat, o, group)
	return b.Store.Write(ctx, func(tx *store.Tx) error {
		return b.settleSending(tx, chat, o, sent, cerr)
	})
}

// settleSending notes the outcome of a call.
func (b *Bot) settleSending(tx *store.Tx, chat store.Chat, o store.Outgoing, sent string, err error) error {
	now := b.Now()
	o.Tries++
	var call *callError
	switch {
	case err == nil:
		o.State, o.Sent = store.Sent, sent
	case !errors.As(err, &call):
		return err
	default:
		b.Log.Debug("a message was not sent", "row", o.ID, "err", err)
		switch call.what {
		case alreadyDone:
			o.State, o.Sent = store.Sent, o.Edits
		case flood:
			o.State, o.NotBefore = store.Pending, now.Add(max(call.wait, time.Second))
		case unknown:
			o.State, o.Repeated, o.NotBefore = store.Pending, true, now.Add(retryAfter(o.Tries))
		case unreachable:
			o.State = store.Dropped
			chat.Dead = "the chat cannot be reached"
			if err := tx.SaveChat(chat); err != nil {
				return err
			}
		case migrated:
			chat.External = id(call.newChat)
			if err := tx.SaveChat(chat); err != nil {
				return err
			}
			o.State, o.NotBefore = store.Pending, now
		case gone, refused:
			b.Log.Error("a message was refused and dropped", "row", o.ID, "kind", o.Kind, "err", err)
			o.State = store.Dropped
		case badToken:
			o.State, o.NotBefore = store.Pending, now.Add(time.Minute)
			b.die(ErrToken)
		default:
			o.State, o.NotBefore = store.Pending, now.Add(retryAfter(o.Tries))
		}
	}
	return tx.SaveOutgoing(o)
}

// retryAfter grows from a second to five minutes.
func retryAfter(tries int) time.Duration {
	return min(time.Second<<min(tries, 9), 5*time.Minute)
}

// deliver sends or edits; a text too long for one message goes out in several,
// and the last of them carries the buttons and is the one remembered.
func (b *Bot) deliver(ctx context.Context, chat store.Chat, o store.Outgoing, _ bool) (sent string, err error) {
	parts := split(o.Text, maxUnits)
	if o.Kind == "edit" && o.Edits != "" {
		params := tgbotapi.Params{"chat_id": chat.External, "message_id": o.Edits, "text": parts[0]}
		if err := addButtons(params, o); err != nil {
			return "", err
		}
		_, err := b.client.call(ctx, "editMessageText", params, sendLimit)
		return o.Edits, err
	}
	for i, part := range parts {
		params := tgbotapi.Params{"chat_id": chat.External, "text": part}
		params.AddBool("disable_notification", o.Quiet)
		params.AddBool("disable_web_page_preview", true)
		if i == 0 && isNumber(o.ReplyTo) && o.Kind == "reply" {
			params["reply_to_message_id"] = o.ReplyTo
			params["allow_sending_without_reply"] = "true"
		}
		if i == len(parts)-1 {
			if err := addButtons(params, o); err != nil {
				return "", err
			}
		}
		result, err := b.client.call(ctx, "sendMessage", params, sendLimit)
		if err != nil {
			return "", err
		}
		var m struct {
			ID int64 `json:"message_id"`
		}
		if err := json.Unmarshal(result, &m); err != nil {
			return "", &callError{method: "sendMessage", what: unknown, err: err}
		}
		sent = strconv.FormatInt(m.ID, 10)
	}
	return sent, nil
}

func addButtons(params tgbotapi.Params, o store.Outgoing) error {
	if len(o.Buttons) == 0 {
		return nil
	}
	var rows [][]tgbotapi.InlineKeyboardButton
	n := 0
	for _, row := range o.Buttons {
		var line []tgbotapi.InlineKeyboardButton
		for _, label := range row {
			line = append(line, tgbotapi.NewInlineKeyboardButtonData(label, pressData(o.ID, n)))
			n++
		}
		rows = append(rows, line)
	}
	return params.AddInterface("reply_markup", tgbotapi.InlineKeyboardMarkup{InlineKeyboard: rows})
}

func isNumber(s string) bool {
	_, err := strconv.ParseInt(s, 10, 64)
	return err == nil
}
