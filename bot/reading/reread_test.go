package reading_test

import (
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot/reading"
)

// TestReread reads texts with another word in the place of the one that was meant.
// A drug, a death and a sale are asked about, and a plain word stays where it fits.
func TestReread(t *testing.T) {
	k := hollowTalk(t)
	now, err := time.ParseInLocation("2006-01-02T15:04", "2026-07-18T18:30", k.loc)
	require.NoError(t, err)
	for _, row := range strings.Split(strings.TrimSpace(rereadTexts), "\n") {
		text, want, ok := strings.Cut(row, " => ")
		require.True(t, ok, row)
		t.Run(text, func(t *testing.T) {
			c := k.context(now)
			c.Pending = nil
			require.Equal(t, want, brief(reading.Read(c, text).Entries, "2026-07-18"))
		})
	}
}

const rereadTexts = `
moved the pics to Greek => move pen=creek
hence reads 5.8 => fence kv=5.8
willow got 40 gal => wallow litres=151.42
dot is scoring => sick animals=Dot note=scoring
gave bran penicillin 10 days => clarify about=treat
sold plumb for 300 => clarify about=gone
the girls taped 38 => weigh animals=Dot+Plum girth_cm=96.52
what a mess in the kitchen today => none
we had the bell fixed at the hall => none
`
