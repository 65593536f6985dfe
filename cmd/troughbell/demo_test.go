package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// The demo needs nothing, shows texts, replies and nudges, and leaves nothing
// behind.
func TestDemoNeedsNothing(t *testing.T) {
	dir := t.TempDir()
	for _, name := range []string{"TMPDIR", "HOME", "XDG_DATA_HOME", "XDG_CONFIG_HOME"} {
		t.Setenv(name, dir)
	}
	t.Setenv("TROUGHBELL_DB", filepath.Join(dir, "mine.db"))
	t.Setenv("TROUGHBELL_TELEGRAM_TOKEN", "")
	status, out, stderr := call(t, "fence 5\n", "demo", "--no-chat")
	require.Equal(t, exitDone, status, stderr)
	require.Empty(t, stderr)
	require.Regexp(t, `(?m)^  \d\d:\d\d > `, out)
	require.Regexp(t, `(?m)^  \d\d:\d\d \* `, out)
	require.NotContains(t, out, "Fence 5 kV.", "--no-chat reads nothing")
	left, err := os.ReadDir(dir)
	require.NoError(t, err)
	require.Empty(t, left)
}

// Then the person chats with that herd.
func TestDemoThenChat(t *testing.T) {
	dir := t.TempDir()
	t.Setenv("TMPDIR", dir)
	_, season, _ := call(t, "", "demo", "--no-chat")
	status, out, stderr := call(t, "what do they weigh?\nfence 5\n", "demo")
	require.Equal(t, exitDone, status, stderr)
	require.True(t, strings.HasPrefix(out, season), "the season comes first")
	chat := out[len(season):]
	require.Contains(t, chat, "Fence 5 kV.")
	require.Regexp(t, `\d lb`, chat, "it knows the herd")
	left, err := os.ReadDir(dir)
	require.NoError(t, err)
	require.Empty(t, left)
}
