package store

import (
	"errors"
	"os"
	"path/filepath"
	"runtime"
)

// syncFile brings a finished file to the disk. It must not be a file that
// SQLite has open in this process.
func syncFile(path string) error {
	f, err := os.OpenFile(path, os.O_RDWR, 0)
	if err != nil {
		return err
	}
	return errors.Join(f.Sync(), f.Close())
}

// rename puts a finished file in its place, and the folder's entry on the disk.
func rename(from, to string) error {
	if err := os.Rename(from, to); err != nil {
		return err
	}
	return syncFolder(filepath.Dir(to))
}

func syncFolder(path string) error {
	if runtime.GOOS == "windows" {
		return nil // which cannot sync a folder, and need not
	}
	d, err := os.Open(path)
	if err != nil {
		return err
	}
	return errors.Join(d.Sync(), d.Close())
}
