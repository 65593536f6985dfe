package model

import "time"

// lastMinute of a day counts as the hour of a dose whose hour nobody told.
const lastMinute = 23*60 + 59

// ClearMoment is when a withdrawal of so many days after a last dose ends: N
// times 24 hours or the same wall time N days on, whichever is later. stated
// says that the hour of the dose is known; else 23:59 of its day counts. The
// days come from the label or the vet, 0 to 365: else *OutOfRange.
func ClearMoment(dose time.Time, stated bool, days int) (time.Time, error) {
	if err := withdrawalRange(days); err != nil {
		return time.Time{}, err
	}
	return clearMoment(dose, stated, days), nil
}

// mostWithdrawalDays bounds withdrawal days: a slip of the pen beyond.
const mostWithdrawalDays = 365

func withdrawalRange(days int) error {
	if days < 0 || days > mostWithdrawalDays {
		return &OutOfRange{"withdrawal_days", float64(days), 0, mostWithdrawalDays}
	}
	return nil
}

func clearMoment(dose time.Time, stated bool, days int) time.Time {
	if !stated {
		dose = DayOf(dose).At(lastMinute, dose.Location())
	}
	elapsed := dose.Add(time.Duration(days) * 24 * time.Hour)
	if wall := sameWallTime(dose, days); wall.After(elapsed) {
		return wall
	}
	return elapsed
}

// sameWallTime is the moment whose wall clock shows the hour of t so many days
// on, before t for negative days.
func sameWallTime(t time.Time, days int) time.Time {
	if days == 0 {
		return t
	}
	rest := time.Duration(t.Second())*time.Second + time.Duration(t.Nanosecond())
	return (DayOf(t) + Day(days)).At(MinuteOf(t), t.Location()).Add(rest)
}

// LastSafeDose is the latest moment of a dose of a product with so many
// withdrawal days (0 to 365, else *OutOfRange) that is clear when the pigs are
// loaded. Every earlier dose is clear then too.
func LastSafeDose(load time.Time, days int) (time.Time, error) {
	if err := withdrawalRange(days); err != nil {
		return time.Time{}, err
	}
	return lastSafeDose(load, days), nil
}

func lastSafeDose(load time.Time, days int) time.Time {
	last := load.Add(-time.Duration(days) * 24 * time.Hour)
	if wall := sameWallTime(load, -days); wall.Before(last) {
		last = wall
	}
	// A wall time that comes twice, or never, can leave the clear moment up to
	// an hour after loading: the dose then has to be that much earlier.
	for late := clearMoment(last, true, days).Sub(load); late > 0; late = clearMoment(last, true, days).Sub(load) {
		last = last.Add(-late)
	}
	return last
}
