package model

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func wormed(days *int, animals ...string) Worm {
	return Worm{Treatment{Animals: animals, Product: "the white drench", WithdrawalDays: days}}
}

func TestWormingDue(t *testing.T) {
	t.Run("no pigs", func(t *testing.T) {
		_, err := newPenDiary(t, "America/Chicago").herd().WormingDue(penDay(t, "2026-06-01"))
		requireMissing(t, err, "pigs")
	})
	t.Run("five weeks after they came", func(t *testing.T) {
		due, err := fourPigs(t).herd().WormingDue(penDay(t, "2026-05-20"))
		require.NoError(t, err)
		require.Equal(t, penDay(t, "2026-06-06"), due.On)
		require.Len(t, due.Pigs, 4)
		require.False(t, due.Blocked)
		reasonWith(t, due.Reasons, WormingSinceArrival)
		reasonWith(t, due.Reasons, WormingTestFirst)
	})
	t.Run("six weeks after the last", func(t *testing.T) {
		due, err := fourPigs(t).add("2026-06-06 09:00", wormed(Int(5), All)).herd().WormingDue(penDay(t, "2026-06-20"))
		require.NoError(t, err)
		require.Equal(t, penDay(t, "2026-07-18"), due.On)
		require.Equal(t, []string{"the white drench"}, reasonWith(t, due.Reasons, WormingSinceLast).Names)
	})
	t.Run("by the seller", func(t *testing.T) {
		d := newPenDiary(t, "America/Chicago").add("2026-04-28 12:00", wormed(nil, All)).unsaid()
		d.records = append(d.records, fourPigs(t).records...)
		for i := range d.records {
			d.records[i].ID = "s" + twoDigits(i)
		}
		due, err := d.herd().WormingDue(penDay(t, "2026-05-20"))
		require.NoError(t, err)
		require.Equal(t, penDay(t, "2026-04-28")+WormingIntervalDays, due.On)
	})
	t.Run("only those not yet done", func(t *testing.T) {
		due, err := fourPigs(t).add("2026-06-06 09:00", wormed(Int(5), "Moss", "Fern")).herd().WormingDue(penDay(t, "2026-06-20"))
		require.NoError(t, err)
		require.Equal(t, penDay(t, "2026-06-06"), due.On, "overdue since then")
		require.Len(t, due.Pigs, 2)
		require.Equal(t, "Juniper", due.Pigs[0].Name)
	})
}

func TestWormingThatCannotBeClearIsBlocked(t *testing.T) {
	for _, c := range []struct {
		name    string
		days    *int
		booked  string
		blocked bool
		code    string
	}{
		{"clear in good time", Int(21), "2026-09-01", false, WormingLastDay},
		{"clear on the last day", Int(21), "2026-08-09", false, WormingLastDay},
		{"a day too late", Int(21), "2026-08-08", true, WormingTooLate},
		{"long too late", Int(42), "2026-08-08", true, WormingTooLate},
		{"days unknown", nil, "2026-08-08", false, WormingReadLabel},
		{"days unknown, gone by then", nil, "2026-07-18", true, WormingReadLabel},
	} {
		t.Run(c.name, func(t *testing.T) {
			d := fourPigs(t).add("2026-06-06 09:00", wormed(c.days, All)).
				add("2026-06-07 09:00", Booked{Day: penDay(t, c.booked)})
			due, err := d.herd().WormingDue(penDay(t, "2026-07-01"))
			require.NoError(t, err)
			require.Equal(t, penDay(t, "2026-07-18"), due.On)
			require.Equal(t, c.blocked, due.Blocked)
			reasonWith(t, due.Reasons, c.code)
		})
	}
	t.Run("overdue counts from today", func(t *testing.T) {
		d := fourPigs(t).add("2026-06-06 09:00", wormed(Int(21), All)).add("2026-06-07 09:00", Booked{Day: penDay(t, "2026-08-20")})
		due, err := d.herd().WormingDue(penDay(t, "2026-08-10"))
		require.NoError(t, err)
		require.True(t, due.Blocked)
	})
	t.Run("no booking: the target's early edge", func(t *testing.T) {
		due, err := fourPigs(t).add("2026-06-06 09:00", wormed(Int(21), All)).herd().WormingDue(penDay(t, "2026-07-01"))
		require.NoError(t, err)
		require.False(t, due.Blocked)
		reasonWith(t, due.Reasons, WormingLastDay)
	})
}

// The clear moment of a dose late on the last day must lie before the booked day
// begins.
func TestTheLastWormingDayIsClearWhenTheBookedDayBegins(t *testing.T) {
	d := fourPigs(t).add("2026-06-06 09:00", wormed(Int(21), All)).add("2026-06-07 09:00", Booked{Day: penDay(t, "2026-09-01")})
	due, err := d.herd().WormingDue(penDay(t, "2026-07-01"))
	require.NoError(t, err)
	last := reasonWith(t, due.Reasons, WormingLastDay).On
	clear := clearMoment(last.At(0, d.loc), false, 21)
	require.False(t, clear.After(d.moment("2026-09-01 00:00")))
	require.True(t, clearMoment((last+1).At(0, d.loc), false, 21).After(d.moment("2026-09-01 00:00")))
}
