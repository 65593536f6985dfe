package store

import (
	"fmt"
	"time"
)

// UploadStands is for how long a file waits to be taken in.
const UploadStands = 24 * time.Hour

// mostUploads is how many files of a herd wait; the oldest go for more.
const mostUploads = 3

// Upload is a file that came in and waits until its sender says what becomes of it.
type Upload struct {
	Herd  HerdID
	By    PersonID
	Key   string // what it came with; another of the same key takes its place
	Name  string
	Bytes []byte
	At    time.Time
}

// KeepUpload keeps a file.
func (tx *Tx) KeepUpload(u Upload) error {
	_, err := tx.exec("INSERT INTO upload (herd, key, person, name, bytes, at) VALUES (?, ?, ?, ?, ?, ?)"+
		" ON CONFLICT (herd, key) DO UPDATE SET person = excluded.person, name = excluded.name, bytes = excluded.bytes, at = excluded.at",
		int64(u.Herd), u.Key, orNull(u.By), u.Name, u.Bytes, millis(u.At))
	if err == nil {
		_, err = tx.exec("DELETE FROM upload WHERE herd = ?1 AND key NOT IN"+
			" (SELECT key FROM upload WHERE herd = ?1 ORDER BY at DESC, rowid DESC LIMIT ?2)", int64(u.Herd), mostUploads)
	}
	if err != nil {
		return fmt.Errorf("upload %s: %w", u.Key, err)
	}
	return nil
}

// UploadOf gives a file that waits; false if there is none, or it is too old.
func (tx *Tx) UploadOf(herd HerdID, key string, now time.Time) (Upload, bool, error) {
	u := Upload{Herd: herd, Key: key}
	var at int64
	ok, err := tx.one("SELECT coalesce(person, 0), name, bytes, at FROM upload WHERE herd = ? AND key = ? AND at > ?",
		[]any{int64(herd), key, millis(now.Add(-UploadStands))}, &u.By, &u.Name, &u.Bytes, &at)
	if err != nil {
		return Upload{}, false, fmt.Errorf("upload %s: %w", key, err)
	}
	u.At = instant(at)
	return u, ok, nil
}

// DropUpload lets a file go, if it is there.
func (tx *Tx) DropUpload(herd HerdID, key string) error {
	if _, err := tx.exec("DELETE FROM upload WHERE herd = ? AND key = ?", int64(herd), key); err != nil {
		return fmt.Errorf("upload %s: %w", key, err)
	}
	return nil
}

// DropOldUploads lets the files go that waited too long.
func (tx *Tx) DropOldUploads(now time.Time) error {
	if _, err := tx.exec("DELETE FROM upload WHERE at <= ?", millis(now.Add(-UploadStands))); err != nil {
		return fmt.Errorf("old uploads: %w", err)
	}
	return nil
}
