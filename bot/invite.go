package bot

import (
	"slices"
	"strings"
	"time"

	"troughbell/bot/wording"
	"troughbell/store"
)

// Invite is what a one-time code gives: a role in the herd spoken of, or with
// NewHerd a herd of one's own on this server.
type Invite struct {
	Role    store.Role
	NewHerd bool
}

// inviteStands is how long an invitation can be taken up.
const inviteStands = 48 * time.Hour

// invite notes which code is wanted, by whom may have it: the owner invites
// family and helpers, the operator of the server the owners of further herds.
func (t *talk) invite() {
	words := strings.Fields(strings.ToLower(t.m.Text))
	says := func(any ...string) bool {
		return slices.ContainsFunc(any, func(w string) bool { return slices.Contains(words, w) })
	}
	switch {
	case t.m.Group: // everybody there would read the code
		t.lines = append(t.lines, wording.PrivateOnly())
	case says("herd", "owner", "household"):
		if !t.m.From.Operator {
			t.lines = append(t.lines, t.voice().Forbidden("invite_herd"))
			return
		}
		t.out.Invite = &Invite{Role: store.Owner, NewHerd: true}
	case t.m.From.Role != store.Owner:
		t.lines = append(t.lines, t.voice().Forbidden("invite"))
	case says("helper", "sitter"):
		t.out.Invite = &Invite{Role: store.Helper}
	default:
		t.out.Invite = &Invite{Role: store.Family}
	}
}

// makeCode makes the code and says it.
func makeCode(tx *store.Tx, s *State, m Message, out *Outcome) error {
	herd := m.Herd
	if out.Invite.NewHerd {
		herd = 0
	}
	code, err := tx.NewCode(herd, out.Invite.Role, false, out.At, inviteStands)
	if err != nil {
		return err
	}
	v := wording.Voice{Herd: s.Herd, Now: out.At}
	out.Replies = append(out.Replies, Reply{Text: v.Invite(code, string(out.Invite.Role), out.At.Add(inviteStands))})
	return nil
}
