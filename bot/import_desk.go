package bot

import (
	"errors"
	"fmt"
	"slices"
	"time"

	"troughbell/bot/document"
	"troughbell/bot/wording"
	"troughbell/model"
	"troughbell/store"
)

// handleFiles keeps the file that a message brought, takes in the one that it says
// to, and lets go those whose question was answered.
func (d *Desk) handleFiles(tx *store.Tx, m Message, out *Outcome) error {
	if out.Keep != nil {
		if err := tx.KeepUpload(*out.Keep); err != nil {
			return err
		}
	}
	if out.TakeIn != "" {
		text, err := d.takeIn(tx, m, out)
		if err != nil {
			return err
		}
		out.Replies[len(out.Replies)-1].Text = text
	}
	return d.dropAnswered(tx, m, out)
}

// takeIn takes in a file that waits, and says so.
func (d *Desk) takeIn(tx *store.Tx, m Message, out *Outcome) (string, error) {
	s, err := d.State(tx, m.Herd)
	if err != nil {
		return "", err
	}
	v := wording.Voice{Herd: s.Herd, Now: out.At}
	kept, ok, err := tx.UploadOf(m.Herd, out.TakeIn, out.At)
	if err != nil {
		return "", err
	}
	if !ok {
		return v.Import("gone"), nil
	}
	u := Upload{Name: kept.Name, Bytes: kept.Bytes}
	plan, err := s.readUpload(u, out.At, s.Row.Seq)
	var bad *document.Unreadable
	switch {
	case errors.As(err, &bad):
		return v.Import(bad.Code, bad.Names...), nil
	case err != nil:
		return "", err
	}
	by := broughtBy{person: m.From, source: store.Source{Chat: m.Chat, Message: m.ID}, at: out.At}
	if err := appendPlan(tx, s, u, plan, by); err != nil {
		return "", err
	}
	if err := tx.SetLookAgain(m.Herd, out.At); err != nil {
		return "", err
	}
	return v.Imported(u.title(), len(plan.new)), tx.DropUpload(m.Herd, out.TakeIn)
}

// broughtBy is who took a file in, where and when.
type broughtBy struct {
	person store.Member
	source store.Source
	at     time.Time
}

// appendedAtOnce is how many records of a file are handed to the store together.
const appendedAtOnce = 500

// appendPlan appends what a file brings, and behind it the record of the import
// itself: what an undo names.
func appendPlan(tx *store.Tx, s *State, u Upload, p intakePlan, by broughtBy) error {
	if len(p.new) == 0 {
		return nil
	}
	for i := range p.new {
		e := &p.new[i]
		e.Herd, e.By, e.Source = s.Row.ID, by.person.Person, by.source
		if e.SaidAt.IsZero() {
			e.SaidAt = by.at
		}
	}
	for some := range slices.Chunk(p.new, appendedAtOnce) {
		if err := tx.Append(pointers(some)...); err != nil {
			return err
		}
	}
	e := store.Envelope{
		Herd: s.Row.ID, On: model.DayOf(by.at), At: by.at, SaidAt: by.at, By: by.person.Person, ByName: by.person.Name,
		Source: by.source, Judged: "certain", Fact: model.Import{File: u.title(), Records: len(p.new)},
	}
	return tx.Append(&e)
}

// dropAnswered lets go the files whose question the message answered, whatever the
// answer was.
func (d *Desk) dropAnswered(tx *store.Tx, m Message, out *Outcome) error {
	var s *State
	for _, e := range out.New {
		settled, ok := e.Fact.(model.Settled)
		if !ok {
			continue
		}
		if s == nil {
			var err error
			if s, err = d.State(tx, m.Herd); err != nil {
				return err
			}
		}
		asked, ok := s.record(settled.Question)
		if !ok {
			continue
		}
		if q, ok := asked.Fact.(model.Question); !ok || q.About != aboutImport {
			continue
		}
		key := uploadKey(asked.Source)
		if out.Keep != nil && out.Keep.Key == key { // the newer version of the same message
			continue
		}
		if err := tx.DropUpload(m.Herd, key); err != nil {
			return err
		}
	}
	return nil
}

// Importing is a file that is to be taken into a herd from outside of a chat.
type Importing struct {
	Herd store.HerdID
	File Upload
	By   store.Member
	Now  time.Time
}

// Preview says what a file would bring, and how many records and lines left out that
// is. A file that cannot be read is a *document.Unreadable, said in words.
func (d *Desk) Preview(tx *store.Tx, i Importing) (text string, fresh, left int, err error) {
	s, err := d.State(tx, i.Herd)
	if err != nil {
		return "", 0, 0, err
	}
	now := i.Now.In(s.Zone)
	v := wording.Voice{Herd: s.Herd, Now: now}
	p, err := s.readUpload(i.File, now, s.Row.Seq)
	var bad *document.Unreadable
	switch {
	case errors.As(err, &bad):
		return "", 0, 0, errors.New(v.Import(bad.Code, bad.Names...))
	case err != nil:
		return "", 0, 0, err
	}
	return v.ImportPreview(i.File.title(), p.says), len(p.new), len(p.says.Bad), nil
}

// Import takes a file into a herd in the transaction, and says so.
func (d *Desk) Import(tx *store.Tx, i Importing) (text string, err error) {
	s, err := d.State(tx, i.Herd)
	if err != nil {
		return "", err
	}
	now := i.Now.In(s.Zone)
	p, err := s.readUpload(i.File, now, s.Row.Seq)
	if err != nil {
		return "", err
	}
	by := broughtBy{person: i.By, source: store.Source{Message: fmt.Sprintf("import-%d", now.UnixNano())}, at: now}
	if err := appendPlan(tx, s, i.File, p, by); err != nil {
		return "", err
	}
	text = wording.Voice{Herd: s.Herd, Now: now}.Imported(i.File.title(), len(p.new))
	return text, tx.SetLookAgain(i.Herd, now)
}
