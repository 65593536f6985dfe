package reading_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/bot/reading"
	"troughbell/model"
)

// What a feeder holds may be told in bags of a size that the text tells.
func TestCapacityInBags(t *testing.T) {
	for _, text := range []string{
		"hog feeder takes like 6 bags, bags are 50s", "feeder holds 6 bags, a bag is 50", "feeder fits about 6 fifty-pound bags",
		"the feeder takes about 6 fifty pound bags", "feeder holds six 50 lb bags", "our feeder has room for 6 50 lb bags",
	} {
		t.Run(text, func(t *testing.T) {
			got := saidAfter(t, "3 pigs came today, 45 lb each", text)
			set := got.Entries[0].Act.(reading.Fact).Fact.(model.Setting)
			require.Equal(t, model.SetFeeder, set.Key)
			require.InDelta(t, 300*0.45359237, *set.Thing.CapacityKg, 0.01)
		})
	}
}

// Bags that were poured or are left are no capacity.
func TestNoCapacityInBags(t *testing.T) {
	for _, text := range []string{"feeder takes 3 bags to fill", "the feeder still holds 2 bags", "feeder takes 3 bags a week", "feeder took 6 bags"} {
		got, err := play(t, "bramble").say("2026-06-12T18:00", text)
		require.NoError(t, err)
		for _, e := range got.Entries {
			if f, ok := e.Act.(reading.Fact); ok {
				require.NotEqual(t, model.Setting{}.Kind(), f.Fact.Kind(), text)
			}
		}
	}
}
