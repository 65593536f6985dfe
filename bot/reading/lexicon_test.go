package reading

import (
	"fmt"
	"os"
	"sort"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// collisionsFile lists the words with more than one kind of meaning. A new line
// of a table that gives a word a second kind shows up here, to be looked at.
const collisionsFile = "testdata/collisions.txt"

// kinds lists what kinds of meaning a word has.
func (m *meaning) kinds() []string {
	var out []string
	add := func(is bool, kind string) {
		if is {
			out = append(out, kind)
		}
	}
	plain := m.sense
	plain.drop(sFiller)
	n := 0
	for s := sNone; s < numSenses; s++ {
		if plain.has(s) {
			n++
		}
	}
	add(n > 0, fmt.Sprintf("%d senses", n))
	add(m.unit != 0, "unit "+m.unit.name())
	add(m.isNum, "number")
	add(m.isFrac, "part")
	add(m.isDay, "day")
	add(m.month > 0, "month")
	return out
}

// TestCollisions lists every word with several kinds of meaning, or several
// senses, and compares with the list that was looked at. With LEXICON=write the
// list is written anew.
func TestCollisions(t *testing.T) {
	var lines []string
	for w, m := range words().of {
		if m.text != w {
			continue // another form of a word that is listed
		}
		if k := m.kinds(); len(k) > 1 || len(k) == 1 && strings.HasSuffix(k[0], "senses") && k[0] != "1 senses" {
			lines = append(lines, w+": "+strings.Join(k, ", "))
		}
	}
	sort.Strings(lines)
	got := strings.Join(lines, "\n") + "\n"
	if os.Getenv("LEXICON") == "write" {
		require.NoError(t, os.WriteFile(collisionsFile, []byte(got), 0o600))
	}
	want, err := os.ReadFile(collisionsFile)
	require.NoError(t, err)
	require.Equal(t, string(want), got)
}

// TestEveryWordIsFound looks every word and phrase of the tables up as a text
// would have it.
func TestEveryWordIsFound(t *testing.T) {
	l := words()
	for w := range l.of {
		toks := scan(nil, w, false)
		m, n := l.phrase(toks, func(*meaning) bool { return true })
		if m == nil { // words with a sign in them are found through their letters
			require.True(t, strings.ContainsAny(w, "-/.:²?✓✔✅23'+@="), "%q is in a table but is never found", w)
			continue
		}
		require.LessOrEqual(t, n, len(toks))
	}
}

// TestSlips: a slip of one letter finds the word of the trade, and plain English
// stays what it is.
func TestSlips(t *testing.T) {
	l := words()
	for slip, want := range map[string]string{
		"girht": "girth", "hoppr": "hopper", "filledd": "filled", "fenbendazolee": "fenbendazole",
		"limpign": "limping", "otu": "out", "bucther": "butcher", "wormedd": "wormed",
	} {
		if l.of[slip] != nil {
			continue // listed as it is typed
		}
		got, ok := l.correct(slip)
		require.True(t, ok, slip)
		require.Equal(t, want, got)
	}
	for _, w := range []string{"garden", "school", "window", "dinner", "mower", "there", "weather", "falling", "holiday"} {
		got, ok := l.correct(w)
		require.False(t, ok && l.of[w] == nil && !l.plain[w], "%q became %q", w, got)
	}
}

func TestDistance(t *testing.T) {
	for _, r := range []struct {
		a, b string
		want int
	}{
		{"", "", 0}, {"moss", "moss", 0}, {"moss", "mos", 1}, {"moss", "msos", 1}, {"moss", "most", 1}, {"dot", "moss", 3}, {"hazel", "hazle", 1}, {"ab", "ba", 1}, {"abc", "cab", 2},
	} {
		require.Equal(t, r.want, distance(r.a, r.b), "%s %s", r.a, r.b)
		require.Equal(t, r.want, distance(r.b, r.a), "%s %s", r.b, r.a)
	}
}
