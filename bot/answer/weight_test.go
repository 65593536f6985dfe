package answer_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/bot/reading"
	"troughbell/model"
)

func TestWeight(t *testing.T) {
	h := orchard(t).herd()
	a := ask(h, reading.Ask{Topic: "weight"})
	data := through(t, a.Data)
	require.Equal(t, "2026-07-11", data["on"])
	require.Len(t, data["animals"], 4)
	ws, err := h.Weights(model.DayOf(now))
	require.NoError(t, err)
	for _, w := range ws {
		got := data["animals"].(map[string]any)[w.Animal.Name].(map[string]any)
		require.InDelta(t, w.WeightKg.Mid, got["weight_kg"], 0.0051)
		require.InDelta(t, w.WeightKg.Low, got["low_kg"], 0.0051)
		require.InDelta(t, w.WeightKg.High, got["high_kg"], 0.0051)
		require.InDelta(t, w.GainKgD.Mid, got["gain_kg_d"], 0.0051)
	}
	require.Regexp(t, `^About \d+ lb each \(\d+–\d+\), gaining [\d.]+ lb a day\.\nFern \d+ lb, Clove \d+ lb, Sorrel \d+ lb, Basil \d+ lb\.$`, a.Text)

	on := day("2026-08-01")
	one := ask(h, reading.Ask{Topic: "weight", Animals: []string{"Fern"}, On: &on})
	require.Equal(t, "2026-08-01", one.Data["on"])
	require.Regexp(t, `^Fern about \d+ lb \(\d+–\d+\) on Sat Aug 1, gaining [\d.]+ lb a day\.$`, one.Text)

	past := day("2026-06-20")
	require.Less(t, through(t, ask(h, reading.Ask{Topic: "weight", On: &past}).Data)["mean"].(map[string]any)["weight_kg"],
		data["mean"].(map[string]any)["weight_kg"])

	herd := ask(nursery(t).herd(), reading.Ask{Topic: "weight"})
	require.Len(t, herd.Data["animals"], 1)
	require.Contains(t, herd.Data["animals"], "all")
	require.Regexp(t, `^About \d+ kg each \(\d+–\d+\), gaining [\d.]+ kg a day\.$`, herd.Text)

	require.Contains(t, ask(h, reading.Ask{Topic: "growth"}).Text, "lb a day, Clove")
}

func TestUnknownPigs(t *testing.T) {
	h := orchard(t).add("2026-07-01", 600, model.Gone{Animals: []string{"Basil"}, How: model.Sold}).herd()
	a := ask(h, reading.Ask{Topic: "weight", Animals: []string{"Nobody"}})
	require.Nil(t, a.Data)
	require.Equal(t, "I know no pig called Nobody.", a.Text)
	a = ask(h, reading.Ask{Topic: "weight", Animals: []string{"Basil"}})
	require.Nil(t, a.Data)
	require.Equal(t, "Basil: not in the herd any more.", a.Text)
	past := day("2026-06-20")
	require.Regexp(t, `^Basil about \d+ lb \(\d+–\d+\) on Sat Jun 20`, ask(h, reading.Ask{Topic: "weight", Animals: []string{"Basil"}, On: &past}).Text)
}
