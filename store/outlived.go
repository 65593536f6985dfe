package store

import (
	"slices"

	"troughbell/model"
)

// How many daily copies are kept: the newest of so many days, and the newest of
// each of so many weeks, which begin on Mondays.
const (
	keptDays  = 7
	keptWeeks = 8
)

// outlived gives the days whose copies are not kept any longer. Days beyond
// today come from a clock that was wrong, then or now: nobody can tell which, so
// that the two lots are weighed apart and neither drives the other out.
func outlived(days []model.Day, today model.Day) []model.Day {
	var past, ahead, out []model.Day
	for _, d := range days {
		if d > today {
			ahead = append(ahead, d)
		} else {
			past = append(past, d)
		}
	}
	for _, lot := range [][]model.Day{past, ahead} {
		slices.Sort(lot)
		slices.Reverse(lot)
		weeks := map[model.Day]bool{}
		for i, d := range slices.Compact(lot) {
			newest := !weeks[monday(d)] && len(weeks) < keptWeeks
			if newest {
				weeks[monday(d)] = true
			}
			if i >= keptDays && !newest {
				out = append(out, d)
			}
		}
	}
	return out
}

// monday is the day on which the week of a day began.
func monday(d model.Day) model.Day { return d - (model.Day(d.Weekday())+6)%7 }
