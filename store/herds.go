package store

import (
	"fmt"
	"strings"
	"time"
)

// herdColumns reads a herd as three columns, as recordColumns does a record.
const herdColumns = "id || ' ' || seq || ' ' || look_again || ' ' || paused || ' ' || zone, name, made_name"

func scanHerd(row scanner) (HerdRow, error) {
	h, dest := herdInto()
	if err := row.Scan(dest...); err != nil {
		return HerdRow{}, err
	}
	return h()
}

// herdInto gives where herdColumns are scanned to, and what makes a herd of it then.
func herdInto() (herd func() (HerdRow, error), dest []any) {
	var h HerdRow
	var first head
	return func() (HerdRow, error) {
		h.ID = HerdID(first.number())
		h.Seq = first.number()
		h.LookAgain = instant(first.number())
		h.Paused = first.number() != 0
		h.Zone = first.rest
		return h, first.err
	}, []any{&first.rest, &h.Name, &h.Made}
}

// Herds lists the herds by id.
func (tx *Tx) Herds() ([]HerdRow, error) {
	h, err := list(tx, "SELECT "+herdColumns+" FROM herd ORDER BY id", nil, scanHerd)
	if err != nil {
		return nil, fmt.Errorf("herds: %w", err)
	}
	return h, nil
}

// FirstHerd gives the herd that is there longest; false if there is none.
func (tx *Tx) FirstHerd() (HerdRow, bool, error) {
	h, err := list(tx, "SELECT "+herdColumns+" FROM herd ORDER BY id LIMIT 1", nil, scanHerd)
	if err != nil || len(h) == 0 {
		return HerdRow{}, false, err
	}
	return h[0], true, nil
}

// Herd gives one herd; [ErrNotFound] if there is none of that id.
func (tx *Tx) Herd(id HerdID) (HerdRow, error) {
	h, _, err := tx.HerdAndValues(id)
	return h, err
}

// HerdAndValues gives one herd and, in one go, what Values gives.
func (tx *Tx) HerdAndValues(id HerdID, names ...string) (HerdRow, []string, error) {
	herd, dest := herdInto()
	query := "SELECT " + herdColumns + strings.Repeat(", "+oneValue, len(names)) + " FROM herd WHERE id = ?"
	values, args := make([]string, len(names)), make([]any, 0, len(names)+1)
	for i := range names {
		args, dest = append(args, names[i]), append(dest, &values[i])
	}
	ok, err := tx.one(query, append(args, int64(id)), dest...)
	if err == nil && !ok {
		err = ErrNotFound
	}
	if err != nil {
		return HerdRow{}, nil, fmt.Errorf("herd %d: %w", id, err)
	}
	h, err := herd()
	return h, values, err
}

// CreateHerd makes a herd, to be looked at from now on. It is paused until a
// chat in which it is spoken of can be reached.
func (tx *Tx) CreateHerd(name, zoneName string, now time.Time) (HerdID, error) {
	if _, err := Zone(zoneName); err != nil {
		return 0, err
	}
	r, err := tx.exec("INSERT INTO herd (id, name, zone, made_name, made_zone, look_again) VALUES ("+nextID("herd")+", ?1, ?2, ?1, ?2, ?3)",
		name, zoneName, millis(now))
	if err != nil {
		return 0, fmt.Errorf("new herd: %w", err)
	}
	id, err := r.LastInsertId()
	return HerdID(id), err
}

// SetLookAgain notes when the herd is to be looked at for nudges.
func (tx *Tx) SetLookAgain(id HerdID, at time.Time) error {
	return tx.change(fmt.Sprintf("herd %d", id), "UPDATE herd SET look_again = ? WHERE id = ?", millis(at), int64(id))
}

// Due lists herds that are to be looked at, not paused, at most limit, the one
// that has waited longest first. A limit of 0 is none.
func (tx *Tx) Due(now time.Time, limit int) ([]HerdID, error) {
	ids, err := list(tx, "SELECT id FROM herd WHERE paused = 0 AND look_again <= ? ORDER BY look_again, id LIMIT ?",
		[]any{millis(now), limited(limit)},
		func(row scanner) (id HerdID, err error) {
			err = row.Scan(&id)
			return id, err
		})
	if err != nil {
		return nil, fmt.Errorf("herds to look at: %w", err)
	}
	return ids, nil
}

// pause notes whether anybody of the herd can be reached.
func (tx *Tx) pause(id HerdID) error {
	return tx.change(fmt.Sprintf("herd %d", id),
		"UPDATE herd SET paused = NOT EXISTS (SELECT 1 FROM chat WHERE herd = ?1 AND dead = '') WHERE id = ?1", int64(id))
}
