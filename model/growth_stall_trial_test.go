package model_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

// Sound pigs of the open trial weighed every third week, on a scale as they were
// or by a tape that errs as tapes do: how often in a season would their keeper be
// asked about a stall, and is one seen of a pig that gains a third of its due?
func TestQuestionsOnSoundGrowthAreRare(t *testing.T) {
	pigs := trialPigs(t)
	rng := rand.New(rand.NewPCG(5, 11))
	for _, by := range []string{model.ByScale, model.ByTape} {
		var herds, asked, stalls, seen int
		for first := 0; first+4 <= len(pigs); first += 4 {
			for range 6 {
				group := make([]trialPig, 4)
				for i := range group {
					group[i] = pigs[rng.IntN(len(pigs))]
					group[i].name = string(rune('a' + i))
					shape := 1 + 0.02*rng.NormFloat64()
					for w, kg := range group[i].kg {
						if by == model.ByTape {
							group[i].kg[w] = kg*shape + math.Hypot(1.8, 0.022*kg)*rng.NormFloat64()
						}
					}
				}
				records := func(stall bool) []model.Record {
					var out []model.Record
					for _, r := range trialRecords(group, trialStart, 12) {
						w, ok := r.Fact.(model.Weigh)
						if week := int(r.On-trialStart) / 7; ok {
							if week%3 != 0 {
								continue
							}
							if stall && week == 9 && w.Animals[0] == "a" {
								w.WeightKg = group[0].kg[6] + (w.WeightKg-group[0].kg[6])/3
							}
							w.By = by
							r.Fact = w
						}
						out = append(out, r)
					}
					return out
				}
				herds++
				asked += len(model.Fold(records(false)).GrowthStalls())
				if math.IsNaN(group[0].kg[6]) || math.IsNaN(group[0].kg[9]) {
					continue
				}
				stalls++
				for _, s := range model.Fold(records(true)).GrowthStalls() {
					if s.On == trialDay(9) && s.Animals[0] == "a" {
						seen++
					}
				}
			}
		}
		season := 18.0 / 11
		t.Logf("by %s: %d herds of 4, asked %.2f times a season; stalls seen %d of %d", by, herds, season*float64(asked)/float64(herds), seen, stalls)
		require.LessOrEqual(t, season*float64(asked)/float64(herds), 0.3)
		require.GreaterOrEqual(t, float64(seen)/float64(stalls), 0.25)
	}
}
