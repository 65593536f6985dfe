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
	private, err := h.private()
	if err != nil {
		return false, err
	}
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
		if c.Herd, err = h.herdOf(person); err != nil {
			return false, err
		}
		if c.Herd == 0 {
			h.turnAway()
			return false, nil
		}
		if err := h.tx.SaveChat(c); err != nil {
			return false, err
		}
	}
	m, ok, err := h.tx.Member(c.Herd, person)
	if err != nil {
		return false, err
	}
	if !ok {
		h.turnAway()
		return false, nil
	}
	if c.Dead != "" { // who writes can be reached again
		c.Dead = ""
		if err := h.tx.SaveChat(c); err != nil {
			return false, err
		}
	}
	h.chat, h.member, h.herd = c, m, c.Herd
	return true, nil
}

// private is the private chat of the sender, by which they are known; none, with no
// id, where there is none.
func (h *handling) private() (store.Chat, error) {
	if h.known.ID != 0 {
		return h.known, nil
	}
	c, _, err := h.tx.FindChat(transport, h.u.sender)
	return c, err
}

// herdOf is the herd that a person may bring into a group: the one they speak of
// in private; 0 if there is none. What a helper is told stays with the helper.
func (h *handling) herdOf(p store.PersonID) (store.HerdID, error) {
	c, ok, err := h.tx.FindChat(transport, h.u.sender)
	if err != nil || !ok {
		return 0, err
	}
	m, ok, err := h.tx.Member(c.Herd, p)
	if err != nil || !ok || m.Role == store.Helper {
		return 0, err
	}
	return c.Herd, nil
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
