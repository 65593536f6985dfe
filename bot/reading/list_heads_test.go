package reading_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// TestHeadUnderHead reads a heading whose next line is a heading too.
func TestHeadUnderHead(t *testing.T) {
	for _, text := range []string{
		"sold:\nweights:\nHazel 190\nOtis 201",
		"weights\nwater: shed full",
		"feed:\nwater:\nshed full",
		"wormed: \nsold:",
	} {
		got, err := play(t, "orchard-july").say("2026-07-25T07:20", text)
		require.NoError(t, err)
		require.NotEmpty(t, got.Entries, text)
	}
}
