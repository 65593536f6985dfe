package model

import (
	"encoding/csv"
	"fmt"
	"os"
	"path/filepath"
	"sort"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// publishedRow is one published figure and what it is checked for.
type publishedRow struct {
	topic, input, source, status string
	in                           map[string]float64
	word                         map[string]string // inputs that are no numbers
	expected, tolerance          float64
}

// statuses are how a checked figure came here: read in its source, remembered, or
// worked out from one or the other.
var statuses = []string{"read", "computed from what was read", "from memory", "computed"}

// publishedRows reads a table of published figures.
func publishedRows(t *testing.T, file string) []publishedRow {
	f, err := os.Open(filepath.Join("testdata", file))
	require.NoError(t, err)
	defer func() { require.NoError(t, f.Close()) }()
	rows, err := csv.NewReader(f).ReadAll()
	require.NoError(t, err)
	require.Equal(t, []string{"topic", "input", "expected", "tolerance", "source", "status"}, rows[0])
	var out []publishedRow
	for i, row := range rows[1:] {
		at := fmt.Sprintf("%s line %d", file, i+2)
		r := publishedRow{topic: row[0], input: row[1], source: row[4], status: row[5], in: map[string]float64{}, word: map[string]string{}}
		require.NotEmpty(t, r.source, at)
		for _, part := range strings.FieldsFunc(r.input, func(c rune) bool { return c == ';' }) {
			name, value, _ := strings.Cut(part, "=")
			if v, err := strconv.ParseFloat(value, 64); err == nil {
				r.in[name] = v
			} else {
				r.word[name] = value
			}
		}
		r.expected, err = strconv.ParseFloat(row[2], 64)
		require.NoError(t, err, at)
		r.tolerance, err = strconv.ParseFloat(row[3], 64)
		require.NoError(t, err, at)
		out = append(out, r)
	}
	return out
}

// areas puts the topics of the tables under what they are checks of.
var areas = []struct {
	name   string
	topics []string
}{
	{"weight from tape", []string{"girth_", "tape_", "light_girth"}},
	{"growth", []string{"table_", "pen_sd", "gain_cv"}},
	{"feed intake", []string{"me_intake", "feed_use", "week_spread", "energy_ratio", "drum_kg"}},
	{"feed in heat and cold", []string{"quiniou", "heat_pct", "cold_pct"}},
	{"ration and ingredients", []string{"needed_sid", "need_", "lysine_pct", "sid_lysine", "crude_protein", "energy_kcal", "enough_from", "soybean_meal", "holds_", "corn_", "wheat_", "peas_", "meal_", "limit_", "step_", "least_cost"}},
	{"hand mixing", []string{"pearson_", "blend_"}},
	{"water and drinkers", []string{"water_", "barrel_", "nipple", "flow_"}},
	{"heat index", []string{"thi"}},
	{"wallow and evaporation", []string{"radiation", "et0", "open_water", "wallow_"}},
	{"feeders, floor and fence", []string{"holes", "feeder_", "legal_", "organic_", "run_", "lying_", "shade_", "shelter_", "strands", "lowest_strand"}},
	{"land and nitrogen", []string{"nitrogen_", "pigs_per_ha", "pen_pig_days", "stocking_"}},
	{"worms", []string{"prepatent_", "develops_", "survives_", "ripens_"}},
	{"run-up to the butcher", []string{"feed_off", "last_dose"}},
	{"yield and freezer", []string{"hanging_kg", "retail_kg", "dressing_", "freezer_"}},
	{"cost", []string{"cost_", "break_even", "most_for", "feed_per_gain"}},
	{"set-up plan", []string{"plan_"}},
}

func areaOf(topic string) string {
	best, length := "", 0
	for _, a := range areas {
		for _, start := range a.topics {
			if strings.HasPrefix(topic, start) && len(start) > length {
				best, length = a.name, len(start)
			}
		}
	}
	return best
}

// TestPublishedChecksAreCounted prints how many published figures each area is
// checked against, and how they came here: run it with -v.
func TestPublishedChecksAreCounted(t *testing.T) {
	files, err := filepath.Glob("testdata/published_*.csv")
	require.NoError(t, err)
	require.GreaterOrEqual(t, len(files), 6)
	counts, sources := map[string]map[string]int{}, map[string]map[string]bool{}
	total := 0
	for _, file := range files {
		for _, r := range publishedRows(t, filepath.Base(file)) {
			area := areaOf(r.topic)
			require.NotEmpty(t, area, "topic %q belongs nowhere", r.topic)
			if counts[area] == nil {
				counts[area], sources[area] = map[string]int{}, map[string]bool{}
			}
			status := r.status
			for _, s := range statuses { // "read in a copy", "from memory, cross-checked"
				if strings.HasPrefix(status, s) {
					status = s
					break
				}
			}
			if strings.HasPrefix(r.status, "computed from") { // an equation or data set that was read
				status = statuses[1]
			}
			require.Contains(t, statuses, status, r.topic+" "+r.input)
			counts[area][status]++
			sources[area][r.source] = true
			total++
		}
	}
	require.Len(t, counts, len(areas), "every area has rows")
	require.GreaterOrEqual(t, total, 400)
	var b strings.Builder
	fmt.Fprintf(&b, "\n| checked against | checks | %s |\n| --- | ---: |%s\n", strings.Join(statuses, " | "), strings.Repeat(" ---: |", len(statuses)))
	sums := map[string]int{}
	for _, a := range areas {
		n := 0
		for _, s := range statuses {
			n += counts[a.name][s]
			sums[s] += counts[a.name][s]
		}
		fmt.Fprintf(&b, "| %s | %d |", a.name, n)
		for _, s := range statuses {
			fmt.Fprintf(&b, " %d |", counts[a.name][s])
		}
		b.WriteByte('\n')
	}
	fmt.Fprintf(&b, "| all | %d |", total)
	for _, s := range statuses {
		fmt.Fprintf(&b, " %d |", sums[s])
	}
	t.Log(b.String())
	names := make([]string, 0, len(sources))
	for area := range sources {
		names = append(names, area)
	}
	sort.Strings(names)
	for _, area := range names {
		require.GreaterOrEqual(t, len(sources[area]), 1, area)
	}
}
