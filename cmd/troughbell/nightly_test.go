package main

import (
	"os"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot/telegram/botapitest"
	"troughbell/store"
)

// Each copy that a season's nights have left, put back and told what was texted
// since, is the herd as it is.
func TestEveryNightlyCopyGoesOnToTheSameHerd(t *testing.T) {
	dir := t.TempDir()
	db := filepath.Join(dir, "herd.db")
	copies, err := store.CopiesOf(db, "")
	require.NoError(t, err)
	const layout = "2006-01-02 15:04"
	type line struct {
		at   time.Time
		text string
	}
	var lines []line
	for _, text := range strings.SplitAfter(strings.TrimSuffix(season, "\n"), "\n") {
		if at, err := time.Parse(layout, text[:min(len(text), len(layout))]); err == nil {
			lines = append(lines, line{at, text})
		}
	}
	require.Greater(t, len(lines), 20)
	between := func(from, to time.Time) (log string) {
		for _, l := range lines {
			if !l.at.Before(from) && l.at.Before(to) {
				log += l.text
			}
		}
		return log
	}
	play := func(log, db string) {
		if log != "" {
			status, _, stderr := replayed0(t, log, db)
			require.Equal(t, exitDone, status, stderr)
		}
	}
	end := lines[len(lines)-1].at.Add(time.Hour)
	var from time.Time
	night := time.Date(2026, 6, 20, 3, 20, 0, 0, time.UTC)
	for ; night.Before(end); night = night.AddDate(0, 0, 1) {
		play(between(from, night), db)
		from = night
		st, err := store.Open(t.Context(), db, store.Options{})
		require.NoError(t, err)
		made, err := copies.Make(t.Context(), st, night)
		require.NoError(t, err)
		require.NoError(t, copies.Prune(made.On))
		require.NoError(t, st.Close())
	}
	play(between(from, end), db)
	want := records(t, db)

	kept, err := copies.List()
	require.NoError(t, err)
	require.Len(t, kept, 11, "seven days, and the Sundays of four weeks before")
	for _, k := range kept {
		back := filepath.Join(dir, "back-"+k.On.String()+".db")
		status, _, stderr := call(t, "", "restore", k.Path, "--db", back)
		require.Equal(t, exitDone, status, stderr)
		tail := between(k.On.At(3*60+20, time.UTC), end)
		require.NotEmpty(t, tail)
		require.NotEqual(t, want, records(t, back))
		play(tail, back)
		sameLines(t, want, records(t, back), int(k.On))
	}
}

// The running bot makes a copy at once where there is none, which goes over
// nothing while it runs, and none where none is wanted.
func TestServeKeepsBackups(t *testing.T) {
	t.Parallel()
	api := botapitest.New(testToken)
	defer api.Close()
	dir := t.TempDir()
	db := filepath.Join(dir, "herd.db")
	p := start(t, api, db)
	pair(t, api, p)
	var copies []string
	eventually(t, func() bool {
		copies, _ = filepath.Glob(filepath.Join(dir, "backups", "herd-20??-??-??.db"))
		return len(copies) > 0
	}, p)
	status, _, stderr := call(t, "", "restore", copies[0], "--db", db, "--force")
	require.Equal(t, exitFailed, status)
	require.Contains(t, stderr, "stop that one first")
	p.stop(t, syscall.SIGTERM)
	status, _, stderr = call(t, "", "restore", copies[0], "--db", db)
	require.Equal(t, exitFailed, status)
	require.Contains(t, stderr, "--force")
	status, _, stderr = call(t, "", "restore", copies[0], "--db", db, "--force")
	require.Equal(t, exitDone, status, stderr)

	require.NoError(t, os.RemoveAll(filepath.Join(dir, "backups")))
	p = startWith(t, []string{"TROUGHBELL_TELEGRAM_TOKEN=" + api.Token, "TROUGHBELL_BACKUPS=off"},
		"serve", "--db", db, "--telegram-api", api.URL())
	for l := p.line(t); l != "ready"; l = p.line(t) { // the copy may be of before the pairing
		require.Contains(t, l, "pair ")
	}
	p.stop(t, syscall.SIGTERM)
	require.NoDirExists(t, filepath.Join(dir, "backups"))
}
