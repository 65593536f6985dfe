package answer_test

import (
	"encoding/json"
	"strings"
	"testing"
	"time"
	"unicode/utf8"

	"github.com/stretchr/testify/require"

	"troughbell/bot/answer"
	"troughbell/bot/reading"
	"troughbell/bot/wording"
	"troughbell/model"
)

// keys are the names that the contract promises in the answer of each topic.
var keys = map[string][]string{
	"butcher_date": {"date", "low", "high", "days", "animals"},
	"target":       {"date", "low", "high", "days", "animals"},
	"weight":       {"on", "animals"},
	"growth":       {"on", "animals"},
	"feed_left":    {"feed_kg", "use_kg_d", "days", "low_days", "empty", "feeders"},
	"feed_need":    {"feed_kg", "low_kg", "high_kg", "batches"},
	"water_left":   {"litres", "use_l_d", "days", "low_days", "barrels"},
	"ration_check": {
		"crude_protein_pct", "lysine_pct", "sid_lysine_pct", "energy_mj_kg", "needed_sid_lysine_pct", "for_weight_kg", "ok", "change",
	},
	"yield": {
		"live_kg", "hanging_kg", "retail_kg", "live_low_kg", "live_high_kg", "hanging_low_kg", "hanging_high_kg", "retail_low_kg", "retail_high_kg",
	},
	"cost":       {"spent", "forecast", "per_kg_hanging", "per_kg_live", "currency"},
	"worming":    {"date", "why"},
	"move":       {"date", "why"},
	"wallow":     {"date", "why"},
	"withdrawal": {"clear_at", "clear", "animals"},
	"heat":       {"thi", "class", "rh_assumed"},
	"plan":       {"feed_kg", "feeders", "barrels", "nipples", "shelter_m2", "shade_m2", "pen_m2", "dates"},
	"today":      {"due"},
	"history":    {"records"},
	"sizes":      {"sizes"},
}

func ask(h *model.Herd, q reading.Ask) answer.Answer { return answer.To(h, now, q, nil) }

// through gives data as another program gets it: through JSON.
func through(t *testing.T, data map[string]any) map[string]any {
	t.Helper()
	b, err := json.Marshal(data)
	require.NoError(t, err)
	var out map[string]any
	require.NoError(t, json.Unmarshal(b, &out))
	return out
}

func hot(j *journal) *journal { return j.add("2026-07-11", 600, model.Weather{HighC: model.Float(34)}) }

func TestEveryTopicHasItsKeys(t *testing.T) {
	h := hot(orchard(t)).herd()
	for topic, want := range keys {
		a := ask(h, reading.Ask{Topic: topic})
		require.NotNil(t, a.Data, "%s: %s", topic, a.Text)
		data := through(t, a.Data)
		for _, key := range want {
			require.Contains(t, data, key, topic)
		}
	}
}

// The verdict stands within what a lock screen shows; two lines unless a list
// was asked for; no sign of haste.
func TestTextsAreShort(t *testing.T) {
	lists := map[string]bool{"today": true, "history": true, "plan": true, "sizes": true}
	for _, j := range []*journal{hot(orchard(t)), nursery(t)} {
		for topic := range keys {
			a := ask(j.herd(), reading.Ask{Topic: topic})
			require.NotEmpty(t, a.Text, topic)
			require.NotContains(t, a.Text, "!", topic)
			require.NotContains(t, a.Text, "NaN", topic)
			require.NotContains(t, a.Text, "{", topic)
			lines := strings.Split(a.Text, "\n")
			if lists[topic] {
				continue
			}
			require.LessOrEqual(t, len(lines), 2, a.Text)
			verdict, _, _ := strings.Cut(lines[0], ".")
			require.LessOrEqual(t, utf8.RuneCountInString(verdict), 110, a.Text)
		}
	}
}

// A herd of which nothing is known gets no figures but the question for what is
// lacking.
func TestNothingKnown(t *testing.T) {
	h := (&journal{t: t}).herd()
	for topic := range keys {
		switch topic {
		case "today", "history", "sizes":
			continue
		}
		a := ask(h, reading.Ask{Topic: topic})
		require.Nil(t, a.Data, topic)
		require.Contains(t, a.Text, "ext", "%s asks to text something: %s", topic, a.Text)
	}
}

func TestButcherDate(t *testing.T) {
	j := orchard(t)
	h := j.herd()
	a := ask(h, reading.Ask{Topic: "butcher_date"})
	data := through(t, a.Data)
	f, err := h.Target(265*lb, model.DayOf(now))
	require.NoError(t, err)
	require.Equal(t, f.Herd.Days.Mid.String(), data["date"])
	require.Equal(t, f.Herd.Days.Low.String(), data["low"])
	require.Equal(t, f.Herd.Days.High.String(), data["high"])
	require.EqualValues(t, f.Herd.Days.Mid-model.DayOf(now), data["days"])
	require.NotContains(t, data, "not_before")
	require.NotContains(t, data, "groups")
	require.Len(t, data["animals"], 4)
	fern := data["animals"].(map[string]any)["Fern"].(map[string]any)
	require.Equal(t, f.Animals[h.Animal("Fern")].Days.Mid.String(), fern["date"])
	require.Regexp(t, `^265 lb about \w{3} \d+ \w{3} \(.+\), in \d+ days\.\nNo butcher booked: ask for .+\.$`, a.Text)

	one := ask(h, reading.Ask{Topic: "butcher_date", Animals: []string{"fern"}})
	require.Equal(t, fern["date"], one.Data["date"])
	require.Len(t, one.Data["animals"], 1)
	require.True(t, strings.HasPrefix(one.Text, "Fern: 265 lb about "), one.Text)

	two := ask(h, reading.Ask{Topic: "butcher_date", Animals: []string{"Fern", "Sorrel"}})
	require.Len(t, two.Data["animals"], 2)
	require.True(t, strings.HasPrefix(two.Text, "Fern and Sorrel: 265 lb about "), two.Text)

	sooner := ask(h, reading.Ask{Topic: "butcher_date", TargetKg: model.Float(250 * lb)})
	require.Less(t, sooner.Data["date"], a.Data["date"])
	require.Equal(t, 113.4, sooner.Data["target_kg"])

	there := ask(h, reading.Ask{Topic: "target", TargetKg: model.Float(100 * lb)})
	require.Equal(t, "2026-07-11", there.Data["date"])
	require.Equal(t, 0, there.Data["days"])
	require.Contains(t, there.Text, "100 lb is reached")

	late := day("2026-08-01")
	by := ask(h, reading.Ask{Topic: "butcher_date", On: &late})
	require.True(t, strings.HasPrefix(by.Text, "By Sat 1 Aug not yet: about "), by.Text)
	require.Equal(t, "2026-08-01", by.Data["on"])
}

func TestButcherDateWithBooking(t *testing.T) {
	h := orchard(t).add("2026-07-11", 600, model.Booked{Day: day("2026-09-01"), Minute: model.Int(360)}).herd()
	a := ask(h, reading.Ask{Topic: "butcher_date"})
	require.Contains(t, a.Text, "\nButcher Tue 1 Sep: about ")
}

// A drug whose withdrawal runs past the day blocks it; unknown days block every
// day.
func TestButcherDateWaitsForWithdrawal(t *testing.T) {
	drug := func(days *int) model.Fact {
		return model.Treat{Treatment: model.Treatment{Animals: []string{"Sorrel"}, Product: "penicillin", WithdrawalDays: days}}
	}
	h := orchard(t).add("2026-07-11", 600, drug(model.Int(100))).herd()
	a := ask(h, reading.Ask{Topic: "butcher_date"})
	require.Equal(t, "2026-10-20", a.Data["not_before"]) // 19 Oct 10 am, so the 20th
	require.Contains(t, a.Text, "Not before Tue 20 Oct: withdrawal runs to Mon 19 Oct 10 am.")
	require.NotContains(t, a.Text, "ask for")
	require.NotContains(t, ask(h, reading.Ask{Topic: "butcher_date", Animals: []string{"Fern"}}).Data, "not_before")

	h = orchard(t).add("2026-07-11", 600, drug(model.Int(100)), model.Booked{Day: day("2026-09-15")}).herd()
	require.Contains(t, ask(h, reading.Ask{Topic: "butcher_date", TargetKg: model.Float(400 * lb)}).Text, "Butcher Tue 15 Sep: NOT CLEAR, Sorrel to Mon 19 Oct 10 am.")

	h = orchard(t).add("2026-07-11", 600, drug(nil)).herd()
	a = ask(h, reading.Ask{Topic: "butcher_date"})
	require.Contains(t, a.Data, "not_before")
	require.Nil(t, a.Data["not_before"])
	require.Contains(t, a.Text, "NOT CLEAR: Sorrel")
	require.NotContains(t, a.Text, "ask for")

	// A withdrawal that ends before the target moves the window, no more.
	h = orchard(t).add("2026-07-11", 600, drug(model.Int(45))).herd()
	a = ask(h, reading.Ask{Topic: "butcher_date"})
	require.Equal(t, "2026-08-26", a.Data["not_before"])
	require.Contains(t, a.Text, "ask for 26 Aug–")
}

func TestButcherDateOfGroups(t *testing.T) {
	h := orchard(t).add("2026-06-20", 700, model.Arrive{Count: 3, Group: "the little ones", WeightKg: model.Float(20)}).herd()
	a := ask(h, reading.Ask{Topic: "butcher_date"})
	data := through(t, a.Data)
	groups := data["groups"].([]any)
	require.Len(t, groups, 2)
	require.Less(t, groups[0].(map[string]any)["date"], groups[1].(map[string]any)["date"])
	require.Less(t, data["date"], groups[1].(map[string]any)["date"])
	require.Contains(t, data["animals"], "all") // those without names
	require.Contains(t, data["animals"], "Fern")
	require.Contains(t, a.Text, "The little ones: ")
}

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
	require.Regexp(t, `^Fern about \d+ lb \(\d+–\d+\) on Sat 1 Aug, gaining [\d.]+ lb a day\.$`, one.Text)

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
}

func TestFeedLeft(t *testing.T) {
	h := orchard(t).herd()
	f, err := h.FeedLeft(now)
	require.NoError(t, err)
	a := ask(h, reading.Ask{Topic: "feed_left"})
	data := through(t, a.Data)
	require.InDelta(t, f.FeedKg.Mid, data["feed_kg"], 0.0051)
	require.InDelta(t, f.UseKgD.Mid, data["use_kg_d"], 0.0051)
	require.InDelta(t, f.Days, data["days"], 0.0051)
	require.InDelta(t, f.LowDays, data["low_days"], 0.0051)
	require.Equal(t, f.Empty.In(chicago).Format(time.RFC3339), data["empty"])
	require.Len(t, data["feeders"], 2)
	for _, key := range []string{"feed_kg", "use_kg_d", "days", "low_days", "empty"} {
		require.Contains(t, data["feeders"].(map[string]any)["north"], key)
	}
	require.Equal(t, "2026-07-18", data["lasts_until"])
	require.Equal(t, true, data["lasts"])
	require.Regexp(t, `^Feed lasts past Sat 18 Jul: safe to .+, likely to .+\.\nnorth \d+ lb, safe to .+; south \d+ lb, safe to .+\.$`, a.Text)

	skip := ask(h, reading.Ask{Topic: "feed_left", Assume: &model.Assumption{SkipDays: 7}})
	require.Equal(t, "2026-07-25", skip.Data["lasts_until"])
	require.Equal(t, false, skip.Data["lasts"])
	require.Contains(t, skip.Text, "Feed does not last to Sat 25 Jul")

	more := ask(h, reading.Ask{Topic: "feed_left", Assume: &model.Assumption{CountDelta: 2}})
	require.Greater(t, more.Data["use_kg_d"], a.Data["use_kg_d"])

	on := day("2026-07-14")
	require.Contains(t, ask(h, reading.Ask{Topic: "feed_left", On: &on}).Text, "Feed lasts past Tue 14 Jul")

	// Nobody looked for two weeks: it may be out, and the reply says who says so.
	require.Regexp(t, `^Feed (may be|is) out`, ask(nursery(t).herd(), reading.Ask{Topic: "feed_left"}).Text)
}

func TestFeedNeed(t *testing.T) {
	h := orchard(t).herd()
	a := ask(h, reading.Ask{Topic: "feed_need"})
	on := day("2026-08-01")
	part := ask(h, reading.Ask{Topic: "feed_need", On: &on})
	require.Less(t, part.Data["feed_kg"], a.Data["feed_kg"])
	require.Equal(t, "2026-08-01", part.Data["until"])
	require.InDelta(t, part.Data["feed_kg"].(float64)/(100*lb), part.Data["batches"], 0.02)
	require.Regexp(t, `^About [\d,]+ lb feed to Sat 1 Aug \([\d,]+–[\d,]+\), \d+ batches\.`, part.Text)
	require.Regexp(t, `^About [\d,]+ lb feed to 265 lb about `, a.Text)
}

func TestWaterLeft(t *testing.T) {
	a := ask(orchard(t).herd(), reading.Ask{Topic: "water_left"})
	data := through(t, a.Data)
	require.Len(t, data["barrels"], 2)
	require.InDelta(t, 110*gal, data["litres"], 12) // less the dead volume
	require.Regexp(t, `^Water (lasts past|does not last to) Sat 18 Jul: safe to .+\.\nAbout \d+ gal left, they draw \d+ gal a day\. blue \d+ gal, white \d+ gal\.$`, a.Text)
}

func TestRationCheck(t *testing.T) {
	a := ask(orchard(t).herd(), reading.Ask{Topic: "ration_check"})
	require.Equal(t, false, a.Data["ok"])
	require.Contains(t, a.Data["change"], "soybean meal 48")
	require.Regexp(t, `^The mix is short: lysine 0\.\d\d%, they need 0\.\d\d% at \d+ lb\.\nTo each batch: soybean meal 48 \+[\d.]+ lb\.`, a.Text)
	rich := orchard(t).add("2026-07-11", 600, model.Recipe{Ingredients: map[string]float64{"corn": 60, "soybean meal 48": 37, "mineral premix": 3}})
	require.Contains(t, ask(rich.herd(), reading.Ask{Topic: "ration_check"}).Text, "The mix is enough")
}

func TestYield(t *testing.T) {
	h := orchard(t).add("2026-07-11", 600, model.Booked{Day: day("2026-09-01")}).herd()
	a := ask(h, reading.Ask{Topic: "yield"})
	require.Equal(t, "2026-09-01", a.Data["on"])
	require.InDelta(t, 0.72, a.Data["hanging_kg"].(float64)/a.Data["live_kg"].(float64), 0.001)
	require.Contains(t, a.Text, "on Tue 1 Sep.\n4 pigs: about ")

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

func TestWithdrawal(t *testing.T) {
	h := orchard(t).add("2026-07-11", 600,
		model.Treat{Treatment: model.Treatment{Animals: []string{"Fern"}, Product: "penicillin", WithdrawalDays: model.Int(10)}},
	).herd()
	a := ask(h, reading.Ask{Topic: "withdrawal"})
	data := through(t, a.Data)
	require.Equal(t, "2026-07-21T10:00:00-05:00", data["clear_at"])
	require.Equal(t, "2026-07-21", data["clear"])
	require.Equal(t, "2026-07-21", data["animals"].(map[string]any)["Fern"].(map[string]any)["clear"])
	require.Equal(t, "2026-06-10", data["animals"].(map[string]any)["Clove"].(map[string]any)["clear"])
	require.True(t, strings.HasPrefix(a.Text, "NOT CLEAR: Fern, clear Tue 21 Jul 10 am"), a.Text)
	require.Contains(t, ask(h, reading.Ask{Topic: "withdrawal", Animals: []string{"Clove"}}).Text, "Clear since Wed 10 Jun 9 am")
	require.Contains(t, ask(nursery(t).herd(), reading.Ask{Topic: "withdrawal"}).Text, "Clear: no treatment on file.")

	on := day("2026-07-20")
	require.Contains(t, ask(h, reading.Ask{Topic: "withdrawal", On: &on}).Text, "On Mon 20 Jul: NOT CLEAR.")

	h = orchard(t).add("2026-07-11", 600, model.Worm{Treatment: model.Treatment{Animals: all}}).herd()
	a = ask(h, reading.Ask{Topic: "withdrawal"})
	data = through(t, a.Data)
	require.Contains(t, data, "clear")
	require.Nil(t, data["clear"])
	require.Nil(t, data["clear_at"])
	require.Nil(t, data["animals"].(map[string]any)["Fern"].(map[string]any)["clear"])
	require.True(t, strings.HasPrefix(a.Text, "NOT CLEAR: all pigs. Withdrawal days unknown"), a.Text)
	for _, dose := range []string{"ml", "mg", "cc"} {
		require.NotContains(t, a.Text, " "+dose)
	}
}

func TestTasks(t *testing.T) {
	h := orchard(t).herd()
	for _, topic := range []string{"worming", "move", "wallow"} {
		data := through(t, ask(h, reading.Ask{Topic: topic}).Data)
		require.NotEmpty(t, data["why"], topic)
		_, err := model.ParseDay(data["date"].(string))
		require.NoError(t, err)
	}
	h = orchard(t).add("2026-07-11", 600, model.Booked{Day: day("2026-07-20")}).herd()
	a := ask(h, reading.Ask{Topic: "worming"})
	require.Equal(t, true, a.Data["blocked"])
	require.True(t, strings.HasPrefix(a.Text, "No worming now"), a.Text)
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
	require.Equal(t, "Sat 11 Jul: no heat trouble, 59 °F.", a.Text)
}

func TestPlan(t *testing.T) {
	from := day("2027-05-02")
	a := ask((&journal{t: t}).herd(), reading.Ask{Topic: "plan", Count: 4, On: &from})
	data := through(t, a.Data)
	require.EqualValues(t, 4, data["count"])
	require.Equal(t, "2027-05-02", data["dates"].(map[string]any)["from"])
	require.Greater(t, data["dates"].(map[string]any)["target"], "2027-07-01")
	require.Greater(t, data["feed_kg"], 800.0)
	require.Regexp(t, `^4 pigs from Sun 2 May 2027: 265 lb about .+ feed\. Book by `, a.Text)
	require.Contains(t, a.Text, "Assumed: 45 lb each at the start.")
	require.Equal(t, "How many pigs? Text: plan 4 pigs from may 2.", ask((&journal{t: t}).herd(), reading.Ask{Topic: "plan"}).Text)
}

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

func TestSizes(t *testing.T) {
	a := ask(orchard(t).herd(), reading.Ask{Topic: "sizes"})
	require.Contains(t, a.Text, "Feeder north 300 lb; feeder south 250 lb; water barrel blue 55 gal, 2 nipples")
	require.Equal(t, "Feeder north 300 lb.", ask(orchard(t).herd(), reading.Ask{Topic: "sizes", What: "north"}).Text)
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

// The same question twice gets the same answer, and asking changes nothing.
func TestAskingChangesNothing(t *testing.T) {
	h := hot(orchard(t)).herd()
	first := map[string]string{}
	for range 2 {
		for topic := range keys {
			a := ask(h, reading.Ask{Topic: topic, Assume: &model.Assumption{CountDelta: 1}})
			plain := ask(h, reading.Ask{Topic: topic})
			b, err := json.Marshal([]any{a.Data, a.Text, plain.Data, plain.Text})
			require.NoError(t, err)
			if first[topic] == "" {
				first[topic] = string(b)
			}
			require.Equal(t, first[topic], string(b), topic)
		}
	}
	require.NotEmpty(t, wording.Voice{Herd: h, Now: now}.Help(""))
}
