package store

import (
	"context"
	_ "embed" // the schema lies in files of its own
	"errors"
	"fmt"
	"os"
)

var (
	//go:embed migrations/0001_first.sql
	first string
	//go:embed migrations/0002_attachment.sql
	attachments string
	//go:embed migrations/0003_erasure.sql
	erasure string
	//go:embed migrations/0004_urgent.sql
	urgent string
	//go:embed migrations/0005_operators.sql
	operators string
	//go:embed migrations/0006_tide.sql
	tide string
	//go:embed migrations/0007_upload.sql
	uploads string
	//go:embed migrations/0008_record_guard.sql
	recordGuard string
)

// migrations bring a file from each schema to the next: the entry n takes it
// from version n to n+1. A migration that has been released is never changed,
// only followed by another.
var migrations = []string{first, attachments, erasure, urgent, operators, tide, uploads, recordGuard}

// migrate brings the schema up to date in one transaction, and the views with
// it. A file that holds data is first copied to a file beside it.
func migrate(ctx context.Context, c *connection, path string, steps []string) error {
	version, err := userVersion(ctx, c)
	if err != nil {
		return err
	}
	if version > len(steps) {
		return newer(path, version)
	}
	if version > 0 && version < len(steps) {
		if err := keepCopy(ctx, c, path, version); err != nil {
			return fmt.Errorf("copy before bringing the schema up to date: %w", err)
		}
	}
	return c.inTransaction(ctx, "BEGIN IMMEDIATE", func(tx *Tx) error {
		for n := version; n < len(steps); n++ {
			// A step is a script, which cannot be kept as a prepared statement.
			script := fmt.Sprintf("%s;\nPRAGMA user_version = %d;", steps[n], n+1)
			if _, err := c.conn.ExecContext(context.Background(), script); err != nil {
				return fmt.Errorf("schema %d: %w", n+1, err)
			}
		}
		return tx.refreshViews()
	})
}

// schemaMark stands between the name of the database and the schema that a copy
// beside it has.
const schemaMark = ".schema-"

// keepCopy writes the file as it is to a file beside it, named for its schema.
func keepCopy(ctx context.Context, c *connection, path string, version int) error {
	to := fmt.Sprint(path, schemaMark, version)
	part := to + ".part"
	if err := os.Remove(part); err != nil && !errors.Is(err, os.ErrNotExist) {
		return err
	}
	if _, err := c.conn.ExecContext(ctx, "VACUUM INTO ?", part); err != nil {
		return err
	}
	if err := syncFile(part); err != nil {
		return err
	}
	return rename(part, to)
}

func userVersion(ctx context.Context, c *connection) (version int, err error) {
	err = c.conn.QueryRowContext(ctx, "PRAGMA user_version").Scan(&version)
	return version, err
}

func newer(path string, version int) *Problem {
	return problem(Newer, nil, "%s comes from a newer version (schema %d; this one knows up to %d); use that version.", path, version, len(migrations))
}
