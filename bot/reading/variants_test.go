package reading_test

import (
	"bufio"
	"cmp"
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"sort"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot/reading"
)

// A text that is read exactly must be read so in other dress, too: with chatter
// around it, in capitals, with its numbers spoken, with another fact behind it.
// The variants below change a labelled text in a way that leaves its label true.

// seeds are the labelled texts that are read exactly, open to everybody.
func seeds(t *testing.T) []*labelled {
	var out []*labelled
	herds := map[string]*talk{}
	for _, c := range corpusBounds {
		if c.hidden || c.fresh {
			continue
		}
		f, err := os.Open(filepath.Join(corpora, c.name+".jsonl"))
		require.NoError(t, err)
		in := bufio.NewScanner(f)
		in.Buffer(nil, 1<<20)
		for in.Scan() {
			l := &labelled{}
			require.NoError(t, json.Unmarshal(in.Bytes(), l))
			if len(l.Before) > 0 || l.ReplyTo != nil {
				continue
			}
			if herds[l.Herd] == nil {
				herds[l.Herd] = play(t, l.Herd)
			}
			l.talk = herds[l.Herd]
			if got := l.judge(t, l.Text, l.labels()); got == readRight {
				out = append(out, l)
			}
		}
		require.NoError(t, in.Err())
		require.NoError(t, f.Close())
	}
	return out
}

type verdict int

const (
	readRight verdict = iota
	readAsked
	readMissed
	readWrong
)

// judge reads a text in the label's scene and holds it against what it may mean.
func (l *labelled) judge(t *testing.T, text string, labels [][]labelledEntry) verdict {
	read := smallLetters(l.read(t, text))
	wrong := true
	for _, want := range labels {
		want = smallLetters(want)
		if same(l.talk.herd, read, want) {
			return readRight
		}
		wrong = wrong && recordsOther(l.talk.herd, read, want)
	}
	switch {
	case wrong:
		return readWrong
	case asks(read):
		return readAsked
	}
	return readMissed
}

// smallLetters are entries whose words are all in small letters: how a text is
// dressed is how its own words are kept.
func smallLetters(es []labelledEntry) []labelledEntry {
	out := make([]labelledEntry, 0, len(es))
	for _, e := range es {
		c := labelledEntry{}
		for k, v := range e {
			c[k] = small(v)
		}
		out = append(out, c)
	}
	return out
}

func small(v any) any {
	switch v := v.(type) {
	case string:
		return strings.ToLower(v)
	case []any:
		out := make([]any, len(v))
		for i := range v {
			out[i] = small(v[i])
		}
		return out
	case map[string]any:
		out := map[string]any{}
		for k, x := range v {
			out[k] = small(x)
		}
		return out
	}
	return v
}

func (l *labelled) read(t *testing.T, text string) []labelledEntry {
	now, err := time.ParseInLocation("2006-01-02T15:04", l.Now, l.talk.loc)
	require.NoError(t, err)
	return plainSlots(t, reading.Read(l.talk.context(now), text).Entries)
}

// tells says that a label is of plain facts of the message's own day, which
// another text can stand beside.
func (l *labelled) tells() bool {
	for _, e := range l.Entries {
		switch e["intent"] {
		case "weigh", "refill", "feed_level", "stock", "mixed", "water", "wallow", "worm", "treat", "move", "sick", "fence", "weather", "spend", "gone":
		default:
			return false
		}
		if d := e["date"]; d != nil && d != l.Now[:10] || e["at"] != nil || e["replaces"] != nil {
			return false
		}
	}
	return len(strings.Fields(l.Text)) <= 12
}

// labels are what a text may mean.
func (l *labelled) labels() [][]labelledEntry {
	return append([][]labelledEntry{l.Entries}, l.Also...)
}

// together are the labels of two texts said in one breath on a day; without a
// day each keeps its own.
func together(a, b [][]labelledEntry, day string) [][]labelledEntry {
	var out [][]labelledEntry
	for _, x := range a {
		for _, y := range b {
			var both []labelledEntry
			for _, e := range append(append([]labelledEntry(nil), x...), y...) {
				c := labelledEntry{}
				for k, v := range e {
					c[k] = v
				}
				if c["date"] != nil && day != "" {
					c["date"] = day
				}
				both = append(both, c)
			}
			out = append(out, both)
		}
	}
	return out
}

// subjects are what the facts of a label are about; two texts about the same
// would not stand in one message.
func (l *labelled) subjects() map[string]bool {
	out := map[string]bool{}
	for _, e := range l.Entries {
		kind := fmt.Sprint(e["intent"])
		switch kind {
		case "feed_level", "mixed":
			kind = "refill"
		case "treat":
			kind = "worm"
		}
		names, _ := e["animals"].([]any)
		if len(names) == 0 {
			names = []any{e["feeder"], e["barrel"], e["ingredient"], e["what"]}
		}
		for _, n := range names {
			if n != nil {
				out[fmt.Sprint(kind, n)] = true
				if kind == "gone" {
					out[fmt.Sprint("weigh", n)], out[fmt.Sprint("sick", n)] = true, true
				}
			}
		}
		if e["feeder"] == nil && e["barrel"] == nil && kind != "weigh" && kind != "sick" && kind != "gone" && kind != "worm" {
			out[kind] = true
		}
	}
	return out
}

// rival says that two texts are about one thing.
func rival(a, b *labelled) bool {
	x, y := a.subjects(), b.subjects()
	for k := range x {
		if y[k] {
			return true
		}
		for n := range y { // "all barrels full" and "shed barrel full"
			if (k == "water" || k == "refill") && strings.HasPrefix(n, k) || (n == "water" || n == "refill") && strings.HasPrefix(k, n) {
				return true
			}
		}
	}
	return false
}

// TestVariants reads each variant of each text; TEXTS=show prints what is read
// otherwise, VARIANTS=n draws others.
func TestVariants(t *testing.T) {
	pool := seeds(t)
	sort.SliceStable(pool, func(a, b int) bool { return pool[a].Herd < pool[b].Herd })
	d := newDraw(pool)
	seed, err := strconv.ParseUint(cmp.Or(os.Getenv("VARIANTS"), "0"), 10, 64)
	require.NoError(t, err)
	for _, v := range variants {
		t.Run(v.name, func(t *testing.T) {
			var c counts
			for _, l := range pool {
				d.begin(seed, l)
				if text, labels := v.make(l, d); text != "" && text != l.Text {
					c.add(t, l, text, labels)
				}
			}
			if seed == 0 {
				c.report(t, v.name, v.right, v.wrong)
			} else {
				c.report(t, v.name, 0, 100)
			}
		})
	}
}

// counts are how many texts got each verdict.
type counts [4]int

// add reads a text and counts it; TEXTS=show prints it where it is not read right.
func (c *counts) add(t *testing.T, l *labelled, text string, labels [][]labelledEntry) {
	got := l.judge(t, text, labels)
	c[got]++
	if got == readRight || os.Getenv("TEXTS") != "show" {
		return
	}
	want, err := json.Marshal(labels[0])
	require.NoError(t, err)
	have, err := json.Marshal(l.read(t, text))
	require.NoError(t, err)
	t.Logf("\n%s %s %s: %q\n  want %s\n  have %s", [...]string{"right", "asked", "MISSED", "WRONG"}[got], l.Herd, l.Now, text, want, have)
}

// report holds the shares against what was reached before, in percent.
func (c *counts) report(t *testing.T, name string, right, wrong float64) {
	all := c[0] + c[1] + c[2] + c[3]
	require.Positive(t, all)
	part := func(v verdict) float64 { return 100 * float64(c[v]) / float64(all) }
	t.Logf("%s: %d texts, %.1f %% right, %.1f %% asked, %.1f %% missed a part, %.1f %% wrong", name, all,
		part(readRight), part(readAsked), part(readMissed), part(readWrong))
	require.GreaterOrEqual(t, part(readRight), right, "read right, in percent")
	require.LessOrEqual(t, part(readWrong), wrong, "wrongly recorded, in percent")
}
