package model

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

// twentyPigs is a season of twenty pigs, filled and looked at weekly.
func twentyPigs(b testing.TB) (*toldHerd, time.Time) {
	s := tellHerd(b).tell("2026-04-18 08:00", Arrive{Count: 20, WeightKg: Float(22)},
		Setting{Key: SetFeeder, Thing: &Thing{Name: "left", CapacityL: Float(800)}}, Setting{Key: SetFeeder, Thing: &Thing{Name: "right", CapacityL: Float(800)}},
		Recipe{Ingredients: map[string]float64{"corn": 340, "soybean meal 48": 100, "mineral premix": 14}})
	at := s.moment("2026-04-18 09:00")
	for range 18 {
		day := at.Format("2006-01-02 15:04")
		s.tell(day, Refill{Feeder: "left", FeedKg: Float(160), Full: true}, Refill{Feeder: "right", FeedKg: Float(120), Full: true})
		at = at.AddDate(0, 0, 3)
		s.tell(at.Format("2006-01-02 15:04"), FeedLevel{Feeder: "left", Fraction: Float(0.6)})
		at = at.AddDate(0, 0, 4)
	}
	return s, at
}

// The feed figures of a herd just folded, weights known.
func BenchmarkFeedLeftAfresh(b *testing.B) {
	s, at := twentyPigs(b)
	for range b.N {
		b.StopTimer()
		h := s.herd()
		_, err := h.Weights(DayOf(at))
		require.NoError(b, err)
		b.StartTimer()
		if _, err := h.FeedLeft(at); err != nil {
			b.Fatal(err)
		}
	}
}

// The same with the fit at hand: what one more question costs.
func BenchmarkFeedLeftAgain(b *testing.B) {
	s, at := twentyPigs(b)
	h := s.herd()
	for b.Loop() {
		if _, err := h.FeedLeft(at); err != nil {
			b.Fatal(err)
		}
	}
}

// One day's plan of what to mix and pour.
func BenchmarkRefillPlan(b *testing.B) {
	s, at := twentyPigs(b)
	h := s.herd()
	for b.Loop() {
		if _, err := h.RefillPlan(at, at.AddDate(0, 0, 7)); err != nil {
			b.Fatal(err)
		}
	}
}
