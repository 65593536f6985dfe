package answer_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/bot/reading"
	"troughbell/model"
)

func TestWaterLeft(t *testing.T) {
	a := ask(orchard(t).herd(), reading.Ask{Topic: "water_left"})
	data := through(t, a.Data)
	require.Len(t, data["barrels"], 2)
	require.InDelta(t, 110*gal, data["litres"], 12) // less the dead volume
	require.Regexp(t, `^Water (lasts past|does not last to) Sat Jul 18: safe to .+\.\nAbout \d+ gal left, they draw \d+ gal a day\. blue \d+ gal, white \d+ gal\.$`, a.Text)
}

func TestHeat(t *testing.T) {
	a := ask(hot(orchard(t)).herd(), reading.Ask{Topic: "heat"})
	require.Equal(t, true, a.Data["rh_assumed"])
	require.Contains(t, []any{"danger", "emergency"}, a.Data["class"])
	require.Contains(t, a.Text, "call the vet")
	require.Contains(t, a.Text, "\nHumidity not told: 60% assumed.")
	cool := orchard(t).add("2026-07-11", 600, model.Weather{HighC: model.Float(15), RhPct: model.Float(50)})
	a = ask(cool.herd(), reading.Ask{Topic: "heat"})
	require.Equal(t, "normal", a.Data["class"])
	require.Equal(t, "Sat Jul 11: no heat trouble, 59 °F.", a.Text)
	// A heat that the question names is answered for, whatever was told of the day.
	for class, highC := range map[string]float64{"normal": 15, "emergency": 36} {
		for _, h := range []*model.Herd{orchard(t).herd(), cool.herd()} {
			a = ask(h, reading.Ask{Topic: "heat", HighC: model.Float(highC)})
			require.Equal(t, class, a.Data["class"])
			require.InDelta(t, highC, a.Data["high_c"], 0.01)
		}
	}
}
