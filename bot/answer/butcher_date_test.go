package answer_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/bot/reading"
	"troughbell/model"
)

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
	require.Regexp(t, `^265 lb about \w{3} \w{3} \d+ \(.+\), in \d+ days\.\nNo butcher booked: call now, ask for .+\.$`, a.Text)

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
	require.True(t, strings.HasPrefix(by.Text, "By Sat Aug 1 not yet: about "), by.Text)
	require.Equal(t, "2026-08-01", by.Data["on"])
}

func TestButcherDateWithBooking(t *testing.T) {
	h := orchard(t).add("2026-07-11", 600, model.Booked{Day: day("2026-09-01"), Minute: model.Int(360)}).herd()
	a := ask(h, reading.Ask{Topic: "butcher_date"})
	require.Contains(t, a.Text, "\nButcher Tue Sep 1: about ")
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
	require.True(t, strings.HasPrefix(a.Text, "Not before Tue Oct 20: withdrawal runs to Mon Oct 19, 10 am.\n265 lb about "), a.Text)
	require.NotContains(t, a.Text, "ask for")
	require.NotContains(t, ask(h, reading.Ask{Topic: "butcher_date", Animals: []string{"Fern"}}).Data, "not_before")

	h = orchard(t).add("2026-07-11", 600, drug(model.Int(100)), model.Booked{Day: day("2026-09-15")}).herd()
	require.Contains(t, ask(h, reading.Ask{Topic: "butcher_date", TargetKg: model.Float(400 * lb)}).Text, "Butcher Tue Sep 15: NOT CLEAR, Sorrel to Mon Oct 19, 10 am.")

	h = orchard(t).add("2026-07-11", 600, drug(nil)).herd()
	a = ask(h, reading.Ask{Topic: "butcher_date"})
	require.Contains(t, a.Data, "not_before")
	require.Nil(t, a.Data["not_before"])
	require.True(t, strings.HasPrefix(a.Text, "NOT CLEAR: Sorrel"), a.Text)
	require.NotContains(t, a.Text, "ask for")

	// A withdrawal that ends before the target moves the window, no more.
	h = orchard(t).add("2026-07-11", 600, drug(model.Int(45))).herd()
	a = ask(h, reading.Ask{Topic: "butcher_date"})
	require.Equal(t, "2026-08-26", a.Data["not_before"])
	require.Contains(t, a.Text, "ask for Aug 26–")
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
