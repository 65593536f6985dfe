package main

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"time"

	"troughbell/bot/replay"
	"troughbell/store"
)

// replayCmd plays a timed log.
type replayCmd struct {
	dbFlag
	herdFlag
	zoneFlag
	pngFlag
	JSON bool   `name:"json" help:"Write JSON Lines."`
	File string `arg:"" optional:"" default:"-" help:"The log; - for standard input."`
}

// Help of the command.
func (replayCmd) Help() string {
	return `A log has one message a line:

  2026-05-16 08:10 | 7 pigs came today, 45 lb each
  2026-05-16 08:12 Ann | watered both
  2026-05-16 08:13 edit 1 | 6 pigs came today, 45 lb each
  2026-05-17 07:00 |
  2026-05-18 20:00 file weights.csv |

The last brings a document, which lies beside the log.

Example: troughbell replay --json season.log`
}

// Run plays the log.
func (c replayCmd) Run(a *app) error {
	zone, err := c.location()
	if err != nil {
		return err
	}
	var in io.Reader = newUntilDone(a.ctx, a.stdin)
	var files fs.FS
	if c.File != "-" {
		f, err := os.Open(c.File)
		if err != nil {
			return fmt.Errorf("cannot read the log: %w; give the path of a log, or - for standard input", err)
		}
		defer f.Close()
		in, files = f, os.DirFS(filepath.Dir(c.File))
	}
	st, done, err := c.open(a)
	if err != nil {
		return err
	}
	defer done()
	herd, err := c.herd(a.ctx, st, zone, time.Unix(0, 0), true)
	if err != nil {
		return err
	}
	var w replay.Writer = a.page()
	if c.JSON {
		w = replay.NewJSON(a.stdout)
	}
	return play(a, st, herd, zone, in, files, c.saving(w))
}

// open opens the database named, or one that lives and dies with the run.
func (c replayCmd) open(a *app) (*store.Store, func(), error) {
	if c.DB == "" {
		return scratch(a.ctx)
	}
	st, err := store.Open(a.ctx, c.DB, store.Options{Role: "replay"})
	if err != nil {
		return nil, nil, err
	}
	return st, func() { _ = st.Close() }, nil
}

func play(a *app, st *store.Store, herd store.HerdID, zone *time.Location, in io.Reader, files fs.FS, w replay.Writer) error {
	p, err := replay.New(a.ctx, st, herd, zone, w)
	if err != nil {
		return err
	}
	p.Files = files
	if err := p.Play(a.ctx, in); err != nil {
		return err
	}
	switch n := p.Failed(); n {
	case 0:
		return nil
	case 1:
		return errors.New("1 line of the log could not be read: put right the line that its error names, and play the log again")
	default:
		return fmt.Errorf("%d lines of the log could not be read: put right the lines that the errors name, and play the log again", n)
	}
}
