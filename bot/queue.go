package bot

import (
	"fmt"
	"time"

	"troughbell/schedule"
	"troughbell/store"
)

// replyKey names the answer to one version of a message: the same message never
// queues two.
func replyKey(m Message, version int64, i int) string {
	return fmt.Sprintf("reply:%d:%s:%d:%d", m.Chat, m.ID, version, i)
}

// Queue puts the answers to a message into the outbox. An answer that takes the
// place of an earlier one edits that where it was sent, and follows it anew
// where it was not.
func (d *Desk) Queue(tx *store.Tx, m Message, out Outcome) error {
	var version int64
	if m.Edit {
		version = m.At.Unix()
	}
	for i, r := range out.Replies {
		o := store.Outgoing{
			Key: replyKey(m, version, i), Herd: m.Herd, Chat: m.Chat, Kind: "reply",
			Text: r.Text, Buttons: r.Buttons, ReplyTo: m.ID, Quiet: true,
		}
		if r.Instead {
			earlier, ok, err := tx.OutgoingByKey(replyKey(m, 0, i))
			if err != nil {
				return err
			}
			if ok && earlier.Sent != "" {
				o.Kind, o.Edits = "edit", earlier.Sent
			}
		}
		if _, err := tx.Queue(&o); err != nil {
			return err
		}
	}
	return nil
}

// QueuePushes puts nudges into the outbox, one delivery for each chat in which
// the herd can be reached.
func (d *Desk) QueuePushes(tx *store.Tx, herd store.HerdID, pushes []Push) error {
	if len(pushes) == 0 {
		return nil
	}
	chats, err := tx.Chats(herd)
	if err != nil {
		return err
	}
	for _, p := range pushes {
		for _, c := range chats {
			if c.Dead != "" {
				continue
			}
			o := store.Outgoing{
				Key:  fmt.Sprintf("nudge:%d:%d:%s", herd, c.ID, p.Nudge.Key),
				Herd: herd, Chat: c.ID, Kind: "nudge", Text: p.Text, Buttons: p.Buttons,
				Quiet: false, Told: p.Nudge.Key, GoodUntil: goodUntil(p),
			}
			if _, err := tx.Queue(&o); err != nil {
				return err
			}
		}
	}
	return nil
}

// goodUntil is until when a nudge is worth saying: a routine one until the end
// of its day, a danger for as long as nobody has settled it.
func goodUntil(p Push) time.Time {
	if p.Nudge.Grade == schedule.Danger {
		return time.Time{}
	}
	y, m, day := p.At.Date()
	return time.Date(y, m, day, 23, 59, 0, 0, p.At.Location())
}
