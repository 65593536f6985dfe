package store

import (
	"slices"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"troughbell/model"
)

// TestWhatIsKept holds pruning to its promise for any set of days and any clock:
// of the days up to today the 7 newest and the newest of each of the 8 newest
// weeks stay, and the same of those beyond it; nothing else does.
func TestWhatIsKept(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		today := model.Day(rapid.IntRange(10_000, 30_000).Draw(t, "today"))
		offsets := rapid.SliceOfN(rapid.IntRange(-200, 60), 0, 120).Draw(t, "offsets")
		var days []model.Day
		for _, o := range offsets {
			days = append(days, today+model.Day(o))
		}
		gone := outlived(days, today)
		for _, ahead := range []bool{false, true} {
			var lot []model.Day
			for _, d := range days {
				if d > today == ahead && !slices.Contains(lot, d) {
					lot = append(lot, d)
				}
			}
			slices.Sort(lot)
			stay := slices.Clone(lot[max(0, len(lot)-7):])
			byWeek := map[int]model.Day{} // of the lot, by the ISO week
			for _, d := range lot {
				byWeek[isoWeek(d)] = d
			}
			var weeks []int
			for w := range byWeek {
				weeks = append(weeks, w)
			}
			slices.Sort(weeks)
			for _, w := range weeks[max(0, len(weeks)-8):] {
				stay = append(stay, byWeek[w])
			}
			for _, d := range lot {
				if slices.Contains(stay, d) == slices.Contains(gone, d) {
					t.Fatalf("%s (today is %s): kept %v, gone %v", d, today, stay, gone)
				}
			}
			if len(lot) > 0 && slices.Contains(gone, lot[len(lot)-1]) {
				t.Fatalf("the newest of %v went", lot)
			}
		}
	})
}

// isoWeek numbers weeks by the standard library's reckoning.
func isoWeek(d model.Day) int {
	y, m, day := d.Date()
	year, week := model.DateDay(y, m, day).At(720, time.UTC).ISOWeek()
	return year*100 + week
}

// A year of nights leaves a week of days and two months of weeks.
func TestAYearOfNights(t *testing.T) {
	var days []model.Day
	start := model.DateDay(2026, 1, 1)
	for d := start; d < start+365; d++ {
		days = append(days, d)
		gone := outlived(days, d)
		days = slices.DeleteFunc(days, func(k model.Day) bool { return slices.Contains(gone, k) })
	}
	var names []string
	for _, d := range days {
		names = append(names, d.String())
	}
	require.Equal(t, []string{
		"2026-11-15", "2026-11-22", "2026-11-29", "2026-12-06", "2026-12-13", "2026-12-20", // Sundays
		"2026-12-25", "2026-12-26", "2026-12-27", "2026-12-28", "2026-12-29", "2026-12-30", "2026-12-31",
	}, names)
}
