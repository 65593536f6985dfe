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

func TestTheLeadIsLearnedFromTheHerdsOwnBookings(t *testing.T) {
	for _, c := range []struct {
		name     string
		bookings map[string]string // said on, for
		lead     Day
		learned  int
	}{
		{"none yet", nil, BookingLeadDays, 0},
		{"one at 60 days", map[string]string{"2026-05-11 09:00": "2026-07-10"}, 85, 1}, // sqrt(120*60), computed
		{"two at 60 days", map[string]string{"2025-05-11 09:00": "2025-07-10", "2026-05-11 09:00": "2026-07-10"}, 76, 2},
		{"told the week before", map[string]string{"2026-05-11 09:00": "2026-05-18"}, BookingLeadDays, 0},
		{"years ahead", map[string]string{"2026-05-11 09:00": "2029-05-11"}, 209, 1}, // sqrt(120*365), computed
	} {
		t.Run(c.name, func(t *testing.T) {
			d := fourPigs(t)
			for said, day := range c.bookings {
				d.add(said, Booked{Day: penDay(t, day)})
			}
			h := d.herd()
			lead, learned := h.BookingLead()
			require.Equal(t, c.lead, lead)
			require.Equal(t, c.learned, learned)
			due, err := h.BookingDue(penDay(t, "2026-05-12"))
			require.NoError(t, err)
			require.Equal(t, due.Window.Low-c.lead, due.On)
			if learned > 0 {
				require.Equal(t, []Quantity{{float64(lead), Days}, {float64(learned), Count}}, reasonWith(t, due.Reasons, BookingLeadOwn).Q)
			}
		})
	}
	// Two slots told on one day are one lesson.
	d := fourPigs(t).add("2026-05-11 09:00", Booked{Day: penDay(t, "2026-07-10"), Count: 2}, Booked{Day: penDay(t, "2026-07-24"), Count: 2})
	_, learned := d.herd().BookingLead()
	require.Equal(t, 1, learned)
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
	require.Len(t, seen, 48)
}
