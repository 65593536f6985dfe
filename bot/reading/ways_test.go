package reading_test

import (
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot/reading"
)

// inOrder sorts entries in brief: their order tells nothing.
func inOrder(entries string) string {
	parts := strings.Split(entries, "; ")
	slices.Sort(parts)
	return strings.Join(parts, "; ")
}

// TestWays reads the many ways to say one thing. A file of testdata/texts/ways
// holds scenes ("herd orchard 2026-07-11T18:30", a log that is played first and
// the moment), what was said before in it ("before otis 180"), readings ("= ask
// topic=feed_left", entries in brief, the day left out where it is the message's
// own, a * for any words), and beneath each the ways to say it.
func TestWays(t *testing.T) {
	files, err := filepath.Glob(filepath.Join(corpora, "ways", "*.txt"))
	require.NoError(t, err)
	require.NotEmpty(t, files)
	herds := map[string]*talk{}
	for _, file := range files {
		t.Run(strings.TrimSuffix(filepath.Base(file), ".txt"), func(t *testing.T) {
			text, err := os.ReadFile(file)
			require.NoError(t, err)
			var k *talk
			var now time.Time
			var want string
			for n, line := range strings.Split(string(text), "\n") {
				line = strings.TrimSpace(line)
				switch {
				case line == "" || line[0] == '#':
				case sceneLine.MatchString(line):
					scene := strings.Fields(line)
					if herds[scene[1]] == nil {
						herds[scene[1]] = play(t, scene[1])
					}
					k = herds[scene[1]].again()
					now, err = time.ParseInLocation("2006-01-02T15:04", scene[2], k.loc)
					require.NoError(t, err, "line %d", n+1)
				case strings.HasPrefix(line, "before "):
					_, err := k.say(now.Format("2006-01-02T15:04"), line[len("before "):])
					require.NoError(t, err, "line %d", n+1)
				case strings.HasPrefix(line, "= "):
					want = line[2:]
				default:
					require.NotNil(t, k, "line %d stands before a scene", n+1)
					c := k.context(now)
					said := strings.ReplaceAll(line, `\n`, "\n")
					got := brief(reading.Read(c, said).Entries, now.Format("2006-01-02"))
					if !agrees(inOrder(got), inOrder(want)) {
						t.Errorf("line %d: %s\n  want %s\n  have %s", n+1, line, want, got)
					}
				}
			}
		})
	}
}

// sceneLine is what begins a scene, which no text looks like.
var sceneLine = regexp.MustCompile(`^herd \S+ \d{4}-\d{2}-\d{2}T\d{2}:\d{2}$`)

// again is the herd as it was set up, so that what is said to it does not touch
// the one it was made of.
func (k *talk) again() *talk {
	return &talk{loc: k.loc, records: slices.Clone(k.records), herd: k.herd}
}

// agrees says that a reading is the wanted one, in which a * stands for any words.
func agrees(got, want string) bool {
	parts := strings.Split(want, "*")
	if len(parts) == 1 {
		return got == want
	}
	if !strings.HasPrefix(got, parts[0]) {
		return false
	}
	rest := got[len(parts[0]):]
	for _, p := range parts[1 : len(parts)-1] {
		_, after, ok := strings.Cut(rest, p)
		if !ok {
			return false
		}
		rest = after
	}
	return strings.HasSuffix(rest, parts[len(parts)-1])
}
