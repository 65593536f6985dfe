package model

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestVisitsWhileAway(t *testing.T) {
	d := fourPigs(t).add("2026-07-04 09:00", Refill{FeedKg: Float(60), Full: true}, Water{Full: true})
	h := d.herd()
	from, until := d.moment("2026-07-04 12:00"), d.moment("2026-07-26 07:00")
	visits, err := h.SupplyVisits(from, until)
	require.NoError(t, err)
	require.NotEmpty(t, visits)
	last := from
	before := len(h.Refills)
	for i, v := range visits {
		require.True(t, v.At.After(last) || i == 0)
		require.Equal(t, 18, v.At.Hour())
		require.True(t, v.Feed || v.Water, "each visit has its reason")
		require.True(t, v.SafeUntil.After(v.At.Add(24*time.Hour)))
		require.Positive(t, v.Litres)
		last = v.At
	}
	require.False(t, visits[len(visits)-1].SafeUntil.Before(until), "the last one lasts")
	require.Len(t, h.Refills, before, "the herd itself stays as it is")
}

func TestAShortTripNeedsNoVisit(t *testing.T) {
	d := fourPigs(t).add("2026-07-04 09:00", Refill{FeedKg: Float(60), Full: true}, Water{Full: true})
	visits, err := d.herd().SupplyVisits(d.moment("2026-07-04 12:00"), d.moment("2026-07-05 12:00"))
	require.NoError(t, err)
	require.Empty(t, visits)
}

func TestAVisitBeforeLeavingWhereNothingIsLeft(t *testing.T) {
	d := fourPigs(t).add("2026-07-04 09:00", Refill{FeedKg: Float(60), Full: true}, Water{Full: true})
	from := d.moment("2026-08-10 09:00")
	visits, err := d.herd().SupplyVisits(from, from.AddDate(0, 0, 3))
	require.NoError(t, err)
	require.Equal(t, from, visits[0].At)
	require.True(t, visits[0].Feed && visits[0].Water)
}

func TestVisitsNeedToKnowSomething(t *testing.T) {
	d := newPenDiary(t, "America/Chicago").add("2026-07-01 09:00", Arrive{Count: 2, WeightKg: Float(30)})
	at := d.moment("2026-07-02 09:00")
	_, err := d.herd().SupplyVisits(at, at.AddDate(0, 0, 9))
	var m *Missing
	require.ErrorAs(t, err, &m)
}

// Between the visits nothing runs dry at the cautious edge, whatever the herd.
func TestVisitsLeaveNoGap(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		d := newPenDiary(t, "America/Chicago").add("2026-07-01 09:00",
			Arrive{Count: rapid.IntRange(1, 12).Draw(rt, "pigs"), WeightKg: Float(rapid.Float64Range(15, 90).Draw(rt, "kg"))},
			Setting{Key: SetFeeder, Thing: &Thing{Name: "hopper", CapacityKg: Float(rapid.Float64Range(60, 400).Draw(rt, "feeder"))}},
			Setting{Key: SetBarrel, Thing: &Thing{Name: "tub", CapacityL: Float(rapid.Float64Range(150, 1000).Draw(rt, "barrel"))}},
		).add("2026-07-02 09:00", Refill{Full: true}, Water{Full: true})
		h := d.herd()
		from := d.moment("2026-07-02 12:00")
		until := from.AddDate(0, 0, rapid.IntRange(1, 25).Draw(rt, "days"))
		visits, err := h.SupplyVisits(from, until)
		require.NoError(rt, err)
		s, err := h.supplies(from)
		require.NoError(rt, err)
		safe := s.edge()
		for i, v := range visits {
			daily := i > 0 && v.At.Sub(visits[i-1].At) <= 25*time.Hour
			require.True(rt, daily || i == 0 && v.At.Equal(from) || !v.At.After(safe), "visit %d at %s, safe until %s", i, v.At, safe)
			safe = v.SafeUntil
		}
		require.True(rt, len(visits) == mostCalls || !safe.Before(until) || lastVisitBefore(safe).Before(until))
	})
}
