package terminal

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"troughbell/bot"
	"troughbell/bot/document"
)

// importing is the file that a text asks to be taken in: "import herd.zip". A text
// that only begins with that word names none: "import the big barrels from france".
func importing(text string) (path string, ok bool) {
	word, rest, _ := strings.Cut(text, " ")
	if !strings.EqualFold(word, "import") {
		return "", false
	}
	path = strings.Trim(strings.TrimSpace(rest), `"'`)
	if path == "" {
		return "", false
	}
	if _, err := os.Stat(path); err == nil {
		return path, true
	}
	switch strings.ToLower(filepath.Ext(path)) {
	case ".zip", ".csv", ".tsv", ".txt":
		return path, true
	}
	return path, strings.ContainsRune(path, filepath.Separator) && !strings.Contains(path, " ")
}

// ReadUpload reads a file that is to be taken in, as far as one may be large.
func ReadUpload(path string) (u bot.Upload, err error) {
	f, err := os.Open(path)
	if err != nil {
		return u, fmt.Errorf("cannot read %s: %w", path, cause(err))
	}
	defer func() { err = errors.Join(err, f.Close()) }()
	info, err := f.Stat()
	switch {
	case err != nil:
		return u, fmt.Errorf("cannot read %s: %w", path, cause(err))
	case !info.Mode().IsRegular():
		return u, fmt.Errorf("cannot read %s: it is no file", path)
	}
	u.Name = filepath.Base(path)
	if u.Bytes, err = io.ReadAll(io.LimitReader(f, document.MaxIntake+1)); err != nil {
		return u, fmt.Errorf("cannot read %s: %w", path, cause(err))
	}
	return u, nil
}

// cause is an error without the path that it names again.
func cause(err error) error {
	var p *fs.PathError
	if errors.As(err, &p) {
		return p.Err
	}
	return err
}
