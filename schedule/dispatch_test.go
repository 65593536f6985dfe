package schedule

import (
	"context"
	"errors"
	"sort"
	"sync"
	"testing"
	"testing/synctest"
	"time"

	"github.com/stretchr/testify/require"
)

// fakeDesk keeps for each herd when to look again.
type fakeDesk struct {
	mu      sync.Mutex
	again   map[int64]time.Time
	looks   map[int64][]time.Time
	queries int
	woke    [][2]time.Time
	alive   []time.Time
	look    func(ctx context.Context, herd int64) error
}

func newFakeDesk() *fakeDesk {
	return &fakeDesk{again: map[int64]time.Time{}, looks: map[int64][]time.Time{}}
}

func (d *fakeDesk) DueHerds(_ context.Context, now time.Time, limit int) ([]int64, error) {
	d.mu.Lock()
	defer d.mu.Unlock()
	d.queries++
	var out []int64
	for id, at := range d.again {
		if !at.After(now) {
			out = append(out, id)
		}
	}
	sort.Slice(out, func(i, j int) bool { return out[i] < out[j] })
	return out[:min(len(out), limit)], nil
}

// asked is how often the desk was asked for herds that are due.
func (d *fakeDesk) asked() int {
	d.mu.Lock()
	defer d.mu.Unlock()
	return d.queries
}

func (d *fakeDesk) Look(ctx context.Context, herds []int64, now time.Time) map[int64]error {
	failed := map[int64]error{}
	for _, herd := range herds {
		if d.look != nil {
			if err := d.look(ctx, herd); err != nil {
				failed[herd] = err
				continue
			}
		}
		d.mu.Lock()
		d.looks[herd] = append(d.looks[herd], now)
		d.again[herd] = now.Add(24 * time.Hour)
		d.mu.Unlock()
	}
	return failed
}

func (d *fakeDesk) Woke(_ context.Context, from, now time.Time) error {
	d.mu.Lock()
	defer d.mu.Unlock()
	d.woke = append(d.woke, [2]time.Time{from, now})
	return nil
}

func (d *fakeDesk) Alive(_ context.Context, now time.Time) error {
	d.alive = append(d.alive, now)
	return nil
}

func TestSweepLooksAtEachDueHerdOnce(t *testing.T) {
	now := time.Date(2026, 7, 8, 12, 0, 0, 0, time.UTC)
	desk := newFakeDesk()
	for id := range int64(350) {
		desk.again[id] = now.Add(-time.Minute)
	}
	for id := int64(1000); id < 1100; id++ {
		desk.again[id] = now.Add(time.Minute)
	}
	desk.look = func(_ context.Context, herd int64) error {
		if herd%3 == 0 {
			return errors.New("its journal is torn")
		}
		return nil
	}
	err := Sweep(context.Background(), desk, now)
	require.ErrorContains(t, err, "herd 0: its journal is torn")
	require.ErrorContains(t, err, "herd 348: its journal is torn")
	for id := range int64(350) {
		want := 1
		if id%3 == 0 {
			want = 0
		}
		require.Len(t, desk.looks[id], want, "herd %d", id)
	}
	require.Empty(t, desk.looks[1000])
}

// A long sweep leaves most of the time to others, a short one none, and one after an
// outage not for long; the end of the program does not wait for it.
func TestLongSweepTakesItsTime(t *testing.T) {
	const look = 2 * time.Millisecond // at a herd
	for _, tt := range []struct {
		name    string
		herds   int64
		stopsAt int64
		takes   time.Duration
	}{
		{"short", 100, -1, 100 * look},
		{"long", 300, -1, 300*look + 200*look*restsFor},
		{"after an outage", 10_000, -1, 10_000*look + mostRest},
		{"cut off", 300, 150, 155*look + 50*look*restsFor},
	} {
		t.Run(tt.name, func(t *testing.T) {
			synctest.Test(t, func(t *testing.T) {
				ctx, stop := context.WithCancel(t.Context())
				defer stop()
				desk := newFakeDesk()
				for id := range tt.herds {
					desk.again[id] = time.Now()
				}
				desk.look = func(_ context.Context, id int64) error {
					time.Sleep(look)
					if id == tt.stopsAt {
						stop()
					}
					return nil
				}
				d := NewDispatcher(desk, time.Now, func(err error) { t.Error(err) })
				began := time.Now()
				d.sweep(ctx, began, began)
				require.Equal(t, tt.takes, time.Since(began))
			})
		})
	}
}

func TestSweepOfSleepingHerdsIsOneQuery(t *testing.T) {
	now := time.Date(2026, 7, 8, 12, 0, 0, 0, time.UTC)
	desk := newFakeDesk()
	for id := range int64(10_000) {
		desk.again[id] = now.Add(time.Hour)
	}
	require.NoError(t, Sweep(context.Background(), desk, now))
	require.Equal(t, 1, desk.queries)
	require.Empty(t, desk.looks)
}

func TestDispatcherSweepsEachMinute(t *testing.T) {
	synctest.Test(t, func(t *testing.T) {
		desk := newFakeDesk()
		desk.again[1] = time.Now().Add(3*time.Minute + time.Second)
		due := desk.again[1]
		d := NewDispatcher(desk, time.Now, func(err error) { t.Error(err) })
		require.NoError(t, d.Start(context.Background()))
		time.Sleep(30*time.Minute + time.Second)
		require.NoError(t, d.Stop(context.Background()))
		require.Len(t, desk.looks[1], 1)
		require.WithinDuration(t, due, desk.looks[1][0], time.Minute)
		require.InDelta(t, 31, desk.queries, 2) // one a minute, and one more for the herd that was due
		require.Len(t, desk.woke, 1)
		require.True(t, desk.woke[0][0].IsZero())
		require.Len(t, desk.alive, 4)
		queries := desk.queries
		time.Sleep(10 * time.Minute)
		require.Equal(t, queries, desk.queries, "it sweeps after Stop")
	})
}

// Other work has its own beat: the sweep waits for none of it, a panic in it ends
// nothing, and its errors are told.
func TestDispatcherDoesOtherWorkBesideTheSweep(t *testing.T) {
	synctest.Test(t, func(t *testing.T) {
		desk := newFakeDesk()
		var reported []error
		d := NewDispatcher(desk, time.Now, func(err error) { reported = append(reported, err) })
		var at []time.Duration
		began := time.Now()
		d.Also(func(ctx context.Context, now time.Time) error {
			at = append(at, now.Sub(began))
			switch len(at) {
			case 1:
				<-time.After(10*time.Minute + time.Second) // as a long copy does
			case 2:
				panic("no such disk")
			case 3:
				return errors.New("the disk is full")
			}
			return nil
		})
		require.NoError(t, d.Start(context.Background()))
		time.Sleep(10 * time.Minute)
		require.InDelta(t, 11, desk.asked(), 2)
		time.Sleep(4*time.Minute + time.Second)
		require.NoError(t, d.Stop(context.Background()))
		late := 10*time.Minute + 31*time.Second // the watchdog's next look
		require.Equal(t, []time.Duration{0, late, 11 * time.Minute, 12 * time.Minute, 13 * time.Minute, 14 * time.Minute}, at)
		require.Len(t, reported, 2)
		require.ErrorContains(t, reported[0], "no such disk")
		require.ErrorContains(t, reported[1], "the disk is full")
	})
}

func TestDispatcherGoesOnAfterPanicsAndSlowSweeps(t *testing.T) {
	synctest.Test(t, func(t *testing.T) {
		desk := newFakeDesk()
		desk.again[1] = time.Now()
		tries := 0
		desk.look = func(ctx context.Context, _ int64) error {
			tries++
			switch tries {
			case 1:
				panic("a herd nobody thought of")
			case 2:
				time.Sleep(10 * time.Minute) // longer than the beat
			}
			return nil
		}
		var reported []error
		d := NewDispatcher(desk, time.Now, func(err error) { reported = append(reported, err) })
		require.NoError(t, d.Start(context.Background()))
		time.Sleep(time.Hour)
		require.NoError(t, d.Stop(context.Background()))
		require.Len(t, reported, 1)
		require.ErrorContains(t, reported[0], "a herd nobody thought of")
		require.Equal(t, 2, tries)
		require.Len(t, desk.looks[1], 1)
	})
}

func TestDispatcherNoticesThatTheMachineSleptOrTheClockWasSetBack(t *testing.T) {
	for _, tt := range []struct {
		name  string
		shift time.Duration
		woke  int
	}{
		{"slept three hours", 3 * time.Hour, 2},
		{"set back a day", -24 * time.Hour, 1},
	} {
		t.Run(tt.name, func(t *testing.T) {
			synctest.Test(t, func(t *testing.T) {
				var mu sync.Mutex
				var shift time.Duration
				clock := func() time.Time {
					mu.Lock()
					defer mu.Unlock()
					return time.Now().Add(shift)
				}
				desk := newFakeDesk()
				d := NewDispatcher(desk, clock, func(err error) { t.Error(err) })
				require.NoError(t, d.Start(context.Background()))
				time.Sleep(5*time.Minute + 10*time.Second)
				mu.Lock()
				shift = tt.shift
				mu.Unlock()
				queries := desk.asked()
				time.Sleep(31 * time.Second)
				require.NoError(t, d.Stop(context.Background()))
				require.Greater(t, desk.asked(), queries)
				require.Len(t, desk.woke, tt.woke)
			})
		})
	}
}

func TestStopDoesNotWaitForEver(t *testing.T) {
	synctest.Test(t, func(t *testing.T) {
		desk := newFakeDesk()
		desk.again[1] = time.Now()
		release := make(chan struct{})
		desk.look = func(context.Context, int64) error { <-release; return nil }
		d := NewDispatcher(desk, time.Now, func(err error) { t.Error(err) })
		require.NoError(t, d.Start(context.Background()))
		time.Sleep(time.Second)
		ctx, cancel := context.WithTimeout(context.Background(), 5*time.Second)
		defer cancel()
		require.ErrorIs(t, d.Stop(ctx), context.DeadlineExceeded)
		close(release)
		synctest.Wait()
	})
}
