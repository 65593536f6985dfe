package wording

import (
	"time"

	"troughbell/model"
)

// Args is what fills a sentence.
type Args struct {
	Names   []string
	Days    []model.Day
	Moments []time.Time
	Q       []model.Quantity
}

// With gives the arguments of a sentence from what a reason, a line of a nudge
// or an effect carries; a zero day or moment counts as not given.
func With(names []string, on model.Day, at time.Time, q []model.Quantity) Args {
	return Args{Names: names, Days: []model.Day{on}, Moments: []time.Time{at}, Q: q}
}

// Kg is a weight or an amount of feed.
func Kg(v float64) model.Quantity { return model.Quantity{Value: v, Unit: model.Kilograms} }

// KgD is an amount a day.
func KgD(v float64) model.Quantity { return model.Quantity{Value: v, Unit: model.KilogramsPerDay} }

// L is a volume of water in litres.
func L(v float64) model.Quantity { return model.Quantity{Value: v, Unit: model.Litres} }

// LD is a volume of water in litres a day.
func LD(v float64) model.Quantity { return model.Quantity{Value: v, Unit: model.LitresPerDay} }

// N is a count of things.
func N(v int) model.Quantity { return model.Quantity{Value: float64(v), Unit: model.Count} }

// Days is a number of days.
func Days(v float64) model.Quantity { return model.Quantity{Value: v, Unit: model.Days} }

// Cash is an amount of money in the herd's currency.
func Cash(v float64) model.Quantity { return model.Quantity{Value: v, Unit: model.Money} }
