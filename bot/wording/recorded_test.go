package wording_test

import (
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/require"

	"troughbell/bot/reading"
	"troughbell/bot/wording"
	"troughbell/model"
)

// season is the orchard with weeks behind it: weighed, filled, wormed.
func season(t *testing.T) *journal {
	j := orchard(t)
	j.add("2026-05-23", 540, true, model.Worm{Treatment: model.Treatment{Animals: all, Product: "ivermectin", WithdrawalDays: model.Int(18)}})
	j.add("2026-06-20", 540, true,
		model.Weigh{Animals: []string{"Fern"}, WeightKg: 143 * lb, By: model.ByScale},
		model.Weigh{Animals: []string{"Sorrel"}, GirthCm: 35 * in},
	)
	for i, pour := range []float64{80, 90, 100, 105} {
		d := day("2026-06-20") + model.Day(7*i)
		j.add(d.String(), 545, true,
			model.Refill{Feeder: "north", FeedKg: model.Float(pour * lb), Full: true},
			model.Refill{Feeder: "south", FeedKg: model.Float(pour / 2 * lb), Full: true},
			model.Water{Full: true}, model.WallowFill{},
		)
	}
	return j
}

// acknowledge records facts of today and gives the words for them.
func acknowledge(t *testing.T, j *journal, facts ...model.Fact) string {
	t.Helper()
	var es []reading.Entry
	for _, f := range facts {
		es = append(es, entry(f))
	}
	j.add("2026-07-11", 630, false, facts...)
	h := j.herd()
	v := wording.Voice{Herd: h, Now: now}
	return v.Recorded(es, v.Effects(h, es))
}

// simple acknowledgements are what a weekly round says: one fact, one line, at
// most 60 characters.
func TestRecordedSimple(t *testing.T) {
	for _, row := range []struct {
		fact model.Fact
		want string // as a beginning and an end, the figure between left open
		end  string
	}{
		{model.Refill{Feeder: "north", FeedKg: model.Float(100 * lb), Full: true}, "Fed north 100 lb, full. North safe past Sat Jul ", "."},
		{model.Water{Full: true}, "Water both full. Not to Sat Jul 18: safe to Wed Jul ", "."},
		{model.WallowFill{}, "Wallow topped up. Dry about ", "."},
		{model.Weigh{Animals: []string{"Fern"}, WeightKg: 180 * lb, By: model.ByScale}, "Fern 180 lb. Up 37 lb in 21 days.", ""},
		{model.Weigh{Animals: []string{"Fern"}, WeightKg: 120 * lb, By: model.ByScale}, "Fern 120 lb. Down 23 lb in 21 days: look the pig over.", ""},
		{model.Weigh{Animals: []string{"Clove"}, WeightKg: 150 * lb, By: model.ByEye}, "Clove about 150 lb.", ""},
		{model.Fence{Kv: 5.8}, "Fence 5.8 kV.", ""},
		{model.Mixed{Batches: model.Float(2)}, "Mixed 2 batches.", ""},
		{model.Spend{Amount: 61, What: "straw"}, "Spent $61 on straw.", ""},
		{model.Note{What: "second barrel next year"}, "Note: second barrel next year.", ""},
		{model.Alarm{What: model.AlarmOut, Over: true}, "Pigs back in. Count: 4? Check the wire.", ""},
		{model.Gone{Animals: []string{"Fern"}, How: model.Sold, Amount: model.Float(300)}, "Fern sold for $300. 3 pigs left; all plans follow.", ""},
		{model.Move{Pen: "ash"}, "Moved all to ash. Next move about ", "."},
		{model.Stock{Ingredient: "corn", FeedKg: model.Float(1000 * lb), Amount: model.Float(110)}, "Bought 1,000 lb corn for $110. $0.11/lb.", ""},
		{model.Setting{Key: model.SetChore, List: []string{"sun"}}, "Chores Sun. I write next tomorrow 7 am.", ""},
		{model.Setting{Key: model.SetTarget, Number: model.Float(280 * lb)}, "Target 280 lb. About ", ")."},
		{setting(model.SetSize, model.Thing{Name: "bag", FeedKg: model.Float(50 * lb)}), "A bag is 50 lb.", ""},
	} {
		got := acknowledge(t, season(t), row.fact)
		require.True(t, strings.HasPrefix(got, row.want) && strings.HasSuffix(got, row.end), "%q is not %q...%q", got, row.want, row.end)
		require.LessOrEqual(t, utf8.RuneCountInString(got), 60, got)
	}
}

func TestRecordedWithMore(t *testing.T) {
	for _, row := range []struct {
		fact model.Fact
		want []string
	}{
		{model.Weigh{Animals: []string{"Fern"}, GirthCm: 38 * in}, []string{"Fern girth 38 in. About ", " lb (", "Up "}},
		{
			model.Worm{Treatment: model.Treatment{Animals: all, Product: "ivermectin", WithdrawalDays: model.Int(18)}},
			[]string{"Wormed all, ivermectin, 18 days withdrawal. Clear Wed Jul 29, 11:59 pm", "the label rules"},
		},
		{model.Treat{Treatment: model.Treatment{Animals: []string{"Fern"}}}, []string{"Treated Fern. NOT clear: how many withdrawal days does the label say?"}},
		{model.Booked{Day: day("2026-09-01"), Count: 4}, []string{"Butcher Tue Sep 1, 4 pigs. About ", "then ("}},
		{model.Gone{Animals: []string{"Fern"}, How: model.Died}, []string{"Fern died. I am sorry.", "3 pigs left"}},
		{model.Sick{Animals: []string{"Fern"}, Note: "limping"}, []string{"Fern limping.\nLook: ", "vet"}},
		{model.Arrive{Count: 3, WeightKg: model.Float(20)}, []string{"3 pigs came, 20 kg each. 265 lb about ", " ("}},
		{model.Weather{HighC: model.Float(36)}, []string{"High 36 °C. ⚠ D", "call the vet"}},
		{model.Fence{Kv: 2.5}, []string{"Fence 2.5 kV. Weak: under 4 kV", "power off"}},
		{model.AwayFrom{From: day("2026-07-12"), To: day("2026-08-30")}, []string{"Away Sun Jul 12 to Sun Aug 30. Feed is safe only to ", "Water is safe only to "}},
	} {
		got := acknowledge(t, season(t), row.fact)
		for _, part := range row.want {
			require.Contains(t, got, part)
		}
	}
}

// What is said of one danger in several facts has one card.
func TestOneCardForOneDanger(t *testing.T) {
	got := acknowledge(t, season(t), model.Alarm{What: model.AlarmNoWater}, model.Water{Barrel: "blue", Fraction: model.Float(0), Seen: true})
	require.True(t, strings.HasPrefix(got, "⚠ No water, water blue empty. How long were they dry?"), got)
	require.Equal(t, 1, strings.Count(got, "call the vet BEFORE water"), got)
}

// The butcher's weights of pigs that left before say their share of live weight,
// not who is left.
func TestRecordedHangingWeight(t *testing.T) {
	j := season(t).add("2026-07-08", 600, true, model.Gone{Animals: []string{"Fern"}, How: model.Butchered})
	got := acknowledge(t, j, model.Gone{Animals: []string{"Fern"}, How: model.Butchered, HangingKg: model.Float(125 * lb)})
	require.Regexp(t, `^Fern hung 125 lb\. \d\d% of about \d+ lb live\.$`, got)

	j = &journal{t: t}
	j.add("2026-04-18", 600, true, model.Arrive{Count: 1, Animals: []string{"Ash"}, WeightKg: model.Float(22)})
	require.Contains(t, acknowledge(t, j, model.Gone{Animals: []string{"Ash"}, How: model.Butchered}), "That was the last pig: nudges stop.")
}

// Who stands before an empty feeder reads what to do, not that it may be empty.
func TestRecordedFeederEmpty(t *testing.T) {
	got := acknowledge(t, season(t), model.FeedLevel{Fraction: model.Float(0)})
	require.Regexp(t, `^Feeder empty\. Fill now: \d+ lb lasts to \w+ \w+ \d+\.$`, got)
}

// The cards for emergencies begin with the sign and the fact, have at most four
// lines, and call the vet where pigs may die.
func TestRecordedCards(t *testing.T) {
	for _, row := range []struct {
		fact model.Fact
		want string
		vet  bool
	}{
		{model.Alarm{What: model.AlarmOut}, "⚠ Pigs out. Walk", false},
		{model.Alarm{What: model.AlarmDown, Animals: []string{"Fern"}}, "⚠ Fern down. Call the vet now.", true},
		{model.Alarm{What: model.AlarmNoWater}, "⚠ No water. How long", true},
		{model.Water{Fraction: model.Float(0), Seen: true}, "⚠ Water both empty. How long", true},
		{model.Alarm{What: model.AlarmNoFeed}, "⚠ No feed. ", false},
		{model.Alarm{What: model.AlarmFence}, "⚠ Fence down. Count", false},
	} {
		got := acknowledge(t, season(t), row.fact)
		require.True(t, strings.HasPrefix(got, row.want), got)
		require.LessOrEqual(t, strings.Count(got, "\n"), 3, got)
		require.Equal(t, row.vet, strings.Contains(got, "vet"), got)
		require.Equal(t, 1, strings.Count(got, "⚠"), got)
	}
}

// Before any pig is known an emergency still gets its card.
func TestRecordedCardBeforeSetUp(t *testing.T) {
	got := acknowledge(t, &journal{t: t}, model.Alarm{What: model.AlarmOut})
	require.True(t, strings.HasPrefix(got, "⚠ Pigs out. Walk"), got)
	require.Contains(t, got, "lead them in and count.")
}

func TestRecordedDrugAgainstBooking(t *testing.T) {
	j := season(t).add("2026-07-11", 600, false, model.Booked{Day: day("2026-07-25"), Minute: model.Int(360)})
	got := acknowledge(t, j, model.Treat{Treatment: model.Treatment{Animals: []string{"Fern"}, WithdrawalDays: model.Int(21)}})
	require.Contains(t, got, "Clear Sat Aug 1, 11:59 pm")
	require.Contains(t, got, "⚠ Butcher Sat Jul 25: NOT CLEAR.")

	j = season(t).add("2026-07-11", 600, false, model.Treat{Treatment: model.Treatment{Animals: []string{"Fern"}}})
	require.Contains(t, acknowledge(t, j, model.Booked{Day: day("2026-09-01")}), "⚠ Fern NOT CLEAR on Tue Sep 1")
}

// Up to four facts have a line each; more share lines, and none is left out.
func TestRecordedManyFacts(t *testing.T) {
	facts := []model.Fact{
		model.Refill{Feeder: "north", FeedKg: model.Float(100 * lb), Full: true},
		model.Water{Full: true},
		model.Fence{Kv: 5.8},
		model.Sick{Animals: []string{"Fern"}, Note: "limping"},
	}
	got := acknowledge(t, season(t), facts[:3]...)
	require.Equal(t, 2, strings.Count(got, "\n"), got)

	facts = append(facts[:3],
		model.Weigh{Animals: []string{"Fern"}, WeightKg: 181 * lb, By: model.ByScale},
		model.Weigh{Animals: []string{"Clove"}, WeightKg: 190 * lb, By: model.ByScale},
		model.Weigh{Animals: []string{"Basil"}, GirthCm: 38 * in},
		model.Mixed{Batches: model.Float(2)}, model.Spend{Amount: 61, What: "straw"}, model.Note{What: "gate sticks"},
	)
	got = acknowledge(t, season(t), facts...)
	require.Equal(t, 3, strings.Count(got, "\n"), got)
	for _, part := range []string{"Fed north 100 lb, full", "Water both full", "ence 5.8 kV", "Fern 181 lb (up 38 lb in 21 days); Clove 190 lb; Basil girth 38 in (about 181 lb)", "mixed 2 batches", "spent $61 on straw", "note: gate sticks"} {
		require.Contains(t, got, part)
	}
}

// Two pigs that gained alike are each said to have gained; what holds for the
// herd after the whole text is said once.
func TestRecordedSaysStatesOnce(t *testing.T) {
	j := season(t).add("2026-06-20", 541, true, model.Weigh{Animals: []string{"Basil"}, WeightKg: 143 * lb, By: model.ByScale})
	got := acknowledge(t, j,
		model.Weigh{Animals: []string{"Fern"}, WeightKg: 180 * lb, By: model.ByScale},
		model.Weigh{Animals: []string{"Basil"}, WeightKg: 180 * lb, By: model.ByScale},
	)
	require.Equal(t, "Fern 180 lb. Up 37 lb in 21 days.\nBasil 180 lb. Up 37 lb in 21 days.", got)
	got = acknowledge(t, season(t), model.Water{Barrel: "blue", Full: true}, model.Water{Barrel: "white", Full: true})
	require.Equal(t, 1, strings.Count(got, "Sat Jul 18"), got)
}

func TestRecordedSaysCorrection(t *testing.T) {
	e := entry(model.Weigh{Animals: []string{"Fern"}, GirthCm: 37 * in})
	e.Replace = "r7"
	require.Equal(t, "Corrected: Fern girth 37 in.", us(t).Recorded([]reading.Entry{e}, nil))
	require.Empty(t, us(t).Recorded([]reading.Entry{{Act: reading.Help{}}}, nil))
}
