package model

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func TestGrowthStall(t *testing.T) {
	weigh := func(name string, kg float64, by string) Weigh {
		return Weigh{Animals: []string{name}, WeightKg: kg, By: by}
	}
	herd := func(facts ...Fact) *toldHerd { // weighed on 16 May at 40 kg each, then on 13 June
		return tellHerd(t).tell("2026-04-18 08:00", Arrive{Count: 3, Animals: []string{"Fern", "Otis", "Ivy"}, WeightKg: Float(22)}).
			tell("2026-05-16 09:00", weigh("Fern", 40, ByScale), weigh("Otis", 40, ByScale), weigh("Ivy", 40, ByScale)).
			tell("2026-06-13 09:00", facts...)
	}
	tests := []struct {
		name  string
		facts []Fact
		want  []string // whose stall; nil: none
	}{
		{"all grow", []Fact{weigh("Fern", 60, ByScale), weigh("Otis", 61, ByScale), weigh("Ivy", 62, ByScale)}, nil},
		{"one stands still", []Fact{weigh("Fern", 44, ByScale), weigh("Otis", 61, ByScale), weigh("Ivy", 62, ByScale)}, []string{"Fern"}},
		{"two, the one furthest behind first", []Fact{weigh("Fern", 43, ByScale), weigh("Otis", 42, ByScale), weigh("Ivy", 62, ByScale)}, []string{"Otis", "Fern"}},
		{"told sick", []Fact{
			Sick{Animals: []string{"Ivy"}}, weigh("Fern", 60, ByScale),
		}, nil},
		{"by other means", []Fact{weigh("Fern", 46, ByEye)}, nil},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			got := herd(tt.facts...).herd().GrowthStalls()
			if tt.want == nil {
				require.Empty(t, got)
				return
			}
			require.Len(t, got, 1)
			require.Equal(t, tt.want, append(got[0].Animals, got[0].Also...))
			require.Less(t, got[0].EachGainKg, stallPart*got[0].EachWantKg)
			require.Less(t, got[0].GainKg, stallPart*got[0].WantKg)
			require.Equal(t, ReasonGrowthStall, got[0].Reasons[0].Code)
		})
	}
	// Too soon after the one before, or sick in between: nothing is asked.
	require.Empty(t, tellHerd(t).tell("2026-04-18 08:00", Arrive{Count: 1, Animals: []string{"Fern"}, WeightKg: Float(22)}).
		tell("2026-05-16 09:00", weigh("Fern", 40, ByScale)).tell("2026-05-30 09:00", weigh("Fern", 41, ByScale)).herd().GrowthStalls())

	// A weighing that was read wrong counts for nothing.
	s := herd(weigh("Fern", 44, ByScale), weigh("Otis", 61, ByScale), weigh("Ivy", 62, ByScale))
	of := s.herd().GrowthStalls()[0].Record
	before, err := s.herd().MeanWeight(s.herd().Alive(s.records[0].On), s.records[0].On+60)
	require.NoError(t, err)
	s.tell("2026-06-13 19:00", Question{About: "check", Code: "odd_growth", Of: of})
	s.tell("2026-06-13 19:05", Settled{Question: s.records[len(s.records)-1].ID, How: LeftOut})
	require.Empty(t, s.herd().GrowthStalls())
	after, err := s.herd().MeanWeight(s.herd().Alive(s.records[0].On), s.records[0].On+60)
	require.NoError(t, err)
	require.Greater(t, after.WeightKg.Mid, before.WeightKg.Mid+2)

	// Of two that were asked about, one read wrong leaves the other to be asked
	// about, one that the person stands by settles both.
	for how, want := range map[string][]string{LeftOut: {"Fern"}, AsUsual: nil} {
		s := herd(weigh("Fern", 43, ByScale), weigh("Otis", 42, ByScale), weigh("Ivy", 62, ByScale))
		s.tell("2026-06-13 19:00", Question{About: "check", Code: "odd_growth", Of: s.herd().GrowthStalls()[0].Record})
		s.tell("2026-06-13 19:05", Settled{Question: s.records[len(s.records)-1].ID, How: how})
		left := s.herd().GrowthStalls()
		if want == nil {
			require.Empty(t, left)
			continue
		}
		require.Len(t, left, 1)
		require.Equal(t, want, left[0].Animals)
		require.Empty(t, left[0].Also)
	}

	// One that the person stands by is no slip, however strange.
	fern := func(how string) float64 {
		s := herd(weigh("Fern", 44, ByScale), weigh("Otis", 61, ByScale), weigh("Ivy", 62, ByScale))
		s.tell("2026-06-13 19:00", Question{About: "check", Code: "odd_growth", Of: of})
		s.tell("2026-06-13 19:05", Settled{Question: s.records[len(s.records)-1].ID, How: how})
		ws, err := s.herd().Weights(s.records[4].On)
		require.NoError(t, err)
		return ws[0].WeightKg.Mid
	}
	require.InDelta(t, 44, fern(AsUsual), 3)
	require.Greater(t, fern("dropped"), fern(AsUsual)+1)
}
