package model

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

func TestPigsNamedForAnAppointmentGoToIt(t *testing.T) {
	at := time.Date(2026, 8, 1, 8, 0, 0, 0, time.UTC)
	on := DayOf(at)
	first := Booked{Day: on + 10, Count: 2, Animals: []string{"Ivy", "Roan"}}
	second := Booked{Day: on + 20, Count: 1}
	third := Booked{Day: on + 30}
	h := Fold([]Record{
		{ID: "a", On: on, At: at, Fact: Arrive{Count: 4, Animals: []string{"Hank", "Ivy", "Dell", "Roan"}, WeightKg: Float(90)}},
		{ID: "b", On: on, At: at, Fact: Weigh{Animals: []string{"Dell"}, WeightKg: 100}},
		{ID: "c", On: on, At: at, Fact: first},
		{ID: "d", On: on, At: at, Fact: second},
		{ID: "e", On: on, At: at, Fact: third},
	})
	names := func(b Booked) []string {
		var out []string
		for _, p := range h.BookedPigs(b, on) {
			out = append(out, p.Name)
		}
		return out
	}
	require.ElementsMatch(t, []string{"Ivy", "Roan"}, names(first))
	require.Equal(t, []string{"Dell"}, names(second)) // the heaviest of those not named elsewhere
	require.Equal(t, []string{"Hank"}, names(third))
	require.True(t, first.MayTake(h.Animals[1]))
	require.False(t, first.MayTake(h.Animals[0]))
	require.True(t, second.MayTake(h.Animals[0]))
}
