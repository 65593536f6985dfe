package main

import (
	"bufio"
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// orchard sets up an invented herd: two groups of ages would blur the sums, so
// it has four pigs of one.
const orchard = `# An invented herd.
2026-04-11 08:10 | our herd is Orchard, central time (America/Chicago), US units
2026-04-11 08:12 | 4 pigs came today, Hazel, Clover, Otis and Pepper, about 45 lb each, born Feb 12. Hazel and Clover are gilts, Otis and Pepper barrows
2026-04-11 08:15 | two feeders: big hopper holds 300 lb, small hopper holds 150 lb
2026-04-11 08:17 | two water barrels: shed 55 gal with 2 nipples, hill 55 gal 1 nipple
2026-04-11 08:20 | pens: Apple 50x80 ft, Cherry 60x70 ft. they are in Apple
2026-04-11 08:22 | wallow is 6x8 ft and 6 inches deep
2026-04-11 08:24 | target 265 lb, chore day Saturday 7 am
2026-04-11 08:26 | mix is 74 lb corn, 23 lb soybean meal, 3 lb mineral
`

// orchardJuly brings the herd to a chore day in July with every level known.
const orchardJuly = orchard + `2026-06-27 08:40 | Hazel 152 lb, Clover 158, Otis 164, Pepper 147
2026-07-04 08:30 | filled big hopper 160 lb, full
2026-07-04 08:32 | filled small hopper 80 lb, full
2026-07-04 08:35 | barrels full
2026-07-04 08:36 | wallow topped up
2026-07-04 08:37 | spent $45 on straw
2026-07-04 08:38 | high 95 today
`

// said is one line of "replay --json" or of "parse --json", read as another
// program reads it.
type said struct {
	At       string           `json:"at"`
	Kind     string           `json:"kind"`
	Line     int              `json:"line"`
	Who      string           `json:"who"`
	About    []string         `json:"about"`
	Standing *bool            `json:"standing"`
	Grade    string           `json:"grade"`
	Text     string           `json:"text"`
	Entries  []map[string]any `json:"entries"`
	Buttons  [][]string       `json:"buttons"`
	Reply    string           `json:"reply"`

	raw string
}

// jsonLines reads JSON Lines.
func jsonLines(t *testing.T, out string) []said {
	t.Helper()
	var all []said
	s := bufio.NewScanner(strings.NewReader(out))
	s.Buffer(nil, 1<<20)
	for s.Scan() {
		e := said{raw: s.Text()}
		require.NoError(t, json.Unmarshal(s.Bytes(), &e), s.Text())
		all = append(all, e)
	}
	require.NoError(t, s.Err())
	return all
}

// replayed plays a log in Chicago.
func replayed(t *testing.T, log string, args ...string) (status int, all []said, stderr string) {
	t.Helper()
	status, stdout, stderr := call(t, log, append([]string{"replay", "--json", "--zone", "America/Chicago"}, args...)...)
	return status, jsonLines(t, stdout), stderr
}

// only is the events of a kind.
func only(all []said, kind string) []said {
	var out []said
	for _, e := range all {
		if e.Kind == kind {
			out = append(out, e)
		}
	}
	return out
}

// kinds lists what came in what order.
func kinds(all []said) []string {
	var out []string
	for _, e := range all {
		out = append(out, e.Kind)
	}
	return out
}

// kept makes a database with the herd of a log.
func kept(t *testing.T, log string) (db string) {
	t.Helper()
	db = filepath.Join(t.TempDir(), "herd.db")
	status, _, stderr := replayed(t, log, "--db", db)
	require.Equal(t, exitDone, status, stderr)
	return db
}

// parsed reads texts against a database.
func parsed(t *testing.T, db, now string, texts ...string) []said {
	t.Helper()
	status, stdout, stderr := call(t, strings.Join(texts, "\n")+"\n", "parse", "--db", db, "--now", now, "--json")
	require.Equal(t, exitDone, status, stderr)
	all := jsonLines(t, stdout)
	require.Len(t, all, len(texts))
	return all
}

// oneLine holds an error to its promise.
func oneLine(t *testing.T, stderr string) {
	t.Helper()
	require.Equal(t, 1, strings.Count(stderr, "\n"), "one line: %s", stderr)
	require.True(t, strings.HasPrefix(stderr, "troughbell: "), stderr)
	require.NotContains(t, stderr, "goroutine")
}

func write(t *testing.T, path, text string) {
	t.Helper()
	require.NoError(t, os.WriteFile(path, []byte(text), 0o600))
}
