package model

import (
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestPlanNeedsOfFourPigs(t *testing.T) {
	n, err := PlanNeeds(NeedsQuery{Count: 4, From: DateDay(2026, 4, 18), WeightKg: 21.8, TargetKg: 120})
	require.NoError(t, err)
	require.Equal(t, 1, n.FeederHoles)
	require.Equal(t, 1, n.Feeders)
	require.Equal(t, 2, n.Barrels)
	require.Equal(t, 2, n.Nipples)
	require.InDelta(t, 4.4, n.ShelterM2, 1e-9)
	require.InDelta(t, 2.24, n.ShadeM2, 1e-9)
	require.InDelta(t, 247, n.PenM2, 1)
	require.Equal(t, n.Target.Low-120, n.BookBy)
	require.True(t, n.Target.Low < n.Target.Mid && n.Target.Mid < n.Target.High)
	var sum float64
	for i, m := range n.FeedByMonthKg {
		sum += m.FeedKg
		_, month, day := m.Month.Date()
		require.Equal(t, 1, day)
		require.Equal(t, 4+i, int(month))
	}
	require.InDelta(t, n.FeedKg.Mid, sum, 1e-6)
}

func TestPlanNeedsRefusesWhatCannotBe(t *testing.T) {
	good := NeedsQuery{Count: 4, From: DateDay(2026, 4, 18), WeightKg: 20, TargetKg: 120}
	for _, c := range []struct {
		quantity string
		change   func(q *NeedsQuery)
	}{
		{"count", func(q *NeedsQuery) { q.Count = 0 }},
		{"count", func(q *NeedsQuery) { q.Count = 201 }},
		{"weight_kg", func(q *NeedsQuery) { q.WeightKg = 2 }},
		{"weight_kg", func(q *NeedsQuery) { q.WeightKg = 120 }},
		{"target_kg", func(q *NeedsQuery) { q.TargetKg = 400 }},
		{"target_kg", func(q *NeedsQuery) { q.TargetKg = -1 }},
	} {
		q := good
		c.change(&q)
		_, err := PlanNeeds(q)
		var out *OutOfRange
		require.ErrorAs(t, err, &out)
		require.Equal(t, c.quantity, out.Quantity)
	}
	good.TargetKg = 0
	n, err := PlanNeeds(good)
	require.NoError(t, err)
	good.TargetKg = DefaultTargetKg
	same, err := PlanNeeds(good)
	require.NoError(t, err)
	require.Equal(t, same, n)
}

func TestMorePigsNeedNoLess(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		q := NeedsQuery{Count: rapid.IntRange(1, 30).Draw(rt, "count"), From: DateDay(2026, 4, 18), WeightKg: rapid.Float64Range(8, 60).Draw(rt, "weight"), TargetKg: rapid.Float64Range(80, 140).Draw(rt, "target")}
		n, err := PlanNeeds(q)
		require.NoError(rt, err)
		q.Count++
		more, err := PlanNeeds(q)
		require.NoError(rt, err)
		require.Greater(rt, more.FeedKg.Mid, n.FeedKg.Mid)
		require.GreaterOrEqual(rt, more.FeederHoles, n.FeederHoles)
		require.GreaterOrEqual(rt, more.Barrels, n.Barrels)
		require.GreaterOrEqual(rt, more.Nipples, n.Nipples)
		require.Greater(rt, more.ShelterM2, n.ShelterM2)
	})
}
