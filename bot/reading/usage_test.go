package reading

import (
	"bufio"
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"sort"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// leastUsed is how often a pair of words stands in the texts for it to be counted.
const leastUsed = 2

// TestUsage: what is counted are words of the lexicon. With USAGE=write the texts that
// the reading may be tuned to are counted anew; those kept aside are never among them.
func TestUsage(t *testing.T) {
	l := words()
	files, err := filepath.Glob("../../testdata/texts/*.jsonl")
	require.NoError(t, err)
	one, two := map[string]int{}, map[string]int{}
	for _, name := range files {
		if strings.HasPrefix(filepath.Base(name), "aside") {
			continue
		}
		f, err := os.Open(name)
		require.NoError(t, err)
		in := bufio.NewScanner(f)
		in.Buffer(nil, 1<<20)
		for in.Scan() {
			var row struct {
				Text string `json:"text"`
			}
			require.NoError(t, json.Unmarshal(in.Bytes(), &row))
			before := usageEdge
			toks := scan(nil, row.Text, false)
			for i := range append(toks, token{kind: tokBreak}) {
				w := usageEdge
				if i < len(toks) {
					w = vocabulary(l, &toks[i])
				}
				one[w]++
				two[before+" "+w]++
				before = w
			}
		}
		require.NoError(t, in.Err())
		require.NoError(t, f.Close())
	}
	var lines []string
	for w, n := range one {
		lines = append(lines, fmt.Sprintf("%s %d", w, n))
	}
	for w, n := range two {
		if n >= leastUsed {
			lines = append(lines, fmt.Sprintf("%s %d", w, n))
		}
	}
	sort.Strings(lines)
	got := strings.Join(lines, "\n") + "\n"
	if os.Getenv("USAGE") == "write" {
		require.NoError(t, os.WriteFile("usage.txt", []byte(got), 0o600))
		return
	}
	u := usages()
	for w := range u.one {
		if w != usageNumber && w != usageOther && w != usageEdge {
			require.Equal(t, w, vocabulary(l, &token{kind: tokWord, s: w}), "USAGE=write counts the texts anew")
		}
	}
	require.Less(t, u.after("the", "lid"), u.after("the", "is"))
}

// vocabulary is what a token of a labelled text counts as.
func vocabulary(l *lexicon, t *token) string {
	if t.kind != tokWord {
		return usageWord(t)
	}
	if chatSpelling[t.s] == "" && (l.plain[t.s] || l.inside[t.s] || l.of[t.s] != nil || l.longest[t.s] > 0) {
		return t.s
	}
	return usageOther
}
