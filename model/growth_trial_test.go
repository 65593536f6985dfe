package model_test

import (
	"encoding/csv"
	"fmt"
	"math"
	"os"
	"strconv"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

// trialPig is one pig's weekly weights; week 1 is index 0, NaN where missing.
type trialPig struct {
	name string
	kg   [12]float64
}

// trialPigs reads the shared weekly weights of 36 pigs, whose source and licence
// stand beside the file.
func trialPigs(t testing.TB) []trialPig {
	t.Helper()
	f, err := os.Open("testdata/growth/pig-growth-a.csv")
	require.NoError(t, err)
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	require.NoError(t, err)
	var pigs []trialPig
	for _, row := range rows[1:] {
		name := "p" + row[0]
		if len(pigs) == 0 || pigs[len(pigs)-1].name != name {
			p := trialPig{name: name}
			for i := range p.kg {
				p.kg[i] = math.NaN()
			}
			pigs = append(pigs, p)
		}
		week, err := strconv.Atoi(row[1])
		require.NoError(t, err)
		kg, err := strconv.ParseFloat(row[2], 64)
		require.NoError(t, err)
		pigs[len(pigs)-1].kg[week-1] = kg
	}
	return pigs
}

var trialStart = model.DateDay(2026, 5, 2)

func trialDay(week int) model.Day { return trialStart + model.Day(7*week) }

func noon(d model.Day) time.Time { return d.At(12*60, loc) }

var loc = time.UTC

// trialRecords is the records of a herd of the given pigs, weighed in the first
// weeks.
func trialRecords(pigs []trialPig, from model.Day, weeks int) []model.Record {
	var names []string
	for _, p := range pigs {
		names = append(names, p.name)
	}
	records := []model.Record{{ID: "arrive" + from.String(), On: from, At: from.At(8*60, time.UTC), Fact: model.Arrive{Count: len(pigs), Animals: names}}}
	for _, p := range pigs {
		for w := range weeks {
			if day := from + model.Day(7*w); !math.IsNaN(p.kg[w]) {
				records = append(records, model.Record{
					ID: fmt.Sprint(p.name, day), On: day, At: noon(day),
					Fact: model.Weigh{Animals: []string{p.name}, WeightKg: p.kg[w], By: model.ByScale},
				})
			}
		}
	}
	return records
}

// dayOf is the day, from the start, on which a pig weighed so much, between two
// weighings; false if it never did, or did at once.
func (p trialPig) dayOf(kg float64) (float64, bool) {
	last := -1
	for w := range p.kg {
		if math.IsNaN(p.kg[w]) {
			continue
		}
		if last >= 0 && p.kg[last] < kg && p.kg[w] >= kg {
			return 7 * (float64(last) + float64(w-last)*(kg-p.kg[last])/(p.kg[w]-p.kg[last])), true
		}
		last = w
	}
	return 0, false
}

func alone(p trialPig, weeks int) []model.Record {
	return trialRecords([]trialPig{p}, trialStart, weeks)
}
