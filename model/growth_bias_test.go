package model

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
)

// Pigs whose girths follow another published line than the one they are read by:
// how far their weight is off at the last taping, with no check of the tape on a
// scale, with one on light pigs, and with one more from two thirds of the target
// on. A check must never make it worse, by half a kilogram that a line may slope
// against all others.
func TestACheckOfTheTapeNeverMakesItWorse(t *testing.T) {
	for _, line := range []struct {
		source  string
		girthCm func(kg float64) float64
	}{
		{"the Kansas State line itself (Groesbeck et al. 2002, abstract)", func(kg float64) float64 { return (kg + 93.326) / 1.8163 }},
		{"223 finishers (J. Anim. Sci. meeting abstract)", func(kg float64) float64 { return (kg + 101.78) / 1.95 }},
		{"half way to 400 smallholder pigs (Kabululu, PLoS ONE 18(12) e0295433, 2023)", func(kg float64) float64 {
			return ((kg+93.326)/1.8163 + (kg+52.384)/1.22) / 2
		}},
		{"half way to 749 pigs (Marshall et al., Trop. Anim. Health Prod. 2023, abstract)", func(kg float64) float64 {
			return ((kg+93.326)/1.8163 + (math.Cbrt(kg)-0.4011)/0.0381) / 2
		}},
	} {
		t.Run(line.source, func(t *testing.T) {
			names := []string{"Ada", "Ben", "Cob"}
			const last = 84
			off := func(checks ...int) float64 {
				b := new(book).arrive(growthStart, 30, names...)
				for day := 0; day <= last; day += 21 {
					for _, name := range names {
						kg := tableKg(30, float64(day))
						b.add(growthStart+Day(day), Weigh{Animals: []string{name}, GirthCm: line.girthCm(kg)})
						for _, c := range checks {
							if c == day {
								b.scale(growthStart+Day(day), name, kg)
							}
						}
					}
				}
				h := b.herd()
				w, err := h.MeanWeight(h.Animals, growthStart+last)
				require.NoError(t, err)
				return math.Abs(w.WeightKg.Mid - tableKg(30, last))
			}
			none, light, heavy := off(), off(0), off(0, 63)
			t.Logf("off by %.1f kg unchecked, %.1f checked at 30 kg, %.1f checked again at %.0f kg", none, light, heavy, tableKg(30, 63))
			require.LessOrEqual(t, light, none+0.5, "a check on light pigs")
			require.LessOrEqual(t, heavy, light+0.5, "one more on heavy pigs")
			require.Less(t, heavy, 3.0)
		})
	}
}

func TestACheckOfTheTapeInformsNearItsWeight(t *testing.T) {
	sure := func(checkKg, atKg float64) float64 {
		b := new(book).arrive(growthStart, 0, "Ada", "Ben", "Cob")
		for _, name := range []string{"Ada", "Ben", "Cob"} {
			if checkKg > 0 {
				b.girth(growthStart, name, checkKg).scale(growthStart, name, checkKg)
			}
		}
		f := b.herd().growth()
		f.settle()
		_, sd := f.bias(readingErrors[ByTape], atKg)
		return sd
	}
	require.Less(t, sure(90, 100), sure(30, 100))
	require.Less(t, sure(30, 35), sure(90, 35))
	for _, at := range []float64{20, 30, 50, 80, 110} {
		for _, check := range []float64{28, 50, 90} {
			require.Less(t, sure(check, at), sure(0, at), "checked at %v kg, asked at %v", check, at)
		}
	}
}
