package model

import (
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestTHIReachedC(t *testing.T) {
	for _, c := range []struct{ thi, rh, wantC float64 }{ // computed from the form of THI; the class limits of the index
		{AlertTHI, 30, 29.8},
		{DangerTHI, 30, 33.4},
		{EmergencyTHI, 30, 37.9},
		{AlertTHI, 50, 27.5},
		{DangerTHI, 50, 30.5},
		{EmergencyTHI, 50, 34.4},
		{AlertTHI, 90, 24.4},
		{DangerTHI, 90, 26.8},
		{EmergencyTHI, 90, 29.7},
	} {
		got, err := THIReachedC(c.thi, c.rh)
		require.NoError(t, err)
		require.InDelta(t, c.wantC, got, 0.06)
	}
	rapid.Check(t, func(r *rapid.T) {
		index, rh := rapid.Float64Range(60, 100).Draw(r, "thi"), rapid.Float64Range(0, 100).Draw(r, "rh")
		at, err := THIReachedC(index, rh)
		require.NoError(r, err)
		require.InDelta(r, index, thi(at, rh), 1e-9)
	})
	var out *OutOfRange
	for _, bad := range [][2]float64{{40, 50}, {130, 50}, {75, -1}, {75, 101}} {
		_, err := THIReachedC(bad[0], bad[1])
		require.ErrorAs(t, err, &out)
	}
}

func TestPigDrawLD(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		light, mild := rapid.Float64Range(5, 170).Draw(r, "kg"), rapid.Float64Range(-20, 30).Draw(r, "c")
		a, err := PigDrawLD(light, mild)
		require.NoError(r, err)
		heavier, err := PigDrawLD(light+10, mild)
		require.NoError(r, err)
		hotter, err := PigDrawLD(light, mild+5)
		require.NoError(r, err)
		require.Greater(r, heavier, a)
		require.GreaterOrEqual(r, hotter, a)
	})
	var out *OutOfRange
	for _, bad := range [][2]float64{{4, 20}, {190, 20}, {50, -70}, {50, 70}} {
		_, err := PigDrawLD(bad[0], bad[1])
		require.ErrorAs(t, err, &out)
	}
}
