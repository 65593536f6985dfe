package store

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"os"

	"modernc.org/sqlite"
	sqlite3 "modernc.org/sqlite/lib"
)

// applicationID marks a SQLite file as one of ours ("trgb"); the first
// migration writes it.
const applicationID = 0x74726762

// checkedUpTo is the size up to which a file is checked for damage each time it
// is opened: about a second. Larger ones are checked when they are backed up.
const checkedUpTo = 128 << 20 // bytes

// examine looks at the file without changing a bit of it: is it a database, is
// it ours, is it whole, is it not too new? An empty file is fine.
func examine(ctx context.Context, path string, check bool) error {
	version, err := schemaOf(ctx, path, copying)
	if err != nil {
		return err
	}
	if version > len(migrations) {
		return newer(path, version)
	}
	info, err := os.Stat(path)
	if err != nil {
		return err
	}
	if !check || version == 0 || info.Size() > checkedUpTo {
		return nil
	}
	return inspect(ctx, path, copying, "PRAGMA quick_check(1)")
}

// schemaOf gives the schema version of the file; 0 is an empty one.
func schemaOf(ctx context.Context, path string, settings []string) (version int, err error) {
	err = look(ctx, path, settings, func(c *connection) error {
		var app, tables int
		const query = "SELECT (SELECT user_version FROM pragma_user_version)," +
			" (SELECT application_id FROM pragma_application_id), (SELECT count(*) FROM sqlite_schema)"
		if err := c.conn.QueryRowContext(ctx, query).Scan(&version, &app, &tables); err != nil {
			return err
		}
		if tables > 0 && app != applicationID {
			return problem(Foreign, nil, "%s is a database of another program; check the path.", path)
		}
		return nil
	})
	return version, err
}

// inspect runs one of SQLite's checks.
func inspect(ctx context.Context, path string, settings []string, check string) error {
	return look(ctx, path, settings, func(c *connection) error {
		var verdict string
		if err := c.conn.QueryRowContext(ctx, check).Scan(&verdict); err != nil {
			return err
		}
		if verdict != "ok" {
			return damaged(path, fmt.Errorf("%s: %s", check, verdict))
		}
		return nil
	})
}

// look runs f on a connection made for the purpose.
func look(ctx context.Context, path string, settings []string, f func(*connection) error) (err error) {
	db, err := pool(path, settings, 1)
	if err != nil {
		return err
	}
	defer func() { err = errors.Join(err, db.Close()) }()
	c, err := connect(ctx, db)
	if err != nil {
		return err
	}
	defer func() { err = errors.Join(err, c.close()) }()
	return f(c)
}

// cannotOpen reports whether SQLite failed to open the file or its side files.
func cannotOpen(err error) bool {
	var e *sqlite.Error
	if !errors.As(err, &e) {
		return false
	}
	if e.Code() == sqlite3.SQLITE_IOERR_SHMSIZE { // no room for the index of the log
		return true
	}
	family := e.Code() & 0xff
	return family == sqlite3.SQLITE_CANTOPEN || family == sqlite3.SQLITE_READONLY || family == sqlite3.SQLITE_FULL
}

// inUse reports whether a write-ahead log with something in it stands beside
// the file, without which the file is not the whole truth; also if that cannot
// be told.
func inUse(path string) bool {
	info, err := os.Stat(path + "-wal")
	if err != nil {
		return !errors.Is(err, fs.ErrNotExist)
	}
	return info.Size() > 0
}
