package model

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

var growthStart = DateDay(2026, 4, 4)

// drawSeason draws the records of an invented herd: pigs with their own speeds,
// weighed on some days by scale, tape or eye, now and then as a mean, now and
// then misread.
func drawSeason(t *rapid.T) []Record { return drawSeasonFrom(t, 6) }

// drawSeasonFrom is drawSeason of pigs no lighter than leastKg.
func drawSeasonFrom(t *rapid.T, leastKg float64) []Record {
	pigs := rapid.IntRange(1, 5).Draw(t, "pigs")
	start := rapid.Float64Range(leastKg, 40).Draw(t, "start")
	arrive := Arrive{Count: pigs}
	for i := range pigs {
		arrive.Animals = append(arrive.Animals, fmt.Sprintf("pig%d", i))
	}
	if rapid.Bool().Draw(t, "guess") {
		arrive.WeightKg = Float(start)
	}
	records := []Record{{ID: "arrive", On: growthStart, At: growthStart.At(480, time.UTC), Fact: arrive}}
	speeds := make([]float64, pigs)
	for i := range speeds {
		speeds[i] = rapid.Float64Range(0.7, 1.2).Draw(t, "speed")
	}
	weeks := rapid.IntRange(1, 9).Draw(t, "weeks")
	for w := range weeks {
		day := growthStart + Day(7*w)
		for i := range pigs {
			kg, _ := tableWeight(tableDay(start) + speeds[i]*7*float64(w))
			by := rapid.SampledFrom([]string{ByScale, ByScale, ByTape, ByEye, ""}).Draw(t, "by")
			if by == "" {
				continue
			}
			kg += readingErrors[by].sd(kg) * rapid.Float64Range(-2, 2).Draw(t, "error")
			weigh := Weigh{Animals: []string{arrive.Animals[i]}, WeightKg: math.Max(1, kg), By: by}
			if by == ByTape && kg > 25 {
				weigh = Weigh{Animals: weigh.Animals, GirthCm: (kg + 93.3) / 1.8163}
			}
			records = append(records, Record{ID: fmt.Sprint("w", w, "-", i), On: day, At: day.At(600, time.UTC), Fact: weigh})
		}
		if rapid.IntRange(0, 5).Draw(t, "mean") == 0 {
			kg, _ := tableWeight(tableDay(start) + 7*float64(w))
			records = append(records, Record{
				ID: fmt.Sprint("m", w), On: day, At: day.At(700, time.UTC),
				Fact: Weigh{Animals: []string{All}, WeightKg: kg, By: ByEye},
			})
		}
	}
	for range rapid.IntRange(0, 3).Draw(t, "hot days") {
		day := growthStart + Day(rapid.IntRange(0, 80).Draw(t, "hot day"))
		high := rapid.Float64Range(15, 40).Draw(t, "high")
		records = append(records, Record{ID: fmt.Sprint("hot", day, high), On: day, At: day.At(400, time.UTC), Fact: Weather{HighC: Float(high)}})
	}
	if rapid.Bool().Draw(t, "sick") {
		day := growthStart + 20
		records = append(records, Record{ID: "sick", On: day, At: day.At(600, time.UTC), Fact: Sick{Animals: []string{"pig0"}}})
	}
	return records
}

func shuffled(records []Record, seed uint64) []Record {
	out := append([]Record(nil), records...)
	rng := rand.New(rand.NewPCG(seed, 1))
	rng.Shuffle(len(out), func(i, j int) { out[i], out[j] = out[j], out[i] })
	return out
}

// told is all that a herd says of weights on a few days, and of its target.
func told(t require.TestingT, records []Record) string {
	h := Fold(records)
	s := ""
	for _, on := range []Day{growthStart, growthStart + 30, growthStart + 100} {
		w, err := h.Weights(on)
		if err != nil {
			s += err.Error()
			continue
		}
		for _, p := range w {
			s += fmt.Sprintf("%s %x %x %v\n", p.Animal.Name, p.WeightKg, p.GainKgD, p.Reasons)
		}
	}
	f, err := h.Target(110, growthStart+60)
	if err == nil {
		s += fmt.Sprint(f.Herd, f.Groups, f.Reasons)
	}
	return s
}

func TestWeightsDoNotDependOnTheOrderOfRecords(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		records := drawSeason(t)
		require.Equal(t, told(t, records), told(t, shuffled(records, rapid.Uint64().Draw(t, "seed"))))
	})
}

func TestVoidingAWeighingRestoresTheWeights(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		records := drawSeason(t)
		day := growthStart + Day(rapid.IntRange(0, 80).Draw(t, "day"))
		more := append(shuffled(records, 1),
			Record{ID: "slip", On: day, At: day.At(800, time.UTC), Fact: Weigh{Animals: []string{"pig0"}, WeightKg: rapid.Float64Range(2, 200).Draw(t, "kg"), By: ByScale}},
			Record{ID: "void", On: day, At: day.At(801, time.UTC), Fact: Void{Record: "slip", Why: "undo"}})
		require.Equal(t, told(t, records), told(t, more))
	})
}

func TestMedianWeightsDoNotFallInTheFuture(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		h := Fold(drawSeason(t))
		last, before := DayOf(h.Last), map[*Animal]Interval{}
		for on := last; on < last+200; on += 5 {
			w, err := h.Weights(on)
			if err != nil {
				t.Skip("nothing known of weight")
			}
			for _, p := range w {
				require.Less(t, p.WeightKg.Low, p.WeightKg.Mid)
				require.Less(t, p.WeightKg.Mid, p.WeightKg.High)
				require.GreaterOrEqual(t, p.WeightKg.Mid, before[p.Animal].Mid)
				before[p.Animal] = p.WeightKg
			}
		}
	})
}

func TestIntervalsNest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		h := Fold(drawSeason(t))
		pigs, err := h.growing(h.Alive(growthStart))
		if err != nil {
			t.Skip("nothing known of weight")
		}
		s := h.growth().state(alike(pigs), growthStart+Day(rapid.IntRange(0, 150).Draw(t, "on")))
		z := rapid.Float64Range(0, 3).Draw(t, "z")
		more := z + rapid.Float64Range(0.01, 1).Draw(t, "more")
		require.LessOrEqual(t, s.at(-more), s.at(-z))
		require.LessOrEqual(t, s.at(-z), s.at(z))
		require.LessOrEqual(t, s.at(z), s.at(more))
	})
}

// A weighing in the central half of its forecast tells of no surprise, so the pig
// is known no worse after it, on the time scale of the table: neither where its
// own curve runs nor what a scale would show.
func TestAnExpectedWeighingNeverWidens(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		records := drawSeasonFrom(t, 3)
		h := Fold(records)
		pigs, err := h.growing(h.Alive(growthStart))
		if err != nil {
			t.Skip("nothing known of weight")
		}
		on := DayOf(h.Last) + Day(rapid.IntRange(1, 20).Draw(t, "later"))
		a := pigs[rapid.IntRange(0, len(pigs)-1).Draw(t, "pig")].animal
		by := rapid.SampledFrom([]string{ByScale, ByTape, ByEye}).Draw(t, "by")
		e, err := h.ExpectReading(a, on, by)
		require.NoError(t, err)
		kg, err := e.Quantile(rapid.Float64Range(0.25, 0.75).Draw(t, "quantile"))
		require.NoError(t, err)
		if kg < 1 {
			t.Skip("no pig weighs that")
		}
		more := Fold(append(shuffled(records, 1), Record{
			ID: "expected", On: on, At: on.At(600, time.UTC),
			Fact: Weigh{Animals: []string{a.Name}, WeightKg: kg, By: by},
		}))
		for _, days := range []Day{0, Day(rapid.IntRange(0, 150).Draw(t, "ahead"))} {
			was, is := tableSpread(t, h, a.Number, on+days), tableSpread(t, more, a.Number, on+days)
			require.LessOrEqual(t, is.curve, was.curve*(1+1e-9))
			require.LessOrEqual(t, is.interval, was.interval*(1+1e-6))
		}
	})
}

// spreadDays is how well a pig is known on a day, in days of the table: the SD of
// its curve, and the width of the interval that is told.
type spreadDays struct{ curve, interval float64 }

func tableSpread(t require.TestingT, h *Herd, number int, on Day) spreadDays {
	f := h.growth()
	_, variance := f.sum(growthTerm{f.pigs[number].alone(), float64(on), 1})
	w, err := h.MeanWeight([]*Animal{h.Animals[number]}, on)
	require.NoError(t, err)
	return spreadDays{math.Sqrt(variance), tableDay(w.WeightKg.High) - tableDay(w.WeightKg.Low)}
}

// Whatever was written down, the figures are numbers and in order.
func TestWildReadingsGiveFiniteFigures(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		records := drawSeason(t)
		for i := range rapid.IntRange(1, 4).Draw(t, "wild") {
			day := growthStart + Day(rapid.IntRange(-400, 400).Draw(t, "day"))
			size := math.Pow(10, rapid.Float64Range(-3, 7).Draw(t, "size"))
			fact := Weigh{Animals: []string{rapid.SampledFrom([]string{"pig0", "pig1", All}).Draw(t, "who")}, WeightKg: size, By: ByScale}
			if rapid.Bool().Draw(t, "girth") {
				fact = Weigh{Animals: fact.Animals, GirthCm: size, LengthCm: rapid.Float64Range(0, 200).Draw(t, "length")}
			}
			records = append(records, Record{ID: fmt.Sprint("wild", i), On: day, At: day.At(500, time.UTC), Fact: fact})
		}
		h := Fold(records)
		for _, on := range []Day{growthStart, growthStart + 60, growthStart + 500} {
			w, err := h.Weights(on)
			if err != nil {
				t.Skip("nothing known of weight")
			}
			for _, p := range w {
				for _, v := range []float64{p.WeightKg.Low, p.WeightKg.Mid, p.WeightKg.High, p.GainKgD.Low, p.GainKgD.Mid, p.GainKgD.High} {
					require.False(t, math.IsNaN(v) || math.IsInf(v, 0), "%+v", p)
				}
				require.Positive(t, p.WeightKg.Low)
				require.LessOrEqual(t, p.WeightKg.Low, p.WeightKg.Mid)
				require.LessOrEqual(t, p.WeightKg.Mid, p.WeightKg.High)
			}
		}
		f, err := h.Target(110, growthStart+30)
		require.NoError(t, err)
		require.LessOrEqual(t, f.Herd.Days.Low, f.Herd.Days.Mid)
		require.LessOrEqual(t, f.Herd.Days.Mid, f.Herd.Days.High)
		_, err = h.WeighDue(growthStart + 30)
		require.NoError(t, err)
	})
}
