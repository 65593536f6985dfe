package reading_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot/reading"
	"troughbell/model"
)

func TestChoresOfEveryDay(t *testing.T) {
	now := time.Date(2026, 7, 11, 8, 0, 0, 0, time.UTC)
	week := []string{"mon", "tue", "wed", "thu", "fri", "sat", "sun"}
	for _, text := range []string{"chores daily", "chores every day", "every day is chore day", "our chores are every day now", "chores every day 7 am"} {
		got := reading.Read(reading.Context{Now: now, Herd: model.Fold(nil)}, text)
		require.Equal(t, reading.Fact{Fact: model.Setting{Key: model.SetChore, List: week}}, got.Entries[0].Act, text)
	}
	got := reading.Read(reading.Context{Now: now, Herd: model.Fold(nil)}, "the pigs get fed every day")
	for _, e := range got.Entries {
		require.NotEqual(t, "settings", e.Act.Intent())
	}
}

func TestTheHourOfShopping(t *testing.T) {
	now := time.Date(2026, 7, 11, 8, 0, 0, 0, time.UTC)
	read := func(text string) reading.Entry {
		got := reading.Read(reading.Context{Now: now, Herd: model.Fold(nil)}, text)
		require.Len(t, got.Entries, 1, text)
		return got.Entries[0]
	}
	for text, want := range map[string][]string{
		"tell me about shopping at 5 pm":              {"17:00"},
		"Tell us about the stock at 4:30 pm":          {"16:30"},
		"nudge me about feed shopping at 3":           {"15:00"},
		"text me about what to buy by 9":              {"09:00"},
		"set the shopping reminder to 16:00":          {"16:00"},
		"tell about shopping at 5 pm":                 {"17:00"},
		"tell about shopping at the usual hour":       nil,
		"tell me about stock at the usual time again": nil,
	} {
		require.Equal(t, reading.Fact{Fact: model.Setting{Key: model.SetShop, List: want}}, read(text).Act, text)
	}
	for _, text := range []string{"remind me shopping at 5 pm", "tell me about stock", "tell me about shopping at 33", "stock 500"} {
		if f, ok := read(text).Act.(reading.Fact); ok {
			require.NotEqual(t, model.Kind("settings"), f.Kind(), text)
		}
	}
}
