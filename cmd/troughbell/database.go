package main

import (
	"context"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"time"

	"github.com/adrg/xdg"

	"troughbell/store"
)

// dbFlag is where the database lies.
type dbFlag struct {
	DB string `name:"db" env:"TROUGHBELL_DB" placeholder:"FILE" help:"The database file. Default: troughbell/herd.db in your data directory."`
}

// file is the file meant.
func (f dbFlag) file() string {
	if f.DB != "" {
		return f.DB
	}
	xdg.Reload() // the environment as it is now
	return filepath.Join(xdg.DataHome, "troughbell", "herd.db")
}

// path is the file meant, to be written: the default one in a folder that is
// there.
func (f dbFlag) path() (string, error) {
	p := f.file()
	if f.DB != "" {
		return p, nil
	}
	if err := os.MkdirAll(filepath.Dir(p), 0o700); err != nil {
		return "", fmt.Errorf("cannot make the data folder: %w; name a file with --db", err)
	}
	return p, nil
}

// backupsFlag is where nightly copies of the database are kept.
type backupsFlag struct {
	Backups string `name:"backups" env:"TROUGHBELL_BACKUPS" placeholder:"DIR" help:"The folder for nightly copies of the database; off for none. Default: the folder backups beside the database."`
}

// copies are the nightly copies of the database at path; on is false where none
// are wanted, though some may lie in the usual place from before.
func (f backupsFlag) copies(path string) (c store.Copies, on bool, err error) {
	if strings.EqualFold(f.Backups, "off") {
		c, err = store.CopiesOf(path, "")
		return c, false, err
	}
	c, err = store.CopiesOf(path, f.Backups)
	return c, err == nil, err
}

// filesFlag is where files of a terminal chat are saved.
type filesFlag struct {
	Files string `name:"files" env:"TROUGHBELL_FILES" placeholder:"DIR" help:"The folder for files that the chat gives out. Default: troughbell/files in your data directory."`
}

func (f filesFlag) folder() string {
	if f.Files != "" {
		return f.Files
	}
	xdg.Reload()
	return filepath.Join(xdg.DataHome, "troughbell", "files")
}

// herdFlag is which herd is meant.
type herdFlag struct {
	Herd string `placeholder:"NAME" help:"Which herd, where the database keeps several."`
}

// pick finds the herd meant; ok is false where the database has none yet.
func (f herdFlag) pick(tx *store.Tx) (row store.HerdRow, ok bool, err error) {
	herds, err := tx.Herds()
	if err != nil {
		return row, false, err
	}
	if f.Herd == "" {
		switch len(herds) {
		case 0:
			return row, false, nil
		case 1:
			return herds[0], true, nil
		}
		return row, false, wrongf("there are several herds: name one with --herd: %s", names(herds))
	}
	for _, called := range []func(store.HerdRow) string{
		func(h store.HerdRow) string { return label(h, herds) },
		func(h store.HerdRow) string { return h.Made }, // it may have been given another name since
	} {
		for _, h := range herds {
			if strings.EqualFold(called(h), f.Herd) {
				return h, true, nil
			}
		}
	}
	if len(herds) == 0 {
		return row, false, nil
	}
	return row, false, &noSuchHerd{wrongf("there is no herd %q; name one of: %s", f.Herd, names(herds))}
}

// label is what a herd is called with --herd: its name where no other has the
// same, else its number.
func label(h store.HerdRow, herds []store.HerdRow) string {
	same := 0
	for _, other := range herds {
		if strings.EqualFold(other.Name, h.Name) {
			same++
		}
	}
	if h.Name == "" || same > 1 {
		return fmt.Sprintf("#%d", h.ID)
	}
	return h.Name
}

// noSuchHerd is the error of a name that no herd has.
type noSuchHerd struct{ error }

// Unwrap gives the wrong call that it is.
func (e *noSuchHerd) Unwrap() error { return e.error }

func names(herds []store.HerdRow) string {
	var out []string
	for _, h := range herds {
		out = append(out, fmt.Sprintf("%q", label(h, herds)))
	}
	return strings.Join(out, ", ")
}

// herd finds the herd meant, or makes the first one. Where more is set, it makes
// a herd of the name given also beside others.
func (f herdFlag) herd(ctx context.Context, st *store.Store, zone *time.Location, now time.Time, more bool) (id store.HerdID, err error) {
	err = st.Write(ctx, func(tx *store.Tx) error {
		row, ok, err := f.pick(tx)
		var none *noSuchHerd
		switch {
		case more && errors.As(err, &none):
		case err != nil:
			return err
		case ok:
			id = row.ID
			return nil
		}
		id, err = tx.CreateHerd(f.Herd, zone.String(), now)
		return err
	})
	return id, err
}

// scratch opens a database that lives and dies with the run.
func scratch(ctx context.Context) (st *store.Store, clean func(), err error) {
	dir, err := os.MkdirTemp("", "troughbell-")
	if err != nil {
		return nil, nil, fmt.Errorf("cannot make a temporary folder: %w", err)
	}
	st, err = store.Open(ctx, filepath.Join(dir, "herd.db"), store.Options{Ephemeral: true})
	if err != nil {
		_ = os.RemoveAll(dir)
		return nil, nil, err
	}
	return st, func() { _ = st.Close(); _ = os.RemoveAll(dir) }, nil
}
