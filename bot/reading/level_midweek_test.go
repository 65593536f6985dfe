package reading_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot/reading"
	"troughbell/model"
)

func TestLevelMidweekIsAskedForAndTakenBack(t *testing.T) {
	for text, want := range map[string]string{
		"remind me to level the feeder midweek": model.LevelMidweek, "Level the feed midweek.": model.LevelMidweek, "no levelling midweek": "",
	} {
		got := reading.Read(reading.Context{Now: time.Date(2026, 7, 11, 8, 0, 0, 0, time.UTC), Herd: model.Fold(nil)}, text)
		require.Len(t, got.Entries, 1, text)
		require.Equal(t, reading.Fact{Fact: model.Setting{Key: model.SetLevel, Text: want}}, got.Entries[0].Act, text)
	}
	got := reading.Read(reading.Context{Now: time.Date(2026, 7, 11, 8, 0, 0, 0, time.UTC), Herd: model.Fold(nil)}, "the feeder level was half midweek")
	for _, e := range got.Entries {
		require.NotEqual(t, reading.Fact{Fact: model.Setting{Key: model.SetLevel, Text: model.LevelMidweek}}, e.Act)
	}
}
