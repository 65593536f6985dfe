package telegram

import (
	"strings"

	"troughbell/bot"
	"troughbell/bot/wording"
	"troughbell/model"
	"troughbell/store"
)

// edgeCommand carries out a command that is about the server and not about one
// herd: the operator's /newherd, and /herd for who belongs to several. done is
// false for any other.
func (h *handling) edgeCommand(word, rest string) (done bool, err error) {
	switch word {
	case "newherd":
		return true, h.newHerd()
	case "herd":
		return true, h.switchHerd(rest)
	}
	return false, nil
}

// newHerd makes a code for the owner of a further herd.
func (h *handling) newHerd() error {
	if !h.member.Operator {
		return h.say(wording.OperatorOnly())
	}
	if h.u.group { // everybody there would read the code
		return h.say(wording.PrivateOnly())
	}
	now := h.bot.Now()
	code, err := h.tx.NewCode(0, store.Owner, false, now, pairStands)
	if err != nil {
		return err
	}
	v, err := h.voice()
	if err != nil {
		return err
	}
	return h.say(v.HerdCode(code, now.Add(pairStands).In(v.Now.Location())))
}

// withoutHerd answers who runs the server and belongs to no herd any more: the
// code for a further one opens one for them too. done is false for anybody else.
func (h *handling) withoutHerd(p store.PersonID) (done bool, err error) {
	runs, err := h.tx.RunsServer(p)
	if err != nil || !runs {
		return false, err
	}
	h.drop = true
	if query := h.u.query; query != "" {
		h.after = append(h.after, func() { h.bot.answerPress(query, wording.PressUnknown()) })
		return true, nil
	}
	now := h.bot.Now().In(h.bot.Zone)
	v := wording.Voice{Herd: model.Fold(nil), Now: now}
	if word, _, _, ok := bot.Command(h.u.text); !ok || word != "newherd" {
		h.whisper(v.StillOperator())
		return true, nil
	}
	code, err := h.tx.NewCode(0, store.Owner, false, now, pairStands)
	if err != nil {
		return true, err
	}
	h.whisper(v.HerdCode(code, now.Add(pairStands)))
	return true, nil
}

// switchHerd has the chat speak of another of the person's herds, by its name.
func (h *handling) switchHerd(name string) error {
	if h.u.group { // others there may have no right to the other herd
		return h.say(wording.PrivateOnly())
	}
	ms, err := h.tx.Memberships(h.member.Person)
	if err != nil {
		return err
	}
	var names []string
	for _, m := range ms {
		row, err := h.tx.Herd(m.Herd)
		if err != nil {
			return err
		}
		names = append(names, wording.HerdName(row.Name, int64(row.ID)))
		if !strings.EqualFold(names[len(names)-1], strings.TrimSpace(name)) {
			continue
		}
		h.chat.Herd, h.herd = m.Herd, m.Herd
		if err := h.tx.SaveChat(h.chat); err != nil {
			return err
		}
		return h.say(wording.HerdChosen(names[len(names)-1]))
	}
	return h.say(wording.HerdChoice(names))
}
