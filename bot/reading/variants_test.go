package reading_test

import (
	"bufio"
	"encoding/json"
	"fmt"
	"math/rand/v2"
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
		if c.hidden {
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
	read := l.read(t, text)
	wrong := true
	for _, want := range labels {
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

// together are the labels of two texts said in one breath on a day.
func together(a, b *labelled, day string) [][]labelledEntry {
	var out [][]labelledEntry
	for _, x := range a.labels() {
		for _, y := range b.labels() {
			var both []labelledEntry
			for _, e := range append(append([]labelledEntry(nil), x...), y...) {
				c := labelledEntry{}
				for k, v := range e {
					c[k] = v
				}
				if c["date"] != nil {
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

var (
	openings = []string{"hey ", "ok so ", "Just a quick update: ", "morning! ", "fyi ", "well, ", "sorry for the late text, ", "long day. ", "hi, ", "um "}
	endings  = []string{" thanks", " lol", ". back to work now", " :)", "!!", ". Have a good night", " i think that's all", ". man it was muddy", " ok bye", "..."}
	joints   = []string{", ", ". ", " and ", "\n", "; ", ", also ", " and then ", ". oh and "}
)

// variant is a way to change a text, with the label it has then.
type variant struct {
	name string
	make func(l *labelled, rnd *rand.Rand, pool []*labelled) (string, [][]labelledEntry)
}

func keepLabel(change func(string, *rand.Rand) string) func(*labelled, *rand.Rand, []*labelled) (string, [][]labelledEntry) {
	return func(l *labelled, rnd *rand.Rand, _ []*labelled) (string, [][]labelledEntry) {
		return change(l.Text, rnd), l.labels()
	}
}

var variants = []variant{
	{"capitals", keepLabel(func(s string, _ *rand.Rand) string { return strings.ToUpper(s) })},
	{"small letters", keepLabel(func(s string, _ *rand.Rand) string { return strings.ToLower(s) })},
	{"no full stop", keepLabel(func(s string, _ *rand.Rand) string { return strings.TrimRight(s, ".!") })},
	{"opening", keepLabel(func(s string, rnd *rand.Rand) string { return openings[rnd.IntN(len(openings))] + s })},
	{"ending", keepLabel(func(s string, rnd *rand.Rand) string {
		return strings.TrimRight(s, ".! ") + endings[rnd.IntN(len(endings))]
	})},
	{"a second thing", func(l *labelled, rnd *rand.Rand, pool []*labelled) (string, [][]labelledEntry) {
		if !l.tells() {
			return "", nil
		}
		for range 50 {
			o := pool[rnd.IntN(len(pool))]
			if o == l || !o.tells() || rival(l, o) {
				continue
			}
			joint := joints[rnd.IntN(len(joints))]
			text := strings.TrimRight(l.Text, ". \n") + joint + o.Text
			return text, together(l, o, l.Now[:10])
		}
		return "", nil
	}},
	{"a slip of a finger", keepLabel(slip)},
}

// slip changes a letter of one longer word that is all small letters.
func slip(s string, rnd *rand.Rand) string {
	words := strings.Fields(s)
	for n := 0; n < 20 && len(words) > 0; n++ {
		k := rnd.IntN(len(words))
		w := words[k]
		if len(w) < 5 || strings.ToLower(w) != w || strings.IndexFunc(w, func(c rune) bool { return c < 'a' || c > 'z' }) >= 0 {
			continue
		}
		at := 1 + rnd.IntN(len(w)-2)
		switch rnd.IntN(3) {
		case 0:
			w = w[:at] + w[at+1:]
		case 1:
			w = w[:at] + w[at+1:at+2] + w[at:at+1] + w[at+2:]
		default:
			w = w[:at] + w[at:at+1] + w[at:]
		}
		words[k] = w
		return strings.Join(words, " ")
	}
	return ""
}

func TestVariants(t *testing.T) {
	pool := seeds(t)
	sort.SliceStable(pool, func(a, b int) bool { return pool[a].Herd < pool[b].Herd })
	byHerd := map[string][]*labelled{}
	for _, l := range pool {
		byHerd[l.Herd] = append(byHerd[l.Herd], l)
	}
	seed, _ := strconv.ParseUint(os.Getenv("VARIANTS"), 10, 64)
	for _, v := range variants {
		t.Run(v.name, func(t *testing.T) {
			rnd := rand.New(rand.NewPCG(seed, 7))
			var n [4]int
			for _, l := range pool {
				text, labels := v.make(l, rnd, byHerd[l.Herd])
				if text == "" || text == l.Text {
					continue
				}
				got := l.judge(t, text, labels)
				n[got]++
				if got != readRight && os.Getenv("TEXTS") == "show" {
					want, _ := json.Marshal(labels[0])
					have, _ := json.Marshal(l.read(t, text))
					t.Logf("\n%s %s %s: %q\n  want %s\n  have %s", [...]string{"right", "asked", "MISSED", "WRONG"}[got], l.Herd, l.Now, text, want, have)
				}
			}
			all := n[0] + n[1] + n[2] + n[3]
			t.Log(fmt.Sprintf("%s: %d texts, %.1f %% right, %.1f %% asked, %.1f %% missed a part, %.1f %% wrong", v.name, all,
				100*float64(n[0])/float64(all), 100*float64(n[1])/float64(all), 100*float64(n[2])/float64(all), 100*float64(n[3])/float64(all)))
		})
	}
}
