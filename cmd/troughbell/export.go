package main

import (
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"time"

	"troughbell/bot"
	"troughbell/bot/answer"
	"troughbell/bot/document"
	"troughbell/model"
	"troughbell/store"
)

// exportCmd writes a herd's records as CSV files, and its other documents.
type exportCmd struct {
	dbFlag
	herdFlag
	Out      string `placeholder:"FILE.zip" help:"Write the records as CSV in a ZIP."`
	Report   string `placeholder:"FILE.html" help:"Write the season as one page to read or print."`
	Season   string `placeholder:"YEAR" help:"Of which season the report is: its year, or last. Default: today's."`
	Calendar string `placeholder:"FILE.ics" help:"Write the coming dates as an iCalendar file."`
}

// Help of the command.
func (exportCmd) Help() string {
	return `The ZIP has one file for each kind of record, one row a record, amounts as
plain numbers in SI units, days as 2026-05-16. No file may be there yet. A calendar
goes over those that "calendar file" in the chat gave; only those are noted down, so
what falls away after this one is taken back by none.

Example: troughbell export --out herd.zip

Example: troughbell export --report season.html --calendar dates.ics

Example: troughbell export --report 2025.html --season 2025`
}

// output is one file that is wanted.
type output struct{ flag, path, what, season string }

// Run writes what is wanted, all of the same moment.
func (c exportCmd) Run(a *app) error {
	var wanted []output
	for _, o := range []output{{"--out", c.Out, "tables", ""}, {"--report", c.Report, "report", c.Season}, {"--calendar", c.Calendar, "calendar", ""}} {
		if o.path == "" {
			continue
		}
		if _, err := os.Stat(o.path); err == nil {
			return fmt.Errorf("%s is there already: name another file with %s", o.path, o.flag)
		}
		wanted = append(wanted, o)
	}
	if c.Season != "" && c.Report == "" {
		return wrongf("--season is of the report: name its file with --report FILE.html")
	}
	if len(wanted) == 0 {
		return wrongf("say what to write: --out FILE.zip, --report FILE.html or --calendar FILE.ics")
	}
	st, err := store.OpenReader(a.ctx, c.file())
	if err != nil {
		return err
	}
	defer st.Close()
	return st.Read(a.ctx, func(tx *store.Tx) error {
		row, ok, err := c.pick(tx)
		if err != nil {
			return err
		}
		if !ok {
			return errors.New("the database has no herd yet; set one up with troughbell chat")
		}
		s, err := bot.NewDesk().State(tx, row.ID)
		if err != nil {
			return err
		}
		now := time.Now().In(s.Zone)
		if wanted, err = bySeason(s, wanted, now); err != nil {
			return err
		}
		for _, o := range wanted {
			said, err := o.write(tx, s, now)
			if err != nil {
				return err
			}
			if _, err := fmt.Fprintln(a.stdout, said); err != nil {
				return err
			}
		}
		return nil
	})
}

// bySeason settles which season each file is of: today's where the one named goes
// on still.
func bySeason(s *bot.State, wanted []output, now time.Time) ([]output, error) {
	for i, o := range wanted {
		if o.season == "" {
			continue
		}
		over, running := answer.FindSeasons(s.Herd, o.season, model.DayOf(now))
		switch {
		case running:
			wanted[i].season = ""
		case len(over) == 0:
			return nil, fmt.Errorf("--season %s: %s", o.season, answer.NoSeason(s.Herd, now))
		}
	}
	return wanted, nil
}

// write writes the file beside its place and moves it there when whole: never
// half a file. It says what was written.
func (o output) write(tx *store.Tx, s *bot.State, now time.Time) (said string, err error) {
	f, err := os.CreateTemp(filepath.Dir(o.path), ".export-*")
	if err != nil {
		return "", fmt.Errorf("cannot write %s: %w; name another place with %s", o.path, err, o.flag)
	}
	defer os.Remove(f.Name())
	said, err = o.fill(f, tx, s, now)
	if err = errors.Join(err, f.Sync(), f.Close()); err != nil {
		return "", err
	}
	if err := os.Rename(f.Name(), o.path); err != nil {
		return "", fmt.Errorf("cannot write %s: %w", o.path, err)
	}
	return said, nil
}

func (o output) fill(to io.Writer, tx *store.Tx, s *bot.State, now time.Time) (said string, err error) {
	if o.what == "tables" { // of any size
		rows, err := document.Tables(tx, s.Row.ID, s.Herd.Units != model.Metric, to)
		return fmt.Sprintf("exported %d records to %s", rows, o.path), err
	}
	d, err := s.Documents(tx, bot.Wanted{What: o.what, Season: o.season}, now)
	if err != nil {
		return "", err
	}
	_, err = to.Write(d[0].Bytes)
	return fmt.Sprintf("wrote the %s to %s", o.what, o.path), err
}
