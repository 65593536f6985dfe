package bot

import (
	"troughbell/bot/reading"
	"troughbell/store"
)

// Leave is a wish that ends something: the herd, a person's part in it, whose it
// is. The desk answers it, since people and chats are no part of the herd.
type Leave struct {
	What leaveWhat
	Who  string // as the text names the person; empty: who speaks

	entries []reading.Entry
}

type leaveWhat string

const (
	leaveDelete   leaveWhat = "delete"    // the herd
	leaveForget   leaveWhat = "forget"    // who speaks
	leaveRemove   leaveWhat = "remove"    // another person
	leaveHandOver leaveWhat = "hand_over" // the herd, to another person
	leavePeople   leaveWhat = "people"    // only list who is there
)

// leaveWishes are the wishes of the reading that end something.
var leaveWishes = map[string]leaveWhat{
	"delete herd": leaveDelete, "forget me": leaveForget, "remove person": leaveRemove, "hand over": leaveHandOver, "people": leavePeople,
}

// leave notes such a wish, of who may have it.
func (t *talk) leave(what leaveWhat, a reading.Do) {
	if t.m.From.Role != store.Owner {
		switch what {
		case leaveDelete:
			t.lines = append(t.lines, t.voice().Forbidden("delete"))
			return
		case leaveRemove, leaveHandOver:
			t.lines = append(t.lines, t.voice().Forbidden("people"))
			return
		}
	}
	t.out.Leave = &Leave{What: what, Who: a.Arg, entries: t.r.Entries}
}
