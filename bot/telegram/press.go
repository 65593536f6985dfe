package telegram

import (
	"context"
	"fmt"
	"strconv"
	"strings"
	"time"

	tgbotapi "github.com/go-telegram-bot-api/telegram-bot-api/v5"

	"troughbell/bot"
	"troughbell/bot/wording"
	"troughbell/store"
)

// pairStands is how long a pairing code can be used.
const pairStands = 24 * time.Hour

// message is the update as a message of the person let in.
func message(h *handling) bot.Message {
	return bot.Message{
		Herd: h.herd, Chat: h.chat.ID, From: h.member, ID: h.u.message, Text: h.u.text,
		At: h.u.at, Edit: h.u.edit, Medium: h.u.medium,
	}
}

// pressData is what a button carries: the row of the outbox it hangs below and
// which of its buttons it is. Never a text.
func pressData(row int64, button int) string { return fmt.Sprintf("b:%d:%d", row, button) }

func readPress(data string) (row int64, button int, ok bool) {
	parts := strings.Split(data, ":")
	if len(parts) != 3 || parts[0] != "b" {
		return 0, 0, false
	}
	row, err1 := strconv.ParseInt(parts[1], 10, 64)
	button, err2 := strconv.Atoi(parts[2])
	return row, button, err1 == nil && err2 == nil && button >= 0
}

// press takes a pressed button as the word on it. The message it hung below
// turns into text that says who pressed what and when; a second press does
// nothing.
func (h *handling) press() error {
	query := h.u.query
	answer := func(text string) {
		h.after = append(h.after, func() { h.bot.answerPress(query, text) })
	}
	row, n, ok := readPress(h.u.press)
	if !ok {
		answer(wording.PressUnknown())
		return nil
	}
	o, ok, err := h.tx.OutgoingByID(row)
	if err != nil {
		return err
	}
	labels := flat(o.Buttons)
	// A forged press names a row of another chat, or a button never offered.
	if !ok || o.Chat != h.chat.ID || n >= len(labels) {
		answer(wording.PressUnknown())
		return nil
	}
	now := h.bot.Now()
	m := message(h)
	m.Text, m.At, m.Edit = labels[n], now, false
	m.ID = "press-" + query
	m.ReplyTo, m.ReplyNudge = o.ReplyTo, o.Told
	settled, err := h.settle(o, labels[n], now)
	if err != nil {
		return err
	}
	if !settled {
		answer(wording.PressSettled())
		return nil
	}
	answer("")
	return h.hear(m)
}

// settle turns the message, in every chat that got it, into text without
// buttons. It reports false where that was done before.
func (h *handling) settle(o store.Outgoing, label string, now time.Time) (bool, error) {
	all := []store.Outgoing{o}
	if o.Told != "" {
		others, err := h.tx.Deliveries(o.Herd, o.Told)
		if err != nil {
			return false, err
		}
		for _, d := range others {
			if d.ID != o.ID {
				all = append(all, d)
			}
		}
	}
	s, err := h.bot.Desk.State(h.tx, h.herd)
	if err != nil {
		return false, err
	}
	v := wording.Voice{Herd: s.Herd, Now: now.In(s.Zone)}
	first := true
	for _, d := range all {
		edit := store.Outgoing{
			Key: fmt.Sprintf("settled:%d", d.ID), Herd: d.Herd, Chat: d.Chat, Kind: "edit",
			Text: d.Text + "\n" + v.Pressed(label, h.member.Name), Edits: d.Sent,
		}
		queued, err := h.tx.Queue(&edit)
		if err != nil {
			return false, err
		}
		if d.ID == o.ID {
			first = queued
		}
	}
	return first, nil
}

func flat(rows [][]string) []string {
	var out []string
	for _, r := range rows {
		out = append(out, r...)
	}
	return out
}

// answerPress ends the spinner on a button. It is tried once: the wait for it
// is short, and its effect does not depend on it.
func (b *Bot) answerPress(query, text string) {
	params := tgbotapi.Params{"callback_query_id": query}
	params.AddNonEmpty("text", text)
	if _, err := b.client.call(context.Background(), "answerCallbackQuery", params, 5*time.Second); err != nil {
		b.Log.Debug("a press was not answered", "err", err)
	}
}

// whisper says something to a chat that is not kept, once.
func (b *Bot) whisper(chat, text string) {
	params := tgbotapi.Params{"chat_id": chat, "text": text}
	if _, err := b.client.call(context.Background(), "sendMessage", params, 5*time.Second); err != nil {
		b.Log.Debug("a stranger was not answered", "err", err)
	}
}
