package store

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
)

// Backup writes a consistent copy to a new file, checked, in use or not. It
// works beside a process that writes.
func (s *Store) Backup(ctx context.Context, to string) error {
	to, err := filepath.Abs(to)
	if err != nil {
		return fmt.Errorf("path of the backup: %w", err)
	}
	switch _, err := os.Lstat(to); {
	case err == nil:
		return problem(Exists, nil, "%s is there already; give the backup another name.", to)
	case !errors.Is(err, fs.ErrNotExist):
		return explain(to, err)
	}
	settings := copying
	if s.frozen {
		settings = frozenCopying
	}
	part, err := copyOf(ctx, s.path, settings, to)
	if err != nil {
		return err
	}
	if err := rename(part, to); err != nil {
		return errors.Join(explain(to, err), os.Remove(part))
	}
	return nil
}

// partMark is in the name of a copy that is not finished.
const partMark = ".part-"

// copyOf writes a whole, checked copy of the database to a new file in the
// folder of to, brought to the disk, and gives the file's name.
func copyOf(ctx context.Context, path string, settings []string, to string) (part string, err error) {
	return makeCopy(ctx, to, partMark, func(part string) error {
		err := look(ctx, path, settings, func(c *connection) error {
			_, err := c.conn.ExecContext(ctx, "VACUUM INTO ?", part)
			return err
		})
		return explainCopy(path, to, err)
	})
}

// makeCopy makes a copy by write, in a new file beside the one at to, and checks
// it and brings it to the disk.
func makeCopy(ctx context.Context, to, mark string, write func(part string) error) (part string, err error) {
	f, err := os.CreateTemp(filepath.Dir(to), filepath.Base(to)+mark+"*")
	if errors.Is(err, fs.ErrNotExist) {
		return "", problem(Missing, err, "There is no folder %s; make it first, or check the path.", filepath.Dir(to))
	}
	if err != nil {
		return "", explain(to, err)
	}
	part = f.Name()
	defer func() {
		if err != nil {
			err = errors.Join(err, os.Remove(part))
		}
	}()
	if err := f.Close(); err != nil {
		return part, explain(to, err)
	}
	// VACUUM INTO takes an empty file as none, and CreateTemp made it readable
	// by its owner only.
	if err := write(part); err != nil {
		return part, err
	}
	if err := inspect(ctx, part, copying, "PRAGMA integrity_check(1)"); err != nil {
		return part, explain(to, err)
	}
	return part, explain(to, syncFile(part))
}

// explainCopy says which of the two files a failed copy is about: what is
// written is the copy, what is damaged the original.
func explainCopy(path, to string, err error) error {
	if err == nil {
		return nil
	}
	explained := explain(path, err)
	var p *Problem
	if errors.As(explained, &p) && (p.Code == Full || p.Code == ReadOnly) {
		return explain(to, err)
	}
	return explained
}
