package telegram

import (
	"fmt"
	"strings"

	"troughbell/bot"
	"troughbell/bot/wording"
	"troughbell/store"
)

// handling is one update on its way, inside its transaction.
type handling struct {
	bot *Bot
	tx  *store.Tx
	u   update
	row int64 // of the inbox

	from  speaker // as they were found when the update came; none: it waited since
	first bool    // no other version of the message was handled; false: that is to be found out
	ahead *bot.Foreseen
	// Who speaks where, once admitted.
	chat   store.Chat
	member store.Member
	herd   store.HerdID

	fetched *bot.Upload // the file that came with it, once it was fetched
	await   bool        // it waits for its file

	drop  bool     // nothing of the update is to be kept
	gone  bool     // it is out of the inbox already, with its herd or its sender
	after []func() // to be done once it is committed
}

// guarded handles the update; a panic is its fault, not the bot's end.
func (h *handling) guarded() (err error) {
	defer func() {
		if r := recover(); r != nil {
			err = fmt.Errorf("panic: %v", r)
		}
	}()
	return h.handle()
}

func (h *handling) handle() error {
	switch u := h.u; {
	case u.newChat != "":
		return h.migrate()
	case u.member != "":
		return h.reach()
	}
	if in, err := h.admit(); err != nil || !in {
		return err
	}
	if h.u.query != "" {
		return h.press()
	}
	if late, err := h.late(); late || err != nil {
		return err
	}
	m := h.message()
	ours, err := h.replyTo(&m)
	if err != nil {
		return err
	}
	if h.u.edit && !ours { // of what we answered, whether it names us still or not
		if ours, err = h.answered(); err != nil {
			return err
		}
	}
	text, toUs := h.address(ours)
	if !toUs { // other people's talk in a group is none of ours
		h.drop = true
		return nil
	}
	m.Text, m.Beside = text, h.u.file.isTable() && text != ""
	if h.u.brings(text) {
		return h.takeFile(m)
	}
	if word, _, rest, ok := bot.Command(h.u.text); ok {
		if done, err := h.edgeCommand(word, rest); done || err != nil {
			return err
		}
	}
	return h.hear(m)
}

// message is the update as a message of the person let in.
func (h *handling) message() bot.Message {
	return bot.Message{
		Herd: h.herd, Chat: h.chat.ID, From: h.member, ID: h.u.message, Text: h.u.text,
		At: h.u.at, Edit: h.u.edit, Version: h.row, Medium: h.u.medium, Group: h.u.group, Foreseen: h.ahead,
	}
}

// late reports whether a later version of the message was handled before it:
// updates can come in the wrong order, and what was changed counts no more.
func (h *handling) late() (bool, error) {
	if h.first {
		return false, nil
	}
	keys, err := h.tx.HandledKeys(h.u.versions())
	return h.u.superseded(keys), err
}

// hear has a message answered.
func (h *handling) hear(m bot.Message) error {
	defer h.bot.working(h.u.chat, actionTyping)()
	out, err := h.bot.Desk.Handle(h.tx, m)
	if err != nil {
		return err
	}
	for _, f := range out.Farewells {
		if f.Chat.Transport == transport {
			h.after = append(h.after, func() { h.bot.farewell(f.Chat.External, f.Text) })
		}
	}
	if len(out.Farewells) > 0 { // who said what in it may be told otherwise now
		h.after = append(h.after, func() { h.bot.Desk.Forget(m.Herd) })
	}
	if out.Gone != "" {
		h.gone = true
		return nil
	}
	if err := h.retire(m, out); err != nil {
		return err
	}
	return h.bot.Desk.Queue(h.tx, m, out)
}

// say queues a reply that is not the herd's: the edge's own.
func (h *handling) say(text string) error {
	_, err := h.tx.Queue(&store.Outgoing{
		Key: fmt.Sprintf("edge:%d", h.row), Herd: h.herd, Chat: h.chat.ID, Kind: "reply",
		Text: text, ReplyTo: h.u.message, Quiet: true,
	})
	return err
}

// replyTo finds what a reply speaks of: a message of the person's, or through
// the bot's answer the message it answered, or a nudge. ours says that it is a
// reply to the bot.
func (h *handling) replyTo(m *bot.Message) (ours bool, err error) {
	if h.u.replyTo == "" {
		return false, nil
	}
	o, ok, err := h.tx.OutgoingBySent(h.chat.ID, h.u.replyTo)
	if err != nil {
		return false, err
	}
	if ok {
		m.ReplyTo, m.ReplyNudge = o.ReplyTo, o.Told
		return true, nil
	}
	m.ReplyTo = h.u.replyTo
	return equalName(h.u.replyBot, h.bot.userName()), nil
}

// answered reports whether the message was answered before.
func (h *handling) answered() (bool, error) {
	rows, err := h.tx.AnswersTo(h.chat.ID, h.u.message)
	return len(rows) > 0, err
}

// address says what of a text is for us. In private all is; in a group only
// commands, mentions of the bot, and what is ours by what it replies to or
// edits are.
func (h *handling) address(ours bool) (text string, toUs bool) {
	if word, name, rest, ok := bot.Command(h.u.text); ok {
		if h.u.group && name != "" && !equalName(name, h.bot.userName()) {
			return "", false // another bot's
		}
		return wording.CommandText(word, rest), true
	}
	if !h.u.group || ours {
		return h.u.text, true
	}
	return withoutMention(h.u.text, h.bot.userName())
}

// reach notes whether the chat can be reached.
func (h *handling) reach() error {
	c, ok, err := h.tx.FindChat(transport, h.u.chat)
	if err != nil || !ok {
		h.drop = true
		return err
	}
	switch h.u.member {
	case "kicked", "left":
		c.Dead = "the bot was removed"
		if !h.u.group {
			c.Dead = "the person blocked the bot"
		}
	default:
		c.Dead = ""
	}
	return h.tx.SaveChat(c)
}

// migrate follows a group to its new id.
func (h *handling) migrate() error {
	c, ok, err := h.tx.FindChat(transport, h.u.chat)
	if err != nil || !ok {
		h.drop = true
		return err
	}
	c.External = h.u.newChat
	return h.tx.SaveChat(c)
}

func equalName(a, b string) bool { return b != "" && strings.EqualFold(a, b) }
