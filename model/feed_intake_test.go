package model

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestFeedUseRefusesWhatTheEquationsDoNotCover(t *testing.T) {
	for _, c := range []struct {
		name         string
		weight, diet float64
		quantity     string
	}{
		{"too light", 4.9, 0, "weight_kg"},
		{"too heavy", 180.1, 0, "weight_kg"},
		{"no number", math.NaN(), 0, "weight_kg"},
		{"not a feed", 60, 2, "energy_mj_kg"},
		{"pure oil", 60, 36, "energy_mj_kg"},
		{"negative energy", 60, -13, "energy_mj_kg"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := FeedUseKgD(c.weight, "", c.diet)
			var out *OutOfRange
			require.ErrorAs(t, err, &out)
			require.Equal(t, c.quantity, out.Quantity)
		})
	}
}

func TestFeedUseRisesWithWeightAndFallsWithEnergy(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		sex := rapid.SampledFrom([]Sex{"", Barrow, Gilt, Boar, Sow}).Draw(t, "sex")
		kg := rapid.Float64Range(MinIntakeKg, 179).Draw(t, "kg")
		e := rapid.Float64Range(minMixMJKg, maxMixMJKg-0.5).Draw(t, "energy")
		a, err := FeedUseKgD(kg, sex, e)
		require.NoError(t, err)
		heavier, err := FeedUseKgD(kg+1, sex, e)
		require.NoError(t, err)
		require.Greater(t, heavier, a)
		richer, err := FeedUseKgD(kg, sex, e+0.5)
		require.NoError(t, err)
		require.LessOrEqual(t, richer, a)
	})
}
