package model

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestTapeOutsideItsRange(t *testing.T) {
	for _, row := range []struct {
		girth, length float64
		quantity      string
	}{
		{63.9, 0, "girth"},
		{119.6, 0, "girth"},
		{0, 0, "girth"},
		{-80, 0, "girth"},
		{math.NaN(), 0, "girth"},
		{63, 90, "girth"},
		{128, 90, "girth"},
		{90, 50, "length"},
		{90, 153, "length"},
		{90, math.NaN(), "length"},
	} {
		var err error
		if row.length == 0 {
			_, err = WeightFromGirth(row.girth)
		} else {
			_, err = WeightFromTape(row.girth, row.length)
		}
		var out *OutOfRange
		require.ErrorAs(t, err, &out, "%v", row)
		require.Equal(t, row.quantity, out.Quantity)
		require.Less(t, out.Low, out.High)
	}
}

func TestTapeErrorIsHonest(t *testing.T) {
	light, err := WeightFromGirth(70)
	require.NoError(t, err)
	require.InDelta(t, 3.6, light.SD, 1e-9, "7 kg either way holds 95 of 100")
	heavy, err := WeightFromGirth(115)
	require.NoError(t, err)
	require.InDelta(t, 0.041*heavy.Mean, heavy.SD, 1e-9, "8 % either way holds 95 of 100")
	rule, err := WeightFromTape(115, 120)
	require.NoError(t, err)
	require.Greater(t, rule.SD, heavy.SD, "no trial stands behind the rule")
}

func TestTapeWeightRisesWithGirthWithoutJumps(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		girth := rapid.Float64Range(25, 150).Draw(t, "girth")
		length := rapid.SampledFrom([]float64{0, 80, 120}).Draw(t, "length")
		light, within := ReadTape(girth, length)
		heavy, _ := ReadTape(girth+0.5, length)
		require.Equal(t, girth >= tapeLowCm && girth <= tapeHighCm, within)
		require.Positive(t, light.SD)
		a, b := light.Mean, heavy.Mean
		if length > 0 && (girth < 65 || girth > 119) {
			return // where one rule ends the two are not weighed together
		}
		require.Greater(t, b, a)
		require.Less(t, b-a, 2.5)
	})
}
