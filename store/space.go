package store

import (
	"os"
	"path/filepath"
)

// spareBytes is what a copy leaves free on the disk: the database beside it must
// be able to go on.
const spareBytes = 16 << 20

// roomFor reports a Problem where the disk of folder has no room for a copy of
// the file and what must stay free beside it.
func roomFor(path, folder string) error {
	info, err := os.Stat(path)
	if err != nil {
		return explain(path, err)
	}
	free, known, err := freeBytes(folder)
	if err != nil {
		return explain(folder, err)
	}
	if known && free < uint64(info.Size())+spareBytes {
		return problem(Full, nil, "There is no room left on the disk for a copy in %s; make room and try again.", folder)
	}
	return nil
}

// Space is how large the database at path is, and how much room its disk has
// left, where that can be known.
func Space(path string) (used int64, free uint64, known bool, err error) {
	info, err := os.Stat(path)
	if err != nil {
		return 0, 0, false, explain(path, err)
	}
	free, known, err = freeBytes(filepath.Dir(path))
	return info.Size(), free, known, explain(path, err)
}
