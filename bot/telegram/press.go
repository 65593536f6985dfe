package telegram

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"troughbell/bot"
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
	// Only what we have written ourselves is taken, to the letter.
	return row, button, err1 == nil && err2 == nil && button >= 0 && pressData(row, button) == data
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
	if late, err := h.tooLate(o); err != nil || late != "" {
		answer(late)
		if err != nil {
			return err
		}
		return h.settleCopy(o)
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
	m.Text, m.At, m.Pressed = label, now, true
	m.ID = "press-" + query
	m.ReplyTo, m.ReplyNudge = o.ReplyTo, o.Told
	settled, err := h.settle(o, label)
	if err != nil {
		return err
	}
	if err := h.settleCopy(o); err != nil {
		return err
	}
	if !settled {
		answer(wording.PressSettled(""))
		return nil
	}
	answer("")
	return h.hear(m)
}

// tooLate says, kindly, why a button came too late: it was pressed before, its
// question was answered, the text above was edited, or what it speaks of has been
// told anew. Empty where it did not.
func (h *handling) tooLate(o store.Outgoing) (string, error) {
	edit, ok, err := h.tx.OutgoingByKey(settledKey(o))
	if err != nil {
		return "", err
	}
	if ok {
		return wording.PressSettled(strings.TrimSpace(strings.TrimPrefix(edit.Text, o.Text))), nil
	}
	if o.ReplyTo != "" {
		rows, err := h.tx.AnswersTo(o.Chat, o.ReplyTo)
		if err != nil {
			return "", err
		}
		if slices.ContainsFunc(rows, func(later store.Outgoing) bool { return replaces(later, o) }) {
			return wording.PressReplaced(), nil
		}
	}
	if o.Told != "" {
		overtaken, err := h.bot.Desk.Overtaken(h.tx, o.Herd, o.Told, h.bot.Now())
		if err != nil || !overtaken {
			return "", err
		}
		_, err = h.takeButtons(o, "")
		return wording.PressOvertaken(), err
	}
	return "", nil
}

// replaces reports whether a message of the outbox takes the place of another.
func replaces(later, o store.Outgoing) bool {
	return later.ID > o.ID && later.State != store.Dropped && later.Edits != "" && later.Edits == o.Sent
}

// settledKey names the edit that takes the buttons off a message.
func settledKey(o store.Outgoing) string { return fmt.Sprint(settledBy, o.ID) }

const settledBy = "settled:"

// takeButtons turns a message into text without buttons, with a line below it
// where there is one. It reports false where that was done before.
func (h *handling) takeButtons(o store.Outgoing, line string) (bool, error) {
	text := o.Text
	if line != "" {
		text += "\n" + line
	}
	return h.tx.Queue(&store.Outgoing{
		Key: settledKey(o), Herd: o.Herd, Chat: o.Chat, Kind: "edit", Text: text, Edits: bot.EditOf(o),
	})
}

// retire takes the buttons off the messages that a message has made needless; a
// nudge says who settled it.
func (h *handling) retire(m bot.Message, out bot.Outcome) error {
	rows, err := h.bot.Desk.Needless(h.tx, m, out)
	if err != nil || len(rows) == 0 {
		return err
	}
	v, err := h.voice()
	if err != nil {
		return err
	}
	for _, n := range rows {
		line := ""
		if n.Done || n.PutOff {
			line = v.Settled(n.Done, m.From.Name)
		}
		if _, err := h.takeButtons(n.Row, line); err != nil {
			return err
		}
	}
	return nil
}

// voice speaks to the herd as it is now.
func (h *handling) voice() (wording.Voice, error) {
	s, err := h.bot.Desk.State(h.tx, h.herd)
	if err != nil {
		return wording.Voice{}, err
	}
	return wording.Voice{Herd: s.Herd, Now: h.bot.Now().In(s.Zone)}, nil
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
func (h *handling) settle(o store.Outgoing, label string) (bool, error) {
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
	v, err := h.voice()
	if err != nil {
		return false, err
	}
	first := true
	for _, d := range all {
		queued, err := h.takeButtons(d, v.Pressed(label, h.member.Name))
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
	settled, ok, err := h.tx.OutgoingByKey(settledKey(o))
	if err != nil || !ok {
		return err
	}
	_, err = h.tx.Queue(&store.Outgoing{
		Key: settledKey(o) + ":" + h.u.message, Herd: o.Herd, Chat: o.Chat, Kind: "edit",
		Text: settled.Text, Edits: h.u.message,
	})
	return err
}
