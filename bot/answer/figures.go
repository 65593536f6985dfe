package answer

import (
	"math"
	"time"

	"troughbell/model"
)

// kg rounds a figure of an answer to 0.01, as the contract says.
func kg(x float64) float64 { return to(x, 100) }

// fine rounds to 0.001: percentages of a ration are small.
func fine(x float64) float64 { return to(x, 1000) }

func to(x, per float64) float64 {
	r := math.Round(x*per) / per
	if r == 0 { // no minus before a nought
		return 0
	}
	return r
}

// moment writes a moment as RFC 3339 with the offset of the herd's zone; nil
// where there is none.
func (a asked) moment(t time.Time) any {
	if t.IsZero() {
		return nil
	}
	return t.In(a.now.Location()).Format("2006-01-02T15:04:05-07:00") // and +00:00 for Z
}

// bounds puts an interval into data under the contract's names: X_kg, X_low_kg,
// X_high_kg.
func bounds(data map[string]any, name string, i model.Interval) {
	data[name+"_kg"] = kg(i.Mid)
	data[name+"_low_kg"] = kg(i.Low)
	data[name+"_high_kg"] = kg(i.High)
}

func reasonCodes(rs []model.Reason) []string {
	codes := []string{}
	for _, r := range rs {
		codes = append(codes, r.Code)
	}
	return codes
}

// span gives an interval of kilograms as the arguments of a sentence: middle,
// low, high.
func span(i model.Interval) []model.Quantity {
	return []model.Quantity{
		{Value: i.Mid, Unit: model.Kilograms}, {Value: i.Low, Unit: model.Kilograms}, {Value: i.High, Unit: model.Kilograms},
	}
}

func dayArgs(d model.DayInterval) []model.Day { return []model.Day{d.Mid, d.Low, d.High} }
