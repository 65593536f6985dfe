package main

import (
	"fmt"

	"troughbell/store"
)

// backupCmd writes a copy of the database.
type backupCmd struct {
	dbFlag
	Out string `required:"" placeholder:"FILE" help:"The file to write; it must not be there yet."`
}

// Help of the command.
func (backupCmd) Help() string { return "Example: troughbell backup --out herd-2026-11-25.db" }

// Run writes the copy.
func (c backupCmd) Run(a *app) error {
	st, err := store.OpenReader(a.ctx, c.file())
	if err != nil {
		return err
	}
	defer st.Close()
	if err := st.Backup(a.ctx, c.Out); err != nil {
		return err
	}
	_, err = fmt.Fprintf(a.stdout, "backed up to %s, checked\n", c.Out)
	return err
}

// restoreCmd puts a backup back.
type restoreCmd struct {
	dbFlag
	Force bool   `help:"Overwrite a database that is there."`
	File  string `arg:"" help:"The backup."`
}

// Help of the command.
func (restoreCmd) Help() string {
	return `Stop the program that uses the database first. The copy is checked before it
takes the place of anything. The nightly ones lie in the folder backups beside
the database, or where serve --backups says.

Example: troughbell restore backups/herd-2026-11-25.db --force`
}

// Run puts the backup in place.
func (c restoreCmd) Run(a *app) error {
	path, err := c.path()
	if err != nil {
		return err
	}
	if err := store.Restore(a.ctx, c.File, path, c.Force); err != nil {
		return err
	}
	_, err = fmt.Fprintf(a.stdout, "restored to %s\n", path)
	return err
}
