package reading_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot/reading"
	"troughbell/model"
)

func TestNudgesAreWantedAgain(t *testing.T) {
	now := time.Date(2026, 7, 11, 8, 0, 0, 0, time.UTC)
	herd := model.Fold([]model.Record{
		{ID: "r1", On: model.DayOf(now), At: now, Fact: model.Setting{Key: model.SetMute, Text: "weigh"}},
		{ID: "r2", On: model.DayOf(now), At: now, Fact: model.Snooze{About: []string{"worm"}, Stop: true}},
	})
	read := func(text string) reading.Entry {
		got := reading.Read(reading.Context{Now: now, Herd: herd}, text)
		require.Len(t, got.Entries, 1, text)
		return got.Entries[0]
	}
	for text, want := range map[string]string{
		"start weighing nudges again":          "weigh",
		"resume weighing":                      "weigh",
		"unmute wallow":                        "wallow",
		"nudge me about worming again":         "worm",
		"turn on the weighing reminders again": "weigh",
		"nudges again: weighing":               "weigh",
		"unmute all":                           model.All,
		"Start nudging me again!":              model.All,
		"all nudges again":                     model.All,
	} {
		require.Equal(t, reading.Fact{Fact: model.Setting{Key: model.SetUnmute, Text: want}}, read(text).Act, text)
	}
	for text, hours := range map[string]int{"in an hour": 1, "remind me in 2 hours": 2, "in a couple of hours": 2, "in 12 hrs": 12} {
		require.Equal(t, reading.Snooze{Hours: hours}, read(text).Act, text)
	}
	for _, text := range []string{"tell me about weighing", "resume", "weighing again", "remind me in an hour: hay"} {
		if f, ok := read(text).Act.(reading.Fact); ok {
			if s, ok := f.Fact.(model.Setting); ok && s.Text != model.All {
				require.NotEqual(t, model.SetUnmute, s.Key, text)
			}
		}
	}
}
