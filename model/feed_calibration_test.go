package model

import (
	"math"
	"math/rand/v2"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

// trueFeeder is a feeder as it really is, of which the records tell only what a
// person sees.
type trueFeeder struct {
	rng                *rand.Rand
	capacity, appetite float64
	pigs               int
	level              float64
	use                func(d Day) float64 // at an appetite of 1
}

// eatDay takes a day's feed, strayed as a few pigs do, and tells after what part
// of the day the feeder was dry (2: it was not).
func (f *trueFeeder) eatDay(d Day) (want, dryAfter float64) {
	want = f.appetite * f.use(d) * (1 + math.Sqrt(7*weekSpread(f.pigs))*f.rng.NormFloat64())
	want = max(want, 0)
	dryAfter = 2
	if f.level < want {
		dryAfter = f.level / want
	}
	f.level = max(f.level-want, 0)
	return want, dryAfter
}

// Herds that really are as the priors say: how often is a feeder dry before its
// 2 % edge and before its 10 % edge, and how often does the 80 % interval of its
// level hold the truth?
func TestFeedEdgesKeepTheirPromise(t *testing.T) {
	loc := tellHerd(t).loc
	var asked, beforeEdge, beforeLow, beforeLikely, inside, levels int
	for seed := range uint64(150) {
		rng := rand.New(rand.NewPCG(seed, 7))
		pigs := []int{2, 4, 8}[seed%3]
		s := tellHerd(t).tell("2026-05-02 00:00", Arrive{Count: pigs, WeightKg: Float(60)},
			Setting{Key: SetFeeder, Thing: &Thing{Name: "barrel", CapacityL: Float(60 * float64(pigs))}})
		truth := &trueFeeder{
			rng: rng, pigs: pigs,
			capacity: 60 * float64(pigs) * feedDensityKgL * (1 + capacityLSD*rng.NormFloat64()),
			appetite: math.Exp(appetiteSD * rng.NormFloat64()),
		}
		weight := 50 + 30*rng.Float64()
		one := feedUseKgD(weight, "", 0)
		truth.use = func(Day) float64 { return float64(pigs) * one }
		at := s.moment("2026-05-02 00:00")
		for range 12 {
			f := fitFeed(s.herd(), steadyWeights{s.herd(), weight, 0})
			if len(f.steps) > 0 {
				g, _, err := f.at(at)
				require.NoError(t, err)
				level := levelKg(g, 0)
				levels++
				if level.Low-1e-9 <= truth.level && truth.level <= level.High+1e-9 {
					inside++
				}
			}
			// The visit: filled to what a person calls full, or only some poured.
			empty := truth.level == 0
			brim := truth.capacity * (1 + brimSD*rng.NormFloat64())
			pour := max(brim-truth.level, 1)
			said := pour * (1 + pourSD*rng.NormFloat64())
			if rng.IntN(4) == 0 {
				pour *= 0.7
				truth.level += pour
				s.tell(at.Format("2006-01-02 15:04"), Refill{FeedKg: Float(said * 0.7), FromEmpty: empty})
			} else {
				truth.level = brim
				s.tell(at.Format("2006-01-02 15:04"), Refill{FeedKg: Float(said), Full: true, FromEmpty: empty})
			}
			f = fitFeed(s.herd(), steadyWeights{s.herd(), weight, 0})
			left, err := f.left(at)
			require.NoError(t, err)
			// What if nobody came again?
			alone := *truth
			alone.rng = rand.New(rand.NewPCG(seed, uint64(DayOf(at))))
			dry := 0.0
			for d := DayOf(at); ; d++ {
				if _, part := alone.eatDay(d); part <= 1 {
					dry += part
					break
				}
				dry++
			}
			asked++
			beforeEdge += count(dry < left.EdgeDays)
			beforeLow += count(dry < left.LowDays)
			beforeLikely += count(dry < left.Days)
			for d := DayOf(at); d < DayOf(at)+7; d++ {
				truth.eatDay(d)
			}
			at = (DayOf(at) + 7).At(0, loc)
		}
	}
	part := func(n, of int) float64 { return float64(n) / float64(of) }
	t.Logf("%d forecasts: dry before the 2 %% edge %.1f %%, before the 10 %% edge %.1f %%, before the likely day %.1f %%; %d levels, %.1f %% inside their 80 %% interval",
		asked, 100*part(beforeEdge, asked), 100*part(beforeLow, asked), 100*part(beforeLikely, asked), levels, 100*part(inside, levels))
	require.LessOrEqual(t, part(beforeEdge, asked), 0.035)
	require.InDelta(t, 0.10, part(beforeLow, asked), 0.04)
	require.InDelta(t, 0.50, part(beforeLikely, asked), 0.06)
	require.InDelta(t, 0.80, part(inside, levels), 0.06)
}

func count(b bool) int {
	if b {
		return 1
	}
	return 0
}

// The same herd with the true appetite far from the table: after six fills the
// likely day is the right one.
func TestFeedForecastFindsTheHerd(t *testing.T) {
	for _, appetite := range []float64{0.7, 1, 1.4} {
		s := tellHerd(t).tell("2026-05-02 00:00", fourEaters(), feederKg("barrel", 130))
		at := s.moment("2026-05-02 09:00")
		s.tell(at.Format("2006-01-02 15:04"), Refill{FeedKg: Float(130), Full: true, FromEmpty: true})
		use := appetite * fourAt60(t)
		for range 6 {
			at = at.Add(7 * 24 * time.Hour)
			s.tell(at.Format("2006-01-02 15:04"), Refill{FeedKg: Float(7 * use), Full: true})
		}
		left, err := s.fit(60).left(at)
		require.NoError(t, err)
		require.InEpsilon(t, 130/use, left.Days, 0.06, "appetite %v", appetite)
	}
}
