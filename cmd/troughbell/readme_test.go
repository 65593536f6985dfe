package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// TestReadme holds the conversation in README to what the program says: each of
// its lines stands in the demo season.
func TestReadme(t *testing.T) {
	readme, err := os.ReadFile(filepath.Join("..", "..", "README.md"))
	require.NoError(t, err)
	season, err := os.ReadFile(filepath.Join("..", "..", "testdata", "seasons", "demo.golden"))
	require.NoError(t, err)
	said := map[string]bool{}
	for _, l := range strings.Split(string(season), "\n") {
		said[strings.TrimSpace(l)] = true
	}
	_, after, ok := strings.Cut(string(readme), "## A conversation")
	require.True(t, ok)
	_, after, ok = strings.Cut(after, "```text\n")
	require.True(t, ok)
	talk, _, ok := strings.Cut(after, "```")
	require.True(t, ok)
	lines := 0
	for _, l := range strings.Split(talk, "\n") {
		if l = strings.TrimSpace(l); l == "" {
			continue
		}
		lines++
		require.True(t, said[l], "README says what the demo does not: %q", l)
	}
	require.Greater(t, lines, 10)
}

// TestReadmeWeek holds the week on the phone in README to what the program says.
func TestReadmeWeek(t *testing.T) {
	readme, err := os.ReadFile(filepath.Join("..", "..", "README.md"))
	require.NoError(t, err)
	week, err := os.ReadFile(filepath.Join("..", "..", "testdata", "conversations", "golden", "a-week-on-the-phone.golden"))
	require.NoError(t, err)
	_, said, ok := strings.Cut(string(week), "Saturday July 11 2026\n")
	require.True(t, ok)
	_, section, ok := strings.Cut(string(readme), "## A week on the phone\n")
	require.True(t, ok)
	require.Contains(t, section, "```text\nSaturday July 11 2026\n"+strings.TrimRight(said, "\n")+"\n```")
}
