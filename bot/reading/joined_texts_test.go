package reading_test

import (
	"bufio"
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot/reading"
)

// TestJoinedTexts says two texts in one message, in all the ways in which people
// join them: what each means alone it means beside the other.
func TestJoinedTexts(t *testing.T) {
	byHerd := map[string][]labelled{}
	herds := map[string]*talk{}
	for _, l := range oneFactTexts(t) {
		if herds[l.Herd] == nil {
			herds[l.Herd] = play(t, l.Herd)
		}
		if readsAs(t, herds[l.Herd], l.Now, l.Text, l.Entries) {
			byHerd[l.Herd] = append(byHerd[l.Herd], l)
		}
	}
	least := map[string]float64{"\n": 0.99, ". ": 0.99, "; ": 0.99, ", ": 0.97, " then ": 0.97, " and ": 0.97}
	for sep, share := range least {
		right, all := 0, 0
		for herd, ls := range byHerd {
			for n := range 6 * len(ls) {
				a, b := ls[n%len(ls)], ls[(n*7+n/len(ls)+3)%len(ls)]
				if a.Now != b.Now || kindOf(a) == kindOf(b) {
					continue
				}
				all++
				text := strings.TrimRight(a.Text, ".") + sep + b.Text
				want := append(append([]map[string]any(nil), a.Entries...), b.Entries...)
				if readsAs(t, herds[herd], a.Now, text, want) {
					right++
				} else if os.Getenv("TEXTS") == "show" {
					t.Logf("%q", text)
				}
			}
		}
		require.Greater(t, all, 100)
		t.Logf("%q: %d of %d", sep, right, all)
		require.Greater(t, float64(right)/float64(all), share, "%q", sep)
	}
}

// oneFactTexts are the tuning texts that tell one fact of the day they are said.
func oneFactTexts(t *testing.T) []labelled {
	f, err := os.Open(filepath.Join(corpora, "tuning.jsonl"))
	require.NoError(t, err)
	defer f.Close()
	in := bufio.NewScanner(f)
	in.Buffer(nil, 1<<20)
	var out []labelled
	for in.Scan() {
		var l labelled
		require.NoError(t, json.Unmarshal(in.Bytes(), &l))
		if len(l.Entries) != 1 || l.Before != nil || l.Also != nil || l.Herd == "none" || strings.ContainsAny(l.Text, "\n?") || kindOf(l) == "" {
			continue
		}
		if day, dated := l.Entries[0]["date"]; dated && day != l.Now[:10] || l.Entries[0]["at"] != nil {
			continue
		}
		out = append(out, l)
	}
	require.NoError(t, in.Err())
	return out
}

// kindOf is what a text is about; feeders told of twice in a breath mean another
// thing than each alone, so that they are one kind.
func kindOf(l labelled) string {
	switch k := l.Entries[0]["intent"].(string); k {
	case "refill", "feed_level", "mixed":
		return "feed"
	case "weigh", "water", "fence", "wallow", "weather", "sick", "move", "worm", "treat", "spend":
		return k
	}
	return ""
}

func readsAs(t *testing.T, k *talk, at, text string, want []map[string]any) bool {
	now, err := time.ParseInLocation("2006-01-02T15:04", at, k.loc)
	require.NoError(t, err)
	return same(k.herd, plainSlots(t, reading.Read(k.context(now), text).Entries), want)
}
