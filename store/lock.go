package store

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
)

// fileLock is held by the one process that writes a database, on a file of its
// own beside it: SQLite's locks come and go with each transaction, and would
// be dropped by opening and closing the database file itself.
type fileLock struct{ file *os.File }

var errHeld = errors.New("the lock is held by another process")

// lockFor takes the lock of the database at path, at once or not at all. The
// lock file stays when the lock is released: removing it would let two
// processes hold two different files.
func lockFor(path string) (*fileLock, error) {
	f, err := os.OpenFile(path+"-lock", os.O_CREATE|os.O_RDWR, 0o600)
	if errors.Is(err, fs.ErrNotExist) {
		dir := filepath.Dir(path)
		return nil, problem(Missing, err, "There is no folder %s; make it first, or check the path.", dir)
	}
	if err != nil {
		return nil, explain(path, err)
	}
	if err := lockFile(f); err != nil {
		by := holder(f)
		err = errors.Join(err, f.Close())
		if errors.Is(err, errHeld) {
			return nil, problem(Locked, err, "%s is open in another troughbell%s; stop that one first.", path, by)
		}
		return nil, fmt.Errorf("lock %s: %w", path, err)
	}
	l := &fileLock{f}
	if err := l.sign(); err != nil {
		return nil, errors.Join(explain(path, err), l.release())
	}
	return l, nil
}

// sign leaves the process's number in the lock file, for the sentence that a
// second one reads.
func (l *fileLock) sign() error {
	if err := l.file.Truncate(0); err != nil {
		return err
	}
	_, err := l.file.WriteAt(fmt.Appendf(nil, "%d\n", os.Getpid()), 0)
	return err
}

// holder names the process that signed the lock file; nothing if it cannot be
// read, since a lock without a signature is as good.
func holder(f *os.File) string {
	var b [20]byte
	n, err := f.ReadAt(b[:], 0)
	pid := strings.TrimSpace(string(b[:n]))
	if pid == "" || err != nil && !errors.Is(err, io.EOF) {
		return ""
	}
	return " (process " + pid + ")"
}

func (l *fileLock) release() error { return l.file.Close() }
