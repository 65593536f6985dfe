package main

import (
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// update rewrites the golden season: go test ./cmd/troughbell -run Season -update.
var update = flag.Bool("update", false, "rewrite the golden season")

// TestSeason plays the demo and compares all that is said with what was said
// when a person last read it and found it good.
func TestSeason(t *testing.T) {
	status, got, stderr := call(t, "", "demo", "--no-chat")
	require.Equal(t, exitDone, status, stderr)
	golden := filepath.Join("..", "..", "testdata", "seasons", "demo.golden")
	if *update {
		require.NoError(t, os.MkdirAll(filepath.Dir(golden), 0o755))
		require.NoError(t, os.WriteFile(golden, []byte(got), 0o644))
	}
	want, err := os.ReadFile(golden)
	require.NoError(t, err)
	require.Equal(t, string(want), got)
}

// TestSeasonShows looks for what the demo is there to show.
func TestSeasonShows(t *testing.T) {
	_, got, _ := call(t, "", "demo", "--no-chat")
	for what, phrase := range map[string]string{
		"a standing message with what to mix and pour": "mix ",
		"a worming with its clear day":                 "Wormed all",
		"a doubtful reading asked about":               "does not fit",
		"a leak found":                                 "Leak",
		"heat":                                         "heat",
		"an answer on the butcher day":                 "270 lb about",
		"a range":                                      "–",
	} {
		require.Contains(t, got, phrase, what)
	}
	require.NotContains(t, got, "line ", "every line of the season can be read")
	require.LessOrEqual(t, strings.Count(got, "Not understood"), 4, "the demo shows texts that are understood")
}

// BenchmarkSeason plays the demo season: texts, replies and nudges of five
// months.
func BenchmarkSeason(b *testing.B) {
	for b.Loop() {
		if status := run(b.Context(), []string{"demo", "--no-chat"}, strings.NewReader(""), discard{}, discard{}); status != exitDone {
			b.Fatal("the demo failed")
		}
	}
}

type discard struct{}

func (discard) Write(p []byte) (int, error) { return len(p), nil }
