package store

import (
	"database/sql"
	"encoding/json"
	"errors"
	"fmt"
	"regexp"
	"time"

	"troughbell/model"
)

// Journal gives all records of a herd in the order they came in, voided ones
// and the voids included.
func (tx *Tx) Journal(id HerdID) ([]Envelope, error) { return tx.JournalSince(id, 0) }

// JournalSince gives the records of a herd that came in after the one numbered
// seq, so that who has those before can go on from there.
func (tx *Tx) JournalSince(id HerdID, seq int64) ([]Envelope, error) {
	e, err := list(tx, recordColumns+"WHERE herd = ? AND seq > ? ORDER BY seq", []any{int64(id), seq}, recordsOf(id))
	if err != nil {
		return nil, fmt.Errorf("journal of herd %d: %w", id, err)
	}
	return e, nil
}

// BySource gives the records that came from a message, not voided ones only if
// live is true. A void that came from the message is among them.
func (tx *Tx) BySource(herd HerdID, s Source, live bool) ([]Envelope, error) {
	query := recordColumns + "AS r WHERE herd = ? AND chat = ? AND message = ?"
	if live {
		query += " AND NOT EXISTS (SELECT 1 FROM record AS v WHERE v.herd = r.herd AND v.voids = r.id)"
	}
	e, err := list(tx, query+" ORDER BY seq", []any{int64(herd), int64(s.Chat), s.Message}, recordsOf(herd))
	if err != nil {
		return nil, fmt.Errorf("records of message %s: %w", s.Message, err)
	}
	return e, nil
}

var (
	// ownID is what the IDs look like that Append gives.
	ownID = regexp.MustCompile(`^r[0-9]+$`)
	// anyID is what an ID may look like.
	anyID = regexp.MustCompile(`^[!-~]+$`)
)

// Append adds records to the journal of their herd, in their order, and makes them
// those that Journal gives: with ID and Seq, and the facts as they are read back. A
// settings record of the name or the zone, and a void of one, changes the herd's row
// too.
//
// A fact must pass its Check, a zone must be known (empty: the herd's), and a void
// must name a record of the herd. Instants are kept to the millisecond and set to
// the zone; no SaidAt is At.
func (tx *Tx) Append(es ...*Envelope) error {
	if len(es) == 0 {
		return nil
	}
	if err := tx.append(es); err != nil {
		return fmt.Errorf("record for herd %d: %w", es[0].Herd, err)
	}
	return nil
}

func (tx *Tx) append(es []*Envelope) error {
	for _, e := range es {
		if err := e.check(); err != nil {
			return err
		}
		if e.Herd != es[0].Herd {
			return errors.New("it is of another herd")
		}
	}
	var seq int64
	var zone string
	switch ok, err := tx.one("UPDATE herd SET seq = seq + ? WHERE id = ? RETURNING seq, zone",
		[]any{len(es), int64(es[0].Herd)}, &seq, &zone); {
	case err != nil:
		return err
	case !ok:
		return ErrNotFound
	}
	kept := make([]Envelope, len(es)) // what is refused stays as it was
	for i, e := range es {
		kept[i] = *e
		if e.Zone == "" {
			kept[i].Zone = zone
		}
		kept[i].Seq = seq - int64(len(es)-1-i)
		if err := tx.appendOne(&kept[i]); err != nil {
			return err
		}
	}
	for i, e := range es {
		*e = kept[i]
	}
	return nil
}

// check says what is wrong with a record by itself.
func (e *Envelope) check() error {
	switch {
	case e.Fact == nil:
		return errors.New("it has no fact")
	case e.At.IsZero():
		return errors.New("it has no moment")
	}
	if err := e.Fact.Check(); err != nil {
		return err
	}
	if s, ok := e.Fact.(model.Setting); ok && s.Key == model.SetZone {
		if _, err := Zone(s.Text); err != nil {
			return err
		}
	}
	return nil
}

// appendOne adds a record that has its Seq and its zone.
func (tx *Tx) appendOne(e *Envelope) error {
	switch own := RecordID(e.Seq); {
	case e.ID == "":
		e.ID = own
	case !anyID.MatchString(e.ID), e.ID != own && ownID.MatchString(e.ID):
		return fmt.Errorf("%q cannot be its ID", e.ID)
	}
	loc, err := Zone(e.Zone)
	if err != nil {
		return err
	}
	if e.SaidAt.IsZero() {
		e.SaidAt = e.At
	}
	e.At, e.SaidAt = time.UnixMilli(e.At.UnixMilli()).In(loc), time.UnixMilli(e.SaidAt.UnixMilli()).In(loc)
	body, err := json.Marshal(e.Fact)
	if err != nil {
		return err
	}
	if err := tx.insertRecord(e, body); err != nil {
		return err
	}
	if e.Fact, err = decode(e.Fact.Kind(), e.Fact.Version(), body); err != nil {
		return err
	}
	return tx.followSettings(e)
}

func (tx *Tx) insertRecord(e *Envelope, body []byte) error {
	var voids sql.NullString
	if v, ok := e.Fact.(model.Void); ok {
		voids = sql.NullString{String: v.Record, Valid: true}
		found, err := tx.one("SELECT 1 FROM record WHERE herd = ? AND id = ?", []any{int64(e.Herd), v.Record}, new(int))
		if err != nil {
			return err
		}
		if !found {
			return fmt.Errorf("the record %s that it takes back: %w", v.Record, ErrNotFound)
		}
	}
	_, east := e.At.Zone()
	_, err := tx.exec("INSERT INTO record (herd, seq, id, kind, version, on_day, zone, at, at_east, stated, said_at,"+
		" said_by, person, chat, message, text, judged, voids, body)"+
		" VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
		int64(e.Herd), e.Seq, e.ID, string(e.Fact.Kind()), e.Fact.Version(), e.On.String(), e.Zone, e.At.UnixMilli(), east, e.Stated,
		e.SaidAt.UnixMilli(), e.ByName, orNull(e.By), orNull(e.Source.Chat), e.Source.Message, e.Text, e.Judged, voids, string(body))
	return err
}

// followSettings keeps the herd's name and zone in step with its journal: the
// latest one stated and not taken back, in the order in which records are
// folded, else that of its making.
func (tx *Tx) followSettings(e *Envelope) error {
	switch f := e.Fact.(type) {
	case model.Setting:
		if f.Key != model.SetHerd && f.Key != model.SetZone {
			return nil
		}
	case model.Void:
	default:
		return nil
	}
	const latest = "coalesce((SELECT json_extract(r.body, '$.text') FROM record AS r" +
		" WHERE r.herd = ?1 AND r.kind = 'settings' AND json_extract(r.body, '$.key') = "
	const standing = " AND NOT EXISTS (SELECT 1 FROM record AS v WHERE v.herd = r.herd AND v.voids = r.id)" +
		" ORDER BY r.at DESC, r.body DESC LIMIT 1), "
	return tx.change("name and zone", "UPDATE herd SET"+
		" name = "+latest+"'herd'"+standing+"made_name),"+
		" zone = "+latest+"'zone'"+standing+"made_zone) WHERE id = ?1", int64(e.Herd))
}

// RecordID is the ID that Append gives to the record with that Seq.
func RecordID(seq int64) string { return fmt.Sprintf("r%d", seq) }
