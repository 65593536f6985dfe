package reading

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// TestSoundKey: words that are spoken alike have one sound.
func TestSoundKey(t *testing.T) {
	for _, pair := range []string{"wait weight", "whey way", "fool full", "knot not", "pair pare", "barely barley"} {
		a, b, _ := strings.Cut(pair, " ")
		if pair == "barely barley" { // the same consonants only
			require.Equal(t, soundKey(a, false), soundKey(b, false), pair)
			continue
		}
		require.Equal(t, soundKey(a, true), soundKey(b, true), pair)
	}
	for _, pair := range []string{"girth gilts", "hill pear", "feed feet"} {
		a, b, _ := strings.Cut(pair, " ")
		require.NotEqual(t, soundKey(a, false), soundKey(b, false), pair)
	}
	require.Equal(t, soundKey("mixed", false), soundKey("mikst", false))
	require.Empty(t, soundKey("größe", true))
}

// TestSlipCost: the likelier a slip, the less it takes.
func TestSlipCost(t *testing.T) {
	for _, order := range [][3]string{ // said, the likelier word, the less likely one
		{"rcie", "rice", "raise"}, {"mos", "moss", "mash"}, {"umpty", "empty", "dumped"}, {"wait", "weight", "wheat"}, {"feeler", "feeder", "filled"}, {"gatr", "gate", "goat"},
	} {
		near, far := costOf(order[0], order[1]), costOf(order[0], order[2])
		require.Less(t, near, far, "%v", order)
		require.Less(t, near, dearestSlip, "%v", order)
	}
	require.Zero(t, costOf("moss", "moss"))
	require.GreaterOrEqual(t, costOf("garden", "hopper"), float64(noSlip))
}

// TestMeantFor finds the words of the trade that a word may have been meant for.
func TestMeantFor(t *testing.T) {
	for said, want := range map[string]string{"hence": "fence", "scoring": "scouring", "willow": "wallow", "brand": "bran", "wait": "weight", "labs": "lbs", "pics": "pigs", "rcie": "rice", "mist": "mixed"} {
		var found []string
		for _, w := range meantWords().meantFor(said, soundsOf(said)) {
			found = append(found, w.s)
		}
		require.Contains(t, found, want, said)
	}
}

// costOf is what the slip between two words takes.
func costOf(said, meant string) float64 {
	return slipCost(said, meant, soundsOf(said), soundsOf(meant))
}
