package bot

import (
	"fmt"
	"time"

	"troughbell/schedule"
	"troughbell/store"
)

// Queue puts the answers to a message into the outbox, one row a message: what
// is too long for one goes out in several. The answers to an edited message
// take the place of the earlier ones where those were sent, and what is left of
// those goes; one that was not sent yet is dropped, so that the person reads the
// new one only. An edit that is not answered leaves all as it stands.
func (d *Desk) Queue(tx *store.Tx, m Message, out Outcome) error {
	rows := outgoing(m, out)
	if m.Edit && len(rows) > 0 {
		standing, err := standingAnswers(tx, m)
		if err != nil {
			return err
		}
		rows = inPlaceOf(m, standing, rows)
	}
	for _, o := range rows {
		if _, err := tx.Queue(&o); err != nil {
			return err
		}
	}
	return d.relayAlarms(tx, m, out)
}

// outgoing lists what is to be sent. A key names the message, which version of
// it is answered, and which of the answers it is: the same message never queues
// one twice.
func outgoing(m Message, out Outcome) []store.Outgoing {
	var rows []store.Outgoing
	for _, r := range out.Replies {
		for _, part := range pack(r.Text, r.Buttons, r.Files) {
			rows = append(rows, store.Outgoing{
				Key:  replyKey(m, len(rows)),
				Herd: m.Herd, Chat: m.Chat, Kind: "reply", ReplyTo: m.ID, Quiet: true,
				Urgent: r.Urgent && !m.Edit, // a version of an answer never overtakes the one before it
				Text:   part.text, Buttons: part.buttons, File: part.file,
			})
		}
		if last := len(rows) - 1; last >= 0 && r.Typed && rows[last].File == nil {
			rows[last].Kind = store.Question
		}
	}
	return rows
}

func replyKey(m Message, n int) string {
	return fmt.Sprintf("reply:%d:%s:%d:%d", m.Chat, m.ID, m.version(), n)
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
			if err := queuePush(tx, herd, c.ID, p); err != nil {
				return err
			}
		}
	}
	return nil
}

// queuePush queues one delivery of a nudge, with a sound. The end of its text is
// the message with the buttons, and the one that presses speak of.
func queuePush(tx *store.Tx, herd store.HerdID, chat store.ChatID, p Push) error {
	for i, part := range pack(p.Text, p.Buttons, p.Files) {
		o := store.Outgoing{
			Key:  fmt.Sprintf("nudge:%d:%d:%s:%d:%d", herd, chat, p.Nudge.Key, p.At.Unix(), i),
			Herd: herd, Chat: chat, Kind: "nudge", GoodUntil: goodUntil(p), Told: p.Nudge.Key,
			Urgent: p.Nudge.Grade == schedule.Danger,
			Text:   part.text, Buttons: part.buttons, File: part.file,
		}
		if _, err := tx.Queue(&o); err != nil {
			return err
		}
	}
	return nil
}

// goodUntil is until when a nudge is worth saying: as long as its rule says,
// else a routine one until the end of its day, a danger for as long as nobody
// has settled it.
func goodUntil(p Push) time.Time {
	switch {
	case !p.Nudge.GoodUntil.IsZero():
		return p.Nudge.GoodUntil
	case p.Nudge.Grade == schedule.Danger:
		return time.Time{}
	}
	y, m, day := p.At.Date()
	return time.Date(y, m, day, 23, 59, 0, 0, p.At.Location())
}
