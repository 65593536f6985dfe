package answer_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/bot/answer"
	"troughbell/bot/reading"
	"troughbell/model"
)

func TestWhy(t *testing.T) {
	h := orchard(t).herd()
	q := reading.Ask{Topic: "butcher_date"}
	a := answer.To(h, now, reading.Ask{Topic: "why"}, &q)
	require.Equal(t, "butcher_date", a.Data["of"])
	lines := strings.Split(a.Text, "\n")
	require.LessOrEqual(t, len(lines), 3)
	require.Regexp(t, `^265 lb less \d+ lb today is \d+ lb; at about [\d.]+ lb a day that takes \d+ days\.$`, lines[0])
	require.Equal(t, "Ask me something first, then: why?", answer.To(h, now, reading.Ask{Topic: "why"}, nil).Text)
	lacking := reading.Ask{Topic: "heat"}
	require.Nil(t, answer.To(h, now, reading.Ask{Topic: "why"}, &lacking).Data)
	for topic := range keys {
		q := reading.Ask{Topic: topic}
		text := answer.To(hot(orchard(t)).herd(), now, reading.Ask{Topic: "why"}, &q).Text
		require.NotEmpty(t, text)
		require.LessOrEqual(t, strings.Count(text, "\n"), 2, topic)
	}
}

func TestHistory(t *testing.T) {
	h := orchard(t).herd()
	a := ask(h, reading.Ask{Topic: "history", Animals: []string{"Sorrel"}})
	require.Len(t, a.Data["records"], 4) // two tapes, the worming, the move
	require.True(t, strings.HasPrefix(a.Text, "Sat 11 Jul: Sorrel girth 38 in."), a.Text)
	require.LessOrEqual(t, strings.Count(ask(h, reading.Ask{Topic: "history"}).Text, "\n"), 5)
}

// A pig that is gone still has a history.
func TestHistoryOfTheGone(t *testing.T) {
	h := orchard(t).add("2026-07-05", 600, model.Gone{Animals: []string{"Sorrel"}, How: model.Butchered, HangingKg: model.Float(180 * lb)}).herd()
	a := ask(h, reading.Ask{Topic: "history", Animals: []string{"Sorrel"}})
	require.Contains(t, a.Text, "Sun 5 Jul: Sorrel hung 180 lb.")
	require.Equal(t, "Nothing on file for Nobody.", func() string {
		h := (&journal{t: t}).herd()
		return ask(h, reading.Ask{Topic: "history", Animals: []string{"Nobody"}}).Text
	}())
}

func TestSizes(t *testing.T) {
	a := ask(orchard(t).herd(), reading.Ask{Topic: "sizes"})
	require.Contains(t, a.Text, "4 pigs: ")
	require.Contains(t, a.Text, "feeder north holds 300 lb; feeder south holds 250 lb; water barrel blue holds 55 gal, 2 nipples")
	require.Equal(t, "Feeder north holds 300 lb.", ask(orchard(t).herd(), reading.Ask{Topic: "sizes", What: "north"}).Text)
}

func TestToday(t *testing.T) {
	a := ask(orchard(t).herd(), reading.Ask{Topic: "today"})
	items := through(t, a.Data)["due"].([]any)
	require.NotEmpty(t, items)
	for _, i := range items {
		require.Contains(t, i, "about")
		require.NotEmpty(t, i.(map[string]any)["text"])
	}
	require.LessOrEqual(t, strings.Count(a.Text, "\n"), 8)
}

func TestHowManyPigs(t *testing.T) {
	a := ask(orchard(t).herd(), reading.Ask{Topic: "sizes", What: "how many pigs do we have"})
	require.Regexp(t, `^\d+ pigs: .+ and .+\.$`, a.Text)
	require.NotContains(t, a.Text, "holds")
}
