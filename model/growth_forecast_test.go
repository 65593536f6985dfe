package model_test

import (
	"encoding/csv"
	"fmt"
	"math"
	"math/rand/v2"
	"os"
	"sort"
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

// trialHerd is the records of a herd of the given pigs, weighed in the first
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

// score gathers the errors of forecasts.
type score struct {
	errs    []float64 // absolute
	covered int
	spread  bool // intervals were given
	perPig  map[string][]float64
}

func (s *score) add(pig string, truth float64, i model.Interval) {
	if s.perPig == nil {
		s.perPig = map[string][]float64{}
	}
	e := math.Abs(truth - i.Mid)
	s.errs = append(s.errs, e)
	s.perPig[pig] = append(s.perPig[pig], e)
	s.spread = s.spread || i.High > i.Low
	if truth >= i.Low && truth <= i.High {
		s.covered++
	}
}

// mae is the mean absolute error, NaN of nothing.
func (s *score) mae() float64 {
	sum := 0.0
	for _, e := range s.errs {
		sum += e
	}
	return sum / float64(len(s.errs))
}

func (s *score) coverage() float64 { return 100 * float64(s.covered) / float64(len(s.errs)) }

func (s *score) join(o score) {
	s.errs = append(s.errs, o.errs...)
	s.covered += o.covered
	s.spread = s.spread || o.spread
	if s.perPig == nil {
		s.perPig = map[string][]float64{}
	}
	for n, e := range o.perPig {
		s.perPig[n] = append(s.perPig[n], e...)
	}
}

// interval is the 95 % bootstrap interval of the mean error, drawing whole pigs.
func (s *score) interval() (low, high float64) {
	var names []string
	for n := range s.perPig {
		names = append(names, n)
	}
	sort.Strings(names)
	rng := rand.New(rand.NewPCG(1, 2))
	means := make([]float64, 1000)
	for b := range means {
		sum, n := 0.0, 0
		for range names {
			for _, e := range s.perPig[names[rng.IntN(len(names))]] {
				sum, n = sum+e, n+1
			}
		}
		means[b] = sum / float64(n)
	}
	sort.Float64s(means)
	return means[25], means[974]
}

// dayOf90 is the day, from the start, on which a pig weighed 90 kg, between two
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

// forecast scores the forecasts of pigs, each from its weighings up to weeks 3,
// 5 and 7, made by records that hold the pig and whatever else is known.
func forecast(t testing.TB, pigs []trialPig, known func(p trialPig, weeks int) []model.Record) (two, four, ninety score) {
	t.Helper()
	for _, p := range pigs {
		for _, weeks := range []int{3, 5, 7} {
			h := model.Fold(known(p, weeks))
			today := trialDay(weeks - 1)
			a := h.Animal(p.name)
			for _, ahead := range []int{2, 4} {
				truth := p.kg[weeks-1+ahead]
				if math.IsNaN(truth) {
					continue
				}
				w, err := h.MeanWeight([]*model.Animal{a}, today+model.Day(7*ahead))
				require.NoError(t, err)
				if ahead == 2 {
					two.add(p.name, truth, w.WeightKg)
				} else {
					four.add(p.name, truth, w.WeightKg)
				}
			}
			if day, ok := p.dayOf(90); ok && day > float64(today-trialStart) {
				f, err := h.Target(90, today)
				require.NoError(t, err)
				d := f.Animals[a].Days
				ninety.add(p.name, day, model.Interval{
					Low: float64(d.Low-trialStart) - 0.5, Mid: float64(d.Mid-trialStart) - 0.5, High: float64(d.High-trialStart) + 0.5,
				})
			}
		}
	}
	return two, four, ninety
}

func alone(p trialPig, weeks int) []model.Record {
	return trialRecords([]trialPig{p}, trialStart, weeks)
}

// row is one line of the table that the forecast tests print.
type row struct {
	name              string
	two, four, ninety score
}

func (r row) report(t testing.TB) {
	if r.four.spread {
		low, high := r.four.interval()
		t.Logf("%-34s %4.2f kg %5.1f %%  | %4.2f kg [%4.2f, %4.2f] %5.1f %%  | %5.2f d %5.1f %%", r.name,
			r.two.mae(), r.two.coverage(), r.four.mae(), low, high, r.four.coverage(), r.ninety.mae(), r.ninety.coverage())
		return
	}
	low, high := r.four.interval()
	t.Logf("%-34s %4.2f kg        | %4.2f kg [%4.2f, %4.2f]        | %5.2f d", r.name,
		r.two.mae(), r.four.mae(), low, high, r.ninety.mae())
}

func head(t testing.TB, pigs int) {
	t.Logf("%d pigs, each forecast from weeks 3, 5 and 7; mean absolute error, coverage of the 80 %% interval", pigs)
	t.Logf("%-34s 2 weeks ahead  | 4 weeks ahead [95 %% bootstrap]  | day of 90 kg", "")
}

// need asserts what the forecast promises.
func (r row) need(t *testing.T, fourKg, days float64) {
	t.Helper()
	r.report(t)
	require.LessOrEqual(t, r.four.mae(), fourKg, "%s: four weeks ahead", r.name)
	require.LessOrEqual(t, r.ninety.mae(), days, "%s: day of 90 kg", r.name)
	require.GreaterOrEqual(t, r.four.coverage(), 72.0, "%s: four weeks ahead", r.name)
	require.LessOrEqual(t, r.four.coverage(), 88.0, "%s: four weeks ahead", r.name)
	require.GreaterOrEqual(t, r.ninety.coverage(), 72.0, "%s: day of 90 kg", r.name)
	require.LessOrEqual(t, r.ninety.coverage(), 88.0, "%s: day of 90 kg", r.name)
}

func TestForecastOfPigsAlone(t *testing.T) {
	pigs := trialPigs(t)
	head(t, len(pigs))
	us := row{name: "nothing known of the herd"}
	us.two, us.four, us.ninety = forecast(t, pigs, alone)
	us.need(t, 4.8, 6)
	for _, b := range baselines {
		r := row{name: b.name}
		r.two, r.four, r.ninety = b.forecast(pigs)
		r.report(t)
		require.Less(t, us.four.mae(), r.four.mae(), "a plainer rule does as well: %s", b.name)
	}
}

func TestForecastWithEarlierBatch(t *testing.T) {
	pigs := trialPigs(t)
	half := len(pigs) / 2
	r := row{name: "an earlier batch of 18 known"}
	for _, b := range [][2][]trialPig{{pigs[:half], pigs[half:]}, {pigs[half:], pigs[:half]}} {
		earlier := trialRecords(b[0], trialStart-200, 12)
		two, four, ninety := forecast(t, b[1], func(p trialPig, weeks int) []model.Record {
			return append(earlier[:len(earlier):len(earlier)], alone(p, weeks)...)
		})
		r.two.join(two)
		r.four.join(four)
		r.ninety.join(ninety)
	}
	head(t, len(pigs))
	r.need(t, 4.0, 5)
}

func TestForecastAmongPenMates(t *testing.T) {
	pigs := trialPigs(t)
	r := row{name: "six in a pen, all weighed"}
	for i := 0; i < len(pigs); i += 6 {
		pen := pigs[i : i+6]
		two, four, ninety := forecast(t, pen, func(_ trialPig, weeks int) []model.Record {
			return trialRecords(pen, trialStart, weeks)
		})
		r.two.join(two)
		r.four.join(four)
		r.ninety.join(ninety)
	}
	head(t, len(pigs))
	r.need(t, 4.4, 5.2)
}

// The mean of a pen strays less than one pig does, but not by the square root of
// their number: pigs of a herd err together.
func TestForecastOfPenMeans(t *testing.T) {
	pigs := trialPigs(t)
	for _, size := range []int{2, 4, 6, 12} {
		var two, four score
		for i := 0; i < len(pigs); i += size {
			pen := pigs[i : i+size]
			for weeks := 2; weeks <= 8; weeks++ {
				h := model.Fold(trialRecords(pen, trialStart, weeks))
				for ahead, s := range map[int]*score{2: &two, 4: &four} {
					truth := 0.0
					for _, p := range pen {
						truth += p.kg[weeks-1+ahead] / float64(size)
					}
					if math.IsNaN(truth) {
						continue
					}
					w, err := h.MeanWeight(h.Animals, trialDay(weeks-1+ahead))
					require.NoError(t, err)
					s.add(pen[0].name, truth, w.WeightKg)
				}
			}
		}
		t.Logf("mean of %2d: 2 weeks %.2f kg %.0f %%, 4 weeks %.2f kg %.0f %%", size, two.mae(), two.coverage(), four.mae(), four.coverage())
		require.Less(t, four.mae(), 4.0)
		for _, s := range []score{two, four} {
			require.GreaterOrEqual(t, s.coverage(), 70.0)
			require.LessOrEqual(t, s.coverage(), 90.0)
		}
	}
}

// Readings with 5 % noise, and one in a tenth of the pigs misread by 30 %: once
// as weights that are believed to be a scale's, once as girths.
func TestForecastFromMisreadWeights(t *testing.T) { misread(t, "noisy weights, some misread", false) }
func TestForecastFromMisreadTapes(t *testing.T)   { misread(t, "noisy girths, some misread", true) }

func misread(t *testing.T, name string, tape bool) {
	pigs := trialPigs(t)
	at := map[string]int{}
	for i, p := range pigs {
		at[p.name] = i
	}
	r := row{name: name}
	for seed := range uint64(50) {
		noisy := misreadPigs(pigs, rand.New(rand.NewPCG(seed, 7)))
		two, four, ninety := forecast(t, pigs, func(p trialPig, weeks int) []model.Record {
			records := alone(noisy[at[p.name]], weeks)
			for i := range records {
				if w, ok := records[i].Fact.(model.Weigh); ok && tape {
					records[i].Fact = model.Weigh{Animals: w.Animals, GirthCm: (w.WeightKg + 93.326) / 1.8163}
				}
			}
			return records
		})
		r.two.join(two)
		r.four.join(four)
		r.ninety.join(ninety)
	}
	head(t, len(pigs))
	r.need(t, 5.8, 7)
}

func misreadPigs(pigs []trialPig, rng *rand.Rand) []trialPig {
	noisy := append([]trialPig(nil), pigs...)
	for i := range noisy {
		for w := range noisy[i].kg {
			noisy[i].kg[w] *= 1 + 0.05*rng.NormFloat64()
		}
		if rng.Float64() < 0.1 {
			noisy[i].kg[rng.IntN(7)] *= 0.7 + 0.6*float64(rng.IntN(2))
		}
	}
	return noisy
}
