package model

import (
	"testing"
	"time"
)

// One day's feed and water plan of a herd that has told everything, its records
// once read.
func BenchmarkDayPlan(b *testing.B) {
	s := aWholeSeason(b)
	h, at := s.herd(), s.moment("2026-06-14 12:00")
	for b.Loop() {
		if _, err := h.RefillPlan(at, at.Add(7*24*time.Hour)); err != nil {
			b.Fatal(err)
		}
		if _, err := h.WaterLeft(at); err != nil {
			b.Fatal(err)
		}
	}
}

// The cheapest mix of six feeds.
func BenchmarkLeastCostMix(b *testing.B) {
	q := MixQuery{WeightKg: 60, BatchKg: 50, Feeds: homeFeeds, FixedKg: map[string]float64{"mineral premix": 1.5}}
	for b.Loop() {
		if _, err := LeastCostMix(q); err != nil {
			b.Fatal(err)
		}
	}
}

// A year's nitrogen of each pen.
func BenchmarkPenNitrogenYear(b *testing.B) {
	s := aWholeSeason(b)
	h, day := s.herd(), DateDay(2026, 9, 1)
	for b.Loop() {
		if _, err := h.PenNitrogenYear(day); err != nil {
			b.Fatal(err)
		}
	}
}
