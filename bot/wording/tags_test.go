package wording_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/bot/reading"
	"troughbell/bot/wording"
	"troughbell/model"
)

// What is said back of pigs that are called by numbers reads to the same record
// again, be the numbers high or low.
func TestEchoOfTagsReadsBack(t *testing.T) {
	for _, names := range [][]string{{"411", "412", "413", "414"}, {"1", "2", "3", "4"}, {"22", "23", "41", "45"}, {"Red 14", "Red 15", "Blue 3", "Blue 4"}} {
		j := &journal{t: t}
		h := j.add("2026-04-18", 600, true,
			model.Setting{Key: model.SetUnits, Text: model.US},
			model.Arrive{Count: 4, Animals: names, WeightKg: model.Float(48 * lb)},
			setting(model.SetFeeder, model.Thing{Name: "feeder", CapacityKg: model.Float(300 * lb)}),
			setting(model.SetPen, model.Thing{Name: "Creek", AreaM2: model.Float(900)}),
		).herd()
		a, b := names[0], names[2]
		kg := 0.0
		for _, p := range h.Animals[:1] {
			est, err := h.ExpectReading(p, model.DayOf(now), model.ByScale)
			require.NoError(t, err)
			kg = float64(int(est.Mean/lb)) * lb
		}
		days := 14
		for _, f := range []model.Fact{
			model.Weigh{Animals: []string{a}, WeightKg: kg, By: model.ByScale},
			model.Worm{Treatment: model.Treatment{Animals: []string{a, b}, Product: "fenbendazole", WithdrawalDays: &days}},
			model.Treat{Treatment: model.Treatment{Animals: []string{a, b}, Product: "penicillin", WithdrawalDays: &days}},
			model.Sick{Animals: []string{a, b}, Note: "limping"},
			model.Move{Animals: []string{a, b}, Pen: "Creek"},
		} {
			text := wording.Voice{Herd: h, Now: now}.Echo(entry(f))
			r := reading.Read(reading.Context{Now: now, Herd: h}, text)
			require.Len(t, r.Entries, 1, text)
			got, ok := r.Entries[0].Act.(reading.Fact)
			require.True(t, ok, "%q: %#v", text, r.Entries[0].Act)
			require.Equal(t, rounded(t, f), rounded(t, got.Fact), text)
		}
	}
}
