package store

import (
	"database/sql"
	"errors"
	"fmt"
)

const chatColumns = "SELECT id, transport, external, is_group, herd, person, dead FROM chat WHERE "

func scanChat(row scanner) (c Chat, err error) {
	var herd, person sql.NullInt64
	err = row.Scan(&c.ID, &c.Transport, &c.External, &c.Group, &herd, &person, &c.Dead)
	c.Herd, c.Person = HerdID(herd.Int64), PersonID(person.Int64)
	return c, err
}

func (tx *Tx) findChat(where string, args ...any) (Chat, bool, error) {
	c, err := list(tx, chatColumns+where, args, scanChat)
	if err != nil || len(c) == 0 {
		return Chat{}, false, err
	}
	return c[0], true, nil
}

// ChatOf gives the chat of a transport, made if it is not there.
func (tx *Tx) ChatOf(transport, external string, group bool) (Chat, error) {
	c, ok, err := tx.findChat("transport = ? AND external = ?", transport, external)
	if err != nil {
		return Chat{}, fmt.Errorf("chat of %s: %w", transport, err)
	}
	if ok {
		return c, nil
	}
	r, err := tx.exec("INSERT INTO chat (id, transport, external, is_group) VALUES ("+nextID("chat")+", ?, ?, ?)", transport, external, group)
	if err != nil {
		return Chat{}, fmt.Errorf("new chat of %s: %w", transport, err)
	}
	id, err := r.LastInsertId()
	if err != nil {
		return Chat{}, fmt.Errorf("new chat of %s: %w", transport, err)
	}
	return Chat{ID: ChatID(id), Transport: transport, External: external, Group: group}, nil
}

// Chat gives a chat; [ErrNotFound] if there is none of that id.
func (tx *Tx) Chat(id ChatID) (Chat, error) {
	c, ok, err := tx.findChat("id = ?", int64(id))
	if err == nil && !ok {
		err = ErrNotFound
	}
	if err != nil {
		return Chat{}, fmt.Errorf("chat %d: %w", id, err)
	}
	return c, nil
}

// Chats lists the chats in which a herd is spoken of, by id, those that cannot
// be reached included.
func (tx *Tx) Chats(herd HerdID) ([]Chat, error) {
	c, err := list(tx, chatColumns+"herd = ? ORDER BY id", []any{int64(herd)}, scanChat)
	if err != nil {
		return nil, fmt.Errorf("chats of herd %d: %w", herd, err)
	}
	return c, nil
}

const operatorChats = "is_group = 0 AND person IN (SELECT id FROM person WHERE operator = 1) ORDER BY id"

// OperatorChats lists the private chats of who runs this server, by id.
func (tx *Tx) OperatorChats() ([]Chat, error) {
	c, err := list(tx, chatColumns+operatorChats, nil, scanChat)
	if err != nil {
		return nil, fmt.Errorf("chats of the operator: %w", err)
	}
	return c, nil
}

// SaveChat changes a chat: its herd, person, external id or reachability. Its
// herds are paused or go on accordingly.
//
// A group that got a new external id may have been met under that id already;
// then what waits to be sent there comes to this chat and the other row goes,
// unless a herd is spoken of in it.
func (tx *Tx) SaveChat(c Chat) error {
	if err := tx.saveChat(c); err != nil {
		return fmt.Errorf("chat %d: %w", c.ID, err)
	}
	return nil
}

func (tx *Tx) saveChat(c Chat) error {
	before, ok, err := tx.findChat("id = ?", int64(c.ID))
	switch {
	case err != nil:
		return err
	case !ok:
		return ErrNotFound
	}
	if before.Transport != c.Transport || before.External != c.External {
		if err := tx.takeOver(c); err != nil {
			return err
		}
	}
	err = tx.change("save", "UPDATE chat SET transport = ?, external = ?, is_group = ?, herd = ?, person = ?, dead = ? WHERE id = ?",
		c.Transport, c.External, c.Group, orNull(c.Herd), orNull(c.Person), c.Dead, int64(c.ID))
	if err != nil {
		return err
	}
	for _, herd := range []HerdID{before.Herd, c.Herd} {
		if herd == 0 {
			continue
		}
		if err := tx.pause(herd); err != nil {
			return err
		}
	}
	return nil
}

// takeOver makes room for the chat under its new external id.
func (tx *Tx) takeOver(c Chat) error {
	other, ok, err := tx.findChat("transport = ? AND external = ? AND id <> ?", c.Transport, c.External, int64(c.ID))
	switch {
	case err != nil:
		return err
	case !ok:
		return nil
	case other.Herd != 0 && other.Herd != c.Herd:
		return errors.New("another herd is spoken of under its new id")
	}
	if _, err := tx.exec("UPDATE outgoing SET chat = ? WHERE chat = ?", int64(c.ID), int64(other.ID)); err != nil {
		return err
	}
	if o, ok, err := tx.NextTo(c.ID); err != nil {
		return err
	} else if ok {
		tx.noteWaiting(o)
	}
	if ok, err := tx.one("SELECT 1 FROM record WHERE chat = ? LIMIT 1", []any{int64(other.ID)}, new(int)); err != nil {
		return err
	} else if ok {
		// Records keep pointing to the row, so it is set aside instead.
		return tx.change("set aside", "UPDATE chat SET external = 'was ' || external || ' ' || id, herd = NULL, dead = 'moved' WHERE id = ?",
			int64(other.ID))
	}
	return tx.change("merge", "DELETE FROM chat WHERE id = ?", int64(other.ID))
}

// FindChat gives the chat of a transport; false if there is none.
func (tx *Tx) FindChat(transport, external string) (Chat, bool, error) {
	c, ok, err := tx.findChat("transport = ? AND external = ?", transport, external)
	if err != nil {
		return Chat{}, false, fmt.Errorf("chat of %s: %w", transport, err)
	}
	return c, ok, nil
}

// FindSpeaker gives the chat of a transport and, where it is the private one of a
// member of the herd spoken of in it, the membership; false if there is none.
func (tx *Tx) FindSpeaker(transport, external string) (c Chat, m *Member, ok bool, err error) {
	key := speakerKey{transport, external}
	if tx.knowsSpeakers() {
		if one, ok := tx.speakers.get(key, tx.peopleAsOf); ok {
			return one.chat, &one.member, true, nil
		}
	}
	var herd, person sql.NullInt64
	var name, role sql.NullString
	var operator sql.NullBool
	ok, err = tx.one("SELECT c.id, c.transport, c.external, c.is_group, c.herd, c.person, c.dead, p.name, m.role, p.operator"+
		" FROM chat AS c LEFT JOIN member AS m ON m.herd = c.herd AND m.person = c.person LEFT JOIN person AS p ON p.id = m.person"+
		" WHERE c.transport = ? AND c.external = ?", []any{transport, external},
		&c.ID, &c.Transport, &c.External, &c.Group, &herd, &person, &c.Dead, &name, &role, &operator)
	if err != nil {
		return Chat{}, nil, false, fmt.Errorf("who speaks on %s: %w", transport, err)
	}
	c.Herd, c.Person = HerdID(herd.Int64), PersonID(person.Int64)
	if role.Valid {
		m = &Member{Herd: c.Herd, Person: c.Person, Name: name.String, Role: Role(role.String), Operator: operator.Bool}
		if tx.knowsSpeakers() {
			tx.speakers.keep(key, speaker{c, *m}, tx.peopleAsOf)
		}
	}
	return c, m, ok, nil
}

// knowsSpeakers reports whether what is remembered of speakers is what the
// transaction sees.
func (tx *Tx) knowsSpeakers() bool { return tx.speakers != nil && !tx.c.changedPeople }
