package answer_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/bot/reading"
	"troughbell/model"
)

func TestRationSaysWhatIsCheaper(t *testing.T) {
	h := orchard(t).add("2026-07-11", 600,
		model.Recipe{Ingredients: map[string]float64{"corn": 60 * lb, "soybean meal 48": 37 * lb, "mineral premix": 3 * lb}}).herd()
	a := ask(h, reading.Ask{Topic: "ration_check"})
	data := through(t, a.Data)
	mix := data["least_cost"].(map[string]any)
	require.Equal(t, true, mix["possible"])
	require.Less(t, mix["per_kg"], mix["now_per_kg"])
	require.Equal(t, "USD", mix["currency"])
	require.Regexp(t, `Cheapest at your prices: corn \d+ lb, soybean meal 48 [\d.]+ lb, mineral premix 3 lb; \$0\.\d\d/lb, now \$0\.\d\d/lb\.$`, a.Text)
	require.Len(t, data["steps"], 1)
	// Without prices the next step down is said instead.
	plain := nursery(t).add("2026-07-01", 600, model.Recipe{Ingredients: map[string]float64{"corn": 60, "soybean meal 48": 37, "mineral premix": 3}}).herd()
	a = ask(plain, reading.Ask{Topic: "ration_check"})
	require.NotContains(t, a.Data, "least_cost")
	require.Regexp(t, `From about .+ \(50 kg\) [\d.]+ kg of soybean meal 48 a batch will do\.$`, a.Text)
}

func TestRationSaysWhatCannotBe(t *testing.T) {
	h := nursery(t).add("2026-07-01", 600,
		model.Recipe{Ingredients: map[string]float64{"corn": 97, "mineral premix": 3}},
		model.Stock{Ingredient: "corn", FeedKg: model.Float(500), Amount: model.Float(100)}).herd()
	data := through(t, ask(h, reading.Ask{Topic: "ration_check"}).Data)
	mix := data["least_cost"].(map[string]any)
	require.Equal(t, false, mix["possible"])
	require.Contains(t, mix["short"], model.NutrientLysine)
}

func TestFeedIsRunDownToTheButcher(t *testing.T) {
	h := orchard(t).add("2026-07-11", 600, model.Booked{Day: day("2026-07-15"), Minute: model.Int(600)}).herd()
	a := ask(h, reading.Ask{Topic: "feed_left"})
	require.Equal(t, "2026-07-14T20:00:00-05:00", a.Data["feed_off_at"])
	require.Regexp(t, `Butcher Wed Jul 15: feed off Tue 8 pm, water on; about \d+ lb would be left\.$`, a.Text)
	// Some stay and want their feed: no word of taking it away.
	some := orchard(t).add("2026-07-11", 600, model.Booked{Day: day("2026-07-15"), Count: 2}).herd()
	require.NotContains(t, ask(some, reading.Ask{Topic: "feed_left"}).Text, "feed off")
}

func TestFeedersGetTooSmall(t *testing.T) {
	h := nursery(t).add("2026-07-11", 500, setting(model.SetFeeder, model.Thing{Name: "Automat", CapacityKg: model.Float(75)}),
		model.Refill{FeedKg: model.Float(30), Full: true}).herd()
	a := ask(h, reading.Ask{Topic: "feed_left"})
	require.Contains(t, a.Data, "feeders_too_small_from")
	require.Contains(t, a.Text, "full feeders no longer last from visit to visit.")
}

func TestWormingSaysTheLastDose(t *testing.T) {
	h := orchard(t).add("2026-07-11", 600, model.Booked{Day: day("2026-09-15"), Minute: model.Int(420)}).herd()
	a := ask(h, reading.Ask{Topic: "worming"})
	require.Equal(t, "2026-08-28T07:00:00-05:00", a.Data["last_dose"])
	require.Contains(t, a.Text, "With the 18 days you gave, a last dose by Fri Aug 28, 7 am is clear for Tue Sep 15; the label rules.")
}

func TestMoveKnowsTheGround(t *testing.T) {
	a := ask(orchard(t).herd(), reading.Ask{Topic: "move"})
	require.Greater(t, a.Data["nitrogen_kg_ha"], 0.0)
	require.Equal(t, false, a.Data["nitrogen_over"])
	require.Contains(t, a.Data, "worm_eggs_from")
}

func TestYieldAndCostSayWhatTheyTake(t *testing.T) {
	a := ask(orchard(t).herd(), reading.Ask{Topic: "yield"})
	require.Regexp(t, ` Freezer: about \d+ cubic feet\.$`, a.Text)
	require.Regexp(t, `Freezer: about \d+ l\.$`, ask(nursery(t).herd(), reading.Ask{Topic: "yield"}).Text)
	require.Less(t, a.Data["freezer_low_l"], a.Data["freezer_high_l"])
	a = ask(orchard(t).herd(), reading.Ask{Topic: "cost"})
	require.Regexp(t, `\nFeed per weight gained: \d(\.\d)? \(\d(\.\d)?–\d(\.\d)?\), \$\d\.\d\d/lb of gain\.$`, a.Text)
}

func TestPlanSaysHowToSetUp(t *testing.T) {
	from := day("2027-05-02")
	a := ask((&journal{t: t}).herd(), reading.Ask{Topic: "plan", Count: 6, On: &from})
	require.Contains(t, a.Text, "2 feeding places. Nipples 16")
	require.Contains(t, a.Text, "3 hot strands round a square pen: ")
	require.NotContains(t, a.Text, "you pay")
	require.NotContains(t, a.Data, "outgrown")
	require.NotEmpty(t, through(t, ask(orchard(t).herd(), reading.Ask{Topic: "plan"}).Data)["outgrown"])
	priced := ask(orchard(t).herd(), reading.Ask{Topic: "plan", Count: 6, On: &from})
	require.Regexp(t, `Feed about \$\d+, at the \$0\.\d\d/lb you pay\.`, priced.Text)
}

func TestFeedNeedSaysWhatToMix(t *testing.T) {
	later := day("2026-08-20")
	j := orchard(t).add("2026-07-11", 600, setting(model.SetSize, model.Thing{Name: "bag", FeedKg: model.Float(50 * lb)}))
	a := ask(j.herd(), reading.Ask{Topic: "feed_need", On: &later})
	data := through(t, a.Data)
	take := data["ingredients"].(map[string]any)
	require.Len(t, take, 3)
	corn := take["corn"].(map[string]any)
	left, err := j.herd().FeedLeft(now)
	require.NoError(t, err)
	require.InDelta(t, 0.74*(data["feed_kg"].(float64)-left.FeedKg.Mid), corn["feed_kg"], 0.1)
	require.InDelta(t, corn["bags"].(float64)*50*lb, corn["feed_kg"].(float64)+corn["over_kg"].(float64), 0.02)
	full := ask(orchard(t).add("2026-07-11", 600, model.Refill{Feeder: "north", Full: true}, model.Refill{Feeder: "south", Full: true}).herd(), reading.Ask{Topic: "feed_need", On: &later})
	require.NotContains(t, full.Data, "next_visit", "the feeders last")
	require.Regexp(t, `\nTo mix for it: corn [\d,]+ lb, soybean meal 48 [\d,]+ lb, mineral premix [\d.]+ lb\.$`, full.Text)
}

func TestRationSaysWhatIsTooMuch(t *testing.T) {
	h := nursery(t).add("2026-07-01", 600, model.Recipe{Ingredients: map[string]float64{"barley": 80, "fish meal": 20}}).herd()
	a := ask(h, reading.Ask{Topic: "ration_check"})
	require.Equal(t, []string{"fish meal"}, a.Data["over_limit"])
	require.Contains(t, a.Text, "More fish meal than pigs of this weight should get.")
}
