package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// One message a line, each answered, to the end of the input.
func TestChatOverAPipe(t *testing.T) {
	db := filepath.Join(t.TempDir(), "herd.db")
	status, out, stderr := call(t, "our herd is Pipe, central time, US units\n\n   \n4 pigs came today, 48 lb each\nfence 5.2", "chat", "--db", db)
	require.Equal(t, exitDone, status, stderr)
	require.Contains(t, out, "Pipe")
	require.Contains(t, out, "4 pigs came")
	require.Contains(t, out, "Fence 5.2 kV", "the last line needs no line break")
	require.Equal(t, map[string]int{"fence 5.2": 1}, fences(t, db))
	require.Len(t, journals(t, db), 1)

	status, out, _ = call(t, "fence 6.1\n", "chat", "--db", db)
	require.Equal(t, exitDone, status)
	require.Contains(t, out, "Fence 6.1 kV")
	require.Equal(t, map[string]int{"fence 5.2": 1, "fence 6.1": 1}, fences(t, db), "the herd stays in the file")

	status, out, _ = call(t, "", "chat", "--db", db)
	require.Equal(t, exitDone, status)
	require.NotContains(t, out, "Welcome")
}

// The number of a button shown last is the button.
func TestNumbersAreButtons(t *testing.T) {
	db := filepath.Join(t.TempDir(), "herd.db")
	_, out, _ := call(t, "our herd is Pipe, US units\n4 pigs came today, 48 lb each\n2\n", "chat", "--db", db)
	require.Contains(t, out, "2 265 lb")
	require.Contains(t, out, "Target 265 lb")
}

// What a chat cannot say or keep is one line, and a failure.
func TestFilesThatFail(t *testing.T) {
	dir := t.TempDir()
	sound := kept(t, orchard)
	whole, err := os.ReadFile(sound)
	require.NoError(t, err)
	damaged := append([]byte(nil), whole...)
	for i := 4096; i < len(damaged); i++ {
		damaged[i] ^= 0x5a
	}
	at := func(name string, content []byte) string {
		path := filepath.Join(dir, name)
		require.NoError(t, os.WriteFile(path, content, 0o600))
		return path
	}
	for name, path := range map[string]string{
		"damaged":       at("damaged.db", damaged),
		"cut short":     at("short.db", whole[:len(whole)/2+100]),
		"another kind":  at("text.db", []byte(strings.Repeat("this is no database. ", 400))),
		"a folder":      dir,
		"no such place": filepath.Join(dir, "none", "herd.db"),
	} {
		for _, cmd := range []string{"chat", "replay", "parse"} {
			status, stdout, stderr := call(t, "fence 5\n", cmd, "--db", path)
			require.Equal(t, exitFailed, status, "%s: %s %s", name, cmd, stdout)
			oneLine(t, stderr)
		}
	}
}

// The token has no flag: a process list would show it.
func TestNoTokenFlag(t *testing.T) {
	_, help, _ := call(t, "", "serve", "--help")
	require.Contains(t, help, "TROUGHBELL_TELEGRAM_TOKEN")
	require.Contains(t, help, "TROUGHBELL_TELEGRAM_TOKEN_FILE")
	require.NotContains(t, help, "--token")
	require.NotContains(t, help, "--telegram-token")
	status, _, stderr := call(t, "", "serve", "--token", "1:x")
	require.Equal(t, exitWrong, status)
	oneLine(t, stderr)

	t.Setenv("TROUGHBELL_TELEGRAM_TOKEN", "")
	t.Setenv("TROUGHBELL_TELEGRAM_TOKEN_FILE", "")
	status, _, stderr = call(t, "", "serve", "--db", filepath.Join(t.TempDir(), "herd.db"))
	require.NotEqual(t, exitDone, status)
	oneLine(t, stderr)
	require.Contains(t, stderr, "TROUGHBELL_TELEGRAM_TOKEN")
}

// The help of each command has an example, and names its flags.
func TestHelp(t *testing.T) {
	flags := map[string][]string{
		"demo": {"--no-chat"}, "chat": {"--db", "--herd", "TROUGHBELL_DB"}, "serve": {"--db", "--telegram-api", "TROUGHBELL_TELEGRAM_API"},
		"replay": {"--db", "--herd", "--zone", "--json"}, "parse": {"--db", "--herd", "--now", "--json"},
		"export": {"--db", "--herd", "--out"}, "backup": {"--db", "--out"}, "restore": {"--db", "--force"},
	}
	for cmd, want := range flags {
		status, help, stderr := call(t, "", cmd, "--help")
		require.Equal(t, exitDone, status, stderr)
		require.Empty(t, stderr)
		require.Contains(t, help, "Example: ", cmd)
		require.Contains(t, help, "troughbell "+cmd, cmd)
		require.Contains(t, help, "--log-level", cmd)
		for _, f := range want {
			require.Contains(t, help, f, cmd)
		}
		_, all, _ := call(t, "", "--help")
		require.Contains(t, all, "\n  "+cmd)
	}
}

// A call that is wrong is status 2 and one line.
func TestWrongCalls(t *testing.T) {
	for _, args := range [][]string{
		{"fly"},
		{"chat", "extra"},
		{"replay", "a.log", "b.log"},
		{"backup"},
		{"export"},
		{"restore"},
		{"chat", "--zone", "Nowhere"},
		{"chat", "--log-level", "loud"},
		{"parse", "--json=maybe"},
		{"demo", "--chat"},
	} {
		status, stdout, stderr := call(t, "", args...)
		require.Equal(t, exitWrong, status, args)
		require.Empty(t, stdout)
		oneLine(t, stderr)
	}
}
