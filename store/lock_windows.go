package store

import (
	"errors"
	"os"

	"golang.org/x/sys/windows"
)

// lockFile locks a byte far behind the end of the file, so that the signature
// can still be read, until the file is closed.
func lockFile(f *os.File) error {
	at := windows.Overlapped{OffsetHigh: 1}
	err := windows.LockFileEx(windows.Handle(f.Fd()),
		windows.LOCKFILE_EXCLUSIVE_LOCK|windows.LOCKFILE_FAIL_IMMEDIATELY, 0, 1, 0, &at)
	if errors.Is(err, windows.ERROR_LOCK_VIOLATION) {
		return errHeld
	}
	return err
}
