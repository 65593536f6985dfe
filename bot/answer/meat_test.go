package answer_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/bot/answer"
	"troughbell/bot/reading"
	"troughbell/model"
)

func TestRationCheck(t *testing.T) {
	a := ask(orchard(t).herd(), reading.Ask{Topic: "ration_check"})
	require.Equal(t, false, a.Data["ok"])
	require.Contains(t, a.Data["change"], "soybean meal 48")
	require.Regexp(t, `^The mix is short: lysine 0\.\d\d%, they need 0\.\d\d% at \d+ lb\.\nTo each batch: soybean meal 48 \+[\d.]+ lb\.`, a.Text)
	rich := orchard(t).add("2026-07-11", 600, model.Recipe{Ingredients: map[string]float64{"corn": 60, "soybean meal 48": 37, "mineral premix": 3}})
	require.Contains(t, ask(rich.herd(), reading.Ask{Topic: "ration_check"}).Text, "The mix is enough")
}

// A change of more than half a batch is no advice.
func TestRationOutOfReach(t *testing.T) {
	h := nursery(t).add("2026-07-01", 600, model.Recipe{Ingredients: map[string]float64{"barley": 80, "peas": 20}}).herd()
	a := ask(h, reading.Ask{Topic: "ration_check"})
	require.Contains(t, a.Text, "It takes a richer protein feed than peas.")
	require.Contains(t, a.Data["change"], "peas")
}

func TestYield(t *testing.T) {
	h := orchard(t).add("2026-07-11", 600, model.Booked{Day: day("2026-09-01")}).herd()
	a := ask(h, reading.Ask{Topic: "yield"})
	require.Equal(t, "2026-09-01", a.Data["on"])
	require.InDelta(t, 0.72, a.Data["hanging_kg"].(float64)/a.Data["live_kg"].(float64), 0.001)
	require.Contains(t, a.Text, "on Tue Sep 1.\n4 pigs: about ")

	fixed := ask(h, reading.Ask{Topic: "yield", TargetKg: model.Float(100)})
	require.Equal(t, 100.0, fixed.Data["live_kg"])
	require.Equal(t, 72.0, fixed.Data["hanging_kg"])
	wide := func(a answer.Answer) float64 {
		return (a.Data["hanging_high_kg"].(float64) - a.Data["hanging_low_kg"].(float64)) / a.Data["hanging_kg"].(float64)
	}
	require.Less(t, wide(fixed), wide(a)) // a weight that is given has no error of its own
	require.Greater(t, wide(fixed), 0.03)
}

func TestCost(t *testing.T) {
	a := ask(orchard(t).herd(), reading.Ask{Topic: "cost"})
	require.Equal(t, 800.0, a.Data["spent"])
	require.Equal(t, "USD", a.Data["currency"])
	require.GreaterOrEqual(t, a.Data["forecast"], a.Data["spent"])
	require.Regexp(t, `^\$800 so far, about \$[\d,]+ by the butcher: \$\d\.\d\d/lb hanging, \$\d\.\d\d/lb live\.`, a.Text)
}

func TestPlan(t *testing.T) {
	from := day("2027-05-02")
	a := ask((&journal{t: t}).herd(), reading.Ask{Topic: "plan", Count: 4, On: &from})
	data := through(t, a.Data)
	require.EqualValues(t, 4, data["count"])
	require.Equal(t, "2027-05-02", data["dates"].(map[string]any)["from"])
	require.Greater(t, data["dates"].(map[string]any)["target"], "2027-07-01")
	require.Greater(t, data["feed_kg"], 800.0)
	require.Regexp(t, `^4 pigs from Sun May 2 2027: 265 lb about .+ feed\. Book by `, a.Text)
	require.Contains(t, a.Text, "Assumed: 45 lb each at the start.")
	require.Equal(t, "How many pigs? Text: plan 4 pigs from may 2.", ask((&journal{t: t}).herd(), reading.Ask{Topic: "plan"}).Text)
}
