package model

import (
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestTableDayUndoesTableWeight(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		day := rapid.Float64Range(-3, 320).Draw(t, "day")
		kg, gain := tableWeight(day)
		require.Positive(t, gain)
		require.InDelta(t, day, tableDay(kg), 1e-6)
	})
}

func TestTableRises(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		day := rapid.Float64Range(0, 400).Draw(t, "day")
		step := rapid.Float64Range(0.01, 5).Draw(t, "step")
		a, gain := tableWeight(day)
		b, _ := tableWeight(day + step)
		require.Greater(t, b, a)
		require.LessOrEqual(t, gain, 1.0, "no published class gains more than 0.917 kg a day")
		slope, _ := tableWeight(day + 1e-4)
		require.InDelta(t, gain, (slope-a)/1e-4, 0.02, "the gain is the slope of the weight")
	})
}
