package season

import (
	"fmt"
	"slices"
	"sync"
	"testing"

	"github.com/stretchr/testify/require"
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
	requireQuiet(t, results)
	if !testing.Short() { // a handful says nothing of means
		requireFedAndWatered(t, results)
		requireDates(t, results)
	}
}

// What the keepers are promised. Where a target is not reached yet the bound is
// what holds today, and the target stands beside it.
const (
	mostDryObedient = 0.5 // hours without feed or water in 100 days, mean of herds
	mostDryLazy     = 3.0 // hangs on chance: a few seasons have nearly all of it
	mostFeedFills   = 1.2 // days with a pour, against the clairvoyant's
	mostWaterFills  = 1.5 // days with a fill; the target is 1.2
	mostNudges      = 2.5 // a week outside heat waves, median
)

// requireQuiet holds what is true of every season: nothing but a danger in the
// quiet hours, and an answer whenever the keeper asks for the day.
func requireQuiet(t *testing.T, rs []*result) {
	t.Helper()
	for _, r := range rs {
		require.Zero(t, r.quiet, "season %d: messages in the quiet hours", r.number)
		require.Empty(t, r.missing, "season %d: no day for the butcher", r.number)
	}
}

func requireFedAndWatered(t *testing.T, rs []*result) {
	t.Helper()
	obedient, lazy := summed(rs, false), summed(rs, true)
	require.LessOrEqual(t, mean(obedient.dry), mostDryObedient, "hours dry, obedient keepers")
	require.LessOrEqual(t, mean(lazy.dry), mostDryLazy, "hours dry, lazy keepers")
	require.LessOrEqual(t, ratio(obedient.feed, obedient.feedBest), mostFeedFills, "days with a pour")
	require.LessOrEqual(t, ratio(obedient.water, obedient.waterBest), mostWaterFills, "days with a fill of water")
	require.LessOrEqual(t, median(obedient.weeks), mostNudges, "nudges a week, obedient keepers")
	require.LessOrEqual(t, median(lazy.weeks), mostNudges, "nudges a week, lazy keepers")
}

// mostOff is by how many days the herd's day may be off in the mean, by days
// ahead: with a scale or a tape that was held against one, and with a tape that
// was not.
var mostOff = map[bool]map[int]float64{
	true:  {60: 9, 30: 5, 14: 3},
	false: {60: 10, 30: 7, 14: 5},
}

func requireDates(t *testing.T, rs []*result) {
	t.Helper()
	for checked, most := range mostOff {
		for _, ahead := range horizons {
			errors := daysOff(rs, ahead, func(r *result) bool { return (r.tape() != "tape") == checked })
			require.GreaterOrEqual(t, len(errors), 15)
			require.LessOrEqual(t, mean(errors), most[ahead], "days off, %d days ahead, checked %t", ahead, checked)
		}
	}
}

// sums is what the seasons of one kind of keeper come to.
type sums struct {
	dry                              []float64 // hours in 100 days, in order
	weeks, hotWeeks                  []int     // nudges
	feed, feedBest, water, waterBest int       // days with a fill, and the clairvoyant's
	fewest                           int
}

func summed(rs []*result, lazy bool) sums {
	var s sums
	for _, r := range rs {
		if r.keeper.lazy != lazy {
			continue
		}
		s.dry = append(s.dry, r.dry())
		s.weeks, s.hotWeeks = append(s.weeks, r.weeks...), append(s.hotWeeks, r.hotWeeks...)
		s.feed, s.feedBest = s.feed+r.feedDays, s.feedBest+r.feedBest
		s.water, s.waterBest = s.water+r.refills-r.feedDays, s.waterBest+r.best-r.feedBest
		s.fewest += r.fewest
	}
	slices.Sort(s.dry)
	return s
}

// daysOff is by how many days the herd's day was off in the seasons that count.
func daysOff(rs []*result, ahead int, counts func(*result) bool) []float64 {
	var out []float64
	for _, r := range rs {
		if e, ok := r.errors[ahead]; ok && counts(r) {
			out = append(out, e)
		}
	}
	return out
}
