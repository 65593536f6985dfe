package answer_test

import (
	"strings"
	"testing"
	"time"
	"unicode/utf8"

	"github.com/stretchr/testify/require"

	"troughbell/bot/answer"
	"troughbell/bot/reading"
	"troughbell/model"
)

// TestQuestionsAboutOneThing has what questions about one thing within a topic say
// and give, in a herd and where there is none.
func TestQuestionsAboutOneThing(t *testing.T) {
	night := func(c float64) func(*journal) *journal {
		return func(j *journal) *journal {
			return j.add("2026-07-11", 600, model.Weather{LowC: model.Float(c), HighC: model.Float(c + 8)})
		}
	}
	same := func(j *journal) *journal { return j }
	for _, c := range []struct {
		name string
		with func(*journal) *journal
		q    reading.Ask
		says []string
		data map[string]any // of other than the topic's own figures
	}{
		{"a sick pig", same, reading.Ask{Topic: "history", About: reading.AboutSickCare}, []string{"Call the vet", "as the vet or the label says"}, nil},
		{"foods", same, reading.Ask{Topic: "ration_check", About: reading.AboutFoods}, []string{"touched meat", "never mouldy", "vet"}, nil},
		{"scraps", same, reading.Ask{Topic: "ration_check", About: reading.AboutScraps}, []string{"never through a kitchen"}, nil},
		{"heat, no weather told", same, reading.Ask{Topic: "heat", About: reading.AboutHeatCare}, []string{"Shade, a wet wallow", "call the vet"}, nil},
		{"heat on a hot day", hot, reading.Ask{Topic: "heat", About: reading.AboutHeatCare}, []string{"deadly heat, 93 °F", "Shade, a wet wallow"}, map[string]any{"class": "emergency"}},
		{"the line of heat", hot, reading.Ask{Topic: "heat", About: reading.AboutHeatLine}, []string{"From 75 °F on yours"}, map[string]any{"watch_c": 24.0}},
		{"cold, nothing told", same, reading.Ask{Topic: "heat", About: reading.AboutCold}, []string{"on a dry bare floor", "Night low not told"}, nil},
		{"a mild night", night(12), reading.Ask{Topic: "heat", About: reading.AboutCold}, []string{"Not too cold: 54 °F"}, map[string]any{"frost": "none"}},
		{"a night for straw", night(-2), reading.Ask{Topic: "heat", About: reading.AboutCold}, []string{"Deep dry straw carries them", "Nipples may freeze", "of straw a week"}, map[string]any{"frost": "frost"}},
		{"too cold a night", night(-20), reading.Ask{Topic: "heat", About: reading.AboutCold}, []string{"⚠ Too cold", "Hard freeze"}, map[string]any{"frost": "freeze"}},
		{"water", same, reading.Ask{Topic: "water_left", About: reading.AboutWaterNeed}, []string{"4 pigs of", "up to", "2 nipples at least"}, map[string]any{"count": 4.0, "nipples": 2.0}},
		{"how flow should be", same, reading.Ask{Topic: "water_left", About: reading.AboutFlow}, []string{"28 to 57 s"}, map[string]any{"least_l_min": 0.5}},
		{"a slow nipple", same, reading.Ask{Topic: "water_left", About: reading.AboutFlow, FlowLMin: model.Float(0.3)}, []string{"Too slow: a pint (half a litre) in 95 s"}, map[string]any{"class": "low"}},
		{"a right nipple", same, reading.Ask{Topic: "water_left", About: reading.AboutFlow, FlowLMin: model.Float(0.7)}, []string{"Right: a pint"}, map[string]any{"class": "right"}},
		{"a fast nipple", same, reading.Ask{Topic: "water_left", About: reading.AboutFlow, FlowLMin: model.Float(1.6)}, []string{"Fast: a pint"}, map[string]any{"class": "high"}},
		{"straw", same, reading.Ask{Topic: "plan", About: reading.AboutStraw}, []string{"of straw for 4 pigs"}, map[string]any{"count": 4.0}},
		{"space", same, reading.Ask{Topic: "plan", About: reading.AboutSpace, Count: 3}, []string{"3 pigs: pens of"}, map[string]any{"count": 3.0}},
		{"own ground", same, reading.Ask{Topic: "plan", About: reading.AboutGround}, []string{"carry 2 pigs", "Your 4 will bare it"}, map[string]any{"pigs": 2.0, "yours": 4.0}},
		{"an acre", same, reading.Ask{Topic: "plan", About: reading.AboutGround, AreaM2: model.Float(4046.856)}, []string{"carry 14 pigs"}, map[string]any{"pigs": 14.0}}, // 37 a hectare: 14.97
		{"a garden bed", same, reading.Ask{Topic: "plan", About: reading.AboutGround, AreaM2: model.Float(50)}, []string{"too little for one pig"}, map[string]any{"pigs": 0.0}},
		{"feeding places", same, reading.Ask{Topic: "plan", About: reading.AboutFeeder, Count: 9}, []string{"3 feeding places"}, map[string]any{"places": 3.0}},
		{"fence", same, reading.Ask{Topic: "plan", About: reading.AboutFence}, []string{"2 hot strands, at 10 in and 18 in", "3 kV"}, map[string]any{"strands_cm": []any{25.0, 46.0}}},
		{"booking", same, reading.Ask{Topic: "butcher_date", About: reading.AboutBooking}, []string{"No butcher booked: call now"}, map[string]any{"booking_lead_days": 120.0}},
		{"size", same, reading.Ask{Topic: "target", About: reading.AboutSize}, []string{"Your target is 265 lb"}, nil},
		{"break even", same, reading.Ask{Topic: "cost", About: reading.AboutBreakEven}, []string{"To break even: $"}, map[string]any{"currency": "USD"}},
		{"worth, no price", same, reading.Ask{Topic: "cost", About: reading.AboutPigWorth}, []string{"What would it sell for?"}, nil},
		{"worth", same, reading.Ask{Topic: "cost", About: reading.AboutPigWorth, Price: model.Float(900)}, []string{"for a pig that sells at $900"}, map[string]any{"price": 900.0}},
		{"worth nothing", same, reading.Ask{Topic: "cost", About: reading.AboutPigWorth, Price: model.Float(20)}, []string{"Nothing: at $20"}, nil},
		{"the cost of one", same, reading.Ask{Topic: "cost", About: reading.AboutPigCost}, []string{"a pig by the butcher"}, map[string]any{"currency": "USD"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			a := ask(c.with(orchard(t)).herd(), c.q)
			for _, said := range c.says {
				require.Contains(t, a.Text, said)
			}
			first, _, _ := strings.Cut(a.Text, "\n")
			require.LessOrEqual(t, utf8.RuneCountInString(first), 130, first)
			require.LessOrEqual(t, strings.Count(a.Text, "\n"), 3, a.Text)
			data := through(t, a.Data)
			for k, want := range c.data {
				require.Equal(t, want, data[k], k)
			}
			if a.Data != nil { // what other programs rely on stands beside
				for _, k := range keys[c.q.Topic] {
					require.Contains(t, data, k)
				}
			}
		})
	}
}

// Nobody needs pigs to ask what pigs need.
func TestQuestionsBeforeAnyPigs(t *testing.T) {
	empty := (&journal{t: t}).add("2026-07-01", 600, model.Setting{Key: model.SetUnits, Text: model.US}).herd()
	for about, says := range map[string]string{
		reading.AboutHeatCare: "Shade, a wet wallow", reading.AboutHeatLine: "on pigs want shade", reading.AboutCold: "Young pigs of 45 lb",
		reading.AboutWaterNeed: "1 pig: about 1 gal a day at 45 lb", reading.AboutFlow: "28 to 57 s", reading.AboutStraw: "of straw for 1 pig",
		reading.AboutSpace: "1 pig: pens of", reading.AboutGround: "carry 14 pigs", reading.AboutFeeder: "1 feeding place",
		reading.AboutFence: "3 hot strands", reading.AboutBooking: "Book 120 days before", reading.AboutSize: "265 lb is usual", reading.AboutPigCost: "a pig eats about",
	} {
		require.Contains(t, ask(empty, reading.Ask{Topic: "plan", About: about}).Text, says, about)
	}
}

func TestWholeSacks(t *testing.T) {
	q := reading.Ask{Topic: "sizes", About: reading.AboutSacks}
	require.Contains(t, ask(orchard(t).herd(), q).Text, "bag")
	h := orchard(t).add("2026-07-11", 600, setting(model.SetSize, model.Thing{Name: "bag", FeedKg: model.Float(50 * lb)})).herd()
	a := ask(h, q)
	require.Equal(t, "One bag of soybean meal 48 makes 2 batches of 109 lb.\nEach: corn 80 lb, soybean meal 48 25 lb, mineral premix 3.5 lb.", a.Text)
	require.EqualValues(t, 2, a.Data["batches"])
	none := (&journal{t: t}).add("2026-07-01", 600, model.Arrive{Count: 2}).herd()
	require.Nil(t, ask(none, q).Data)
}

func TestHistoryOfOneKind(t *testing.T) {
	j := orchard(t)
	j.add("2026-06-10", 600, model.Sick{Animals: []string{"Fern"}, Note: "coughing"}, model.Weather{RainMm: model.Float(12)})
	h := j.herd()
	for _, c := range []struct {
		q    reading.Ask
		says string
	}{
		{reading.Ask{Topic: "history", About: "worm", What: "when was the last worming"}, "Sat May 23, 49 days ago: wormed all, ivermectin, 18 days withdrawal."},
		{reading.Ask{Topic: "history", About: "weigh", What: "when did we last weigh sorrel", Animals: []string{"Sorrel"}}, "Sat Jul 11: Sorrel girth 38 in."},
		{reading.Ask{Topic: "history", About: "sick", What: "has fern been sick before", Animals: []string{"Fern"}}, "Wed Jun 10: Fern coughing."},
		{reading.Ask{Topic: "history", About: "sick", What: "has clove had a fit", Animals: []string{"Clove"}}, "No sickness on file for Clove."},
		{reading.Ask{Topic: "history", About: "weather", What: "when did it rain last"}, "Wed Jun 10, 31 days ago: rain 12 mm."},
		{reading.Ask{Topic: "history", About: "mixed", What: "when did i last mix"}, "No mixing on file."},
	} {
		require.Equal(t, c.says, ask(h, c.q).Text)
	}
	refills := ask(h, reading.Ask{Topic: "history", About: "refill", What: "list the fills"})
	require.NotContains(t, refills.Text, "water")
	require.Contains(t, refills.Text, "fed north")
}

func TestDueOnADay(t *testing.T) {
	h := orchard(t).herd()
	round, quiet, far := day("2026-07-18"), day("2026-07-14"), day("2026-10-05")
	wednesday := time.Date(2026, 7, 15, 12, 0, 0, 0, now.Location())
	on := answer.To(h, wednesday, reading.Ask{Topic: "today", On: &round}, nil)
	all := answer.To(h, wednesday, reading.Ask{Topic: "today"}, nil)
	require.NotEmpty(t, on.Data["due"])
	require.Subset(t, strings.Split(all.Text, "\n"), strings.Split(on.Text, "\n"))
	off := ask(h, reading.Ask{Topic: "today", On: &quiet})
	require.Less(t, len(off.Data["due"].([]any)), len(on.Data["due"].([]any)), "what can wait is not due before the round")
	require.Equal(t, "Nothing due Mon Oct 5; the next round is Sat Jul 18.", ask(h, reading.Ask{Topic: "today", On: &far}).Text)
	require.Equal(t, "Sat Jul 18 is a round; nothing beyond it is due yet.", ask(h, reading.Ask{Topic: "today", On: &round}).Text)
}

func TestTheLeadOfOwnBookingsIsSaid(t *testing.T) {
	j := orchard(t)
	j.add("2025-05-10", 600, model.Booked{Day: day("2025-07-09")})
	a := ask(j.herd(), reading.Ask{Topic: "butcher_date"})
	require.Equal(t, 85, a.Data["booking_lead_days"]) // sqrt(120*60), computed
	require.Equal(t, 1, a.Data["bookings_learned_from"])
}
