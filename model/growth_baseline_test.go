package model_test

import (
	"math"

	"troughbell/model"
)

// baseline is a plainer rule of forecasting: what a pig weighs days after its
// last weighing, from its weekly weights so far.
type baseline struct {
	name   string
	weight func(kg []float64, days float64) float64
}

var baselines = []baseline{
	{"line through the last two", func(kg []float64, days float64) float64 {
		n := len(kg)
		return kg[n-1] + (kg[n-1]-kg[n-2])/7*days
	}},
	{"least-squares line", func(kg []float64, days float64) float64 {
		n := float64(len(kg))
		var x, y, xx, xy float64
		for i, w := range kg {
			d := 7 * float64(i)
			x, y, xx, xy = x+d, y+w, xx+d*d, xy+d*w
		}
		slope := (n*xy - x*y) / (n*xx - x*x)
		return y/n + slope*(7*(n-1)+days-x/n)
	}},
	{"last weight + 0.77 kg a day", func(kg []float64, days float64) float64 { return kg[len(kg)-1] + 0.77*days }},
	{"published table from last weight", func(kg []float64, days float64) float64 {
		from := kg[len(kg)-1]
		low, high := from, model.MaxTableKg
		for high-low > 1e-6 {
			mid := (low + high) / 2
			if took, err := model.TableDays(from, mid); err == nil && took < days {
				low = mid
			} else {
				high = mid
			}
		}
		return low
	}},
}

// forecast scores the rule as forecast does the model.
func (b baseline) forecast(pigs []trialPig) (two, four, ninety score) {
	for _, p := range pigs {
		for _, weeks := range []int{3, 5, 7} {
			known := p.kg[:weeks]
			for ahead, s := range map[int]*score{2: &two, 4: &four} {
				if truth := p.kg[weeks-1+ahead]; !math.IsNaN(truth) {
					w := b.weight(known, 7*float64(ahead))
					s.add(p.name, truth, model.Interval{Low: w, Mid: w, High: w})
				}
			}
			today := 7 * float64(weeks-1)
			if day, ok := p.dayOf(90); ok && day > today {
				at := today
				for b.weight(known, at-today) < 90 && at < 365 {
					at += 0.25
				}
				ninety.add(p.name, day, model.Interval{Low: at, Mid: at, High: at})
			}
		}
	}
	return two, four, ninety
}
