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
	require.True(t, strings.HasPrefix(a.Text, "Sat Jul 11: Sorrel girth 38 in."), a.Text)
	require.LessOrEqual(t, strings.Count(ask(h, reading.Ask{Topic: "history"}).Text, "\n"), 5)
}

// How much asks what the fills come to.
func TestHistorySumsUp(t *testing.T) {
	h := (&journal{t: t}).
		add("2026-05-02", 600, model.Refill{FeedKg: model.Float(100 * lb)}).
		add("2026-05-09", 600, model.Refill{FeedKg: model.Float(60 * lb), Full: true}).
		add("2026-05-16", 600, model.Refill{Full: true}).
		add("2026-05-16", 610, model.Water{Litres: model.Float(20 * 3.785411784)}).
		add("2026-05-17", 610, model.Water{Litres: model.Float(50), Seen: true}).herd()
	fed := ask(h, reading.Ask{Topic: "history", About: "refill", What: "how much did I feed them so far"})
	require.Equal(t, "Fed 160 lb in 2 fills since Sat May 2; 1 fill without an amount.", strings.Split(fed.Text, "\n")[0])
	require.InDelta(t, 160*lb, fed.Data["total_feed_kg"], 1e-9)
	drunk := ask(h, reading.Ask{Topic: "history", About: "water", What: "how much water have I put in"})
	require.Equal(t, "Filled 20 gal of water in 1 fill since Sat May 16.", strings.Split(drunk.Text, "\n")[0])
	list := ask(h, reading.Ask{Topic: "history", About: "refill", What: "what did I feed"})
	require.NotContains(t, list.Data, "total_feed_kg")
}

// A pig that is gone still has a history.
func TestHistoryOfTheGone(t *testing.T) {
	h := orchard(t).add("2026-07-05", 600, model.Gone{Animals: []string{"Sorrel"}, How: model.Butchered, HangingKg: model.Float(180 * lb)}).herd()
	a := ask(h, reading.Ask{Topic: "history", Animals: []string{"Sorrel"}})
	require.Contains(t, a.Text, "Sun Jul 5: Sorrel hung 180 lb.")
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
