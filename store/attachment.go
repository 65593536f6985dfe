package store

import (
	"errors"
	"fmt"
	"strings"
	"unicode/utf8"
)

// The kinds of a File.
const (
	Photo    = "photo" // shown in the chat, and recompressed by it
	Document = "document"
)

// Bounds of a File.
const (
	// MaxFile is the largest file that goes out with a message, in bytes. Five
	// times of that is what Telegram takes (its Bot API manual, sending files);
	// a phone in a barn takes less.
	MaxFile = 10 << 20
	maxName = 100 // of the name, in bytes
)

// File is what goes out with a message.
type File struct {
	Kind  string // Photo or Document
	Name  string // a plain file name, without a folder
	Bytes []byte // nil where a message is only listed; see Tx.FileBytes
	Size  int    // of Bytes; set by Queue
}

// Check reports why the file cannot go out; nil if it can.
func (f File) Check() error {
	switch {
	case f.Kind != Photo && f.Kind != Document:
		return fmt.Errorf("%q is no kind of file", f.Kind)
	case !plainName(f.Name):
		return fmt.Errorf("%q is no name of a file", f.Name)
	case len(f.Bytes) == 0:
		return fmt.Errorf("the file %s is empty", f.Name)
	case len(f.Bytes) > MaxFile:
		return fmt.Errorf("the file %s has %d bytes; %d is the most", f.Name, len(f.Bytes), MaxFile)
	}
	return nil
}

// plainName reports whether a name is safe in any folder of any system.
func plainName(s string) bool {
	bad := func(r rune) bool { return r < ' ' || r == 0x7f || strings.ContainsRune(`/\:*?"<>|`, r) }
	return s != "" && len(s) <= maxName && utf8.ValidString(s) && s[0] != '.' && s[0] != '-' &&
		s[len(s)-1] != '.' && !strings.ContainsFunc(s, bad)
}

// attach keeps the file of a message.
func (tx *Tx) attach(o *Outgoing) error {
	if o.File == nil {
		return nil
	}
	o.File.Size = len(o.File.Bytes)
	_, err := tx.exec("INSERT INTO attachment (outgoing, kind, name, size, bytes) VALUES (?, ?, ?, ?, ?)",
		o.ID, o.File.Kind, o.File.Name, o.File.Size, o.File.Bytes)
	return err
}

// FileBytes gives the file that goes out with a message. There is none any more
// once the message was sent or dropped.
func (tx *Tx) FileBytes(outgoing int64) ([]byte, error) {
	var b []byte
	ok, err := tx.one("SELECT bytes FROM attachment WHERE outgoing = ?", []any{outgoing}, &b)
	switch {
	case err == nil && !ok:
		err = ErrNotFound
	case err == nil && len(b) == 0:
		err = errors.New("it was taken away when its message was sent or dropped")
	}
	if err != nil {
		return nil, fmt.Errorf("file of outgoing %d: %w", outgoing, err)
	}
	return b, nil
}

// SaveFileKind changes what a file goes out as.
func (tx *Tx) SaveFileKind(outgoing int64, kind string) error {
	return tx.change(fmt.Sprintf("file of outgoing %d", outgoing),
		"UPDATE attachment SET kind = ? WHERE outgoing = ?", kind, outgoing)
}

// FilesHeld is how many bytes of files are kept for messages that wait.
func (tx *Tx) FilesHeld() (n int, err error) {
	if _, err = tx.one("SELECT coalesce(sum(length(bytes)), 0) FROM attachment", nil, &n); err != nil {
		return 0, fmt.Errorf("files held: %w", err)
	}
	return n, nil
}

// FilesWaiting is how many files of a herd wait to be sent.
func (tx *Tx) FilesWaiting(herd HerdID) (n int, err error) {
	_, err = tx.one("SELECT count(*) FROM attachment AS f JOIN outgoing AS o ON o.id = f.outgoing"+
		" WHERE o.herd = ? AND o.state IN ('pending', 'sending') AND length(f.bytes) > 0", []any{int64(herd)}, &n)
	if err != nil {
		return 0, fmt.Errorf("files waiting: %w", err)
	}
	return n, nil
}
