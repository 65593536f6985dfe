package telegram

import (
	"strings"

	"troughbell/bot/wording"
	"troughbell/store"
)

// admit finds out who speaks, and lets in who has a right to: a member of the
// herd spoken of in the chat, or who brings a one-time code. Being in a group
// gives no rights. It reports whether the update is to be handled further.
func (h *handling) admit() (bool, error) {
	if h.from.private.ID == 0 {
		var err error
		if h.from, err = speakerOf(h.tx, h.u.sender); err != nil {
			return false, err
		}
	}
	private, m := h.from.private, h.from.member
	person := private.Person // behind the sender; 0: nobody knows
	if !h.u.group {
		if done, err := h.tryCode(person); done || err != nil {
			return false, err
		}
	}
	if person == 0 {
		h.turnAway()
		return false, nil
	}
	c := private
	if h.u.chat != h.u.sender {
		var err error
		if c, err = h.tx.ChatOf(transport, h.u.chat, h.u.group); err != nil {
			return false, err
		}
	}
	if c.Herd == 0 && !h.u.group {
		if done, err := h.withoutHerd(person); done || err != nil {
			return false, err
		}
	}
	if c.Herd == 0 { // a group in which a member speaks to the bot for the first time
		if m == nil || m.Role == store.Helper { // what a helper is told stays with the helper
			h.turnAway()
			return false, nil
		}
		c.Herd = m.Herd
		if err := h.tx.SaveChat(c); err != nil {
			return false, err
		}
	}
	if m == nil || m.Herd != c.Herd { // a group speaks of another herd
		other, ok, err := h.tx.Member(c.Herd, person)
		if err != nil {
			return false, err
		}
		if m = nil; ok {
			m = &other
		}
	}
	if m == nil {
		h.turnAway()
		return false, nil
	}
	if c.Dead != "" { // who writes can be reached again
		c.Dead = ""
		if err := h.tx.SaveChat(c); err != nil {
			return false, err
		}
	}
	h.chat, h.member, h.herd = c, *m, c.Herd
	return true, nil
}

// speaker is who sent an update: their private chat, by which they are known, with
// no id where there is none, and their membership of the herd spoken of there.
type speaker struct {
	private store.Chat
	member  *store.Member // nil: none
}

func speakerOf(tx *store.Tx, sender string) (s speaker, err error) {
	s.private, s.member, _, err = tx.FindSpeaker(transport, sender)
	return s, err
}

// turnAway says one fixed sentence to a stranger, once, and has nothing kept. A
// button gets its answer whoever presses it: else it would spin.
func (h *handling) turnAway() {
	h.drop = true
	if query := h.u.query; query != "" {
		h.after = append(h.after, func() { h.bot.answerPress(query, wording.PressUnknown()) })
		return
	}
	if !h.u.group {
		h.whisperIf(h.bot.strangers.met, wording.Stranger())
	}
}

func (h *handling) whisper(text string) {
	h.whisperIf(func(string) bool { return true }, text)
}

// whisperIf says something that is not kept, once the transaction is committed, if
// the sender is to be told then.
func (h *handling) whisperIf(told func(sender string) bool, text string) {
	chat, sender := h.u.chat, h.u.sender
	h.after = append(h.after, func() {
		if told(sender) {
			h.bot.whisper(chat, text)
		}
	})
}

// withoutMention takes the first mention of the bot out of a text; false if
// there is none.
func withoutMention(text, name string) (string, bool) {
	if name == "" {
		return "", false
	}
	mention := "@" + name
	for i := 0; i+len(mention) <= len(text); i++ {
		end := i + len(mention)
		if !strings.EqualFold(text[i:end], mention) || i > 0 && inName(text[i-1]) || end < len(text) && inName(text[end]) {
			continue
		}
		return strings.TrimSpace(text[:i] + strings.TrimLeft(text[end:], ",: ")), true
	}
	return "", false
}

// inName reports whether a user name may contain the sign.
func inName(c byte) bool {
	return c == '_' || c >= '0' && c <= '9' || c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z'
}
