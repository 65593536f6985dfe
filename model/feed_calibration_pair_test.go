package model

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"
)

// Two feeders, levels by eye between fills, amounts not always told: the pigs'
// liking for one feeder, their appetite, both capacities and both levels are
// unknown together. When is the first of them dry?
func TestFeedEdgesOfTwoFeedersKeepTheirPromise(t *testing.T) {
	const pigs = 6
	one := feedUseKgD(70, "", 0)
	names := []string{"left", "right"}
	var asked, beforeEdge, beforeLow, beforeLikely, inside, levels int
	for seed := range uint64(120) {
		rng := rand.New(rand.NewPCG(seed, 11))
		s := tellHerd(t).tell("2026-05-02 00:00", Arrive{Count: pigs, WeightKg: Float(70)}, feederKg("left", 130), feederKg("right", 130))
		appetite := math.Exp(appetiteSD * rng.NormFloat64())
		liking := math.Exp(math.Sqrt2 * shareSD * rng.NormFloat64())
		share := []float64{liking / (1 + liking), 1 / (1 + liking)}
		capacity := []float64{130 * (1 + capacityKgSD*rng.NormFloat64()), 130 * (1 + capacityKgSD*rng.NormFloat64())}
		level := []float64{0, 0}
		// eat takes one day from the levels and tells what part of it passed
		// before the first of them was dry.
		eat := func(rng *rand.Rand, level []float64) float64 {
			want := max(appetite*pigs*one*(1+math.Sqrt(7*weekSpread(pigs))*rng.NormFloat64()), 0)
			first := 2.0
			rest := 0.0
			for k := range level {
				if take := share[k] * want; level[k] < take {
					first = min(first, level[k]/take)
					rest += take - level[k]
					level[k] = 0
				} else {
					level[k] -= take
				}
			}
			for k := range level { // pigs turn to the other
				level[k] = max(level[k]-rest, 0)
			}
			return first
		}
		day := DateDay(2026, 5, 2)
		fit := func() *feedFit { return fitFeed(s.herd(), steadyWeights{s.herd(), 70, 0}) }
		for week := range 8 {
			at := day.At(0, s.loc)
			stamp := at.Format("2006-01-02 15:04")
			if week > 0 {
				g, _, err := fit().at(at)
				require.NoError(t, err)
				for k := range level {
					levels++
					i := levelKg(g, k)
					inside += count(i.Low-1e-9 <= level[k] && level[k] <= i.High+1e-9)
				}
			}
			for k, name := range names {
				brim := max(capacity[k]*(1+brimSD*rng.NormFloat64()), level[k])
				empty := level[k] == 0
				r := Refill{Feeder: name, Full: true, FromEmpty: empty}
				if pour := brim - level[k]; pour > 1 && rng.IntN(5) > 0 {
					r.FeedKg = Float(pour * (1 + pourSD*rng.NormFloat64()))
				}
				level[k] = brim
				s.tell(stamp, r)
			}
			left, err := fit().left(at)
			require.NoError(t, err)
			alone, other := append([]float64(nil), level...), rand.New(rand.NewPCG(seed, uint64(day)))
			dry := 0.0
			for part := 2.0; part > 1; {
				if part = eat(other, alone); part > 1 {
					dry++
				} else {
					dry += part
				}
			}
			asked++
			beforeEdge += count(dry < left.EdgeDays)
			beforeLow += count(dry < left.LowDays)
			beforeLikely += count(dry < left.Days)
			for range 3 {
				eat(rng, level)
			}
			if k := rng.IntN(2); level[k] > 0.1*capacity[k] {
				by := level[k]/capacity[k] + eyeSD*rng.NormFloat64()
				s.tell((day+3).At(0, s.loc).Format("2006-01-02 15:04"), FeedLevel{Feeder: names[k], Fraction: Float(min(max(by, 0.02), 1))})
			}
			for range 4 {
				eat(rng, level)
			}
			day += 7
		}
	}
	part := func(n, of int) float64 { return float64(n) / float64(of) }
	t.Logf("%d forecasts: dry before the 2 %% edge %.1f %%, before the 10 %% edge %.1f %%, before the likely day %.1f %%; %d levels, %.1f %% inside their 80 %% interval",
		asked, 100*part(beforeEdge, asked), 100*part(beforeLow, asked), 100*part(beforeLikely, asked), levels, 100*part(inside, levels))
	require.LessOrEqual(t, part(beforeEdge, asked), 0.04)
	require.LessOrEqual(t, part(beforeLow, asked), 0.15)
	require.InDelta(t, 0.80, part(inside, levels), 0.08)
}
