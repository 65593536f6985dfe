package model

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func TestBookedPigsAreTheHeaviestFirst(t *testing.T) {
	d := newPenDiary(t, "America/Chicago").
		add("2026-04-11 09:00", Arrive{Count: 2, Animals: []string{"Ash", "Elm"}, WeightKg: Float(25)}).
		add("2026-04-11 09:00", Arrive{Count: 2, Animals: []string{"Oak", "Fir"}, WeightKg: Float(40)}).
		add("2026-07-01 09:00", Booked{Day: penDay(t, "2026-08-20"), Count: 2}).
		add("2026-07-01 09:01", Booked{Day: penDay(t, "2026-10-20")})
	h := d.herd()
	today := penDay(t, "2026-07-02")
	names := func(b Booked) (out []string) {
		for _, p := range h.BookedPigs(b, today) {
			out = append(out, p.Name)
		}
		return out
	}
	require.ElementsMatch(t, []string{"Oak", "Fir"}, names(h.Bookings[0].F))
	require.ElementsMatch(t, []string{"Ash", "Elm"}, names(h.Bookings[1].F), "those booked before are gone by then")
	require.Len(t, names(Booked{Day: penDay(t, "2026-08-01"), Count: 9}), 4, "no more than there are")
}
