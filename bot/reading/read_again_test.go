package reading_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot/reading"
)

// TestNothingIsCarriedOver reads texts after others that set something in the reader,
// which is used again.
func TestNothingIsCarriedOver(t *testing.T) {
	k := hollowTalk(t)
	now, err := time.ParseInLocation("2006-01-02T15:04", "2026-07-18T18:30", k.loc)
	require.NoError(t, err)
	for _, row := range []struct{ before, text, want string }{
		{"dot f, moss m", "93f", "weather high_c=33.89"},
		{"corn 62.50 for 500", "1000 corn 110", "stock amount=110 feed_kg=453.59 ingredient=corn"},
		{"thanks tag 4021", "dot 181 lb", "weigh animals=Dot weight_kg=82.1"},
	} {
		c := k.context(now)
		c.Pending = nil
		reading.Read(c, row.before)
		require.Equal(t, row.want, brief(reading.Read(c, row.text).Entries, "2026-07-18"), row.text)
	}
}
