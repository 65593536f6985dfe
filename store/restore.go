package store

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
)

// Restore puts a backup in the place of the database at path, which no process
// may have open; it refuses to overwrite one unless force is set. The backup is
// checked first, and stays. Until the last step, which is one rename, the
// database is as it was.
func Restore(ctx context.Context, from, path string, force bool) (err error) {
	from, err1 := filepath.Abs(from)
	path, err2 := filepath.Abs(path)
	if err := errors.Join(err1, err2); err != nil {
		return fmt.Errorf("path of the database: %w", err)
	}
	settings, err := examineBackup(ctx, from)
	if err != nil {
		return err
	}
	lock, err := lockFor(path, "restore")
	if err != nil {
		return err
	}
	defer func() { err = errors.Join(err, lock.release()) }()
	there, err := isThere(path)
	if err != nil {
		return err
	}
	if there && !force {
		return problem(Exists, nil, "%s is there already; move it away, or say --force to replace it.", path)
	}
	part, err := copyOf(ctx, from, settings, path)
	if err != nil {
		return err
	}
	if err := replace(ctx, part, path, there); err != nil {
		return errors.Join(explain(path, err), os.Remove(part))
	}
	return nil
}

func isThere(path string) (bool, error) {
	info, err := os.Stat(path)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return false, nil
	case err != nil:
		return false, explain(path, err)
	case info.IsDir():
		return false, problem(NotDatabase, nil, "%s is a folder; give the path of a file.", path)
	}
	return true, nil
}

// examineBackup checks the backup from end to end, and says how to read it.
func examineBackup(ctx context.Context, from string) (settings []string, err error) {
	there, err := isThere(from)
	if err != nil {
		return nil, err
	}
	if !there {
		return nil, problem(Missing, fs.ErrNotExist, "There is no backup at %s; check the path.", from)
	}
	settings = copying
	version, err := schemaOf(ctx, from, settings)
	if cannotOpen(err) && !inUse(from) {
		settings = frozenCopying
		version, err = schemaOf(ctx, from, settings)
	}
	switch {
	case err != nil:
		return nil, explain(from, err)
	case version == 0:
		return nil, problem(NotDatabase, nil, "%s is empty; it is no backup.", from)
	case version > len(migrations):
		return nil, newer(from, version)
	}
	return settings, explain(from, inspect(ctx, from, settings, "PRAGMA integrity_check(1)"))
}

// replace puts the finished copy in the place of the database. A log left from
// the old one must be gone by then: it would be played into the new one.
func replace(ctx context.Context, part, path string, there bool) error {
	if there {
		// Folding the log into the old file keeps it whole if the power goes
		// before the rename. An old file too damaged for that is what the
		// backup is for.
		if err := foldLog(ctx, path); err != nil && !isDamage(err) {
			return err
		}
	}
	if err := removeSides(path); err != nil {
		return err
	}
	return rename(part, path)
}

// removeSides removes the log and its index, where they are there.
func removeSides(path string) error {
	for _, side := range []string{"-wal", "-shm"} {
		if err := os.Remove(path + side); err != nil && !errors.Is(err, fs.ErrNotExist) {
			return err
		}
	}
	return nil
}

func foldLog(ctx context.Context, path string) error {
	return look(ctx, path, []string{"mode=rw", "_busy_timeout=5000", "_dqs=0"}, func(c *connection) error {
		var busy, log, done int
		if err := c.conn.QueryRowContext(ctx, "PRAGMA wal_checkpoint(TRUNCATE)").Scan(&busy, &log, &done); err != nil {
			return err
		}
		if busy != 0 {
			return problem(Busy, nil, "%s is in use by another program; close that one and try again.", path)
		}
		return nil
	})
}

func isDamage(err error) bool {
	var p *Problem
	return errors.As(explain("", err), &p) && (p.Code == Damaged || p.Code == NotDatabase || p.Code == Unusable)
}
