package model_test

import (
	"encoding/csv"
	"fmt"
	"math"
	"os"
	"strconv"
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

// trialFeed reads what each of the 36 pigs of testdata/growth had eaten by each
// week (source and licence stand beside the file); NaN where it is missing.
func trialFeed(t testing.TB) map[string][12]float64 {
	t.Helper()
	f, err := os.Open("testdata/growth/pig-growth-a.csv")
	require.NoError(t, err)
	defer func() { require.NoError(t, f.Close()) }()
	rows, err := csv.NewReader(f).ReadAll()
	require.NoError(t, err)
	out := map[string][12]float64{}
	for _, row := range rows[1:] {
		week, err := strconv.Atoi(row[1])
		require.NoError(t, err)
		kg := 0.0
		if row[3] != "" {
			kg, err = strconv.ParseFloat(row[3], 64)
			require.NoError(t, err)
		} else if week > 1 {
			kg = math.NaN()
		}
		eaten, ok := out["p"+row[0]]
		if !ok {
			for i := range eaten {
				eaten[i] = math.NaN()
			}
		}
		eaten[week-1] = kg
		out["p"+row[0]] = eaten
	}
	return out
}

// feedScore gathers relative errors of forecasts of one week's feed.
type feedScore struct {
	absolute, square float64
	inside, n        int
}

func (s *feedScore) add(truth float64, i model.Interval) {
	e := i.Mid/truth - 1
	s.absolute += math.Abs(e)
	s.square += e * e
	s.n++
	if i.Low <= truth && truth <= i.High {
		s.inside++
	}
}

func (s *feedScore) mean() float64    { return 100 * s.absolute / float64(s.n) }
func (s *feedScore) covered() float64 { return 100 * float64(s.inside) / float64(s.n) }

// Pigs of an open trial, fed from a barrel that is filled to the brim each week:
// how well is the next week's feed foreseen from what was told before, and when
// is the barrel dry? Weights are those of a scale every third week. With every
// weight known and the best shrinkage, weeks of 2, 4 and 9 such pigs are still
// 14, 11 and 7 % off (computed from the same data): so uneven do pigs eat.
func TestFeedForecastOnTrialPigs(t *testing.T) {
	pigs, feed := trialPigs(t), trialFeed(t)
	for size, most := range map[int]float64{2: 15, 4: 12.5, 9: 8} { // percent off, on the mean
		var learned, table feedScore
		var early, visits int
		for first := 0; first+size <= len(pigs); first += size {
			group := pigs[first : first+size]
			total := [12]float64{}
			for _, p := range group {
				for w, kg := range feed[p.name] {
					total[w] += kg
				}
			}
			capacity := 3.4 * 7 * float64(size)
			var records []model.Record
			for _, r := range trialRecords(group, trialStart, 12) {
				if week := int(r.On-trialStart) / 7; r.Fact.Kind() != "weigh" || week%3 == 0 {
					records = append(records, r)
				}
			}
			records = append(records, model.Record{ID: "feeder", On: trialStart, At: trialStart.At(8*60, loc), Fact: model.Setting{
				Key: model.SetFeeder, Thing: &model.Thing{Name: "barrel", CapacityKg: &capacity},
			}})
			for w := 0; w < 11; w++ {
				day := trialDay(w)
				now := noon(day)
				took := capacity
				if w > 0 {
					took = total[w] - total[w-1]
				}
				if math.IsNaN(took) || math.IsNaN(total[w+1]) {
					break
				}
				records = append(records, model.Record{ID: fmt.Sprint("fill", w), On: day, At: now, Fact: model.Refill{FeedKg: &took, Full: true, FromEmpty: w == 0}})
				told := func(fills bool) *model.Herd { // what was known on the day
					var known []model.Record
					for _, r := range records {
						if _, fill := r.Fact.(model.Refill); r.On <= day && (fills || !fill) {
							known = append(known, r)
						}
					}
					return model.Fold(known)
				}
				next := total[w+1] - total[w]
				h := told(true)
				need, err := h.FeedNeed(now, day+6)
				require.NoError(t, err)
				half := next * 6.5 / 7 // from noon to the end of the seventh day
				if w >= 2 {
					learned.add(half, need.FeedKg)
					need, err = told(false).FeedNeed(now, day+6)
					require.NoError(t, err)
					table.add(half, need.FeedKg)
				}
				left, err := h.FeedLeft(now)
				require.NoError(t, err)
				visits++
				if dry := trialDry(total, w, capacity); dry < left.EdgeDays {
					early++
				}
			}
		}
		t.Logf("%d pigs a barrel, %d weeks foreseen: learned %.1f %% off on the mean, %.0f %% inside the 80 %% interval; by the table alone %.1f %% off, %.0f %% inside; dry before the 2 %% edge %d of %d times",
			size, learned.n, learned.mean(), learned.covered(), table.mean(), table.covered(), early, visits)
		require.Less(t, learned.mean(), most)
		// These herds eat what the table says: learning must not cost them much.
		require.Less(t, learned.mean(), table.mean()+1)
		require.InDelta(t, 80, learned.covered(), 10)
		require.LessOrEqual(t, float64(early), 0.05*float64(visits))
	}
}

// trialDry is after how many days the pigs eat a full barrel, from week w on, or
// +Inf where the trial ends before.
func trialDry(total [12]float64, w int, capacity float64) float64 {
	left := capacity
	for i := w; i < 11; i++ {
		week := total[i+1] - total[i]
		if math.IsNaN(week) {
			break
		}
		if left < week {
			return 7*float64(i-w) + 7*left/week
		}
		left -= week
	}
	return math.Inf(1)
}
