package store

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"time"
)

// fileLock is held by the one process that writes a database, on a file of its
// own beside it: SQLite's locks come and go with each transaction, and would
// be dropped by opening and closing the database file itself.
type fileLock struct {
	file *os.File
	role string
}

var errHeld = errors.New("the lock is held by another process")

// lockFor takes the lock of the database at path, at once or not at all. The
// lock file stays when the lock is released: removing it would let two
// processes hold two different files.
func lockFor(path, role string) (*fileLock, error) {
	f, err := os.OpenFile(path+"-lock", os.O_CREATE|os.O_RDWR, 0o600)
	if errors.Is(err, fs.ErrNotExist) {
		dir := filepath.Dir(path)
		return nil, problem(Missing, err, "There is no folder %s; make it first, or check the path.", dir)
	}
	if err != nil {
		return nil, explain(path, err)
	}
	if err := lockSoon(f); err != nil {
		by := signature(f).String()
		if by != "" {
			by = " (" + by + ")"
		}
		err = errors.Join(err, f.Close())
		if errors.Is(err, errHeld) {
			return nil, problem(Locked, err, "%s is open in another troughbell%s; stop that one first.", path, by)
		}
		return nil, fmt.Errorf("lock %s: %w", path, err)
	}
	l := &fileLock{f, role}
	if err := l.sign(); err != nil {
		return nil, errors.Join(explain(path, err), l.release())
	}
	return l, nil
}

// lockSoon locks the file. Who asks whether it is locked holds it for a moment;
// that is waited for.
func lockSoon(f *os.File) error {
	for tries := 0; ; tries++ {
		err := lockFile(f)
		if !errors.Is(err, errHeld) || tries == 10 {
			return err
		}
		time.Sleep(10 * time.Millisecond)
	}
}

// sign leaves the process's number and role in the lock file, for who is kept
// out and who asks.
func (l *fileLock) sign() error {
	if err := l.file.Truncate(0); err != nil {
		return err
	}
	_, err := l.file.WriteAt(fmt.Appendf(nil, "%d %s\n", os.Getpid(), l.role), 0)
	return err
}

// Holder is the process that has a database open for writing.
type Holder struct {
	Process string
	Role    string // see [Options]
}

// String names it: "process 12, serve".
func (h Holder) String() string {
	switch {
	case h.Process == "":
		return ""
	case h.Role == "":
		return "process " + h.Process
	}
	return "process " + h.Process + ", " + h.Role
}

// signature reads who signed the lock file; nothing if it cannot be read, since
// a lock without a signature is as good.
func signature(f *os.File) Holder {
	var b [64]byte
	n, err := f.ReadAt(b[:], 0)
	if err != nil && !errors.Is(err, io.EOF) {
		return Holder{}
	}
	process, role, _ := strings.Cut(strings.TrimSpace(string(b[:n])), " ")
	return Holder{process, role}
}

// Held reports whether a process has the database at path open for writing, and
// which.
func Held(path string) (h Holder, held bool, err error) {
	f, err := os.Open(path + "-lock")
	if errors.Is(err, fs.ErrNotExist) {
		return Holder{}, false, nil
	}
	if err != nil {
		return Holder{}, false, explain(path+"-lock", err)
	}
	defer func() { err = errors.Join(err, f.Close()) }() // which gives the lock back, if it was got
	switch err := lockFile(f); {
	case errors.Is(err, errHeld):
		return signature(f), true, nil
	case err != nil:
		return Holder{}, false, fmt.Errorf("lock of %s: %w", path, err)
	}
	return Holder{}, false, nil
}

func (l *fileLock) release() error { return l.file.Close() }
