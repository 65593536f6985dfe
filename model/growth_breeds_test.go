package model_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"
)

// gompertz is a published growth curve, A exp(-exp(-B (t - T))) in kg and days.
type gompertz struct {
	name string
	a, b float64
}

// The curves of breeds far apart: lean gilts (Lewis and Emmans, J. Anim. Sci.
// 98(4) skaa087, 2020, Table 1, read) and a local breed kept mostly outdoors
// (Sabbioni et al., Ital. J. Anim. Sci., abstract read); between them the
// growth classes of NRC 2012 as a Gompertz curve (computed from memory).
var publishedCurves = []gompertz{
	{"lean gilts", 230, 0.0126},
	{"NRC classes", 226.6, 0.01116},
	{"local castrates outdoors", 229, 0.00738},
	{"local gilts outdoors", 221.3, 0.00799},
}

// bredPigs makes pigs that grow by the curve, each at its own pace (SD 8 %) from
// about 25 kg, with what a scale shows about it (SD 1 kg and 1.5 %).
func (g gompertz) bredPigs(n int, rng *rand.Rand) []trialPig {
	pigs := make([]trialPig, n)
	for i := range pigs {
		pigs[i].name = fmt.Sprintf("bred%d", i)
		pace := g.b * (1 + 0.08*rng.NormFloat64())
		start := 25 * (1 + 0.12*rng.NormFloat64())
		age := -math.Log(math.Log(g.a / start))
		for w := range pigs[i].kg {
			kg := g.a * math.Exp(-math.Exp(-(age + pace*7*float64(w))))
			pigs[i].kg[w] = kg + math.Hypot(1, 0.015*kg)*rng.NormFloat64()
		}
	}
	return pigs
}

// The model is fitted to no breed: on curves that it does not know it must be
// near enough, and know how near.
func TestForecastOfOtherBreeds(t *testing.T) {
	const each = 60
	head(t, each*len(publishedCurves))
	all := row{name: "all four"}
	for i, g := range publishedCurves {
		pigs := g.bredPigs(each, rand.New(rand.NewPCG(uint64(i), 11)))
		r := row{name: g.name}
		r.two, r.four, r.ninety = forecast(t, pigs, alone)
		r.report(t)
		require.LessOrEqual(t, r.four.mae(), 5.5, g.name)
		require.GreaterOrEqual(t, r.four.coverage(), 70.0, g.name)
		all.two.join(r.two)
		all.four.join(r.four)
		all.ninety.join(r.ninety)
	}
	all.report(t)
	require.LessOrEqual(t, all.four.mae(), 4.0)
	require.LessOrEqual(t, all.ninety.mae(), 5.4)
	// Pigs made by a formula stray less than real ones: no upper bound.
	require.GreaterOrEqual(t, all.four.coverage(), 75.0)
	require.GreaterOrEqual(t, all.ninety.coverage(), 75.0)
}
