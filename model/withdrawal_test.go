package model

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

const momentLayout = "2006-01-02 15:04 MST"

func TestClearMoment(t *testing.T) {
	for _, c := range []struct {
		name, zone, dose string
		stated           bool
		days             int
		want             string
	}{
		{"stated hour", "America/Chicago", "2026-08-11 18:00", true, 21, "2026-09-01 18:00 CDT"},
		{"hour not told", "America/Chicago", "2026-08-11 10:15", false, 21, "2026-09-01 23:59 CDT"},
		{"no days", "America/Chicago", "2026-08-11 18:00", true, 0, "2026-08-11 18:00 CDT"},
		{"no days, hour not told", "America/Chicago", "2026-08-11 08:00", false, 0, "2026-08-11 23:59 CDT"},
		// Clocks go forward on 8 March 2026: 24 hours are the later.
		{"over the spring change", "America/New_York", "2026-03-07 12:00", true, 1, "2026-03-08 13:00 EDT"},
		{"into the spring gap", "America/New_York", "2026-03-07 02:30", true, 1, "2026-03-08 03:30 EDT"},
		{"up to the spring change", "America/New_York", "2026-03-07 01:30", true, 1, "2026-03-08 01:30 EST"},
		{"weeks over the spring change", "America/New_York", "2026-03-01 08:00", true, 14, "2026-03-15 09:00 EDT"},
		// Clocks go back on 1 November 2026: the same wall time is the later.
		{"over the autumn change", "America/New_York", "2026-10-31 12:00", true, 1, "2026-11-01 12:00 EST"},
		{"onto the repeated hour", "America/New_York", "2026-10-31 01:30", true, 1, "2026-11-01 01:30 EDT"},
		{"weeks over the autumn change", "America/New_York", "2026-10-25 08:00", true, 14, "2026-11-08 08:00 EST"},
		{"a zone without changes", "America/Phoenix", "2026-03-01 08:00", true, 14, "2026-03-15 08:00 MST"},
		{"southern spring", "Australia/Sydney", "2026-10-03 12:00", true, 1, "2026-10-04 13:00 AEDT"},
		{"over a leap day", "Europe/Berlin", "2028-02-20 06:00", true, 10, "2028-03-01 06:00 CET"},
	} {
		t.Run(c.name, func(t *testing.T) {
			loc, err := time.LoadLocation(c.zone)
			require.NoError(t, err)
			dose, err := time.ParseInLocation("2006-01-02 15:04", c.dose, loc)
			require.NoError(t, err)
			require.Equal(t, c.want, clearMoment(dose, c.stated, c.days).Format(momentLayout))
		})
	}
}

func TestLastSafeDose(t *testing.T) {
	for _, c := range []struct {
		name, zone, load string
		days             int
		want             string
	}{
		{"a plain week", "America/Chicago", "2026-08-31 18:00", 18, "2026-08-13 18:00 CDT"},
		{"no days", "America/Chicago", "2026-08-31 18:00", 0, "2026-08-31 18:00 CDT"},
		{"over the spring change", "America/New_York", "2026-03-08 13:00", 1, "2026-03-07 12:00 EST"},
		{"over the autumn change", "America/New_York", "2026-11-08 08:00", 14, "2026-10-25 08:00 EDT"},
		{"from the repeated hour", "America/New_York", "2026-11-02 01:30", 1, "2026-11-01 01:30 EDT"},
	} {
		t.Run(c.name, func(t *testing.T) {
			loc, err := time.LoadLocation(c.zone)
			require.NoError(t, err)
			load, err := time.ParseInLocation("2006-01-02 15:04", c.load, loc)
			require.NoError(t, err)
			require.Equal(t, c.want, lastSafeDose(load, c.days).Format(momentLayout))
		})
	}
}

func TestClearMomentIsNeverEarlierForMoreDaysOrALaterDay(t *testing.T) {
	loc, err := time.LoadLocation("America/New_York")
	require.NoError(t, err)
	from := time.Date(2026, 2, 1, 0, 0, 0, 0, loc)
	rapid.Check(t, func(r *rapid.T) {
		dose := from.Add(time.Duration(rapid.IntRange(0, 400*24*60).Draw(r, "minutes")) * time.Minute)
		later := dose.Add(time.Duration(rapid.IntRange(60, 100*24*60).Draw(r, "later")) * time.Minute)
		days := rapid.IntRange(0, 200).Draw(r, "days")
		more := rapid.IntRange(days, 220).Draw(r, "more")
		stated := rapid.Bool().Draw(r, "stated")
		clear := clearMoment(dose, stated, days)
		require.False(r, clearMoment(dose, stated, more).Before(clear), "more days")
		require.False(r, clearMoment(later, stated, days).Before(clear), "a later dose")
		require.False(r, clear.Before(dose.Add(time.Duration(days)*24*time.Hour)), "never under N times 24 hours")
		require.False(r, clearMoment(dose, false, days).Before(clearMoment(dose, true, days)), "an hour not told")
	})
}

func TestLastSafeDoseIsClearAndNothingMuchLaterIs(t *testing.T) {
	loc, err := time.LoadLocation("America/New_York")
	require.NoError(t, err)
	from := time.Date(2026, 2, 1, 0, 0, 0, 0, loc)
	rapid.Check(t, func(r *rapid.T) {
		load := from.Add(time.Duration(rapid.IntRange(0, 400*24*60).Draw(r, "minutes")) * time.Minute)
		days := rapid.IntRange(0, 120).Draw(r, "days")
		last := lastSafeDose(load, days)
		require.False(r, clearMoment(last, true, days).After(load))
		before := last.Add(-time.Duration(rapid.IntRange(0, 48*60).Draw(r, "before")) * time.Minute)
		require.False(r, clearMoment(before, true, days).After(load), "every earlier dose is clear too")
		// Only a wall time that comes twice or never leaves up to two hours unused.
		require.True(r, clearMoment(last.Add(2*time.Hour+time.Minute), true, days).After(load))
	})
}

func TestWithdrawalOfEachPig(t *testing.T) {
	d := fourPigs(t).
		add("2026-08-01 09:00", Worm{Treatment{Animals: []string{All}, Product: "the white drench", WithdrawalDays: Int(18)}}).unsaid().
		add("2026-08-11 18:00", Treat{Treatment{Animals: []string{"moss"}, Product: "the vet's shot", WithdrawalDays: Int(21)}}).
		add("2026-08-12 07:30", Treat{Treatment{Animals: []string{"Fern"}, Product: "spray"}})
	at := d.moment("2026-08-15 12:00")
	byName := map[string]PigClear{}
	for _, p := range d.herd().Withdrawal(at) {
		byName[p.Animal.Name] = p
	}
	require.Len(t, byName, 4)

	require.Equal(t, "2026-08-19 23:59 CDT", byName["Juniper"].ClearAt.Format(momentLayout))
	require.Equal(t, penDay(t, "2026-08-19"), byName["Juniper"].Clear)
	require.Equal(t, penDay(t, "2026-08-20"), byName["Juniper"].NotBefore())
	require.True(t, byName["Juniper"].Known)
	require.False(t, byName["Juniper"].IsClear(at))
	require.True(t, byName["Juniper"].IsClear(d.moment("2026-08-19 23:59")))

	require.Equal(t, "2026-09-01 18:00 CDT", byName["Moss"].ClearAt.Format(momentLayout), "the later of two products")
	require.Len(t, byName["Moss"].Reasons, 2)

	require.False(t, byName["Fern"].Known)
	require.False(t, byName["Fern"].IsClear(d.moment("2027-08-15 12:00")), "unknown days are never clear")
	require.Equal(t, []string{"spray"}, reasonWith(t, byName["Fern"].Reasons, WithdrawalDaysUnknown).Names)
}

func TestWithdrawalWithoutTreatmentIsClear(t *testing.T) {
	d := fourPigs(t)
	for _, p := range d.herd().Withdrawal(d.moment("2026-08-15 12:00")) {
		require.True(t, p.Known)
		require.False(t, p.Treated)
		require.True(t, p.IsClear(d.moment("2026-08-15 12:00")))
	}
}

func TestTreatmentOfAPigNobodyKnowsCoversEveryPig(t *testing.T) {
	d := fourPigs(t).add("2026-08-11 18:00", Treat{Treatment{Animals: []string{"the spotted one"}, Product: "shot", WithdrawalDays: Int(10)}})
	for _, p := range d.herd().Withdrawal(d.moment("2026-08-12 12:00")) {
		require.True(t, p.Treated)
		require.Equal(t, "2026-08-21 18:00 CDT", p.ClearAt.Format(momentLayout))
	}
}

func TestClearAtMidnightLetsTheDayBeginClear(t *testing.T) {
	d := fourPigs(t).add("2026-08-11 00:00", Treat{Treatment{Animals: []string{All}, WithdrawalDays: Int(3)}})
	p := d.herd().Withdrawal(d.moment("2026-08-12 12:00"))[0]
	require.Equal(t, penDay(t, "2026-08-14"), p.Clear)
	require.Equal(t, penDay(t, "2026-08-14"), p.NotBefore())
}

func TestPigsThatLeftOrCameLaterAreNotAsked(t *testing.T) {
	d := fourPigs(t).add("2026-08-01 09:00", Treat{Treatment{Animals: []string{All}, WithdrawalDays: Int(30)}}).
		add("2026-08-05 09:00", Gone{Animals: []string{"Moss"}, How: Sold}, Arrive{Count: 1, Animals: []string{"Sedge"}, WeightKg: Float(20)})
	treated := map[string]bool{}
	for _, p := range d.herd().Withdrawal(d.moment("2026-08-06 12:00")) {
		treated[p.Animal.Name] = p.Treated
	}
	require.Equal(t, map[string]bool{"Juniper": true, "Fern": true, "Burdock": true, "Sedge": false}, treated)
}
