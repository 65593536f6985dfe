package model_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

// barrelSeason is eleven weeks of pigs drawn from the open trial, fed from one
// barrel that is filled to the brim each week, weighed every third week. wasted
// multiplies what is gone from the week on.
func barrelSeason(rng *rand.Rand, pigs []trialPig, feed map[string][12]float64, size, week int, wasted float64) []model.Record {
	var group []trialPig
	total := [12]float64{}
	for i, k := range rng.Perm(len(pigs))[:size] {
		p := pigs[k]
		for w, kg := range feed[p.name] {
			total[w] += kg
		}
		p.name = fmt.Sprint("p", i)
		group = append(group, p)
	}
	capacity := 3.6 * 7 * float64(size)
	var records []model.Record
	for _, r := range trialRecords(group, trialStart, 12) {
		if w := int(r.On-trialStart) / 7; r.Fact.Kind() != "weigh" || w%3 == 0 {
			records = append(records, r)
		}
	}
	records = append(records, model.Record{ID: "feeder", On: trialStart, At: trialStart.At(8*60, loc), Fact: model.Setting{
		Key: model.SetFeeder, Thing: &model.Thing{Name: "barrel", CapacityKg: &capacity},
	}})
	brim := capacity
	for w := range 12 {
		took := capacity
		if w > 0 {
			took = total[w] - total[w-1]
			if w >= week {
				took *= wasted
			}
			if math.IsNaN(took) {
				break
			}
			// What a person calls full differs by some 2 % of the barrel.
			now := capacity * (1 + 0.02*rng.NormFloat64())
			took += now - brim
			brim = now
			took *= 1 + 0.02*rng.NormFloat64()
		}
		day := trialDay(w)
		records = append(records, model.Record{
			ID: fmt.Sprint("fill", w), On: day, At: noon(day), Fact: model.Refill{FeedKg: &took, Full: true, FromEmpty: w == 0},
		})
	}
	return records
}

// Pigs of the open trial of which nothing is amiss: how often in a season of
// eighteen weeks would their keeper be asked about feed, and is a third more gone
// seen within two fills?
func TestQuestionsToSoundHerdsAreRare(t *testing.T) {
	pigs, feed := trialPigs(t), trialFeed(t)
	const seasons, from = 120, 7
	for _, row := range []struct {
		size             int
		asked            float64 // a season of eighteen weeks, at most
		seen, seenOfLess int     // percent, at least; less may be heat that nobody told
	}{{2, 0.75, 65, 35}, {4, 0.55, 80, 45}, {9, 0.2, 90, 70}} {
		size := row.size
		rng := rand.New(rand.NewPCG(uint64(size), 11))
		var spans, more, less, both, seen, seenLess, of int
		for range seasons {
			records := barrelSeason(rng, pigs, feed, size, 99, 1)
			h := model.Fold(records)
			spans += len(h.FeedFills())
			for _, o := range h.OddFeed() {
				if o.Both {
					both++
				}
				if o.Kind == model.OddMore {
					more++
				} else {
					less++
				}
			}
			for _, by := range []float64{1.3, 0.7} {
				leak := barrelSeason(rng, pigs, feed, size, from, by)
				found := false
				for _, o := range model.Fold(leak).OddFeed() {
					if o.Record == fmt.Sprint("fill", from) || o.Record == fmt.Sprint("fill", from+1) {
						found = true
					}
				}
				if found && by > 1 {
					seen++
				} else if found {
					seenLess++
				}
			}
			of++
		}
		t.Logf("%d pigs: %d spans; asked of more %.2f, of less %.2f a season of 18 (both %d); 30 %% more seen %d %%, 30 %% less seen %d %% within two fills",
			size, spans, 18*float64(more)/float64(spans), 18*float64(less)/float64(spans), both, 100*seen/of, 100*seenLess/of)
		require.LessOrEqual(t, 18*float64(more+less)/float64(spans), row.asked)
		require.GreaterOrEqual(t, 100*seen/of, row.seen)
		require.GreaterOrEqual(t, 100*seenLess/of, row.seenOfLess)
	}
}
