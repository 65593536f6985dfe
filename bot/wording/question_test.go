package wording_test

import (
	"errors"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/bot/reading"
	"troughbell/bot/wording"
	"troughbell/model"
)

func TestQuestion(t *testing.T) {
	weigh := func(in2 float64) []reading.Entry {
		return []reading.Entry{entry(model.Weigh{Animals: []string{"Fern"}, GirthCm: in2 * in})}
	}
	h := us(t).Herd
	m, err := h.MeanWeight([]*model.Animal{h.Animal("Fern")}, model.DayOf(now))
	require.NoError(t, err)
	figured := us(t).Quantity(wording.Kg(m.WeightKg.Mid), "")
	inches := func(x ...float64) (q []model.Quantity) {
		for _, x := range x {
			q = append(q, model.Quantity{Value: x * in, Unit: model.Centimetres})
		}
		return q
	}
	for _, row := range []struct {
		c      reading.Clarify
		text   string
		labels []string
	}{
		{
			reading.Clarify{About: "weigh", Code: "which_animal", Q: inches(38), Choices: []reading.Choice{{Label: "Fern"}, {Label: "Clove"}}},
			"Which pig is 38 in?",
			[]string{"Fern", "Clove"},
		},
		{
			reading.Clarify{About: "weigh", Code: "implausible_weight", Names: []string{"Fern"}, Q: inches(28), Draft: weigh(28), Choices: []reading.Choice{
				{Code: "meant", Q: inches(38), Entries: weigh(38)}, {Code: "as_said", Q: inches(28), Entries: weigh(28)},
			}},
			"Fern: 28 in does not fit: it means 79 lb; I figure " + figured + ". Which is right?",
			[]string{"38 in", "28 in is right"},
		},
		{
			reading.Clarify{About: "weigh", Code: "implausible_weight", Names: []string{"Fern"}, Q: inches(26.5, 27), Choices: []reading.Choice{
				{Code: "meant", Q: inches(36.5, 37)}, {Code: "swapped", Q: inches(27, 26.5)}, {Code: "as_said", Q: inches(26.5, 27)},
			}},
			"Fern: 26.5 in by 27 in does not fit. Which is right?",
			[]string{"36.5 in by 37 in", "girth 27 in, length 26.5 in", "26.5 in by 27 in is right"},
		},
		{
			reading.Clarify{About: "refill", Code: "bag_size", Names: []string{"bag"}, Want: "feed_kg"},
			"How much does one bag hold? I keep it.", nil,
		},
		{
			reading.Clarify{About: "gone", Code: "died_or_out", Choices: []reading.Choice{{Code: "died"}, {Code: "out"}, {Code: "tag"}}},
			"Died, escaped, or only a tag lost?",
			[]string{"died", "escaped", "lost a tag"},
		},
		{
			reading.Clarify{About: "refill", Code: "implausible_pour", Names: []string{"north"}, Q: []model.Quantity{wording.Kg(450 * lb), wording.Kg(173 * lb)}, Choices: []reading.Choice{{Q: []model.Quantity{wording.Kg(45 * lb)}, Entries: weigh(1)}, {}}},
			"450 lb does not fit in north: I figure room for 175 lb. Which is right?",
			[]string{"45 lb", "neither"},
		},
		{
			reading.Clarify{About: "weigh", Code: "never heard of", Choices: []reading.Choice{{Entries: weigh(38)}, {Entries: weigh(38)}}},
			"Which is right: Fern girth 38 in or Fern girth 38 in (2)?",
			[]string{"Fern girth 38 in", "Fern girth 38 in (2)"},
		},
		{
			reading.Clarify{About: "water", Code: "never heard of"},
			"I am not sure about the water. Say it once more, as in: water blue full", nil,
		},
	} {
		text, labels := us(t).Question(row.c)
		require.Equal(t, row.text, text)
		require.Equal(t, row.labels, labels)
	}
}

func TestNone(t *testing.T) {
	for _, row := range []struct{ reason, text, want string }{
		{reading.NoneUnit, "fern 12 st", "Nothing recorded: I take pounds or kilos. 12 st is 168 lb or 76 kg."},
		{reading.NoneUnit, "fern weighs 12.5 stone now", "Nothing recorded: I take pounds or kilos. 12.5 st is 175 lb or 79 kg."},
		{reading.NoneUnit, "fern 3 cubits", "Nothing recorded: I do not take that unit. Use pounds or kilos, gallons or litres, inches or cm."},
		{reading.NoneFuture, "", "Nothing recorded: that day is still to come. Text it once it is done, or \"remind me ...\"."},
		{"never heard of", "", "I did not understand that. Try \"Fern girth 38\", \"fed 150, full\" or \"help\"."},
	} {
		require.Equal(t, row.want, us(t).None(reading.None{Reason: row.reason}, row.text))
	}
}

func TestLeft(t *testing.T) {
	require.Equal(t, `Not understood: "gate thing", "blah".`, us(t).Left([]string{" gate  thing", "", "blah"}))
	require.Empty(t, us(t).Left(nil))
	long := us(t).Left([]string{strings.Repeat("x", 500), "b", "c", "d", "e"})
	require.Less(t, len(long), 120)
	require.Contains(t, long, "and more")
}

func TestMissing(t *testing.T) {
	for _, row := range []struct {
		err        error
		us, metric string
	}{
		{
			&model.Missing{What: "weight"},
			"I need a weight first. Text: Fern girth 38, or Fern about 120 lb.",
			"I need a weight first. Text: Erle girth 96 cm, or Erle about 55 kg.",
		},
		{
			&model.Missing{What: "capacity", Names: []string{"south"}},
			"How much does south hold? Text: south holds 55 gal.", "How much does south hold? Text: south holds 200 l.",
		},
		{
			&model.Missing{What: "level", Names: []string{"north", "south"}},
			"How full: north and south? Text: north half left, or: filled north 150 lb, full.",
			"How full: north and south? Text: north half left, or: filled north 70 kg, full.",
		},
		{
			&model.Missing{What: "water_level"},
			"How full: blue? Text: water blue full, or: water blue half left.", "How full: Tonne? Text: water Tonne full, or: water Tonne half left.",
		},
		{
			&model.OutOfRange{Quantity: "girth", Value: 20 * in, Low: 60, High: 130},
			"Girth 20 in is outside what I can compute (23.5–51).", "Girth 20 in is outside what I can compute (60–130).",
		},
		{
			&model.OutOfRange{Quantity: "weight_kg", Value: 500, Low: 5, High: 180},
			"Weight 500 kg is outside what I can compute (11–397).", "Weight 500 kg is outside what I can compute (5–180).",
		},
		{
			&model.OutOfRange{Quantity: "tag_protein_pct", Value: 120, Low: 0, High: 100},
			"Tag protein 120% is outside what I can compute (0–100).", "Tag protein 120% is outside what I can compute (0–100).",
		},
	} {
		require.Equal(t, row.us, us(t).Missing(row.err, "target"))
		require.Equal(t, row.metric, metric(t).Missing(row.err, "target"))
	}
	require.Equal(t, "I cannot say yet: the water left is not known.", us(t).Missing(errors.New("odd"), "water_left"))
	require.Equal(t, "I cannot say yet: the moon is not known.", us(t).Missing(&model.Missing{What: "moon"}, "target"))
}

func TestSetup(t *testing.T) {
	for _, v := range []wording.Voice{us(t), metric(t), {Now: now}} {
		require.LessOrEqual(t, len(wording.SetupSteps), 5)
		for _, step := range wording.SetupSteps {
			text, labels := v.SetupQuestion(step)
			require.Contains(t, text, "Skip:", step)
			require.Equal(t, "skip", labels[len(labels)-1])
			require.LessOrEqual(t, len(labels), 4)
		}
	}
	text, _ := us(t).SetupQuestion("chores")
	require.Contains(t, text, "10:30 am")
}

func TestSetupDone(t *testing.T) {
	v := wording.Voice{Now: now}
	got := v.SetupDone(orchard(t).herd())
	require.Regexp(t, `^Set\. 265 lb about \w{3} \w{3} \d+ \(.*\)\. About [\d,]+ lb feed in all\.\nNo butcher booked: ask for a day about then\.\nAssumed: target 265 lb, chores Sat 7 am\. Text to change any\.$`, got)
	got = v.SetupDone(orchard(t).add("2026-07-11", 600, false, model.Booked{Day: day("2026-09-01")}).herd())
	require.Contains(t, got, "\nButcher Tue Sep 1.")
	require.Contains(t, v.SetupDone((&journal{t: t}).herd()), "No pigs yet")
}

func TestHelp(t *testing.T) {
	screen := us(t).Help("")
	require.LessOrEqual(t, strings.Count(screen, "\n"), 8)
	require.Contains(t, screen, "filled north 150 lb, full")
	require.Equal(t, "Feed. Text things like:\n  filled Automat 70 kg, full\n  Automat half left\n  Automat tipped, lost 20 kg\n  how much feed is left?", metric(t).Help("feed"))
	require.Equal(t, screen, us(t).Help("the moon"))
	seen := map[string]bool{}
	for _, topic := range wording.Topics {
		require.False(t, seen[topic.Name], topic.Name)
		seen[topic.Name] = true
		if topic.Name != "settings" { // each thing that can be set
			require.Contains(t, []int{3, 4}, len(topic.US), topic.Name)
		}
		require.True(t, topic.Metric == nil || len(topic.Metric) == len(topic.US), topic.Name)
		for _, k := range topic.Kinds {
			require.Contains(t, us(t).Help(string(k)), ". Text things like:")
		}
		for _, w := range topic.Words {
			require.Contains(t, us(t).Help(w), ". Text things like:")
		}
	}
	// Every kind of record that a person makes by text is covered by a topic.
	talk := map[model.Kind]bool{"told": true, "question": true, "settled": true, "void": true, "forecast": true}
	covered := map[model.Kind]bool{}
	for _, topic := range wording.Topics {
		for _, k := range topic.Kinds {
			covered[k] = true
		}
	}
	for _, f := range model.Facts() {
		require.True(t, covered[f.Kind()] || talk[f.Kind()], f.Kind())
	}
}

func TestCommands(t *testing.T) {
	seen := map[string]bool{}
	for _, c := range wording.Commands {
		require.Regexp(t, `^[a-z]{1,32}$`, c.Name)
		require.NotEmpty(t, c.Description)
		require.LessOrEqual(t, len(c.Description), 40, "a phone shows no more in one line")
		require.NotEmpty(t, c.Menus, "it would be offered nowhere")
		require.False(t, seen[c.Name])
		seen[c.Name] = true
	}
	for _, menu := range []wording.Menu{wording.PrivateMenu, wording.GroupMenu, wording.OperatorMenu} {
		for _, language := range wording.Languages {
			offered := wording.Offered(menu, language)
			require.NotEmpty(t, offered)
			require.LessOrEqual(t, len(offered), 100)
		}
	}
	require.Empty(t, wording.Offered(wording.PrivateMenu, "xx"))
	listed := wording.Voice{}.Help("commands")
	for _, c := range wording.Offered(wording.PrivateMenu, "") {
		require.Contains(t, listed, "/"+c.Name+": "+c.Description)
	}
	require.NotContains(t, listed, "newherd", "what only the operator may do")
	require.LessOrEqual(t, len(wording.Description()), 512)
}
