package season

import (
	"encoding/csv"
	"os"
	"strconv"
	"testing"

	"github.com/stretchr/testify/require"
)

// grown is one real pig: its weight at the start of each week of a trial, and
// the feed of each week.
type grown struct{ kg, feedKg []float64 }

// leastWeeks is how long a record must be for a season to be built on it.
const leastWeeks = 11

// slip is a weekly change no pig makes: the number was written wrong.
const slip = -3.0

// readRecords reads the growth records of real pigs that the model's forecasts
// are measured on: the data set dietox of Lauridsen et al. (1999); source and
// licence stand beside the file.
func readRecords(t testing.TB) []grown {
	t.Helper()
	f, err := os.Open("../../model/testdata/growth/pig-growth-a.csv")
	require.NoError(t, err)
	defer func() { require.NoError(t, f.Close()) }()
	rows, err := csv.NewReader(f).ReadAll()
	require.NoError(t, err)
	var out []grown
	last, eaten := "", 0.0
	for _, row := range rows[1:] {
		if row[0] != last {
			last, eaten = row[0], 0
			out = append(out, grown{})
		}
		g := &out[len(out)-1]
		kg, err := strconv.ParseFloat(row[2], 64)
		require.NoError(t, err)
		g.kg = append(g.kg, kg)
		if row[3] != "" {
			sum, err := strconv.ParseFloat(row[3], 64)
			require.NoError(t, err)
			g.feedKg = append(g.feedKg, sum-eaten)
			eaten = sum
		}
	}
	var whole []grown
	for _, g := range out {
		if len(g.kg) >= leastWeeks && len(g.feedKg) == len(g.kg)-1 {
			whole = append(whole, grown{smooth(g.kg), g.feedKg})
		}
	}
	require.Greater(t, len(whole), 30)
	return whole
}

// smooth takes the weighing error out of weekly weights: a slip of the pen is
// bridged, each weight is weighed against its neighbours, and no week loses.
func smooth(raw []float64) []float64 {
	kg := append([]float64(nil), raw...)
	for i := 1; i < len(kg)-1; i++ {
		if kg[i]-kg[i-1] < slip {
			kg[i] = (kg[i-1] + kg[i+1]) / 2
		}
	}
	n := len(kg)
	out := make([]float64, n)
	for i := 1; i < n-1; i++ {
		out[i] = (kg[i-1] + 2*kg[i] + kg[i+1]) / 4
	}
	out[0] = (kg[0] + 2*kg[1] - kg[2]) / 2
	out[n-1] = (kg[n-1] + 2*kg[n-2] - kg[n-3]) / 2
	out[0] = max(out[0], 10)
	for i := 1; i < n; i++ {
		out[i] = max(out[i], out[i-1]+0.5)
	}
	return out
}
