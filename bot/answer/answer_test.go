package answer_test

import (
	"encoding/json"
	"strings"
	"testing"
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

// Nobody reads figures in units that are not their own; what was said is kept
// as it was said.
func TestTextsAreInOneSystem(t *testing.T) {
	for topic := range keys {
		if topic == "sizes" || topic == "history" {
			continue
		}
		require.NotRegexp(t, `\d (kg|l|°C|cm|m²|MJ)\b`, ask(hot(orchard(t)).herd(), reading.Ask{Topic: topic}).Text, topic)
		cold := nursery(t).add("2026-07-11", 600,
			model.Weather{HighC: model.Float(30)}, model.Spend{Amount: 300, What: "piglets"},
			model.Recipe{Ingredients: map[string]float64{"barley": 80, "soybean meal 48": 20}},
			setting(model.SetWallow, model.Thing{AreaM2: model.Float(4), DepthM: model.Float(0.2)}), model.WallowFill{},
			setting(model.SetPen, model.Thing{Name: "Wiese", AreaM2: model.Float(500), InUse: &yes}),
		)
		a := ask(cold.herd(), reading.Ask{Topic: topic})
		require.NotNil(t, a.Data, "%s: %s", topic, a.Text)
		require.NotRegexp(t, `\d (lb|gal|°F|in|ft|sq ft|kcal)\b|/lb`, a.Text, topic)
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
