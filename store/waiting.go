package store

import "fmt"

// Waiting says that something waits in the outbox for a chat.
type Waiting struct {
	Chat   ChatID
	Urgent bool // a danger is among it
}

// OnQueued has f told of what was put into the outbox, or waits there again, each
// time that it is committed. It is set before the first Write; f must not call
// the store.
func (s *Store) OnQueued(f func([]Waiting)) { s.onQueued = f }

// Waiting lists the chats of a transport for which something waits, the one that
// has waited longest first.
func (tx *Tx) Waiting(transport string) ([]Waiting, error) {
	// CROSS has few messages looked through, and not each chat there is.
	w, err := list(tx, "SELECT o.chat, max(o.urgent) FROM outgoing AS o CROSS JOIN chat AS c ON c.id = o.chat"+
		" WHERE o.state = 'pending' AND c.transport = ? GROUP BY o.chat ORDER BY min(o.id)",
		[]any{transport}, func(row scanner) (w Waiting, err error) {
			err = row.Scan(&w.Chat, &w.Urgent)
			return w, err
		})
	if err != nil {
		return nil, fmt.Errorf("who waits for messages: %w", err)
	}
	return w, nil
}

// NextTo gives the message that is to go to a chat next: the oldest that waits,
// but a danger before all else; false if none waits. Whether it is to wait still,
// NotBefore says.
func (tx *Tx) NextTo(chat ChatID) (Outgoing, bool, error) {
	return tx.outgoing("WHERE o.chat = ? AND o.state = 'pending' ORDER BY o.urgent DESC, o.id LIMIT 1", int64(chat))
}
