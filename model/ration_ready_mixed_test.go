package model

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func TestTheProteinOfAWholeMixGoesBeforeItsParts(t *testing.T) {
	m := mix(map[string]float64{"corn": 75, "soybean meal 48": 22, "mineral premix": 3})
	table, err := AnalyseMix(m)
	require.NoError(t, err)
	m.ProteinPct = Float(15)
	tested, err := AnalyseMix(m)
	require.NoError(t, err)
	require.Equal(t, 15.0, tested.CrudeProteinPct)
	require.InDelta(t, table.SIDLysinePct*15/table.CrudeProteinPct, tested.SIDLysinePct, 1e-9)
	require.Equal(t, table.EnergyMJKg, tested.EnergyMJKg)
	m.ProteinPct = Float(101)
	require.Error(t, m.Check())
	_, err = AnalyseMix(m)
	var out *OutOfRange
	require.ErrorAs(t, err, &out)
}

func TestReadyMixedFeedByItsTag(t *testing.T) {
	for _, c := range []struct {
		name           string
		protein        float64
		known          bool
		lysine, energy float64 // SID lysine, percent; ME, MJ/kg
	}{
		// Computed: 76.7 corn and 20.3 soybean meal come to 16 %.
		{"grower", 16, true, 0.676, 13.69},
		{"finisher", 13, true, 0.492, 13.72},
		{"leaner than corn", 6, false, 0, 0},
		{"a concentrate", 50, false, 0, 0},
	} {
		t.Run(c.name, func(t *testing.T) {
			m := Recipe{Ingredients: map[string]float64{CompleteFeed: 25}, TagProteinPct: map[string]float64{CompleteFeed: c.protein}}
			got, err := AnalyseMix(m)
			require.NoError(t, err)
			require.InDelta(t, c.protein, got.CrudeProteinPct, 1e-9)
			if !c.known {
				require.Equal(t, []string{CompleteFeed}, got.Unknown)
				return
			}
			require.Empty(t, got.Unknown)
			require.InDelta(t, c.lysine, got.SIDLysinePct, 0.005)
			require.InDelta(t, c.energy, got.EnergyMJKg, 0.05)
		})
	}
	untold, err := AnalyseMix(mix(map[string]float64{CompleteFeed: 25}))
	require.NoError(t, err)
	require.Equal(t, []string{CompleteFeed}, untold.Unknown)
}
