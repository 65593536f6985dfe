package main

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// season is a log long enough to be cut anywhere: nudges, questions left open,
// edits, ticks.
const season = orchardJuly + `2026-07-04 08:40 | how long till butcher?
2026-07-04 08:41 | why?
2026-07-11 07:00 |
2026-07-11 07:05 | done
2026-07-11 08:00 | Hazel 40 inches
2026-07-11 08:01 Ann | fence 5.2
2026-07-12 09:00 | undo
2026-07-18 12:00 |
2026-07-18 12:30 | wormed all with ivermectin, 18 days withdrawal
2026-07-25 08:00 | big hopper half left
2026-07-25 08:05 | how much feed is left?
`

// raws is the events as they were written.
func raws(all []said) []string {
	var out []string
	for _, e := range all {
		out = append(out, e.raw)
	}
	return out
}

// A log cut in two, wherever, and played over one database, gives the same events and
// the same records as in one run.
func TestCutLogs(t *testing.T) {
	lines := strings.SplitAfter(strings.TrimSuffix(season, "\n"), "\n")
	dir := t.TempDir()
	whole := filepath.Join(dir, "whole.db")
	_, want, _ := replayed(t, season, "--db", whole)
	require.NotEmpty(t, only(want, "nudge"))
	wantRecords := records(t, whole)
	for cut := 2; cut < len(lines); cut += 3 {
		db := filepath.Join(dir, fmt.Sprintf("cut-%d.db", cut))
		_, first, _ := replayed(t, strings.Join(lines[:cut], ""), "--db", db)
		_, second, _ := replayed(t, strings.Join(lines[cut:], ""), "--db", db)
		sameLines(t, raws(want), append(raws(first), raws(second)...), cut)
		sameLines(t, wantRecords, records(t, db), cut)
	}
}

// sameLines compares line by line: a difference of whole logs cannot be read.
func sameLines(t *testing.T, want, got []string, cut int) {
	t.Helper()
	for i := range min(len(want), len(got)) {
		require.Equal(t, want[i], got[i], "cut behind line %d", cut)
	}
	require.Len(t, got, len(want), "cut behind line %d", cut)
}

// Without --db nothing is kept, and nothing is left behind.
func TestReplayLeavesNothing(t *testing.T) {
	dir := t.TempDir()
	t.Setenv("TMPDIR", dir)
	t.Setenv("XDG_DATA_HOME", filepath.Join(dir, "data"))
	t.Setenv("TROUGHBELL_DB", "")
	_, all, _ := replayed(t, orchard)
	_, again, _ := replayed(t, orchard)
	require.Equal(t, raws(all), raws(again), "the second run knows nothing of the first")
	left, err := os.ReadDir(dir)
	require.NoError(t, err)
	require.Empty(t, left)
}

// A second log must not begin before the first has ended.
func TestGoingOnBackwards(t *testing.T) {
	db := kept(t, orchard)
	status, all, _ := replayed(t, "2026-04-10 09:00 | fence 5\n", "--db", db)
	require.Equal(t, exitFailed, status)
	require.Equal(t, []string{"error", "ready"}, kinds(all))
}

// The flag wins over the environment, which wins over the data folder.
func TestWhereTheDatabaseLies(t *testing.T) {
	dir := t.TempDir()
	t.Setenv("XDG_DATA_HOME", dir)
	status, _, stderr := call(t, "fence 5.1\n", "chat")
	require.Equal(t, exitDone, status, stderr)
	require.Equal(t, map[string]int{"fence 5.1": 1}, fences(t, filepath.Join(dir, "troughbell", "herd.db")))

	env, flag := filepath.Join(dir, "env.db"), filepath.Join(dir, "flag.db")
	t.Setenv("TROUGHBELL_DB", env)
	status, _, stderr = call(t, "fence 5.2\n", "chat")
	require.Equal(t, exitDone, status, stderr)
	status, _, stderr = call(t, "fence 5.3\n", "chat", "--db", flag)
	require.Equal(t, exitDone, status, stderr)
	require.Equal(t, map[string]int{"fence 5.2": 1}, fences(t, env))
	require.Equal(t, map[string]int{"fence 5.3": 1}, fences(t, flag))
}

// A command that only reads makes no folder.
func TestReadingMakesNothing(t *testing.T) {
	dir := t.TempDir()
	t.Setenv("XDG_DATA_HOME", filepath.Join(dir, "data"))
	t.Setenv("TROUGHBELL_DB", "")
	for _, args := range [][]string{{"parse"}, {"export", "--out", dir + "/a.zip"}, {"backup", "--out", dir + "/a.db"}} {
		status, _, stderr := call(t, "fence 5\n", args...)
		require.Equal(t, exitFailed, status)
		oneLine(t, stderr)
	}
	left, err := os.ReadDir(dir)
	require.NoError(t, err)
	require.Empty(t, left)
}

// Several herds in one file: the one meant must be named.
func TestSeveralHerds(t *testing.T) {
	db := filepath.Join(t.TempDir(), "herds.db")
	for name, log := range map[string]string{
		"Orchard": "2026-05-16 08:10 | our herd is Orchard, 4 pigs came today, 48 lb each\n",
		"Ridge":   "2026-05-16 08:10 | 2 pigs came today, 52 lb each\n2026-05-16 08:12 | fence 4.4\n",
		"Old":     "2026-05-16 08:10 | our herd is New Name\n",
	} {
		status, _, stderr := replayed(t, log, "--db", db, "--herd", name)
		require.Equal(t, exitDone, status, stderr)
	}
	out := filepath.Join(t.TempDir(), "herd.zip")
	for _, args := range [][]string{{"chat"}, {"replay"}, {"parse"}, {"export", "--out", out}} {
		status, stdout, stderr := call(t, "fence 5\n", append(args, "--db", db)...)
		require.Equal(t, exitWrong, status, args)
		require.Empty(t, stdout)
		oneLine(t, stderr)
		for _, name := range []string{"Orchard", "Ridge", "New Name", "--herd"} {
			require.Contains(t, stderr, name)
		}
	}
	for _, args := range [][]string{{"chat"}, {"parse"}, {"export", "--out", out}} {
		status, _, stderr := call(t, "fence 5\n", append(args, "--db", db, "--herd", "Meadow")...)
		require.Equal(t, exitWrong, status, args)
		oneLine(t, stderr)
		require.Contains(t, stderr, "Meadow")
	}
	for _, name := range []string{"Ridge", "ridge", "New Name", "Old"} {
		status, _, stderr := call(t, "fence 5\n", "parse", "--db", db, "--herd", name)
		require.Equal(t, exitDone, status, stderr)
	}
	status, _, stderr := replayed(t, "2026-05-17 08:10 | fence 6.6\n", "--db", db, "--herd", "Old")
	require.Equal(t, exitDone, status, stderr)
	require.Len(t, journals(t, db), 3, "a herd that took another name is not made anew")
	require.Equal(t, map[string]int{"fence 4.4": 1, "fence 6.6": 1}, fences(t, db))
}
