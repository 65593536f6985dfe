package telegram

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"time"

	"troughbell/bot/wording"
	"troughbell/store"
)

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
	o, label, ok, err := h.pressed()
	if err != nil {
		return err
	}
	if !ok {
		answer(wording.PressUnknown())
		return nil
	}
	if o.Sent == "" && h.u.message != "" { // the press proves that it arrived
		o.State, o.Sent = store.Sent, h.u.message
		if err := h.tx.SaveOutgoing(o); err != nil {
			return err
		}
		h.after = append(h.after, func() { h.bot.arrived(o.ID) })
	}
	now := h.bot.Now()
	m := h.message()
	m.Text, m.At = label, now
	m.ID = "press-" + query
	m.ReplyTo, m.ReplyNudge = o.ReplyTo, o.Told
	settled, err := h.settle(o, label, now)
	if err != nil {
		return err
	}
	if err := h.settleCopy(o); err != nil {
		return err
	}
	if !settled {
		answer(wording.PressSettled())
		return nil
	}
	answer("")
	return h.hear(m)
}

// pressed finds the message whose button was pressed, and the button's word; ok
// is false for a press that was forged: of another chat's message, or of a
// button never offered.
func (h *handling) pressed() (o store.Outgoing, label string, ok bool, err error) {
	row, n, ok := readPress(h.u.press)
	if !ok {
		return o, "", false, nil
	}
	o, ok, err = h.tx.OutgoingByID(row)
	if err != nil || !ok || o.Chat != h.chat.ID || o.Herd != h.herd {
		return o, "", false, err
	}
	labels := slices.Concat(o.Buttons...)
	if n >= len(labels) {
		return o, "", false, nil
	}
	return o, labels[n], true, nil
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
			if d.ID != o.ID && len(d.Buttons) > 0 {
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
			Key: settledKey(d.ID), Herd: d.Herd, Chat: d.Chat, Kind: "edit",
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

// settleCopy turns the message pressed into the same text where it is a copy:
// one that went out twice because the answer to its call was lost.
func (h *handling) settleCopy(o store.Outgoing) error {
	if h.u.message == "" || h.u.message == o.Sent {
		return nil
	}
	settled, ok, err := h.tx.OutgoingByKey(settledKey(o.ID))
	if err != nil || !ok {
		return err
	}
	_, err = h.tx.Queue(&store.Outgoing{
		Key: settledKey(o.ID) + ":" + h.u.message, Herd: o.Herd, Chat: o.Chat, Kind: "edit",
		Text: settled.Text, Edits: h.u.message,
	})
	return err
}

func settledKey(row int64) string { return fmt.Sprintf("settled:%d", row) }
