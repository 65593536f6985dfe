package model_test

import (
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

// The same of real pigs, clean and misread, alone and six to a pen, by the
// intervals that are told: a weighing in the central half of what was expected
// leaves no wider interval on the time scale of the table.
func TestAnExpectedWeighingOfTrialPigsNeverWidens(t *testing.T) {
	clean := trialPigs(t)
	misread := misreadPigs(clean, rand.New(rand.NewPCG(3, 7)))
	rng := rand.New(rand.NewPCG(1, 9))
	for _, pigs := range [][]trialPig{clean, misread} {
		for _, size := range []int{1, 6} {
			for i := 0; i < len(pigs); i += size {
				for weeks := 1; weeks <= 9; weeks += 2 {
					records := trialRecords(pigs[i:i+size], trialStart, weeks)
					on := trialDay(weeks-1) + model.Day(1+rng.IntN(14))
					ahead := on + model.Day(rng.IntN(40))
					by := []string{model.ByScale, model.ByTape, model.ByEye}[rng.IntN(3)]
					h := model.Fold(records)
					name := pigs[i].name
					e, err := h.ExpectReading(h.Animal(name), on, by)
					require.NoError(t, err)
					kg, err := e.Quantile(0.25 + 0.5*rng.Float64())
					require.NoError(t, err)
					more := model.Fold(append(records, model.Record{
						ID: "expected", On: on, At: noon(on),
						Fact: model.Weigh{Animals: []string{name}, WeightKg: kg, By: by},
					}))
					require.LessOrEqual(t, toldDays(t, more, name, ahead), toldDays(t, h, name, ahead), "%s, %d weeks, by %s", name, weeks, by)
				}
			}
		}
	}
}

// toldDays is the width of the interval of a pig's weight, in days of the table.
func toldDays(t *testing.T, h *model.Herd, name string, on model.Day) float64 {
	w, err := h.MeanWeight([]*model.Animal{h.Animal(name)}, on)
	require.NoError(t, err)
	days, err := model.TableDays(w.WeightKg.Low, w.WeightKg.High)
	require.NoError(t, err)
	return days
}
