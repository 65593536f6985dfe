package telegram

import (
	"fmt"
	"strings"
	"sync"

	"troughbell/bot/wording"
	"troughbell/store"
)

const transport = "telegram"

// admit finds out who speaks, and lets in who has a right to: a member of the
// herd spoken of in the chat, or who brings a one-time code. Being in a group
// gives no rights. It reports whether the update is to be handled further.
func (h *handling) admit() (bool, error) {
	person, err := h.known()
	if err != nil {
		return false, err
	}
	if code := h.code(); code != "" && !h.u.group {
		grant, ok, err := h.tx.UseCode(code, h.bot.Now())
		if err != nil {
			return false, err
		}
		if ok {
			return false, h.join(grant, person)
		}
	}
	if person == 0 {
		return false, h.turnAway()
	}
	c, err := h.tx.ChatOf(transport, h.u.chat, h.u.group)
	if err != nil {
		return false, err
	}
	if c.Herd == 0 { // a group in which a member speaks to the bot for the first time
		if c.Herd, err = h.onlyHerd(person); err != nil || c.Herd == 0 {
			return false, err
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
		return false, h.turnAway()
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

// known is the person behind the sender, by the sender's private chat; 0 if
// there is none.
func (h *handling) known() (store.PersonID, error) {
	c, ok, err := h.tx.FindChat(transport, h.u.sender)
	if err != nil || !ok {
		return 0, err
	}
	return c.Person, nil
}

// onlyHerd is the herd of a person who has one; 0 if there are several.
func (h *handling) onlyHerd(p store.PersonID) (store.HerdID, error) {
	ms, err := h.tx.Memberships(p)
	if err != nil || len(ms) != 1 {
		return 0, err
	}
	return ms[0].Herd, nil
}

// code is the one-time code that a text brings: "/start CODE", or just the code.
func (h *handling) code() string {
	if word, _, rest, ok := command(h.u.text); ok {
		if word == "start" {
			return rest
		}
		return ""
	}
	if t := strings.TrimSpace(h.u.text); store.LooksLikeCode(t) {
		return t
	}
	return ""
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
	}
	if g.Herd == 0 {
		if g.Herd, err = h.tx.CreateHerd("", h.bot.Zone.String(), h.bot.Now()); err != nil {
			return err
		}
	}
	if err := h.tx.Join(g.Herd, person, g.Role); err != nil {
		return err
	}
	c, err := h.tx.ChatOf(transport, h.u.chat, false)
	if err != nil {
		return err
	}
	c.Herd, c.Person, c.Dead = g.Herd, person, ""
	if err := h.tx.SaveChat(c); err != nil {
		return err
	}
	m, _, err := h.tx.Member(g.Herd, person)
	if err != nil {
		return err
	}
	h.chat, h.member, h.herd = c, m, g.Herd
	msg := message(h)
	msg.Text = "start"
	return h.hear(msg)
}

// turnAway says one fixed sentence to a stranger, once.
func (h *handling) turnAway() error {
	h.stranger = true
	if h.u.group || !h.bot.strangers.first(h.u.sender) {
		return nil
	}
	chat := h.u.chat
	h.after = append(h.after, func() { h.bot.whisper(chat, wording.Stranger()) })
	return nil
}

// migrate follows a group to its new id.
func (h *handling) migrate() error {
	c, ok, err := h.tx.FindChat(transport, h.u.chat)
	if err != nil || !ok {
		return err
	}
	c.External = h.u.newChat
	return h.tx.SaveChat(c)
}

// reach notes whether the chat can be reached.
func (h *handling) reach() error {
	c, ok, err := h.tx.FindChat(transport, h.u.chat)
	if err != nil || !ok {
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

// maxTold bounds how many strangers are remembered.
const maxTold = 10_000

// toldOnce remembers, in memory only, which strangers had their sentence.
type toldOnce struct {
	mu   sync.Mutex
	seen map[string]bool
}

func newToldOnce() *toldOnce { return &toldOnce{seen: map[string]bool{}} }

func (t *toldOnce) first(sender string) bool {
	t.mu.Lock()
	defer t.mu.Unlock()
	if t.seen[sender] || len(t.seen) >= maxTold {
		return false
	}
	t.seen[sender] = true
	return true
}

func equalName(a, b string) bool { return b != "" && strings.EqualFold(a, b) }

// withoutMention takes a mention of the bot out of a text.
func withoutMention(text, name string) (string, bool) {
	if name == "" {
		return text, false
	}
	words := strings.Fields(text)
	for i, w := range words {
		if strings.EqualFold(strings.TrimRight(w, ",:"), "@"+name) {
			return strings.Join(append(words[:i:i], words[i+1:]...), " "), true
		}
	}
	return text, false
}

// PairCode makes a one-time code for the operator while the server has none;
// empty if it has one.
func PairCode(b *Bot, tx *store.Tx) (string, error) {
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
		herd = herds[0].ID
	}
	code, err := tx.NewCode(herd, store.Owner, true, b.Now(), pairStands)
	if err != nil {
		return "", fmt.Errorf("make a pairing code: %w", err)
	}
	return code, nil
}
