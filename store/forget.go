package store

import (
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"
)

// Forgetting is a person taken out of a herd.
type Forgetting struct {
	Herd   HerdID
	Person PersonID
	// Heir is whose the questions become that the person left open; else nobody
	// could ever answer them.
	Heir PersonID
	// Named leaves the person's name on what was recorded by them.
	Named bool
}

// Forget takes a person out of a herd. The records stay the herd's, without the
// chat that they came from and, unless it is to stay, the name of who said them.
// The messages in the person's own chat go. With the last herd the chat and the
// person go too, save those of who runs the server.
func (tx *Tx) Forget(f Forgetting) error {
	if err := tx.forget(f); err != nil {
		return fmt.Errorf("forget a person of herd %d: %w", f.Herd, err)
	}
	return nil
}

func (tx *Tx) forget(f Forgetting) error {
	m, ok, err := tx.Member(f.Herd, f.Person)
	switch {
	case err != nil:
		return err
	case !ok:
		return ErrNotFound
	}
	chats, err := list(tx, chatColumns+"person = ? ORDER BY id", []any{int64(f.Person)}, scanChat)
	if err != nil {
		return err
	}
	if err := tx.beginErasure(f.Herd, f.Person); err != nil {
		return err
	}
	if err := tx.unsign(f); err != nil {
		return err
	}
	if !f.Named {
		if err := tx.unname(f.Herd, m.Name); err != nil {
			return err
		}
	}
	if err := tx.endErasure(f.Herd); err != nil {
		return err
	}
	for _, q := range []string{
		"DELETE FROM upload WHERE herd = ?1 AND person = ?2",
		"DELETE FROM member WHERE herd = ?1 AND person = ?2",
		"DELETE FROM outgoing WHERE herd = ?1 AND chat IN (SELECT id FROM chat WHERE person = ?2)",
	} {
		if _, err := tx.exec(q, int64(f.Herd), int64(f.Person)); err != nil {
			return err
		}
	}
	if _, err := tx.exec("DELETE FROM value WHERE name GLOB ?", personValue("*", f.Herd, fmt.Sprint(f.Person))); err != nil {
		return err
	}
	if err := tx.emptyIncoming(f.Person); err != nil {
		return err
	}
	for _, c := range chats {
		if c.Herd != f.Herd {
			continue
		}
		if err := tx.letGo(c); err != nil {
			return err
		}
	}
	if err := tx.dropPerson(f.Person); err != nil {
		return err
	}
	return tx.pause(f.Herd)
}

// unsign takes out of a herd's records who said them and where. Which records
// came from one message is still told, by a word that names no message.
func (tx *Tx) unsign(f Forgetting) error {
	type said struct {
		seq     int64
		kind    string
		chat    ChatID
		message string
		group   bool
	}
	rows, err := list(tx, "SELECT r.seq, r.kind, coalesce(r.chat, 0), r.message, coalesce(c.is_group, 0)"+
		" FROM record AS r LEFT JOIN chat AS c ON c.id = r.chat"+
		" WHERE r.herd = ?1 AND (r.person = ?2 OR c.person = ?2) ORDER BY r.seq", []any{int64(f.Herd), int64(f.Person)},
		func(row scanner) (s said, err error) {
			err = row.Scan(&s.seq, &s.kind, &s.chat, &s.message, &s.group)
			return s, err
		})
	if err != nil {
		return err
	}
	words := map[Source]string{}
	for _, r := range rows {
		chat, message := r.chat, r.message
		if !r.group { // a group stays, and its messages with it
			src := Source{r.chat, r.message}
			if words[src] == "" {
				words[src] = fmt.Sprintf("someone-%d", r.seq)
			}
			chat, message = 0, words[src]
		}
		by := PersonID(0)
		if r.kind == "question" {
			by = f.Heir
		}
		_, err := tx.exec("UPDATE record SET person = ?, chat = ?, message = ?, said_by = CASE WHEN ? THEN said_by ELSE '' END"+
			" WHERE herd = ? AND seq = ?", orNull(by), orNull(chat), message, f.Named, int64(f.Herd), r.seq)
		if err != nil {
			return err
		}
	}
	return nil
}

// unname takes a name out of what was said to the others of the herd: that they
// pressed a button, that they passed on an alarm. What the others texted is
// theirs.
func (tx *Tx) unname(herd HerdID, name string) error {
	if name == "" {
		return nil
	}
	type sent struct {
		id   int64
		text string
	}
	rows, err := list(tx, "SELECT id, text FROM outgoing WHERE herd = ? AND state IN ('sent', 'dropped') AND instr(text, ?) > 0",
		[]any{int64(herd), name}, func(row scanner) (s sent, err error) {
			err = row.Scan(&s.id, &s.text)
			return s, err
		})
	if err != nil {
		return err
	}
	for _, r := range rows {
		if !names(r.text, name) {
			continue
		}
		if _, err := tx.exec("UPDATE outgoing SET text = '', buttons = '' WHERE id = ?", r.id); err != nil {
			return err
		}
	}
	// What could not be handled in a group may have come from the person.
	_, err = tx.exec("UPDATE incoming SET raw = x'', problem = '' WHERE handled = 1 AND problem <> '' AND chat IN"+
		" (SELECT external FROM chat WHERE herd = ? AND is_group = 1)", int64(herd))
	return err
}

// names reports whether a text has the name as a word of its own.
func names(text, name string) bool {
	for at := 0; ; {
		i := strings.Index(text[at:], name)
		if i < 0 {
			return false
		}
		i += at
		before, _ := utf8.DecodeLastRuneInString(text[:i])
		after, _ := utf8.DecodeRuneInString(text[i+len(name):])
		if !unicode.IsLetter(before) && !unicode.IsLetter(after) {
			return true
		}
		at = i + len(name)
	}
}
