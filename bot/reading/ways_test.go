package reading_test

import (
	"os"
	"path/filepath"
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
// the moment), readings ("= ask topic=feed_left", entries in brief, the day left
// out where it is the message's own), and beneath each the ways to say it.
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
			want := ""
			for n, line := range strings.Split(string(text), "\n") {
				line = strings.TrimSpace(line)
				switch {
				case line == "" || line[0] == '#':
				case strings.HasPrefix(line, "herd "):
					scene := strings.Fields(line)
					require.Len(t, scene, 3, "line %d", n+1)
					if herds[scene[1]] == nil {
						herds[scene[1]] = play(t, scene[1])
					}
					k = herds[scene[1]]
					now, err = time.ParseInLocation("2006-01-02T15:04", scene[2], k.loc)
					require.NoError(t, err, "line %d", n+1)
				case strings.HasPrefix(line, "= "):
					want = line[2:]
				default:
					require.NotNil(t, k, "line %d stands before a scene", n+1)
					c := k.context(now)
					c.Pending = nil
					said := strings.ReplaceAll(line, `\n`, "\n")
					got := brief(reading.Read(c, said).Entries, now.Format("2006-01-02"))
					if inOrder(got) != inOrder(want) {
						t.Errorf("line %d: %s\n  want %s\n  have %s", n+1, line, want, got)
					}
				}
			}
		})
	}
}
