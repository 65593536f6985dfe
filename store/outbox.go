package store

import (
	"database/sql"
	"encoding/json"
	"errors"
	"fmt"
)

// The states of an Outgoing.
const (
	Pending = "pending"
	Sending = "sending" // under way; found at start: the outcome is unknown
	Sent    = "sent"
	Dropped = "dropped"
)

// Question is the kind of an Outgoing that wants its answer typed.
const Question = "question"

// Removal is the kind of an Outgoing that takes a message away.
const Removal = "removal"

const outgoingColumns = "SELECT o.id, o.key, o.herd, o.chat, o.kind, o.text, o.buttons, o.reply_to, o.edits, o.quiet, o.told," +
	" o.good_until, o.not_before, o.state, o.tries, o.sent, o.repeated, o.urgent, f.kind, f.name, f.size" +
	" FROM outgoing AS o LEFT JOIN attachment AS f ON f.outgoing = o.id "

func scanOutgoing(row scanner) (o Outgoing, err error) {
	var herd, good, size sql.NullInt64
	var fileKind, fileName sql.NullString
	var buttons string
	var notBefore int64
	err = row.Scan(&o.ID, &o.Key, &herd, &o.Chat, &o.Kind, &o.Text, &buttons, &o.ReplyTo, &o.Edits, &o.Quiet, &o.Told,
		&good, &notBefore, &o.State, &o.Tries, &o.Sent, &o.Repeated, &o.Urgent, &fileKind, &fileName, &size)
	if err != nil {
		return o, err
	}
	o.Herd, o.GoodUntil, o.NotBefore = HerdID(herd.Int64), instant(good.Int64), instant(notBefore)
	if fileKind.Valid {
		o.File = &File{Kind: fileKind.String, Name: fileName.String, Size: int(size.Int64)}
	}
	if buttons != "" {
		err = json.Unmarshal([]byte(buttons), &o.Buttons)
	}
	return o, err
}

// Queue puts a message into the outbox, pending where it has no state, and
// gives it its ID; one whose key is there already is left as it is, and false
// is given.
func (tx *Tx) Queue(o *Outgoing) (bool, error) {
	queued, err := tx.queue(o)
	if err != nil {
		return false, fmt.Errorf("outgoing %s: %w", o.Key, err)
	}
	return queued, nil
}

func (tx *Tx) queue(o *Outgoing) (bool, error) {
	if o.Key == "" {
		return false, errors.New("it has no key")
	}
	if o.File != nil {
		if err := o.File.Check(); err != nil {
			return false, err
		}
	}
	var buttons string
	if len(o.Buttons) > 0 {
		b, err := json.Marshal(o.Buttons)
		if err != nil {
			return false, err
		}
		buttons = string(b)
	}
	state := o.State
	if state == "" {
		state = Pending
	}
	good := millis(o.GoodUntil)
	r, err := tx.exec("INSERT INTO outgoing (id, key, herd, chat, kind, text, buttons, reply_to, edits, quiet, told,"+
		" good_until, not_before, state, tries, sent, repeated, urgent)"+
		" VALUES ("+nextID("outgoing")+", ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT (key) DO NOTHING",
		o.Key, orNull(o.Herd), int64(o.Chat), o.Kind, o.Text, buttons, o.ReplyTo, o.Edits, o.Quiet, o.Told,
		sql.NullInt64{Int64: good, Valid: good != 0},
		millis(o.NotBefore), state, o.Tries, o.Sent, o.Repeated, o.Urgent)
	if err != nil {
		return false, err
	}
	switch n, err := r.RowsAffected(); {
	case err != nil:
		return false, err
	case n == 0:
		return false, nil
	}
	if o.ID, err = r.LastInsertId(); err != nil {
		return false, err
	}
	o.State = state
	tx.noteWaiting(*o)
	return true, tx.attach(o)
}

// SaveOutgoing notes how sending goes: State, Tries, NotBefore, Sent, Repeated.
func (tx *Tx) SaveOutgoing(o Outgoing) error {
	tx.noteWaiting(o)
	return tx.change(fmt.Sprintf("outgoing %d", o.ID),
		"UPDATE outgoing SET state = ?, tries = ?, not_before = ?, sent = ?, repeated = ? WHERE id = ?",
		o.State, o.Tries, millis(o.NotBefore), o.Sent, o.Repeated, o.ID)
}

func (tx *Tx) noteWaiting(o Outgoing) {
	if o.State == Pending {
		tx.waiting = append(tx.waiting, Waiting{Chat: o.Chat, Urgent: o.Urgent})
	}
}

// Sending lists a transport's messages whose outcome is unknown: found in
// "sending" at start.
func (tx *Tx) Sending(transport string) ([]Outgoing, error) {
	o, err := list(tx, outgoingColumns+"CROSS JOIN chat AS c ON c.id = o.chat WHERE o.state = 'sending' AND c.transport = ? ORDER BY o.id",
		[]any{transport}, scanOutgoing)
	if err != nil {
		return nil, fmt.Errorf("messages under way: %w", err)
	}
	return o, nil
}

// OutgoingBySent finds what was sent as the message of the chat.
func (tx *Tx) OutgoingBySent(chat ChatID, sent string) (Outgoing, bool, error) {
	return tx.outgoing("WHERE o.chat = ? AND o.sent = ? AND o.sent <> '' ORDER BY o.id LIMIT 1", int64(chat), sent)
}

// OutgoingByKey finds a message of the outbox by its key.
func (tx *Tx) OutgoingByKey(key string) (Outgoing, bool, error) {
	return tx.outgoing("WHERE o.key = ?", key)
}

func (tx *Tx) outgoing(where string, args ...any) (Outgoing, bool, error) {
	o, err := list(tx, outgoingColumns+where, args, scanOutgoing)
	if err != nil {
		return Outgoing{}, false, fmt.Errorf("outgoing: %w", err)
	}
	if len(o) == 0 {
		return Outgoing{}, false, nil
	}
	return o[0], true, nil
}

// AnswersTo lists what answered a message of the chat, the oldest first: the
// replies to it and the edits of those.
func (tx *Tx) AnswersTo(chat ChatID, message string) ([]Outgoing, error) {
	o, err := list(tx, outgoingColumns+"WHERE o.chat = ? AND o.reply_to = ? AND o.reply_to <> '' ORDER BY o.id",
		[]any{int64(chat), message}, scanOutgoing)
	if err != nil {
		return nil, fmt.Errorf("answers to message %s: %w", message, err)
	}
	return o, nil
}

// Deliveries lists the messages that deliver the nudge of that key: those that
// were sent, and those that are being sent.
func (tx *Tx) Deliveries(herd HerdID, told string) ([]Outgoing, error) {
	o, err := list(tx, outgoingColumns+"WHERE o.herd = ? AND o.told = ? AND o.told <> '' AND o.state IN ('sent', 'sending') ORDER BY o.id",
		[]any{int64(herd), told}, scanOutgoing)
	if err != nil {
		return nil, fmt.Errorf("deliveries of %s: %w", told, err)
	}
	return o, nil
}

// Untold lists the deliveries of a herd's nudges that wait to be sent.
func (tx *Tx) Untold(herd HerdID) ([]Outgoing, error) {
	o, err := list(tx, outgoingColumns+"WHERE o.herd = ? AND o.told <> '' AND o.kind = 'nudge' AND o.state = 'pending' ORDER BY o.id",
		[]any{int64(herd)}, scanOutgoing)
	if err != nil {
		return nil, fmt.Errorf("nudges that wait: %w", err)
	}
	return o, nil
}

// OutgoingByID finds a message of the outbox by its row.
func (tx *Tx) OutgoingByID(id int64) (Outgoing, bool, error) {
	return tx.outgoing("WHERE o.id = ?", id)
}
