package model

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// Median weights are the middles of the weights that are told: of named pigs and of
// unnamed ones, before, between and after their weighings.
func TestMedianWeightsAreThoseTold(t *testing.T) {
	h := newPenDiary(t, "America/Chicago").
		add("2026-04-11 09:00", Arrive{Count: 3, Animals: []string{"Ash", "Elm", "Oak"}, WeightKg: Float(25)}).
		add("2026-04-11 09:01", Arrive{Count: 3, WeightKg: Float(31)}).
		add("2026-05-02 09:00", Weigh{Animals: []string{"Ash"}, WeightKg: 41, By: ByScale}).
		add("2026-05-13 09:00", Weigh{Animals: []string{"Elm"}, GirthCm: 84, By: ByTape}).
		add("2026-05-20 09:00", Gone{Animals: []string{"Oak"}, How: "died"}).
		herd()
	for on, end := penDay(t, "2026-04-11"), penDay(t, "2026-07-20"); on < end; on += 9 {
		told, err := h.Weights(on)
		require.NoError(t, err)
		medians, err := h.medianWeights(h.Alive(on), on)
		require.NoError(t, err)
		require.Len(t, medians, len(told))
		for i, w := range told {
			require.Same(t, w.Animal, medians[i].animal)
			require.InDelta(t, w.WeightKg.Mid, medians[i].kg, 1e-9)
		}
	}
}
