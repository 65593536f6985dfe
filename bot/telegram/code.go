package telegram

import (
	"fmt"
	"slices"
	"strings"
	"time"

	"troughbell/bot"
	"troughbell/bot/wording"
	"troughbell/store"
)

// pairStands is how long a pairing code, and one for a further herd, can be
// used.
const pairStands = 24 * time.Hour

// tryCode spends the one-time code that a private text brings: "/start CODE", or
// just the code. done is false where the text brings none. A wrong one is said
// so; only a text that may be an ordinary one, of a person who belongs here, is
// left to be read as such.
func (h *handling) tryCode(person store.PersonID) (done bool, err error) {
	code, certain := codeIn(h.u.text)
	if code == "" || h.u.query != "" {
		return false, nil
	}
	grant, ok, err := h.tx.UseCode(code, h.bot.Now())
	switch {
	case err != nil:
		return true, err
	case ok:
		return true, h.join(grant, person)
	case person != 0 && !certain:
		return false, nil
	}
	h.drop = true
	h.whisperIf(h.bot.strangers.tried, wording.CodeWrong())
	return true, nil
}

// codeIn is the one-time code in a text, if any; certain where it can be
// nothing else.
func codeIn(text string) (code string, certain bool) {
	if word, _, rest, ok := bot.Command(text); ok {
		if word == "start" {
			return rest, true
		}
		return "", false
	}
	if t := strings.TrimSpace(text); store.LooksLikeCode(t) {
		return t, false
	}
	return "", false
}

// join takes a person in with what a code grants, and starts the conversation.
func (h *handling) join(g store.Grant, person store.PersonID) error {
	var err error
	if person == 0 {
		if person, err = h.tx.CreatePerson(h.u.name); err != nil {
			return err
		}
	}
	if g.Operator {
		if err := h.tx.SetOperator(person); err != nil {
			return err
		}
		h.after = append(h.after, h.bot.offerOperator)
	}
	if g.Herd == 0 {
		if g.Herd, err = h.tx.CreateHerd("", h.bot.Zone.String(), h.bot.Now()); err != nil {
			return err
		}
	}
	before, member, err := h.tx.Member(g.Herd, person)
	if err != nil {
		return err
	}
	if !member || rank(g.Role) > rank(before.Role) { // nobody loses a right by a code
		if err := h.tx.Join(g.Herd, person, g.Role); err != nil {
			return err
		}
	}
	if err := h.speakOf(g.Herd, person); err != nil {
		return err
	}
	if h.member.Name == "" && h.u.name != "" { // it went with their last herd
		if err := h.tx.Rename(person, h.u.name); err != nil {
			return err
		}
		h.member.Name = h.u.name
	}
	m := h.message()
	m.Text = "start"
	return h.hear(m)
}

// speakOf makes a herd the one that a person's private chat speaks of.
func (h *handling) speakOf(herd store.HerdID, person store.PersonID) error {
	c, err := h.tx.ChatOf(transport, h.u.chat, false)
	if err != nil {
		return err
	}
	c.Herd, c.Person, c.Dead = herd, person, ""
	if err := h.tx.SaveChat(c); err != nil {
		return err
	}
	m, _, err := h.tx.Member(herd, person)
	if err != nil {
		return err
	}
	h.chat, h.member, h.herd = c, m, herd
	return nil
}

func rank(r store.Role) int {
	switch r {
	case store.Owner:
		return 2
	case store.Family:
		return 1
	default:
		return 0
	}
}

// PairCode makes a one-time code for the operator while the server has none;
// empty if it has one.
func (b *Bot) PairCode(tx *store.Tx) (string, error) {
	has, err := tx.HasOperator()
	if err != nil || has {
		return "", err
	}
	herds, err := tx.Herds()
	if err != nil {
		return "", err
	}
	var herd store.HerdID // the herd that a terminal chat began, if there is one
	if len(herds) > 0 {
		chats, err := tx.Chats(herds[0].ID)
		if err != nil {
			return "", err
		}
		if !slices.ContainsFunc(chats, func(c store.Chat) bool { return c.Transport == transport }) {
			herd = herds[0].ID
		}
	}
	code, err := tx.NewCode(herd, store.Owner, true, b.Now(), pairStands)
	if err != nil {
		return "", fmt.Errorf("make a pairing code: %w", err)
	}
	return code, nil
}
