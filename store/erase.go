package store

import (
	"errors"
	"fmt"
	"slices"
)

// EraseHerd takes a herd out whole, with all that was ever said of it: its
// records, its messages in and out with their files, its codes, and what the
// server remembers of its people. A chat that a member has a further herd for
// speaks of that one from then on; other chats go, and so do people without a
// further herd. Who runs the server keeps that right, the chat and no name.
//
// What is left in the file's free places is overwritten once the transaction is
// committed.
func (tx *Tx) EraseHerd(id HerdID) error {
	if err := tx.eraseHerd(id); err != nil {
		return fmt.Errorf("erase herd %d: %w", id, err)
	}
	return nil
}

func (tx *Tx) eraseHerd(id HerdID) error {
	if _, err := tx.Herd(id); err != nil {
		return err
	}
	members, err := tx.Members(id)
	if err != nil {
		return err
	}
	// Groups that moved are set aside without a herd; only records know of them.
	chats, err := list(tx, chatColumns+"herd = ?1 OR herd IS NULL AND person IS NULL"+
		" AND id IN (SELECT chat FROM record WHERE herd = ?1) ORDER BY id", []any{int64(id)}, scanChat)
	if err != nil {
		return err
	}
	if err := tx.beginErasure(id, 0); err != nil {
		return err
	}
	for _, from := range []string{"outgoing", "record", "upload", "code", "member"} {
		if _, err := tx.exec("DELETE FROM "+from+" WHERE herd = ?", int64(id)); err != nil {
			return fmt.Errorf("%s: %w", from, err)
		}
	}
	if _, err := tx.exec("DELETE FROM value WHERE name GLOB ?", personValue("*", id, "*")); err != nil {
		return fmt.Errorf("values: %w", err)
	}
	for _, m := range members { // who speaks of another herd now may have spoken of this one
		if err := tx.emptyIncoming(m.Person); err != nil {
			return err
		}
	}
	for _, c := range chats {
		if err := tx.letGo(c); err != nil {
			return err
		}
	}
	for _, m := range members {
		if err := tx.dropPerson(m.Person); err != nil {
			return err
		}
	}
	if err := tx.endErasure(id); err != nil {
		return err
	}
	return tx.change("herd", "DELETE FROM herd WHERE id = ?", int64(id))
}

// beginErasure opens the journal of a herd to it: to all of it, or to who said
// what where that is a person.
func (tx *Tx) beginErasure(herd HerdID, person PersonID) error {
	if err := tx.keepLastIDs(); err != nil {
		return err
	}
	if err := tx.SetValue(valueScrub, "due"); err != nil {
		return err
	}
	_, err := tx.exec("INSERT INTO erasure (herd, person) VALUES (?, ?)", int64(herd), orNull(person))
	tx.erased = true
	return err
}

func (tx *Tx) endErasure(herd HerdID) error {
	return tx.change("erasure", "DELETE FROM erasure WHERE herd = ?", int64(herd))
}

// emptyIncoming takes out what a person texted that could not be handled.
func (tx *Tx) emptyIncoming(p PersonID) error {
	_, err := tx.exec("UPDATE incoming SET raw = x'', problem = '' WHERE handled = 1 AND problem <> '' AND chat IN"+
		" (SELECT external FROM chat WHERE person = ?)", int64(p))
	return err
}

// letGo takes a chat from its herd: what came in there goes, and the chat too,
// unless its person has a further herd to speak of there, or runs the server.
func (tx *Tx) letGo(c Chat) error {
	if _, err := tx.exec("DELETE FROM incoming WHERE chat = ?", c.External); err != nil {
		return fmt.Errorf("incoming: %w", err)
	}
	if c.Person != 0 {
		further, err := tx.Memberships(c.Person)
		if err != nil {
			return err
		}
		further = slices.DeleteFunc(further, func(m Member) bool { return m.Herd == c.Herd })
		if len(further) > 0 {
			c.Herd = further[0].Herd
			return tx.SaveChat(c)
		}
		if runs, err := tx.RunsServer(c.Person); err != nil || runs {
			c.Herd = 0
			return errors.Join(err, tx.SaveChat(c))
		}
	}
	for _, q := range []string{"DELETE FROM outgoing WHERE chat = ?", "DELETE FROM chat WHERE id = ?"} {
		if _, err := tx.exec(q, int64(c.ID)); err != nil {
			return fmt.Errorf("chat %d: %w", c.ID, err)
		}
	}
	return nil
}

// dropPerson takes a person out who belongs to no herd any more.
func (tx *Tx) dropPerson(p PersonID) error {
	further, err := tx.Memberships(p)
	if err != nil || len(further) > 0 {
		return err
	}
	runs, err := tx.RunsServer(p)
	switch {
	case err != nil:
		return err
	case runs:
		return tx.change(fmt.Sprintf("person %d", p), "UPDATE person SET name = '' WHERE id = ?", int64(p))
	}
	return tx.change(fmt.Sprintf("person %d", p), "DELETE FROM person WHERE id = ?", int64(p))
}

// RunsServer reports whether a person may run this server.
func (tx *Tx) RunsServer(p PersonID) (runs bool, err error) {
	if _, err = tx.one("SELECT operator FROM person WHERE id = ?", []any{int64(p)}, &runs); err != nil {
		return false, fmt.Errorf("person %d: %w", p, err)
	}
	return runs, nil
}
