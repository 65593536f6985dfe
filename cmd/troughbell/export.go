package main

import (
	"archive/zip"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"regexp"
	"strings"

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
		rows, err = exportHerd(tx, row.ID, f)
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

// exportHerd writes one CSV file for each kind that the herd has records of.
func exportHerd(tx *store.Tx, herd store.HerdID, w io.Writer) (rows int, err error) {
	z := zip.NewWriter(w)
	for _, f := range model.Facts() {
		n, err := exportKind(tx, herd, f.Kind(), z)
		if err != nil {
			return rows, err
		}
		rows += n
	}
	return rows, z.Close()
}

func exportKind(tx *store.Tx, herd store.HerdID, kind model.Kind, z *zip.Writer) (rows int, err error) {
	var out *csv.Writer
	err = tx.ViewRows(kind, herd, func(cols, vals []string) error {
		if out == nil {
			f, err := z.Create(string(kind) + ".csv")
			if err != nil {
				return err
			}
			out = csv.NewWriter(f)
			if err := out.Write(cols); err != nil {
				return err
			}
		}
		for i, v := range vals {
			vals[i] = harmless(v)
		}
		rows++
		return out.Write(vals)
	})
	if err != nil || out == nil {
		return rows, err
	}
	out.Flush()
	return rows, out.Error()
}

// number is a plain number as the views write it.
var number = regexp.MustCompile(`^-?[0-9]+(\.[0-9]+)?(e[+-]?[0-9]+)?$`)

// harmless keeps a spreadsheet from taking a text for a formula.
func harmless(v string) string {
	if v == "" || !strings.ContainsRune("=+-@\t\r\n", rune(v[0])) || number.MatchString(v) {
		return v
	}
	return "'" + v
}
