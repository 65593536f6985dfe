package model

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func TestTheTapeIsHeldAgainstTheScaleAgain(t *testing.T) {
	// taped every three weeks from 30 kg on, put on the scale on the days given
	grown := func(weeks int, scaled ...int) *Herd {
		b := new(book).arrive(growthStart, 30, "Ada", "Ben")
		for day := 0; day <= 7*weeks; day += 21 {
			for _, name := range []string{"Ada", "Ben"} {
				kg := tableKg(30, float64(day))
				b.girth(growthStart+Day(day), name, kg)
				for _, s := range scaled {
					if s == day {
						b.scale(growthStart+Day(day), name, kg)
					}
				}
			}
		}
		return b.herd()
	}
	for _, row := range []struct {
		name  string
		herd  *Herd
		weeks int
		want  bool
	}{
		{"light pigs", grown(3, 0), 3, false},
		{"heavy pigs, checked when light", grown(9, 0), 9, true},
		{"heavy pigs, checked since", grown(9, 0, 63), 9, false},
		{"no scale at hand", grown(9), 9, false},
		{"a heavier target", grown(9, 0).Assume(Assumption{TargetKg: Float(180)}, growthStart+63), 9, false},
	} {
		t.Run(row.name, func(t *testing.T) {
			due, err := row.herd.WeighDue(growthStart + Day(7*row.weeks))
			require.NoError(t, err)
			var check *Reason
			for i := range due.Reasons {
				if due.Reasons[i].Code == ReasonWeighCheck {
					check = &due.Reasons[i]
				}
			}
			require.Equal(t, row.want, check != nil)
			if row.want {
				require.Equal(t, growthStart, check.On)
				require.InDelta(t, 30, check.Q[0].Value, 0.5)
			}
		})
	}
	// A scale alone has no tape to check.
	b := new(book).arrive(growthStart, 30, "Ada")
	for day := 0; day <= 63; day += 21 {
		b.scale(growthStart+Day(day), "Ada", tableKg(30, float64(day)))
	}
	due, err := b.herd().WeighDue(growthStart + 63)
	require.NoError(t, err)
	require.NotContains(t, codes(due.Reasons), ReasonWeighCheck)
}
