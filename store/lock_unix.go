//go:build unix

package store

import (
	"errors"
	"os"

	"golang.org/x/sys/unix"
)

// lockFile locks the open file, whoever opened it, until it is closed.
func lockFile(f *os.File) error {
	for {
		err := unix.Flock(int(f.Fd()), unix.LOCK_EX|unix.LOCK_NB)
		switch {
		case errors.Is(err, unix.EINTR):
		case errors.Is(err, unix.EWOULDBLOCK):
			return errHeld
		default:
			return err
		}
	}
}
