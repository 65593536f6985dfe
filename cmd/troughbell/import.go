package main

import (
	"bufio"
	"errors"
	"fmt"
	"io"
	"strings"
	"time"

	"troughbell/bot"
	"troughbell/bot/terminal"
	"troughbell/store"
)

// importCmd takes records in from a file.
type importCmd struct {
	dbFlag
	herdFlag
	zoneFlag
	File string `arg:"" placeholder:"FILE" help:"A ZIP that export wrote, a CSV file of it, or a list of weights with a head such as date,pig,weight."`
	Yes  bool   `help:"Import without asking."`
}

// Help of the command.
func (importCmd) Help() string {
	return `Says what is in the file, and takes it in when you say so, all of it at once.
What the herd has already is skipped, so that taking a file in twice changes
nothing. Lines that cannot be read are named and left out; the status is then 1.
undo in the chat takes the whole file back.

Example: troughbell import herd.zip

Example: troughbell import --yes weights.csv`
}

// errNotYet ends a transaction that was only to look.
var errNotYet = errors.New("nothing is kept yet")

// Run takes the file in.
func (c importCmd) Run(a *app) error {
	file, err := terminal.ReadUpload(c.File)
	if err != nil {
		return err
	}
	asks := terminal.Interactive(a.stdin, a.stdout)
	zone, err := c.location()
	if err != nil {
		return err
	}
	path, err := c.path()
	if err != nil {
		return err
	}
	st, err := store.Open(a.ctx, path, store.Options{})
	if err != nil {
		return err
	}
	defer st.Close()
	desk, now := bot.NewDesk(), time.Now()
	var text string
	var fresh, left int
	// A herd that is made for the file is not kept unless the file is.
	err = st.Write(a.ctx, func(tx *store.Tx) error {
		i, err := c.importing(tx, file, zone, now)
		if err == nil {
			text, fresh, left, err = desk.Preview(tx, i)
		}
		return errors.Join(err, errNotYet)
	})
	desk = bot.NewDesk()
	if err = onlyNotYet(err); err != nil {
		return err
	}
	if _, err := fmt.Fprintln(a.stdout, text); err != nil {
		return err
	}
	switch {
	case fresh == 0 && left > 0:
		return errors.New("no line could be imported; put right what is named above and start again")
	case fresh == 0:
		return nil
	case c.Yes:
	case !asks:
		return wrongf("nothing imported: nobody can be asked here; add --yes to import")
	default:
		if yes, err := agreed(a, fresh); err != nil || !yes {
			return err
		}
	}
	text, err = "", nil
	err = st.Write(a.ctx, func(tx *store.Tx) error {
		i, err := c.importing(tx, file, zone, now)
		if err == nil {
			text, err = desk.Import(tx, i)
		}
		return err
	})
	if err != nil {
		return err
	}
	if _, err := fmt.Fprintln(a.stdout, text); err != nil {
		return err
	}
	if left > 0 {
		return fmt.Errorf("%d lines were left out; put right what is named above and import the file again", left)
	}
	return nil
}

// onlyNotYet is an error without the one that only ended a look.
func onlyNotYet(err error) error {
	var parts interface{ Unwrap() []error }
	if errors.As(err, &parts) {
		for _, e := range parts.Unwrap() {
			if !errors.Is(e, errNotYet) {
				return e
			}
		}
		return nil
	}
	if errors.Is(err, errNotYet) {
		return nil
	}
	return err
}

// importing finds the herd meant, or makes the first one, and who owns it.
func (c importCmd) importing(tx *store.Tx, file bot.Upload, zone *time.Location, now time.Time) (bot.Importing, error) {
	i := bot.Importing{File: file, Now: now}
	row, ok, err := c.pick(tx)
	switch {
	case err != nil:
		return i, err
	case ok:
		i.Herd = row.ID
	default:
		if i.Herd, err = tx.CreateHerd(c.Herd, zone.String(), now); err != nil {
			return i, err
		}
	}
	person, err := terminal.Owner(tx, i.Herd)
	if err != nil {
		return i, err
	}
	i.By, _, err = tx.Member(i.Herd, person)
	return i, err
}

// agreed asks the person at the terminal.
func agreed(a *app, n int) (bool, error) {
	if _, err := fmt.Fprintf(a.stdout, "Import the %d? (yes, no) ", n); err != nil {
		return false, err
	}
	line, err := bufio.NewReader(a.stdin).ReadString('\n')
	if err != nil && !errors.Is(err, io.EOF) {
		return false, fmt.Errorf("read the answer: %w", err)
	}
	switch strings.ToLower(strings.TrimSpace(line)) {
	case "y", "yes", "import":
		return true, nil
	}
	_, err = fmt.Fprintln(a.stdout, "Nothing imported.")
	return false, err
}
