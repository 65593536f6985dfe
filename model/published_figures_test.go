package model

import (
	"math"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

// rationFigures works out what a row of published_ration.csv asks for.
var rationFigures = map[string]func(t *testing.T, r publishedRow) float64{
	"pearson_rich_pct": func(t *testing.T, r publishedRow) float64 { return squareOf(t, r, 100).RichKg },
	"pearson_lean_pct": func(t *testing.T, r publishedRow) float64 { return squareOf(t, r, 100).LeanKg },
	"pearson_rich_lb":  func(t *testing.T, r publishedRow) float64 { return squareOf(t, r, r.in["batch"]).RichKg },
	"pearson_lean_lb":  func(t *testing.T, r publishedRow) float64 { return squareOf(t, r, r.in["batch"]).LeanKg },
	"blend_pct": func(t *testing.T, r publishedRow) float64 {
		lean, rich := r.in["lean_lb"], r.in["rich_lb"]
		m, err := PearsonSquare(r.in["lean"], r.in["rich"], (lean*r.in["lean"]+rich*r.in["rich"])/(lean+rich), lean+rich, 0)
		require.NoError(t, err)
		return (m.LeanKg*r.in["lean"] + m.RichKg*r.in["rich"]) / (lean + rich)
	},
	"least_cost_meal_pct": func(t *testing.T, r publishedRow) float64 {
		m, err := LeastCostMix(MixQuery{
			WeightKg: r.in["weight_kg"], BatchKg: 100, FixedKg: map[string]float64{"mineral premix": r.in["premix_pct"]},
			Feeds: []PricedFeed{{Name: "corn", PerKg: 1}, {Name: "soybean meal 48", PerKg: 2}},
		})
		require.NoError(t, err)
		return m.Recipe.Ingredients["soybean meal 48"]
	},
	"need_sid_lysine_pct": func(t *testing.T, r publishedRow) float64 { return needOf(t, r).SIDLysinePct },
	"need_calcium_pct":    func(t *testing.T, r publishedRow) float64 { return needOf(t, r).CalciumPct },
	"need_phosphorus_pct": func(t *testing.T, r publishedRow) float64 { return needOf(t, r).STTDPhosphorusPct },
	"holds_energy_kcal":   func(t *testing.T, r publishedRow) float64 { return holdsOf(t, r).EnergyMJKg / kcalMJ },
	"holds_phosphorus_pct": func(t *testing.T, r publishedRow) float64 {
		return holdsOf(t, r).STTDPhosphorusPct
	},
	"holds_calcium_pct": func(t *testing.T, r publishedRow) float64 { return holdsOf(t, r).CalciumPct },
	"corn_protein_pct":  func(t *testing.T, _ publishedRow) float64 { return tableOf(t, "corn").CrudeProteinPct },
	"corn_lysine_pct":   func(t *testing.T, _ publishedRow) float64 { return tableOf(t, "corn").LysinePct },
	"wheat_lysine_pct":  func(t *testing.T, _ publishedRow) float64 { return tableOf(t, "wheat").LysinePct },
	"peas_lysine_pct":   func(t *testing.T, _ publishedRow) float64 { return tableOf(t, "peas").LysinePct },
	"meal_lysine_pct":   func(t *testing.T, _ publishedRow) float64 { return tableOf(t, "soybean meal 44").LysinePct },
	"limit_pct": func(t *testing.T, r publishedRow) float64 {
		l, known, err := LimitOf(r.word["feed"], r.in["weight_kg"])
		require.NoError(t, err)
		require.True(t, known)
		return l.MostPct
	},
	"step_meal_lb": func(t *testing.T, r publishedRow) float64 {
		s := tellHerd(t).tell("2026-06-06 08:00", fourEaters(), mix(map[string]float64{"corn": 75, "soybean meal 48": 30, "mineral premix": 3}))
		steps, err := s.herd().RationSteps(DateDay(2026, 6, 6))
		require.NoError(t, err)
		for _, step := range steps.Steps {
			if step.FromKg == r.in["class_kg"] {
				return step.RichKg
			}
		}
		return math.NaN()
	},
}

func squareOf(t *testing.T, r publishedRow, batch float64) PearsonMix {
	m, err := PearsonSquare(r.in["lean"], r.in["rich"], r.in["wanted"], batch, batch*r.in["fixed_pct"]/100)
	require.NoError(t, err)
	return m
}

func needOf(t *testing.T, r publishedRow) Requirement {
	n, err := RequirementAt(r.in["weight_kg"])
	require.NoError(t, err)
	return n
}

func holdsOf(t *testing.T, r publishedRow) MixAnalysis {
	a, err := AnalyseMix(feedRow{in: r.in}.mix())
	require.NoError(t, err)
	return a
}

func tableOf(t *testing.T, name string) IngredientFacts {
	f, ok := Ingredient(name)
	require.True(t, ok)
	return f
}

// setUpFigures works out what a row of published_setup.csv asks for.
var setUpFigures = map[string]func(t *testing.T, r publishedRow) float64{
	"nipples": func(t *testing.T, r publishedRow) float64 {
		n, err := NipplesFor(int(r.in["pigs"]))
		return sumOf(t)(float64(n), err)
	},
	"flow_class": func(t *testing.T, r publishedRow) float64 {
		c, err := ClassOfFlow(r.in["l_min"])
		return sumOf(t)(map[FlowClass]float64{FlowLow: 0, FlowRight: 1, FlowHigh: 2}[c], err)
	},
	"nipple_cm": func(t *testing.T, r publishedRow) float64 { return sumOf(t)(NippleHeightCm(r.in["weight_kg"], false)) },
	"nipple_down_cm": func(t *testing.T, r publishedRow) float64 {
		return sumOf(t)(NippleHeightCm(r.in["weight_kg"], true))
	},
	"water_return": func(t *testing.T, r publishedRow) float64 {
		w, err := WaterReturnAfter(r.in["hours"], false)
		return sumOf(t)(map[WaterReturn]float64{ReturnFreely: 0, ReturnSlowly: 1, ReturnByVet: 2}[w], err)
	},
	"holes": func(t *testing.T, r publishedRow) float64 {
		n, err := FeederHolesFor(int(r.in["pigs"]))
		return sumOf(t)(float64(n), err)
	},
	"feeder_width_mm": func(t *testing.T, r publishedRow) float64 { return 10 * sumOf(t)(FeederWidthCm(r.in["weight_kg"])) },
	"legal_m2":        func(t *testing.T, r publishedRow) float64 { return spaceOf(t, r).LegalM2 },
	"organic_m2":      func(t *testing.T, r publishedRow) float64 { return spaceOf(t, r).OrganicIndoorM2 },
	"run_m2":          func(t *testing.T, r publishedRow) float64 { return spaceOf(t, r).OrganicRunM2 },
	"lying_m2":        func(t *testing.T, r publishedRow) float64 { return spaceOf(t, r).LyingM2 },
	"shade_m2":        func(t *testing.T, r publishedRow) float64 { return spaceOf(t, r).ShadeM2 },
	"shelter_m2":      func(t *testing.T, r publishedRow) float64 { return spaceOf(t, r).ShelterM2 },
	"strands":         func(t *testing.T, r publishedRow) float64 { return float64(len(strandsOf(t, r))) },
	"lowest_strand_cm": func(t *testing.T, r publishedRow) float64 {
		return strandsOf(t, r)[0]
	},
	"stocking_pig_days_ha": func(t *testing.T, r publishedRow) float64 { return stockingOf(t, r).PigDaysPerHa },
	"stocking_over_cover":  func(t *testing.T, r publishedRow) float64 { return stockingOf(t, r).OverCover },
	"prepatent_low_d":      func(_ *testing.T, r publishedRow) float64 { return float64(wormOf(r).PrepatentLowDays) },
	"prepatent_high_d":     func(_ *testing.T, r publishedRow) float64 { return float64(wormOf(r).PrepatentHighDays) },
	"develops_from_c":      func(_ *testing.T, r publishedRow) float64 { return wormOf(r).DevelopsFromC },
	"survives_years":       func(_ *testing.T, r publishedRow) float64 { return wormOf(r).SurvivesYears },
	"ripens_days": func(t *testing.T, r publishedRow) float64 {
		day, ok := wormOf(r).Ripens(0, func(Day) float64 { return r.in["mean_c"] })
		require.True(t, ok)
		return float64(day) + 1
	},
}

func spaceOf(t *testing.T, r publishedRow) Space {
	s, err := SpaceAt(r.in["weight_kg"])
	require.NoError(t, err)
	return s
}

func strandsOf(t *testing.T, r publishedRow) []float64 {
	s, err := FenceStrandsCm(r.in["weight_kg"])
	require.NoError(t, err)
	return s
}

func stockingOf(t *testing.T, r publishedRow) Stocking {
	s, err := StockingRate(int(r.in["pigs"]), r.in["weight_kg"], r.in["area_m2"], r.in["days"])
	require.NoError(t, err)
	return s
}

func wormOf(r publishedRow) ParasiteFacts { return Parasites()[int(r.in["worm"])] }

// butcherFigures works out what a row of published_butcher.csv asks for.
var butcherFigures = map[string]func(t *testing.T, r publishedRow) float64{
	"feed_off_hours": func(t *testing.T, r publishedRow) float64 {
		kill := time.Date(2026, 9, 15, 10, 0, 0, 0, time.UTC)
		f := FeedOffFor(kill)
		from := map[string]time.Time{"least": f.To, "most": f.From, "never": f.NotBefore}[r.word["which"]]
		return kill.Sub(from).Hours()
	},
	"feed_off_within": func(_ *testing.T, r publishedRow) float64 {
		kill := time.Date(2026, 9, 15, 10, 0, 0, 0, time.UTC)
		f, off := FeedOffFor(kill), kill.Add(-time.Duration(r.in["hours"]*float64(time.Hour)))
		if off.Before(f.From) || off.After(f.To) {
			return 0
		}
		return 1
	},
	"last_dose_days_before": func(t *testing.T, r publishedRow) float64 {
		load := time.Date(2026, 9, 15, 7, 0, 0, 0, time.UTC)
		last, err := LastSafeDose(load, int(r.in["days"]))
		require.NoError(t, err)
		return load.Sub(last).Hours() / 24
	},
	"freezer_ft3": func(t *testing.T, r publishedRow) float64 {
		l, err := FreezerL(r.in["packed_lb"] * kgPerPound)
		require.NoError(t, err)
		return l.Mid / 28.316846592
	},
	"dressing_pct": func(t *testing.T, r publishedRow) float64 {
		seen := 100 * r.in["hanging_lb"] / r.in["live_lb"]
		// The herd's first share holds what was seen within its 80 % range and a bit.
		require.InDelta(t, DressingPct, seen, 100*2*dressingSD)
		return seen
	},
	"break_even_cwt": func(t *testing.T, r publishedRow) float64 { return sumOf(t)(BreakEven(r.in["money"], r.in["cwt"])) },
	"break_even_lb":  func(t *testing.T, r publishedRow) float64 { return sumOf(t)(BreakEven(r.in["money"], r.in["lb"])) },
	"most_for_pig":   func(t *testing.T, r publishedRow) float64 { return sumOf(t)(MostForPig(r.in["income"], r.in["other"])) },
	"feed_per_gain": func(t *testing.T, r publishedRow) float64 {
		return sumOf(t)(FeedConversion(r.in["feed"], r.in["gain"]))
	},
	"cost_of_gain": func(t *testing.T, r publishedRow) float64 {
		return sumOf(t)(FeedConversion(r.in["money"], r.in["gain"]))
	},
}

func TestRationsSetUpAndButcherMatchWhatIsPublished(t *testing.T) {
	for file, sums := range map[string]map[string]func(*testing.T, publishedRow) float64{
		"published_ration.csv": rationFigures, "published_setup.csv": setUpFigures, "published_butcher.csv": butcherFigures,
	} {
		seen := map[string]bool{}
		for _, r := range publishedRows(t, file) {
			t.Run(r.topic+" "+r.input, func(t *testing.T) {
				work, ok := sums[r.topic]
				require.True(t, ok, "no sum for topic %q", r.topic)
				require.InDelta(t, r.expected, work(t, r), r.tolerance, r.source)
			})
			seen[r.topic] = true
		}
		for topic := range sums {
			require.True(t, seen[topic], "%s has no row for topic %q", file, topic)
		}
	}
}
