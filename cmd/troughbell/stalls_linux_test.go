package main

import (
	"fmt"
	"runtime"
	"slices"
	"sync"
	"time"

	"golang.org/x/sys/unix"
)

// stalls finds out when a machine that others share gives less than it has: what
// waits then waits longer in any program.
//
// On each processor a small loop through more memory than its caches hold runs once a
// millisecond, some 3 % of the time. It counts the time in which its own thread ran, so
// that waiting for a processor that the program uses is no stall; one is a loop of more
// than four times its usual time.
type stalls struct {
	stop chan struct{}
	done sync.WaitGroup
	took [][]probe // by processor
}

// probe is one run of the loop.
type probe struct {
	from, to time.Time
	ran      time.Duration
}

// watchStalls begins to look.
func watchStalls() *stalls {
	n := runtime.NumCPU()
	s := &stalls{stop: make(chan struct{}), took: make([][]probe, n)}
	for cpu := range n {
		s.done.Go(func() { s.probe(cpu) })
	}
	return s
}

func (s *stalls) probe(cpu int) {
	runtime.LockOSThread() // for good: the thread ends with the goroutine
	var only unix.CPUSet
	only.Set(cpu)
	_ = unix.SchedSetaffinity(0, &only) // where that is not allowed it looks where it runs
	const words, steps = 1 << 21, 500
	memory := make([]uint64, words)
	x := uint64(cpu + 1)
	for {
		select {
		case <-s.stop:
			return
		case <-time.After(time.Millisecond):
		}
		p := probe{from: time.Now()}
		ran := threadTime()
		for range steps { // xorshift64
			x ^= x << 13
			x ^= x >> 7
			x ^= x << 17
			memory[x%words] += x
		}
		p.ran, p.to = threadTime()-ran, time.Now()
		s.took[cpu] = append(s.took[cpu], p)
	}
}

// threadTime is how long the calling thread has run.
func threadTime() time.Duration {
	var t unix.Timespec
	if err := unix.ClockGettime(unix.CLOCK_THREAD_CPUTIME_ID, &t); err != nil {
		panic(err) // every Linux has this clock
	}
	return time.Duration(t.Nano())
}

// over ends the looking and gives when the machine stalled: from the last run of a
// loop that was quick to the next, on any processor.
func (s *stalls) over() spells {
	close(s.stop)
	s.done.Wait()
	var out spells
	for _, took := range s.took {
		ran := make([]time.Duration, len(took))
		for i, p := range took {
			ran[i] = p.ran
		}
		usual := slices.Sorted(slices.Values(ran))[len(ran)/2]
		for i, p := range took {
			if p.ran < 4*usual {
				continue
			}
			sp := spell{p.from, p.to}
			if i > 0 {
				sp.from = took[i-1].to
			}
			out.all = append(out.all, sp)
		}
		out.looked = max(out.looked, took[len(took)-1].to.Sub(took[0].from))
	}
	slices.SortFunc(out.all, func(a, b spell) int { return a.from.Compare(b.from) })
	return out
}

// spell is a span of time.
type spell struct{ from, to time.Time }

func (s spell) took() time.Duration { return s.to.Sub(s.from) }

// spells are when the machine stalled.
type spells struct {
	all    []spell // in order; those of several processors may overlap
	looked time.Duration
}

// met reports whether the machine stalled within a span.
func (s spells) met(span spell) bool {
	return slices.ContainsFunc(s.all, func(sp spell) bool { return sp.from.Before(span.to) && span.from.Before(sp.to) })
}

func (s spells) String() string {
	var last spell
	var slow, longest time.Duration
	for _, sp := range s.all {
		if sp.from.After(last.to) {
			last = sp
			slow += sp.took()
		} else if sp.to.After(last.to) {
			slow += sp.to.Sub(last.to)
			last.to = sp.to
		}
		longest = max(longest, last.took())
	}
	return fmt.Sprintf("%.1f %% of the time at under a quarter of its speed, for up to %d ms",
		100*slow.Seconds()/s.looked.Seconds(), longest.Milliseconds())
}
