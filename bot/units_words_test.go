package bot

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
)

// The letters of short words are no units, those behind numbers are.
func TestUnitWords(t *testing.T) {
	for text, want := range map[string][]string{
		"oh I'm in Tennessee, so whatever time that is": nil,
		"i m in ohio we l be back":                      nil,
		"pen is 20 m by 30m":                            {"m", "m"},
		"450 m2, 2kg each":                              {"m2", "kg"},
		"200 l barrel":                                  {"l"},
	} {
		var got []string
		for _, w := range unitWords(text) {
			if slices.Contains(metricUnits, w) || slices.Contains(usUnits, w) {
				got = append(got, w)
			}
		}
		assert.Equal(t, want, got, text)
	}
}
