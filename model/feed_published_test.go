package model

import (
	"encoding/csv"
	"fmt"
	"math"
	"os"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// feedRow is the input of a row of published_feed.csv: numbers by name, and a
// pig's sex.
type feedRow struct {
	in  map[string]float64
	sex Sex
}

// mix is the recipe that the row's ingredients make.
func (r feedRow) mix() Recipe {
	parts := map[string]float64{}
	for name, v := range r.in {
		if _, ok := Ingredient(name); ok {
			parts[name] = v
		}
	}
	return Recipe{Ingredients: parts}
}

// feedSums works out what a row asks for.
var feedSums = map[string]func(t *testing.T, r feedRow) float64{
	"me_intake_kcal": func(t *testing.T, r feedRow) float64 {
		return sumOf(t)(MEIntakeMJD(r.in["weight_kg"], r.sex)) / kcalMJ
	},
	"feed_use_kg_d": func(t *testing.T, r feedRow) float64 { return sumOf(t)(FeedUseKgD(r.in["weight_kg"], r.sex, 0)) },
	"feed_use_exact_g_d": func(t *testing.T, r feedRow) float64 {
		return 1000 * sumOf(t)(MEIntakeMJD(r.in["weight_kg"], r.sex)) / kcalMJ / r.in["kcal"] / (1 - FeederWaste)
	},
	"quiniou_g_d": func(_ *testing.T, r feedRow) float64 { return quiniouIntakeGD(r.in["mean_c"], r.in["weight_kg"]) },
	"heat_pct_per_c": func(t *testing.T, r feedRow) float64 {
		from := sumOf(t)(WeatherFeedFactor(r.in["from_c"], r.in["weight_kg"], false))
		to := sumOf(t)(WeatherFeedFactor(r.in["to_c"], r.in["weight_kg"], false))
		return 100 * (to/from - 1) / (r.in["to_c"] - r.in["from_c"])
	},
	"cold_pct": func(t *testing.T, r feedRow) float64 {
		return 100 * (sumOf(t)(WeatherFeedFactor(r.in["mean_c"], 84.5, false)) - 1)
	},
	"energy_ratio": func(_ *testing.T, r feedRow) float64 {
		return energyFactor(r.in["to_ne"]/0.74) / energyFactor(r.in["from_ne"]/0.74)
	},
	"week_spread_pct":   func(_ *testing.T, r feedRow) float64 { return 100 * math.Sqrt(weekSpread(int(r.in["pigs"]))) },
	"needed_sid_lysine": func(t *testing.T, r feedRow) float64 { return sumOf(t)(NeededSIDLysinePct(r.in["weight_kg"])) },
	"lysine_pct":        func(_ *testing.T, r feedRow) float64 { return checkRation(r.mix(), 60).LysinePct },
	"sid_lysine_pct":    func(_ *testing.T, r feedRow) float64 { return checkRation(r.mix(), 60).SIDLysinePct },
	"crude_protein_pct": func(_ *testing.T, r feedRow) float64 { return checkRation(r.mix(), 60).CrudeProteinPct },
	"energy_kcal":       func(_ *testing.T, r feedRow) float64 { return checkRation(r.mix(), 60).EnergyMJKg / kcalMJ },
	"enough_from_kg": func(_ *testing.T, r feedRow) float64 {
		for kg := 10.0; ; kg += 0.1 {
			if checkRation(r.mix(), kg).OK {
				return kg
			}
		}
	},
	"soybean_meal_to_meet": func(_ *testing.T, r feedRow) float64 {
		m := r.mix()
		m.Ingredients["soybean meal 48"] = 1
		return 1 + checkRation(m, r.in["weight_kg"]).Change["soybean meal 48"]
	},
	"drum_kg":    func(_ *testing.T, r feedRow) float64 { return r.in["us_gallons"] * 3.785411784 * feedDensityKgL },
	"hanging_kg": func(_ *testing.T, r feedRow) float64 { return r.in["live_kg"] * DressingPct / 100 },
	"retail_kg":  func(_ *testing.T, r feedRow) float64 { return r.in["hanging_kg"] * TakeHomePct / 100 },
	"cost_per_kg_live": func(t *testing.T, r feedRow) float64 {
		// Butchered pigs of a weight that a scale gave the same day.
		s := tellHerd(t).tell("2026-06-06 08:00", Arrive{Count: 1, Animals: []string{"Dot"}, WeightKg: Float(r.in["live_kg"])})
		s.tell("2026-06-06 09:00", Spend{Amount: r.in["paid"], Currency: "USD"}, Gone{Animals: []string{"Dot"}, How: Butchered, HangingKg: Float(r.in["live_kg"] * DressingPct / 100)})
		c, err := s.herd().Cost(s.moment("2026-06-07 08:00"))
		require.NoError(t, err)
		return c.PerKgHanging * DressingPct / 100
	},
	"cost_per_packaged": func(t *testing.T, r feedRow) float64 {
		// What came home was weighed, so that the herd's own share holds.
		s := tellHerd(t).tell("2026-06-06 08:00", Arrive{Count: 1, Animals: []string{"Dot"}, WeightKg: Float(r.in["hanging"] / 0.72)})
		s.tell("2026-06-06 09:00", Spend{Amount: r.in["paid"], Currency: "USD"}, Gone{Animals: []string{"Dot"}, How: Butchered, HangingKg: Float(r.in["hanging"])})
		c, err := s.herd().Cost(s.moment("2026-06-07 08:00"))
		require.NoError(t, err)
		return c.PerKgPackaged
	},
	"plan_feed_each_kg": func(t *testing.T, r feedRow) float64 {
		n, err := PlanNeeds(NeedsQuery{Count: int(r.in["count"]), From: DateDay(2026, 4, 18), WeightKg: r.in["weight_kg"], TargetKg: r.in["target_kg"]})
		require.NoError(t, err)
		return n.FeedKg.Mid / r.in["count"]
	},
}

func TestFeedRationAndMeatMatchWhatIsPublished(t *testing.T) {
	f, err := os.Open("testdata/published_feed.csv")
	require.NoError(t, err)
	defer func() { require.NoError(t, f.Close()) }()
	rows, err := csv.NewReader(f).ReadAll()
	require.NoError(t, err)
	require.Equal(t, []string{"topic", "input", "expected", "tolerance", "source", "status"}, rows[0])
	seen := map[string]bool{}
	for i, row := range rows[1:] {
		t.Run(fmt.Sprintf("%03d %s %s", i+2, row[0], row[1]), func(t *testing.T) {
			work, ok := feedSums[row[0]]
			require.True(t, ok, "no sum for topic %q", row[0])
			require.NotEmpty(t, row[4], "a row needs its source")
			require.Contains(t, []string{"read", "from memory", "computed", "computed from what was read"}, row[5])
			r := feedRow{in: map[string]float64{}}
			for _, part := range strings.Split(row[1], ";") {
				name, value, _ := strings.Cut(part, "=")
				if name == "sex" {
					r.sex = Sex(value)
					continue
				}
				r.in[name], err = strconv.ParseFloat(value, 64)
				require.NoError(t, err)
			}
			want, err := strconv.ParseFloat(row[2], 64)
			require.NoError(t, err)
			tolerance, err := strconv.ParseFloat(row[3], 64)
			require.NoError(t, err)
			require.InDelta(t, want, work(t, r), tolerance, row[4])
		})
		seen[row[0]] = true
	}
	for topic := range feedSums {
		require.True(t, seen[topic], "no row for topic %q", topic)
	}
}
