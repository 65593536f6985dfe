package season

import (
	"fmt"
	"sync"
	"testing"
)

const (
	seasons      = 48
	shortSeasons = 6
)

// TestSeasons plays the seasons and holds the program to what it promises of
// them.
func TestSeasons(t *testing.T) {
	recs := readRecords(t)
	n := seasons
	if testing.Short() {
		n = shortSeasons
	}
	results := make([]*result, n)
	t.Run("play", func(t *testing.T) {
		var mu sync.Mutex
		for i := range n {
			t.Run(fmt.Sprint(i), func(t *testing.T) {
				t.Parallel()
				r := playSeason(t, i, recs)
				mu.Lock()
				results[i] = r
				mu.Unlock()
			})
		}
	})
	if t.Failed() {
		return
	}
	t.Log("\n" + table(results))
}
