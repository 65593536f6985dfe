package model

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestHerdMixUsesTheHerdsOwnPrices(t *testing.T) {
	s := tellHerd(t).tell("2026-06-06 08:00", fourEaters(),
		mix(map[string]float64{"corn": 65, "soybean meal 48": 32, "mineral premix": 3}))
	_, err := s.herd().LeastCostMix(s.moment("2026-06-08 08:00"))
	requireMissing(t, err, "price", "corn", "soybean meal 48")
	s.tell("2026-06-07 08:00",
		Stock{Ingredient: "corn", FeedKg: Float(500), Amount: Float(100), Currency: "USD"},
		Stock{Ingredient: "soybean meal 48", FeedKg: Float(200), Amount: Float(110), Currency: "USD"},
		Stock{Ingredient: "peas", FeedKg: Float(100), Amount: Float(22), Currency: "USD"})
	got, err := s.herd().LeastCostMix(s.moment("2026-06-08 08:00"))
	require.NoError(t, err)
	require.True(t, got.NowOK)
	require.InDelta(t, (65*0.2+32*0.55)/100, got.NowPerKg, 1e-9)
	require.Less(t, got.PerKg, got.NowPerKg)
	require.InDelta(t, 3, got.Recipe.Ingredients["mineral premix"], 1e-9)
	require.InDelta(t, 36, got.Recipe.Ingredients["peas"], 1e-6, "peas are cheap: up to their limit")
	require.Equal(t, "USD", got.Currency)
}

func TestRationStepsComeInOrder(t *testing.T) {
	s := tellHerd(t).tell("2026-06-06 08:00", fourEaters(),
		mix(map[string]float64{"corn": 75, "soybean meal 48": 29.4, "mineral premix": 3}))
	got, err := s.herd().RationSteps(DateDay(2026, 6, 6))
	require.NoError(t, err)
	require.Equal(t, "soybean meal 48", got.Rich)
	require.Len(t, got.Steps, 2, "75 and 100 kg lie ahead of 60")
	require.InDelta(t, 22.6, got.Steps[0].RichKg, 0.06)
	require.InDelta(t, 16.7, got.Steps[1].RichKg, 0.06)
	require.Less(t, got.Steps[0].Days.Mid, got.Steps[1].Days.Mid)
	require.InDelta(t, 22.6-29.4, got.Steps[0].Change, 0.06)
	s.tell("2026-06-07 08:00", mix(map[string]float64{"corn": 97, "mineral premix": 3}))
	_, err = s.herd().RationSteps(DateDay(2026, 6, 7))
	requireMissing(t, err, "protein_feed")
}

func TestPearsonSquareIsExact(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		lean := rapid.Float64Range(0, 40).Draw(t, "lean")
		rich := rapid.Float64Range(lean+1, 100).Draw(t, "rich")
		batch := rapid.Float64Range(1, 1000).Draw(t, "batch")
		fixed := batch * rapid.Float64Range(0, 0.3).Draw(t, "fixed")
		wanted := (lean + (rich-lean)*rapid.Float64Range(0.01, 0.99).Draw(t, "part")) * (batch - fixed) / batch
		m, err := PearsonSquare(lean, rich, wanted, batch, fixed)
		require.NoError(t, err)
		require.InDelta(t, batch, m.LeanKg+m.RichKg+m.FixedKg, 1e-9*batch)
		require.InDelta(t, wanted, (m.LeanKg*lean+m.RichKg*rich)/batch, 1e-9*100)
		require.GreaterOrEqual(t, m.LeanKg, 0.0)
		require.GreaterOrEqual(t, m.RichKg, 0.0)
	})
	for _, c := range [][5]float64{
		{9, 44, 8, 100, 0},
		{9, 44, 45, 100, 0},
		{44, 9, 16, 100, 0},
		{9, 44, 43, 100, 5},
		{9, 44, 16, 0, 0},
		{9, 44, 16, 100, 100},
		{math.NaN(), 44, 16, 100, 0},
		{9, 101, 16, 100, 0},
		{9, 44, math.NaN(), 100, 0},
	} {
		_, err := PearsonSquare(c[0], c[1], c[2], c[3], c[4])
		var out *OutOfRange
		require.ErrorAs(t, err, &out, "%v", c)
	}
}

func TestWholeSacksComeOut(t *testing.T) {
	m := mix(map[string]float64{"corn": 75, "soybean meal 48": 22, "mineral premix": 3})
	got, err := WholeSackBatch(m, "soybean meal 48", 50)
	require.NoError(t, err)
	require.Equal(t, 2, got.Batches)
	require.InDelta(t, 25, got.Recipe.Ingredients["soybean meal 48"], 1e-9)
	require.InDelta(t, 75*25.0/22, got.Recipe.Ingredients["corn"], 1e-9)
	got, err = WholeSackBatch(m, "corn", 20)
	require.NoError(t, err)
	require.Equal(t, 1, got.Batches, "a sack smaller than the batch needs makes one small batch")
	var out *OutOfRange
	for _, c := range []float64{0, -1, 5000, math.NaN(), math.Inf(1)} {
		_, err = WholeSackBatch(m, "corn", c)
		require.ErrorAs(t, err, &out)
	}
	_, err = WholeSackBatch(m, "acorns", 20)
	require.ErrorAs(t, err, &out)
}

func TestShoppingListBuysEnoughAndNoSackTooMany(t *testing.T) {
	m := mix(map[string]float64{"corn": 75, "soybean meal 48": 22, "mineral premix": 3})
	got, err := ShoppingList(m, 1000, map[string]float64{"corn": 25, "mineral premix": 20}, map[string]float64{"corn": 60, "soybean meal 48": 500})
	require.NoError(t, err)
	require.Equal(t, []Purchase{
		{Ingredient: "corn", NeedKg: 690, Sacks: 28, OverKg: 10},
		{Ingredient: "mineral premix", NeedKg: 30, Sacks: 2, OverKg: 10},
	}, got)
	var out *OutOfRange
	for _, bad := range []func() error{
		func() error { _, err := ShoppingList(m, math.NaN(), nil, nil); return err },
		func() error { _, err := ShoppingList(m, -1, nil, nil); return err },
		func() error { _, err := ShoppingList(Recipe{}, 1, nil, nil); return err },
		func() error { _, err := ShoppingList(m, 1, map[string]float64{"corn": 0}, nil); return err },
		func() error { _, err := ShoppingList(m, 1, nil, map[string]float64{"corn": -1}); return err },
	} {
		require.ErrorAs(t, bad(), &out)
	}
}

func TestTheTagGoesBeforeTheTable(t *testing.T) {
	m := mix(map[string]float64{"corn": 75, "soybean meal 48": 22, "mineral premix": 3})
	table, err := AnalyseMix(m)
	require.NoError(t, err)
	m.TagProteinPct = map[string]float64{"soybean meal 48": 46}
	tag, err := AnalyseMix(m)
	require.NoError(t, err)
	require.InDelta(t, table.CrudeProteinPct-0.22*1.7, tag.CrudeProteinPct, 1e-9)
	require.InDelta(t, 0.75*0.185+0.22*2.634*46/47.7, tag.SIDLysinePct, 1e-9)
	// The tag of what has no figures tells its protein, no more.
	m = Recipe{Ingredients: map[string]float64{"corn": 70, "concentrate": 30}, TagProteinPct: map[string]float64{"concentrate": 38}}
	mixed, err := AnalyseMix(m)
	require.NoError(t, err)
	require.InDelta(t, 0.7*8.2+0.3*38, mixed.CrudeProteinPct, 1e-9)
	require.Equal(t, []string{"concentrate"}, mixed.Unknown)
	require.Error(t, Recipe{Ingredients: map[string]float64{"corn": 1}, TagProteinPct: map[string]float64{"corn": 120}}.Check())
	var out *OutOfRange
	for _, bad := range []Recipe{
		{},
		mix(map[string]float64{"corn": -1}), mix(map[string]float64{"corn": math.NaN()}),
		{Ingredients: map[string]float64{"corn": 1}, TagProteinPct: map[string]float64{"corn": math.Inf(1)}},
	} {
		_, err = AnalyseMix(bad)
		require.ErrorAs(t, err, &out)
	}
}

func TestRequirementFallsWithWeightAndKnowsItsRange(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		kg := rapid.Float64Range(MinRequirementKg, MaxRequirementKg-1).Draw(t, "kg")
		a, err := RequirementAt(kg)
		require.NoError(t, err)
		b, err := RequirementAt(kg + 1)
		require.NoError(t, err)
		require.GreaterOrEqual(t, a.SIDLysinePct, b.SIDLysinePct)
		require.GreaterOrEqual(t, a.CrudeProteinPct, b.CrudeProteinPct)
		require.GreaterOrEqual(t, a.CalciumPct, b.CalciumPct)
		require.GreaterOrEqual(t, a.STTDPhosphorusPct, b.STTDPhosphorusPct)
	})
	var out *OutOfRange
	for _, kg := range []float64{4.9, 221, math.NaN(), math.Inf(1)} {
		_, err := RequirementAt(kg)
		require.ErrorAs(t, err, &out)
		_, _, err = LimitOf("corn", kg)
		require.ErrorAs(t, err, &out)
	}
	for _, name := range IngredientNames() {
		l, known, err := LimitOf(name, 60)
		require.NoError(t, err)
		require.True(t, known)
		require.True(t, l.MostPct >= 0 && l.MostPct <= 100)
		require.NotEmpty(t, l.Status)
	}
}
