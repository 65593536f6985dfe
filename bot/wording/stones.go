package wording

import (
	"strconv"
	"strings"

	"troughbell/model"
)

// lbPerStone is exact.
const lbPerStone = 14

// stonesIn finds a number of stones in a text.
func stonesIn(text string) (float64, bool) {
	words := strings.Fields(strings.ToLower(text))
	for i, w := range words {
		w = strings.Trim(w, ".,;:?")
		for _, unit := range []string{"stones", "stone", "st"} {
			number, ok := strings.CutSuffix(w, unit)
			if !ok {
				continue
			}
			if number == "" && i > 0 {
				number = words[i-1]
			}
			if n, err := strconv.ParseFloat(number, 64); err == nil && n > 0 && n < 1000 {
				return n, true
			}
		}
	}
	return 0, false
}

// numbers gives bare numbers as arguments of a sentence.
func numbers(values ...float64) []model.Quantity {
	out := make([]model.Quantity, len(values))
	for i, x := range values {
		out[i] = model.Quantity{Value: x, Unit: model.Count}
	}
	return out
}
