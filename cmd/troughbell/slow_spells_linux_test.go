package main

import (
	"fmt"
	"runtime"
	"slices"
	"sync"
	"time"
)

// slowSpells has each processor go through more memory than its caches hold for some
// seconds, and tells how much of that time a machine that others share gave it less
// than a quarter of its speed. What waits meanwhile waits longer in any program.
func slowSpells() string {
	const seconds, words, steps = 6, 1 << 21, 20_000
	n := runtime.GOMAXPROCS(0)
	slow, longest := make([]time.Duration, n), make([]time.Duration, n)
	var all sync.WaitGroup
	for cpu := range n {
		all.Go(func() {
			memory := make([]uint64, words)
			x := uint64(cpu + 1)
			var spans []time.Duration
			for began := time.Now(); time.Since(began) < seconds*time.Second; {
				from := time.Now()
				for range steps { // xorshift64
					x ^= x << 13
					x ^= x >> 7
					x ^= x << 17
					memory[x%words] += x
				}
				spans = append(spans, time.Since(from))
			}
			usual := slices.Sorted(slices.Values(spans))[len(spans)/2]
			spell := time.Duration(0)
			for _, d := range spans {
				if d < 4*usual {
					spell = 0
					continue
				}
				spell += d
				slow[cpu] += d
				longest[cpu] = max(longest[cpu], spell)
			}
		})
	}
	all.Wait()
	share := 0.0
	for _, d := range slow {
		share += 100 * d.Seconds() / seconds / float64(n)
	}
	return fmt.Sprintf("%.1f %% of the time at under a quarter of its speed, for up to %d ms", share, slices.Max(longest).Milliseconds())
}
