package model

import (
	"encoding/csv"
	"errors"
	"math"
	"os"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

const (
	kgPerPound = 0.45359237
	cmPerInch  = 2.54
)

// centimetres reads a measure given in cm or in inches.
func centimetres(in map[string]float64, name string) float64 {
	if cm, ok := in[name+"_cm"]; ok {
		return cm
	}
	return in[name+"_in"] * cmPerInch
}

// growthSums works out what a row of published_growth.csv asks for.
var growthSums = map[string]func(in map[string]float64) (float64, error){
	"girth_kg": func(in map[string]float64) (float64, error) {
		e, err := WeightFromGirth(centimetres(in, "girth"))
		return e.Mean, err
	},
	"girth_lb": func(in map[string]float64) (float64, error) {
		e, err := WeightFromGirth(centimetres(in, "girth"))
		return e.Mean / kgPerPound, err
	},
	"tape_kg": func(in map[string]float64) (float64, error) {
		e, err := WeightFromTape(centimetres(in, "girth"), centimetres(in, "length"))
		return e.Mean, err
	},
	"tape_lb": func(in map[string]float64) (float64, error) {
		e, err := WeightFromTape(centimetres(in, "girth"), centimetres(in, "length"))
		return e.Mean / kgPerPound, err
	},
	"light_girth_kg": func(in map[string]float64) (float64, error) {
		e, within := ReadTape(in["girth_cm"], 0)
		if within {
			return 0, errors.New("not outside the range of the line")
		}
		return e.Mean, nil
	},
	"table_days": func(in map[string]float64) (float64, error) { return TableDays(in["from_kg"], in["to_kg"]) },
	"table_gain": func(in map[string]float64) (float64, error) { return TableGain(in["at_kg"]) },
	// A pen that came at 25 kg.
	"pen_sd_kg": func(in map[string]float64) (float64, error) {
		return penSpread(tableDay(in["mean_kg"])-tableDay(25)) * tableGain(in["mean_kg"]), nil
	},
	"gain_cv_pct": func(in map[string]float64) (float64, error) {
		strayed := math.Pow(penSpread(in["days"]), 2) - math.Pow(penSpread(0), 2)
		return 100 * math.Sqrt(strayed) / in["days"], nil
	},
	"table_kg_at_age": func(in map[string]float64) (float64, error) {
		kg, _ := tableWeight(in["age_d"])
		return kg, nil
	},
}

// penSpread is the SD in table days of never weighed pigs of a batch about their
// mean, so many days after they came.
func penSpread(days float64) float64 {
	f := &growthFit{groups: []*growthGroup{{}}}
	p := &growthPig{}
	return math.Sqrt(f.kernel(p, f.moment(p, days), f.moment(p, days)))
}

func TestGrowthAgreesWithPublishedFigures(t *testing.T) {
	f, err := os.Open("testdata/published_growth.csv")
	require.NoError(t, err)
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	require.NoError(t, err)
	require.Greater(t, len(rows), 50)
	for _, row := range rows[1:] {
		t.Run(row[0]+" "+row[1], func(t *testing.T) {
			in := map[string]float64{}
			for _, part := range strings.Fields(row[1]) {
				name, value, _ := strings.Cut(part, "=")
				v, err := strconv.ParseFloat(value, 64)
				require.NoError(t, err)
				in[name] = v
			}
			want, err := strconv.ParseFloat(row[2], 64)
			require.NoError(t, err)
			tolerance, err := strconv.ParseFloat(row[3], 64)
			require.NoError(t, err)
			sum, ok := growthSums[row[0]]
			require.True(t, ok, "no sum for the topic %s", row[0])
			got, err := sum(in)
			require.NoError(t, err)
			require.InDelta(t, want, got, tolerance, "source: %s", row[4])
		})
	}
}
