package reading_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot/reading"
)

// TestBarrel: what set-up called a thing wins; where two things of different
// kinds bear the name, weight and bags mean feed, volumes mean water, and
// anything else is asked.
func TestBarrel(t *testing.T) {
	const pigs = "4 pigs came today, 50 lb each, US units, central time"
	for _, r := range []struct {
		name  string
		setUp []string
		reads map[string]string
	}{
		{"water barrel only", []string{pigs, "hopper holds 300 lb", "one water barrel 55 gal"}, map[string]string{
			"barrel full":   "water barrel=barrel full=true",
			"barrel 20 gal": "water barrel=barrel litres=75.71",
			"barrel empty":  "water barrel=barrel fraction=0 seen=true",
		}},
		{"feed barrel only", []string{pigs, "feed barrel holds 280 lb", "two water tanks 55 gal each"}, map[string]string{
			"barrel full":        "refill feeder=barrel full=true",
			"barrel 150 lb full": "refill feed_kg=68.04 feeder=barrel full=true",
			"tank 1 full":        "water barrel=tank 1 full=true",
		}},
		{"both", []string{pigs, "feed barrel holds 280 lb", "one water barrel 55 gal"}, map[string]string{
			"barrel full":          "clarify about=refill",
			"150 lb in the barrel": "refill feed_kg=68.04 feeder=barrel",
			"barrel 20 gal":        "water barrel=barrel litres=75.71",
			"water barrel full":    "water barrel=barrel full=true",
		}},
	} {
		t.Run(r.name, func(t *testing.T) {
			k := newTalk()
			for _, s := range r.setUp {
				_, err := k.say("2026-05-16T08:00", s)
				require.NoError(t, err)
			}
			k.before, k.pending = nil, nil
			now := time.Date(2026, 5, 16, 9, 0, 0, 0, k.loc)
			for text, want := range r.reads {
				require.Equal(t, want, brief(reading.Read(k.context(now), text).Entries, "2026-05-16"), text)
			}
		})
	}
}
