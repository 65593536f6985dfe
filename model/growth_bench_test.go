package model_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

// season is the records of n invented pigs weighed weekly for the given weeks,
// each along a line of its own.
func season(n, weeks int) []model.Record {
	pigs := make([]trialPig, n)
	var names []string
	for i := range pigs {
		pigs[i].name = fmt.Sprintf("pig%d", i)
		names = append(names, pigs[i].name)
	}
	from := trialStart
	records := []model.Record{{ID: "arrive", On: from, At: from.At(8*60, loc), Fact: model.Arrive{Count: n, Animals: names, WeightKg: model.Float(20)}}}
	for w := range weeks {
		day := from + model.Day(7*w)
		for i, name := range names {
			kg := 20 + float64(w)*(4.5+0.1*float64(i%7)) + float64((i*7+w*5)%5-2)
			records = append(records, model.Record{
				ID: fmt.Sprint(name, w), On: day, At: noon(day),
				Fact: model.Weigh{Animals: []string{name}, WeightKg: kg, By: model.ByScale},
			})
		}
	}
	return records
}

// BenchmarkForecastOfHerd is weights and target days of 20 pigs with a season of
// weekly weighings, from records already read.
func BenchmarkForecastOfHerd(b *testing.B) { benchmarkForecast(b, 20, 20) }

// BenchmarkForecastOfPig is the same of one pig with seven weighings.
func BenchmarkForecastOfPig(b *testing.B) { benchmarkForecast(b, 1, 7) }

func benchmarkForecast(b *testing.B, pigs, weeks int) {
	benchmarkRecords(b, season(pigs, weeks), trialDay(weeks-1))
}

func benchmarkRecords(b *testing.B, records []model.Record, today model.Day) {
	b.ReportAllocs()
	for range b.N {
		b.StopTimer()
		h := model.Fold(records)
		b.StartTimer()
		_, err := h.Weights(today + 28)
		require.NoError(b, err)
		_, err = h.Target(120, today)
		require.NoError(b, err)
	}
}

// BenchmarkForecastOfUnnamedPigs is the same of 20 pigs without names whose mean
// weight was told every week.
func BenchmarkForecastOfUnnamedPigs(b *testing.B) {
	records := []model.Record{{ID: "arrive", On: trialStart, At: trialStart.At(8*60, loc), Fact: model.Arrive{Count: 20, WeightKg: model.Float(20)}}}
	for w := range 20 {
		day := trialStart + model.Day(7*w)
		records = append(records, model.Record{
			ID: fmt.Sprint("w", w), On: day, At: noon(day),
			Fact: model.Weigh{Animals: []string{model.All}, WeightKg: 20 + 4.8*float64(w), By: model.ByEye},
		})
	}
	benchmarkRecords(b, records, trialDay(19))
}
