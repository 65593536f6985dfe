package reading_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// What is asked beside a statement, behind another question or of a pig with a number of
// one figure is asked all the same.
func TestAskedBeside(t *testing.T) {
	for _, c := range []struct{ herd, now, text, want string }{
		{"sawbuck", "2026-10-01T12:00", "Let's make the target 280. What does that do to the date?", "settings key=target_kg value=127.01; ask topic=butcher_date"},
		{"moorwiese", "2026-07-22T13:00", "we're away from the twenty fifth to the twenty eighth will the feed last", "away from=2026-07-25 to=2026-07-28; ask topic=feed_left"},
		{"bantay", "2026-05-04T19:00", "What has the whole enterprise cost to date, and on what day shall they be ready?", "ask topic=cost; ask topic=butcher_date"},
		{"pinfold", "2026-08-26T13:45", "hows 3 doing", "ask animals=3 topic=growth"},
		{"pinfold", "2026-08-26T13:45", "how heavy is 3", "ask animals=3 topic=weight"},
		{"pinfold", "2026-08-26T13:45", "what does 2 weigh", "ask animals=2 topic=weight"},
		{"orchard", "2026-07-06T12:00", "fern is out in the corn, what should i do", "alarm animals=Fern what=out"},
	} {
		got, err := play(t, c.herd).say(c.now, c.text)
		require.NoError(t, err)
		require.Equal(t, c.want, brief(got.Entries, c.now[:10]), c.text)
	}
}
