package reading_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot/reading"
	"troughbell/model"
)

func TestTheEveningBeforeIsAskedForAndTakenBack(t *testing.T) {
	now := time.Date(2026, 7, 11, 8, 0, 0, 0, time.UTC)
	for text, want := range map[string][]string{
		"tell me the evening before":                     {"19:00"},
		"Nudge me the evening before chore day at 8 pm":  {"20:00"},
		"text me the night before at 7:30":               {"19:30"},
		"write me on the evening before chores, 18:00":   {"18:00"},
		"nudges the evening before chores, at 7 pm":      {"19:00"},
		"tell me about chores the evening before please": {"19:00"},
		"nudges on the chore day itself":                 nil,
		"remind me on the day itself":                    nil,
		"not the evening before anymore":                 nil,
	} {
		got := reading.Read(reading.Context{Now: now, Herd: model.Fold(nil)}, text)
		require.Len(t, got.Entries, 1, text)
		require.Equal(t, reading.Fact{Fact: model.Setting{Key: model.SetEve, List: want}}, got.Entries[0].Act, text)
	}
	for _, text := range []string{"filled it the evening before", "tell me the evening before at 9 am", "the vet came the evening before", "remind me friday evening: gate"} {
		for _, e := range reading.Read(reading.Context{Now: now, Herd: model.Fold(nil)}, text).Entries {
			if f, ok := e.Act.(reading.Fact); ok {
				if s, ok := f.Fact.(model.Setting); ok {
					require.NotEqual(t, model.SetEve, s.Key, text)
				}
			}
		}
	}
}
