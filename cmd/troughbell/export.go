package main

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"

	"troughbell/bot"
	"troughbell/bot/document"
	"troughbell/model"
	"troughbell/store"
)

// exportCmd writes a herd's records as CSV files.
type exportCmd struct {
	dbFlag
	herdFlag
	Out string `required:"" placeholder:"FILE.zip" help:"The file to write; it must not be there yet."`
}

// Help of the command.
func (exportCmd) Help() string {
	return `One file for each kind of record, one row a record, amounts as plain
numbers in SI units, days as 2026-05-16.

Example: troughbell export --out herd.zip`
}

// Run writes the ZIP.
func (c exportCmd) Run(a *app) error {
	st, err := store.OpenReader(a.ctx, c.file())
	if err != nil {
		return err
	}
	defer st.Close()
	if _, err := os.Stat(c.Out); err == nil {
		return fmt.Errorf("%s is there already: name another file with --out", c.Out)
	}
	// Written beside its place and moved there when whole: never half a file.
	f, err := os.CreateTemp(filepath.Dir(c.Out), ".export-*")
	if err != nil {
		return fmt.Errorf("cannot write %s: %w; name another place with --out", c.Out, err)
	}
	defer os.Remove(f.Name())
	var rows int
	err = st.Read(a.ctx, func(tx *store.Tx) error {
		row, ok, err := c.pick(tx)
		if err != nil {
			return err
		}
		if !ok {
			return errors.New("the database has no herd yet; set one up with troughbell chat")
		}
		desk := bot.NewDesk()
		s, err := desk.State(tx, row.ID)
		if err != nil {
			return err
		}
		rows, err = document.Tables(tx, row.ID, s.Herd.Units != model.Metric, f)
		return err
	})
	if err = errors.Join(err, f.Sync(), f.Close()); err != nil {
		return err
	}
	if err := os.Rename(f.Name(), c.Out); err != nil {
		return fmt.Errorf("cannot write %s: %w", c.Out, err)
	}
	_, err = fmt.Fprintf(a.stdout, "exported %d records to %s\n", rows, c.Out)
	return err
}
