package wording

import (
	"math"
	"strconv"
	"strings"
)

// step rounds to the nearest multiple of by.
func step(v, by float64) float64 { return math.Round(v/by) * by }

// plain writes a number with at most so many decimals, without trailing zeros,
// with a comma between thousands.
func plain(v float64, decimals int) string {
	s := strconv.FormatFloat(v, 'f', decimals, 64)
	if strings.Contains(s, ".") {
		s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	}
	if s == "-0" {
		s = "0"
	}
	return thousands(s)
}

// fixed writes a number with exactly so many decimals.
func fixed(v float64, decimals int) string {
	return thousands(strconv.FormatFloat(v, 'f', decimals, 64))
}

func thousands(s string) string {
	whole, rest, dotted := strings.Cut(s, ".")
	sign := ""
	if strings.HasPrefix(whole, "-") {
		sign, whole = "-", whole[1:]
	}
	for i := len(whole) - 3; i > 0; i -= 3 {
		whole = whole[:i] + "," + whole[i:]
	}
	if dotted {
		whole += "." + rest
	}
	return sign + whole
}

// countNoun writes a count with its noun in the right number.
func countNoun(n float64, one, many string) string {
	s := plain(n, 1)
	if s == "1" {
		return s + " " + one
	}
	return s + " " + many
}
