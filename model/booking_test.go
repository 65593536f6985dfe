package model

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func TestBookingDue(t *testing.T) {
	today := penDay(t, "2026-05-10")
	d := fourPigs(t)
	due, err := d.herd().BookingDue(today)
	require.NoError(t, err)
	target, err := d.herd().Target(DefaultTargetKg, today)
	require.NoError(t, err)
	require.Equal(t, target.Herd.Days, due.Window)
	require.Equal(t, due.Window.Low-BookingLeadDays, due.On)
	require.False(t, due.Booked)
	reasonWith(t, due.Reasons, BookingLead)

	d.add("2026-05-11 09:00", Booked{Day: penDay(t, "2026-09-10")})
	booked, err := d.herd().BookingDue(today + 1)
	require.NoError(t, err)
	require.True(t, booked.Booked)
	require.Equal(t, penDay(t, "2026-09-10"), reasonWith(t, booked.Reasons, BookingStands).On)

	past, err := d.herd().BookingDue(penDay(t, "2026-09-11"))
	require.NoError(t, err)
	require.False(t, past.Booked, "an appointment gone by is none")
}

func TestBookingDueAsksForWhatItLacks(t *testing.T) {
	_, err := newPenDiary(t, "America/Chicago").herd().BookingDue(penDay(t, "2026-05-10"))
	requireMissing(t, err, "pigs")
	_, err = newPenDiary(t, "America/Chicago").add("2026-05-02 09:00", Arrive{Count: 2}).herd().BookingDue(penDay(t, "2026-05-10"))
	requireMissing(t, err, "weight")
}

func TestEveryReasonCodeIsListedOnce(t *testing.T) {
	seen := map[string]bool{}
	for _, c := range WaterReasonCodes() {
		require.Regexp(t, "^[a-z_]+$", c)
		require.False(t, seen[c], c)
		seen[c] = true
	}
	require.Len(t, seen, 45)
}
