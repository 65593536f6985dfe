package reading_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/bot/reading"
	"troughbell/model"
)

// What was paid for pigs is no weight of theirs, and by the head it is paid for each.
func TestPigPrices(t *testing.T) {
	const lb = 0.45359237
	for text, want := range map[string]struct {
		count    int
		kg, paid float64
	}{
		"bought four pigs today from the Amish fella, 40 to 50 pounds, paid 75 apiece": {4, 45 * lb, 300},
		"got 2 pigs from the feed store guy today, 55 lb, 90 bucks each":               {2, 55 * lb, 180},
		"got 2 pigs from the mill today, 55 lb each, paid 180":                         {2, 55 * lb, 180},
		"3 weaners came Saturday, from the Harpers, thirty pounds apiece":              {3, 30 * lb, 0},
		"bought 4 pigs today for 75 a head":                                            {4, 0, 300},
		"bought 4 pigs today for 300":                                                  {4, 0, 300},
		"bought 3 gilts 50 lb each for 80 bucks apiece":                                {3, 50 * lb, 240},
		"bought 3 pigs, 50 lb each, $240":                                              {3, 50 * lb, 240},
		"3 pigs for $210 total, about 40 lb":                                           {3, 40 * lb, 210},
		"2 pigs at $70 a head came today":                                              {2, 0, 140},
		"bought 2 pigs, paid 140 for the pair":                                         {2, 0, 140},
		"got 4 pigs at 45 each":                                                        {4, 45 * lb, 0},
		"4 pigs came today, between 40 and 50 lb each":                                 {4, 45 * lb, 0},
		"4 pigs came, 180 lb total":                                                    {4, 45 * lb, 0},
	} {
		t.Run(text, func(t *testing.T) {
			got, err := newTalk().say("2026-05-02T18:00", text)
			require.NoError(t, err)
			paid := 0.0
			for _, e := range got.Entries {
				switch f := e.Act.(reading.Fact).Fact.(type) {
				case model.Arrive:
					require.Equal(t, want.count, f.Count)
					require.Empty(t, f.Animals)
					if want.kg == 0 {
						require.Nil(t, f.WeightKg)
						continue
					}
					require.InDelta(t, want.kg, *f.WeightKg, 0.01)
				case model.Spend:
					paid += f.Amount
				default:
					require.Fail(t, "read otherwise", "%+v", f)
				}
			}
			require.InDelta(t, want.paid, paid, 0.001)
		})
	}
}

// Parts of a mix are shares.
func TestMixInParts(t *testing.T) {
	for text, want := range map[string]map[string]float64{
		"mix is 3 parts corn, 1 part soybean meal":           {"corn": 0.75, "soybean meal 48": 0.25},
		"our mix is 2 parts barley 1 part peas 1 part wheat": {"barley": 0.5, "peas": 0.25, "wheat": 0.25},
		"ration is two parts barley to one part peas":        {"barley": 2. / 3, "peas": 1. / 3},
	} {
		t.Run(text, func(t *testing.T) {
			got := saidAfter(t, "4 pigs came today 45 lb each", text)
			mix := got.Entries[0].Act.(reading.Fact).Fact.(model.Recipe).Ingredients
			total := 0.0
			for _, kg := range mix {
				total += kg
			}
			require.Len(t, mix, len(want))
			for name, share := range want {
				require.InDelta(t, share, mix[name]/total, 1e-9, name)
			}
		})
	}
}
