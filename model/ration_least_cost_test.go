package model

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

var homeFeeds = []PricedFeed{
	{Name: "corn", PerKg: 0.20},
	{Name: "barley", PerKg: 0.22},
	{Name: "soybean meal 48", PerKg: 0.50},
	{Name: "peas", PerKg: 0.35},
	{Name: "wheat middlings", PerKg: 0.18},
	{Name: "lysine hcl", PerKg: 3},
}

func TestCheapestMixOfCornAndMealIsThePearsonSquare(t *testing.T) {
	// With two feeds and one binding need there is one mix only, and the square
	// finds it too.
	q := MixQuery{
		WeightKg: 87.5, BatchKg: 100, FixedKg: map[string]float64{"mineral premix": 3},
		Feeds: []PricedFeed{{Name: "soybean meal 48", PerKg: 0.5}, {Name: "corn", PerKg: 0.2}},
	}
	m, err := LeastCostMix(q)
	require.NoError(t, err)
	square, err := PearsonSquare(0.185, 2.634, 0.73, 100, 3)
	require.NoError(t, err)
	require.InDelta(t, square.RichKg, m.Recipe.Ingredients["soybean meal 48"], 1e-6)
	require.InDelta(t, square.LeanKg, m.Recipe.Ingredients["corn"], 1e-6)
	require.InDelta(t, 3, m.Recipe.Ingredients["mineral premix"], 1e-12)
	require.InDelta(t, (0.5*square.RichKg+0.2*square.LeanKg)/100, m.PerKg, 1e-9)
	require.Contains(t, codesOf(m.Reasons), ReasonMixByLysine)
}

func TestCheapestMixKeepsItsLimits(t *testing.T) {
	m, err := LeastCostMix(MixQuery{WeightKg: 60, BatchKg: 50, Feeds: homeFeeds, FixedKg: map[string]float64{"mineral premix": 1.5}})
	require.NoError(t, err)
	require.LessOrEqual(t, m.Recipe.Ingredients["lysine hcl"], 0.0015*50+1e-9)
	require.LessOrEqual(t, m.Recipe.Ingredients["peas"], 0.36*50+1e-9)
	require.LessOrEqual(t, m.Recipe.Ingredients["wheat middlings"], 0.15*50+1e-9)
	require.Contains(t, codesOf(m.Reasons), ReasonMixAtLimit)
	without, err := LeastCostMix(MixQuery{WeightKg: 60, BatchKg: 50, Feeds: homeFeeds[:5], FixedKg: map[string]float64{"mineral premix": 1.5}})
	require.NoError(t, err)
	require.Less(t, m.PerKg, without.PerKg, "lysine spares meal at these prices")
}

func TestCheapestMixUsesWhatIsAtHandOnly(t *testing.T) {
	feeds := append([]PricedFeed(nil), homeFeeds[:3]...)
	feeds[0].AtHandKg = 20
	m, err := LeastCostMix(MixQuery{WeightKg: 60, BatchKg: 100, Feeds: feeds})
	require.NoError(t, err)
	require.InDelta(t, 20, m.Recipe.Ingredients["corn"], 1e-6)
	require.Greater(t, m.Recipe.Ingredients["barley"], 40.0)
}

func TestCheapestMixWithMinerals(t *testing.T) {
	feeds := append([]PricedFeed{{Name: "limestone", PerKg: 0.1}, {Name: "monocalcium phosphate", PerKg: 0.9}}, homeFeeds...)
	m, err := LeastCostMix(MixQuery{WeightKg: 62.5, BatchKg: 100, Feeds: feeds, Minerals: true, FixedKg: map[string]float64{"salt": 0.4}})
	require.NoError(t, err)
	require.GreaterOrEqual(t, m.Holds.CalciumPct, 0.59-1e-6)
	require.LessOrEqual(t, m.Holds.CalciumPct, 1.3*0.59+1e-6, "limestone is no filler")
	require.InDelta(t, 0.27, m.Holds.STTDPhosphorusPct, 1e-6, "the dearest mineral is not wasted")
	_, err = LeastCostMix(MixQuery{WeightKg: 62.5, BatchKg: 100, Feeds: homeFeeds[:3], Minerals: true})
	var no *Infeasible
	require.ErrorAs(t, err, &no)
	require.False(t, no.Together)
	require.Equal(t, NutrientCalcium, no.Short[0].Nutrient)
	require.InDelta(t, 0.33, no.Short[0].Best, 1e-9, "as much as meal holds")
}

func TestWhatCannotBeMixedIsSaid(t *testing.T) {
	short := func(q MixQuery) *Infeasible {
		_, err := LeastCostMix(q)
		var no *Infeasible
		require.ErrorAs(t, err, &no)
		require.NotEmpty(t, no.Error())
		return no
	}
	no := short(MixQuery{WeightKg: 60, BatchKg: 100, Feeds: []PricedFeed{{Name: "corn"}}})
	require.Equal(t, NutrientLysine, no.Short[0].Nutrient)
	require.InDelta(t, 0.185, no.Short[0].Best, 1e-9, "as much as corn holds")
	no = short(MixQuery{WeightKg: 60, BatchKg: 100, Feeds: []PricedFeed{{Name: "peas"}, {Name: "oats"}}})
	require.Equal(t, []Shortfall{{NutrientBulk, 100, 66}}, no.Short, "36 % peas and 30 % oats are no batch")
	// Bulky feeds lack lysine and energy both.
	no = short(MixQuery{WeightKg: 120, BatchKg: 100, Feeds: []PricedFeed{{Name: "oats"}, {Name: "alfalfa meal"}, {Name: "barley", AtHandKg: 60}}})
	require.Len(t, no.Short, 2)
	require.Equal(t, NutrientLysine, no.Short[0].Nutrient)
	require.Equal(t, NutrientEnergy, no.Short[1].Nutrient)
	// Barley has the energy and these oats the lysine, but not both at once.
	no = short(MixQuery{WeightKg: 117.5, BatchKg: 100, Feeds: []PricedFeed{{Name: "barley"}, {Name: "oats", TagProteinPct: 44.8}}})
	require.True(t, no.Together)
	require.Len(t, no.Short, 2)
	require.Equal(t, NutrientLysine, no.Short[0].Nutrient)
	require.Equal(t, NutrientEnergy, no.Short[1].Nutrient)
}

func TestCheapestMixRefusesNonsense(t *testing.T) {
	corn := []PricedFeed{{Name: "corn"}}
	for what, q := range map[string]MixQuery{
		"no feeds":        {WeightKg: 60, BatchKg: 100},
		"weight unknown":  {WeightKg: math.NaN(), BatchKg: 100, Feeds: corn},
		"weight too low":  {WeightKg: 1, BatchKg: 100, Feeds: corn},
		"no batch":        {WeightKg: 60, Feeds: corn},
		"endless batch":   {WeightKg: 60, BatchKg: math.Inf(1), Feeds: corn},
		"price below 0":   {WeightKg: 60, BatchKg: 100, Feeds: []PricedFeed{{Name: "corn", PerKg: -1}}},
		"price unknown":   {WeightKg: 60, BatchKg: 100, Feeds: []PricedFeed{{Name: "corn", PerKg: math.NaN()}}},
		"at hand below 0": {WeightKg: 60, BatchKg: 100, Feeds: []PricedFeed{{Name: "corn", AtHandKg: -1}}},
		"tag over 100":    {WeightKg: 60, BatchKg: 100, Feeds: []PricedFeed{{Name: "corn", TagProteinPct: 101}}},
		"a feed twice":    {WeightKg: 60, BatchKg: 100, Feeds: []PricedFeed{{Name: "corn"}, {Name: "corn"}}},
		"all fixed":       {WeightKg: 60, BatchKg: 100, Feeds: corn, FixedKg: map[string]float64{"salt": 100}},
	} {
		_, err := LeastCostMix(q)
		var out *OutOfRange
		require.ErrorAs(t, err, &out, what)
	}
	_, err := LeastCostMix(MixQuery{WeightKg: 60, BatchKg: 100, Feeds: []PricedFeed{{Name: "acorns"}}})
	requireMissing(t, err, "ingredient", "acorns")
}

// What the simplex finds meets the need, keeps every limit, is not dearer than
// any of many random mixes that do, and does not depend on the order of feeds.
func TestCheapestMixIsTheCheapest(t *testing.T) {
	names := IngredientNames()
	rapid.Check(t, func(t *rapid.T) {
		q := MixQuery{
			WeightKg: rapid.Float64Range(6, 150).Draw(t, "weight"), BatchKg: rapid.Float64Range(5, 500).Draw(t, "batch"),
			Minerals: rapid.Bool().Draw(t, "minerals"),
		}
		picked := rapid.SliceOfNDistinct(rapid.SampledFrom(names), 1, 9, func(s string) string { return s }).Draw(t, "feeds")
		for _, n := range picked {
			f := PricedFeed{Name: n, PerKg: rapid.Float64Range(0, 3).Draw(t, "price")}
			if rapid.Bool().Draw(t, "bounded") {
				f.AtHandKg = rapid.Float64Range(0.1, 300).Draw(t, "at hand")
			}
			q.Feeds = append(q.Feeds, f)
		}
		if rapid.Bool().Draw(t, "premix") {
			q.FixedKg = map[string]float64{"salt": q.BatchKg * rapid.Float64Range(0, 0.04).Draw(t, "fixed")}
		}
		m, err := LeastCostMix(q)
		again := q
		again.Feeds = append([]PricedFeed(nil), q.Feeds...)
		rand.New(rand.NewPCG(1, 2)).Shuffle(len(again.Feeds), func(i, j int) { again.Feeds[i], again.Feeds[j] = again.Feeds[j], again.Feeds[i] })
		m2, err2 := LeastCostMix(again)
		require.Equal(t, m, m2)
		require.Equal(t, err, err2)
		p, perr := newMixProgram(q)
		require.NoError(t, perr)
		mixes := randomMixes(p, 300)
		if err != nil {
			var no *Infeasible
			require.ErrorAs(t, err, &no)
			for _, kg := range mixes {
				require.False(t, p.meets(kg, 1e-6), "what cannot be mixed was mixed")
			}
			return
		}
		kg := make([]float64, len(p.feeds))
		for i, f := range p.feeds {
			kg[i] = m.Recipe.Ingredients[f.Name] - q.FixedKg[f.Name]
			require.LessOrEqual(t, kg[i], p.most[i]*(1+1e-9))
		}
		require.True(t, p.meets(kg, -1e-5))
		require.InDelta(t, q.BatchKg, m.Holds.BatchKg, 1e-6*q.BatchKg)
		for _, other := range mixes {
			if !p.meets(other, 0) {
				continue
			}
			cost := 0.0
			for i, f := range p.feeds {
				cost += other[i] * f.PerKg
			}
			require.GreaterOrEqual(t, cost/q.BatchKg, m.PerKg-1e-6)
		}
	})
}

// meets reports whether a batch holds enough of every nutrient, with a margin.
func (p *mixProgram) meets(kg []float64, margin float64) bool {
	for _, n := range p.needs {
		sum := n.fixed
		for i := range kg {
			sum += kg[i] * n.of(p.holds[i])
		}
		if share := sum / p.q.BatchKg; n.misses(share, -margin*n.needed) {
			return false
		}
	}
	return true
}

// randomMixes fills batches with the feeds in random order and amounts, within
// their limits.
func randomMixes(p *mixProgram, n int) [][]float64 {
	rng := rand.New(rand.NewPCG(7, 7))
	var out [][]float64
	for range n {
		kg, left := make([]float64, len(p.feeds)), p.loose
		for range 3 {
			for _, i := range rng.Perm(len(p.feeds)) {
				more := min(left, p.most[i]-kg[i])
				if more > 0 {
					more *= math.Sqrt(rng.Float64())
					kg[i] += more
					left -= more
				}
			}
		}
		for i := range kg { // what is left over goes wherever there is room
			more := min(left, p.most[i]-kg[i])
			kg[i] += more
			left -= more
		}
		if left < 1e-9*p.loose {
			out = append(out, kg)
		}
	}
	return out
}
