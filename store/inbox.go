package store

import "fmt"

// whole is all that it said: nothing is an empty text, not NULL.
func (in Incoming) whole() []byte {
	if in.Raw == nil {
		return []byte{}
	}
	return in.Raw
}

// Receive keeps a message that came in; false if it was there already. in gets
// no ID by it: NextIncoming gives the message with it.
func (tx *Tx) Receive(in Incoming) (bool, error) {
	r, err := tx.exec("INSERT INTO incoming (key, chat, raw, at) VALUES (?, ?, ?, ?) ON CONFLICT (key) DO NOTHING",
		in.Key, in.Chat, in.whole(), millis(in.At))
	if err != nil {
		return false, fmt.Errorf("incoming %s: %w", in.Key, err)
	}
	n, err := r.RowsAffected()
	return n == 1, err
}

// TakeIn keeps that a message came in that is handled in this very transaction:
// what tells it apart, and not what it said. It gives it its ID; false if it was
// there already. others says whether HandledKeys would list more than it.
func (tx *Tx) TakeIn(in *Incoming, prefix string) (taken, others bool, err error) {
	taken, err = tx.one("INSERT INTO incoming (key, chat, raw, at, handled) VALUES (?2, ?3, x'', ?4, 1)"+
		" ON CONFLICT (key) DO NOTHING RETURNING id, EXISTS (SELECT 1 FROM incoming WHERE "+handledKeys+" AND key <> ?2)",
		[]any{prefix, in.Key, in.Chat, millis(in.At)}, &in.ID, &others)
	if err != nil {
		return false, false, fmt.Errorf("incoming %s: %w", in.Key, err)
	}
	return taken, others, nil
}

// NextIncoming gives the oldest message not yet handled; false if none.
func (tx *Tx) NextIncoming() (Incoming, bool, error) {
	var in Incoming
	var at int64
	ok, err := tx.one("SELECT id, key, chat, raw, at FROM incoming WHERE handled = 0 ORDER BY id LIMIT 1", nil,
		&in.ID, &in.Key, &in.Chat, &in.Raw, &at)
	if err != nil {
		return Incoming{}, false, fmt.Errorf("next incoming: %w", err)
	}
	in.At = instant(at)
	return in, ok, nil
}

const handledKeys = "key >= ?1 AND key < ?1 || char(0x10FFFF) AND handled = 1"

// HandledKeys lists the keys that begin with the prefix of messages that were
// handled.
func (tx *Tx) HandledKeys(prefix string) ([]string, error) {
	keys, err := list(tx, "SELECT key FROM incoming WHERE "+handledKeys, []any{prefix},
		func(row scanner) (key string, err error) { return key, row.Scan(&key) })
	if err != nil {
		return nil, fmt.Errorf("incoming %s: %w", prefix, err)
	}
	return keys, nil
}

// AwaitFile puts a message aside whose file is still to be fetched, so that others
// need not wait: NextAwaiting gives it, and it stays in the inbox until Handled.
func (tx *Tx) AwaitFile(in Incoming) error {
	return tx.change(fmt.Sprintf("incoming %d", in.ID),
		"UPDATE incoming SET handled = 2, raw = ? WHERE id = ? AND handled <> 2", in.whole(), in.ID)
}

// NextAwaiting gives the oldest message after the one numbered after whose file is
// still to be fetched; false if none.
func (tx *Tx) NextAwaiting(after int64) (Incoming, bool, error) {
	var in Incoming
	var at int64
	ok, err := tx.one("SELECT id, key, chat, raw, at FROM incoming WHERE handled = 2 AND id > ? ORDER BY id LIMIT 1", []any{after},
		&in.ID, &in.Key, &in.Chat, &in.Raw, &at)
	if err != nil {
		return Incoming{}, false, fmt.Errorf("next incoming with a file: %w", err)
	}
	in.At = instant(at)
	return in, ok, nil
}

// Handled marks a message that waited as handled. Only what tells it apart is
// kept: what it said is in the records.
func (tx *Tx) Handled(id int64) error {
	return tx.change(fmt.Sprintf("incoming %d", id), "UPDATE incoming SET handled = 1, raw = x'' WHERE id = ?", id)
}

// SetAside marks a message as one that cannot be handled, and keeps it whole.
func (tx *Tx) SetAside(in Incoming, problem string) error {
	return tx.change(fmt.Sprintf("incoming %d", in.ID),
		"UPDATE incoming SET handled = 1, problem = ?, raw = ? WHERE id = ?", problem, in.whole(), in.ID)
}

// DropIncoming takes a message out of the inbox with all that it said: nothing
// of a stranger is kept.
func (tx *Tx) DropIncoming(id int64) error {
	return tx.change(fmt.Sprintf("incoming %d", id), "DELETE FROM incoming WHERE id = ?", id)
}
