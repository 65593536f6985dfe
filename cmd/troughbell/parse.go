package main

import (
	"bufio"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"strings"
	"time"
	"unicode/utf8"

	"troughbell/bot"
	"troughbell/bot/replay"
	"troughbell/model"
	"troughbell/store"
)

// parseCmd says what texts would be recorded as.
type parseCmd struct {
	dbFlag
	herdFlag
	JSON bool   `name:"json" help:"Write one JSON line for each text."`
	Now  string `placeholder:"TIME" help:"The moment of the texts, as 2026-08-11T18:30, in the herd's zone. Default: now."`
}

// Help of the command.
func (parseCmd) Help() string {
	return `Reads one message a line from standard input.

Example: echo "dot 38 girth" | troughbell parse --db herd.db --json`
}

// Run reads the texts.
func (c parseCmd) Run(a *app) error {
	st, err := store.OpenReader(a.ctx, c.file())
	if err != nil {
		return err
	}
	defer st.Close()
	var s *bot.Parsing
	err = st.Read(a.ctx, func(tx *store.Tx) error {
		row, ok, err := c.pick(tx)
		if err != nil {
			return err
		}
		if !ok {
			return errors.New("the database has no herd yet; set one up with troughbell chat")
		}
		s, err = bot.NewDesk().Parsing(tx, row.ID)
		return err
	})
	if err != nil {
		return err
	}
	now, err := c.moment(s.State.Zone)
	if err != nil {
		return err
	}
	return c.read(a, s, now)
}

var momentLayouts = []string{time.RFC3339, "2006-01-02T15:04Z07:00", "2006-01-02T15:04:05", "2006-01-02T15:04", "2006-01-02 15:04"}

func (c parseCmd) moment(zone *time.Location) (time.Time, error) {
	if c.Now == "" {
		return time.Now().In(zone), nil
	}
	for _, l := range momentLayouts {
		if t, err := time.ParseInLocation(l, c.Now, zone); err == nil {
			return t.In(zone), nil
		}
	}
	return time.Time{}, wrongf("--now %q: write it as 2026-08-11T18:30", c.Now)
}

func (c parseCmd) read(a *app, s *bot.Parsing, now time.Time) error {
	in, out := bufio.NewReader(newUntilDone(a.ctx, a.stdin)), bufio.NewWriter(a.stdout)
	bad := 0
	for {
		l, rerr := in.ReadString('\n')
		if l != "" {
			if !utf8.ValidString(l) {
				bad++
			}
			if err := c.one(out, s, now, strings.TrimRight(l, "\r\n")); err != nil {
				return err
			}
			if err := out.Flush(); err != nil {
				return err
			}
		}
		if errors.Is(rerr, io.EOF) {
			break
		}
		if rerr != nil {
			return fmt.Errorf("read the texts: %w", rerr)
		}
	}
	if bad > 0 {
		return fmt.Errorf("lines that are not valid UTF-8: %d; save the texts as UTF-8 and try again", bad)
	}
	return nil
}

// one writes what one line would be recorded as.
func (c parseCmd) one(out io.Writer, s *bot.Parsing, now time.Time, l string) error {
	text := l
	if utf8.ValidString(l) {
		text = replay.DecodeText(l)
	}
	p, err := s.Text(now, text)
	if err != nil {
		return err
	}
	if !utf8.ValidString(l) {
		text = strings.ToValidUTF8(l, "\uFFFD")
		p.Entries = []map[string]any{{"intent": "none", "reason": "not_utf8", "date": model.DayOf(now).String()}}
	}
	if !c.JSON {
		_, err := fmt.Fprintf(out, "%s\n  %s\n", text, strings.ReplaceAll(p.Reply, "\n", "\n  "))
		return err
	}
	e := json.NewEncoder(out)
	e.SetEscapeHTML(false)
	return e.Encode(struct {
		Text    string           `json:"text"`
		Entries []map[string]any `json:"entries"`
		Reply   string           `json:"reply"`
	}{text, p.Entries, p.Reply})
}
