package terminal

import (
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
)

// mostOfAName is how many files of one name are kept side by side.
const mostOfAName = 1000

// save writes a file into the folder and gives its path. Nothing that is there
// is written over: another of the name gets a number, and the very same file is
// not written twice.
func save(folder, name string, b []byte) (string, error) {
	if err := os.MkdirAll(folder, 0o700); err != nil {
		return "", err
	}
	dot := filepath.Ext(name)
	stem := strings.TrimSuffix(name, dot)
	for n := 1; n <= mostOfAName; n++ {
		path := filepath.Join(folder, name)
		if n > 1 {
			path = filepath.Join(folder, fmt.Sprintf("%s-%d%s", stem, n, dot))
		}
		switch have, err := os.ReadFile(path); {
		case err == nil && bytes.Equal(have, b):
			return path, nil
		case err == nil:
			continue
		case !errors.Is(err, fs.ErrNotExist):
			return "", err
		}
		return path, writeWhole(path, b)
	}
	return "", fmt.Errorf("%d files of the name %s are there already", mostOfAName, name)
}

// writeWhole writes beside the place and moves there when all is written: never
// half a file.
func writeWhole(path string, b []byte) error {
	f, err := os.CreateTemp(filepath.Dir(path), ".part-*")
	if err != nil {
		return err
	}
	_, err = f.Write(b)
	if err = errors.Join(err, f.Sync(), f.Close()); err == nil {
		err = os.Rename(f.Name(), path)
	}
	if err != nil {
		return errors.Join(err, os.Remove(f.Name()))
	}
	return nil
}
