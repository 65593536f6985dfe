package model

import (
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func mix(parts map[string]float64) Recipe { return Recipe{Ingredients: parts} }

func TestRationAsksForWhatItLacks(t *testing.T) {
	r := mix(map[string]float64{"corn": 75, "soybean meal 48": 22})
	for _, c := range []struct {
		what  string
		facts []Fact
	}{
		{"recipe", []Fact{fourEaters()}},
		{"pigs", []Fact{r}},
		{"weight", []Fact{r, Arrive{Count: 2}}},
	} {
		s := tellHerd(t).tell("2026-06-06 08:00", c.facts...)
		_, err := s.herd().RationCheck(DateDay(2026, 6, 6))
		var missing *Missing
		require.ErrorAs(t, err, &missing)
		require.Equal(t, c.what, missing.What)
	}
}

func TestRationUsesTheMixOfTheDay(t *testing.T) {
	s := tellHerd(t).tell("2026-06-06 08:00", fourEaters(), mix(map[string]float64{"corn": 65, "soybean meal 48": 32, "mineral premix": 3}))
	s.tell("2026-06-20 08:00", mix(map[string]float64{"corn": 85, "soybean meal 48": 12, "mineral premix": 3}))
	h := s.herd()
	early, err := h.RationCheck(DateDay(2026, 6, 10))
	require.NoError(t, err)
	require.True(t, early.OK)
	require.Nil(t, early.Change)
	late, err := h.RationCheck(DateDay(2026, 6, 20))
	require.NoError(t, err)
	require.False(t, late.OK)
	require.Positive(t, late.Change["soybean meal 48"])
}

func TestRationListsWhatHasNoFigures(t *testing.T) {
	r := checkRation(mix(map[string]float64{"corn": 75, "soybean meal 48": 22, "acorns": 3}), 60)
	require.Equal(t, []string{"acorns"}, r.Unknown)
	require.Contains(t, codesOf(r.Reasons), ReasonRationUnknown)
	known := checkRation(mix(map[string]float64{"corn": 75, "soybean meal 48": 22, "mineral premix": 3}), 60)
	require.InDelta(t, known.SIDLysinePct, r.SIDLysinePct, 1e-12, "no figure counts as nothing, never as something")
}

func TestRationWithoutProteinFeedHasNoRemedy(t *testing.T) {
	r := checkRation(mix(map[string]float64{"corn": 97, "mineral premix": 3}), 60)
	require.False(t, r.OK)
	require.Empty(t, r.Change)
	require.Contains(t, codesOf(r.Reasons), ReasonRationNoRemedy)
}

func TestRationSaysWhatIsTooMuch(t *testing.T) {
	fish := map[string]float64{"corn": 83, "fish meal": 14, "mineral premix": 3}
	r := checkRation(mix(fish), 100)
	require.True(t, r.OK)
	require.Equal(t, []string{"fish meal"}, r.OverLimit, "it taints the meat")
	require.Contains(t, codesOf(r.Reasons), ReasonRationOverLimit)
	require.Empty(t, checkRation(mix(map[string]float64{"corn": 75, "soybean meal 48": 22, "mineral premix": 3}), 60).OverLimit)
	require.Equal(t, []string{"lysine hcl"}, checkRation(mix(map[string]float64{"corn": 99, "lysine hcl": 1}), 60).OverLimit)
}

func TestRationIsMendedWithWhatIsInTheShed(t *testing.T) {
	s := tellHerd(t).tell("2026-06-06 08:00", fourEaters(), mix(map[string]float64{"corn": 97, "mineral premix": 3}),
		Stock{Ingredient: "peas", FeedKg: Float(100)}, Stock{Ingredient: "soybean meal 48", FeedKg: Float(100)}, Stock{Ingredient: "straw", FeedKg: Float(50)})
	r, err := s.herd().RationCheck(DateDay(2026, 6, 6))
	require.NoError(t, err)
	require.False(t, r.OK)
	require.Len(t, r.Change, 1)
	add := r.Change["soybean meal 48"]
	require.Greater(t, add, 30.0, "less of it does than of peas")
	again := checkRation(mix(map[string]float64{"corn": 97, "mineral premix": 3, "soybean meal 48": add}), r.ForWeightKg)
	require.InDelta(t, again.NeededSIDLysinePct, again.SIDLysinePct, 1e-9)
	before, err := s.herd().RationCheck(DateDay(2026, 6, 5))
	require.Error(t, err, "no pigs yet: %v", before)
}

// What the check says to add just meets the need.
func TestRationChangeMeetsTheNeed(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		parts := map[string]float64{}
		for _, name := range []string{"corn", "barley", "oats", "soybean meal 48", "soybean meal 44", "peas", "mineral premix"} {
			if kg := rapid.Float64Range(0, 100).Draw(t, name); kg > 0.5 {
				parts[name] = kg
			}
		}
		if len(parts) == 0 {
			return
		}
		kg := rapid.Float64Range(6, 130).Draw(t, "weight")
		r := checkRation(mix(parts), kg)
		require.Equal(t, r.OK, r.SIDLysinePct >= r.NeededSIDLysinePct-1e-9)
		for name, add := range r.Change {
			require.False(t, r.OK)
			require.Positive(t, add)
			parts[name] += add
			again := checkRation(mix(parts), kg)
			require.InDelta(t, again.NeededSIDLysinePct, again.SIDLysinePct, 1e-6)
			require.True(t, again.OK)
		}
	})
}

func TestNeededLysineFallsWithWeight(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		kg := rapid.Float64Range(1, 200).Draw(t, "kg")
		require.GreaterOrEqual(t, neededSIDLysinePct(kg), neededSIDLysinePct(kg+1))
	})
	require.Equal(t, 1.50, neededSIDLysinePct(1))
	require.Equal(t, 0.61, neededSIDLysinePct(300))
}

func TestIngredientsAreKnownByTheirNames(t *testing.T) {
	names := IngredientNames()
	require.IsIncreasing(t, names)
	require.GreaterOrEqual(t, len(names), 17)
	for _, name := range names {
		f, ok := Ingredient(name)
		require.True(t, ok)
		require.Equal(t, name, f.Name)
		require.NotEmpty(t, f.Status)
		require.LessOrEqual(t, f.SIDLysinePct, f.LysinePct, name)
		require.LessOrEqual(t, f.LysinePct, f.CrudeProteinPct, name)
	}
	f, ok := Ingredient(" Soybean Meal 48 ")
	require.True(t, ok)
	require.Equal(t, 47.7, f.CrudeProteinPct)
	_, ok = Ingredient("acorns")
	require.False(t, ok)
}
