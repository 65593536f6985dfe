package model

import (
	"encoding/csv"
	"fmt"
	"os"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// waterSums works out what a row of published_water.csv asks for.
var waterSums = map[string]func(t *testing.T, in map[string]float64) float64{
	"water_per_feed": func(t *testing.T, in map[string]float64) float64 {
		return sumOf(t)(WaterPerFeed(in["daytime_c"]))
	},
	"water_drunk": func(t *testing.T, in map[string]float64) float64 {
		return in["feed_kg_d"] * sumOf(t)(WaterPerFeed(in["daytime_c"]))
	},
	"water_drawn": func(t *testing.T, in map[string]float64) float64 {
		return sumOf(t)(DrawnWater(in["feed_kg_d"] * sumOf(t)(WaterPerFeed(in["daytime_c"]))))
	},
	"barrel_days": func(t *testing.T, in map[string]float64) float64 {
		drawn := sumOf(t)(DrawnWater(in["feed_kg_d"] * sumOf(t)(WaterPerFeed(in["daytime_c"]))))
		return in["litres"] / (in["pigs"] * drawn)
	},
	"thi": func(t *testing.T, in map[string]float64) float64 {
		c, told := in["temp_c"]
		if !told {
			c = (in["temp_f"] - 32) / 1.8
		}
		return sumOf(t)(THI(c, in["rh_pct"]))
	},
	"thi_class": func(t *testing.T, in map[string]float64) float64 {
		class, err := ClassOfTHI(in["thi"])
		return sumOf(t)(map[HeatClass]float64{HeatNormal: 0, HeatAlert: 1, HeatDanger: 2, HeatEmergency: 3}[class], err)
	},
	"radiation": func(t *testing.T, in map[string]float64) float64 {
		return sumOf(t)(ExtraterrestrialRadiation(in["latitude_deg"], int(in["year_day"])))
	},
	"et0": func(t *testing.T, in map[string]float64) float64 {
		return sumOf(t)(ReferenceEvapotranspiration(in["low_c"], in["high_c"], in["ra"]))
	},
	"open_water": func(t *testing.T, in map[string]float64) float64 {
		return openWater * sumOf(t)(ReferenceEvapotranspiration(in["low_c"], in["high_c"], in["ra"]))
	},
	"wallow_mm_d": func(t *testing.T, in map[string]float64) float64 {
		return sumOf(t)(WallowLossMMD(6, in["seepage"], 18, 6))
	},
	"wallow_days": func(t *testing.T, in map[string]float64) float64 {
		return in["depth_mm"] / sumOf(t)(WallowLossMMD(6, in["seepage"], 18, 6))
	},
	"wallow_l_d": func(t *testing.T, in map[string]float64) float64 {
		return 6 * sumOf(t)(WallowLossMMD(6, in["seepage"], 18, 6))
	},
	"nitrogen_fed":      func(t *testing.T, in map[string]float64) float64 { return nitrogenOf(t, in).FedKg },
	"nitrogen_kept":     func(t *testing.T, in map[string]float64) float64 { return nitrogenOf(t, in).KeptKg },
	"nitrogen_excreted": func(t *testing.T, in map[string]float64) float64 { return nitrogenOf(t, in).ExcretedKg },
	"pigs_per_ha": func(t *testing.T, in map[string]float64) float64 {
		return NitrogenCeilingKgHa / sumOf(t)(nitrogenOf(t, in).KgHa(1, 1e4))
	},
	"pen_pig_days": func(t *testing.T, in map[string]float64) float64 { return sumOf(t)(PenPigDays(in["area_m2"])) },
}

func sumOf(t *testing.T) func(v float64, err error) float64 {
	return func(v float64, err error) float64 {
		require.NoError(t, err)
		return v
	}
}

func nitrogenOf(t *testing.T, in map[string]float64) Nitrogen {
	n, err := NitrogenBalance(in["feed_kg"], in["cp_pct"], in["gain_kg"])
	require.NoError(t, err)
	return n
}

func TestWaterHeatAndLandMatchWhatIsPublished(t *testing.T) {
	f, err := os.Open("testdata/published_water.csv")
	require.NoError(t, err)
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	require.NoError(t, err)
	require.Equal(t, []string{"topic", "input", "expected", "tolerance", "source", "status"}, rows[0])
	seen := map[string]bool{}
	for i, row := range rows[1:] {
		t.Run(fmt.Sprintf("%03d %s %s", i+2, row[0], row[1]), func(t *testing.T) {
			work, ok := waterSums[row[0]]
			require.True(t, ok, "no sum for topic %q", row[0])
			require.NotEmpty(t, row[4], "a row needs its source")
			require.Contains(t, []string{"read", "from memory", "computed", "computed from what was read"}, row[5])
			in := map[string]float64{}
			for _, part := range strings.Split(row[1], ";") {
				name, value, _ := strings.Cut(part, "=")
				in[name], err = strconv.ParseFloat(value, 64)
				require.NoError(t, err)
			}
			want, err := strconv.ParseFloat(row[2], 64)
			require.NoError(t, err)
			tolerance, err := strconv.ParseFloat(row[3], 64)
			require.NoError(t, err)
			require.InDelta(t, want, work(t, in), tolerance, row[4])
		})
		seen[row[0]] = true
	}
	for topic := range waterSums {
		require.True(t, seen[topic], "no row for topic %q", topic)
	}
}
